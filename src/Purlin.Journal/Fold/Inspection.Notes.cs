namespace Purlin.Journal.Fold;

public sealed partial record Inspection
{
    /// <summary>Notes.</summary>
    public IReadOnlyList<Note> Notes { get; init; } = [];

    /// <summary>Sound notes.</summary>
    public IReadOnlyList<Sound> Sounds { get; init; } = [];
}

internal sealed partial class Gathered
{
    /// <summary>Notes, but for those that fill in a limitation.</summary>
    public static Gathered Notes { get; } = new((state, inspection) => inspection with { Notes = NotesOf(state) });

    /// <summary>Sound notes.</summary>
    public static Gathered Sounds { get; } = new((state, inspection) => inspection with
    {
        Sounds = state.Each<EntryBody.SoundTaken, Sound>((line, body) => new Sound(line.Name, body, line.At)),
    });

    private static List<Note> NotesOf(State state)
    {
        HashSet<EntryName> limitations = [.. state.Of<EntryBody.LimitationRecorded>().Where(line => line.Stands).Select(line => line.Name)];
        return
        [
            .. from slot in state.Slots.OfType("note.written")
               where !(slot.Key.Which is "cause" or "next" && slot.Key.Of is { } about && limitations.Contains(about))
               orderby slot.Standing[0].Position
               select new Note(slot.Key.Of, slot.Key.Which.Length == 0 ? null : slot.Key.Which, slot.As(body => ((EntryBody.NoteWritten)body).Text)),
        ];
    }
}

/// <summary>A note.</summary>
/// <param name="About">What it is about; none for the inspection.</param>
/// <param name="Part">Tells several notes about one thing apart.</param>
/// <param name="Text">Every text that stands.</param>
public sealed record Note(EntryName? About, string? Part, Slot<string> Text);

/// <summary>A sound note.</summary>
/// <param name="Id">The entry.</param>
/// <param name="Body">What it says.</param>
/// <param name="At">When, as its device believed.</param>
public sealed record Sound(EntryName Id, EntryBody.SoundTaken Body, DateTimeOffset At);
