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
    /// <summary>
    /// Notes that speak for themselves: not those that fill in a limitation, say what is absent, or write a sound note down.
    /// </summary>
    public static Gathered Notes { get; } = new((state, inspection) => inspection with
    {
        Notes =
        [
            .. from slot in state.Slots.OfType("note.written")
               where !IsOfAnother(state, slot.Key)
               orderby slot.Standing[0].Position
               select NoteOf(state, slot),
        ],
    });

    /// <summary>Sound notes.</summary>
    public static Gathered Sounds { get; } = new((state, inspection) => inspection with
    {
        Sounds = state.Each<EntryBody.SoundTaken, Sound>((line, body) => new Sound(line.Name, body, line.At)
        {
            Written = state.Slots.Slot(new SlotKey("note.written", line.Name, ""), TextOf),
            Fate = state.Slots.Slot(new SlotKey("note.fated", line.Name, "", "sound"), fate => (EntryBody.NoteFated)fate),
        }),
    });

    private static bool IsOfAnother(State state, SlotKey key) => key.Of is { } about && (
        (key.Which is EntryBody.LimitationCompleted.Cause or EntryBody.LimitationCompleted.Next
        && state.Is<EntryBody.LimitationRecorded>(about))
        || (key.Which.Length == 0 && state.Is<EntryBody.SoundTaken>(about))
        || IsAbsence(state, key));

    private static Note NoteOf(State state, SlotLines slot)
    {
        var part = slot.Key.Which.Length == 0 ? null : slot.Key.Which;
        return new Note(slot.Key.Of, part, slot.As(TextOf))
        {
            Id = slot.FirstLine!.Name,
            Fate = state.Slots.Slot(EntryBody.NoteFated.SlotOf(slot.Key.Of, part), fate => (EntryBody.NoteFated)fate),
        };
    }
}

/// <summary>A note.</summary>
/// <param name="About">What it is about; none for the inspection.</param>
/// <param name="Part">Tells several notes about one thing apart.</param>
/// <param name="Text">Every text that stands.</param>
public sealed record Note(EntryName? About, string? Part, Slot<string> Text)
{
    /// <summary>The entry that first wrote it, by which it is named however often its text is written again.</summary>
    public EntryName Id { get; init; } = Text.Standing[0].By;

    /// <summary>What becomes of it; none yet.</summary>
    public Slot<EntryBody.NoteFated>? Fate { get; init; }

    /// <summary>The entry that says what becomes of it, yet without saying how.</summary>
    /// <param name="how">See <see cref="Journal.Fate"/>.</param>
    public EntryBody.NoteFated Fated(string how) => new() { Note = Text.Standing[0].By, About = About, Part = Part, How = how };
}

/// <summary>A sound note.</summary>
/// <param name="Id">The entry.</param>
/// <param name="Body">What it says.</param>
/// <param name="At">When, as its device believed.</param>
public sealed record Sound(EntryName Id, EntryBody.SoundTaken Body, DateTimeOffset At)
{
    /// <summary>What is said in it, written down; none yet.</summary>
    public Slot<string>? Written { get; init; }

    /// <summary>What becomes of it; none yet.</summary>
    public Slot<EntryBody.NoteFated>? Fate { get; init; }

    /// <summary>The entry that says what becomes of it, yet without saying how.</summary>
    /// <param name="how">See <see cref="Journal.Fate"/>.</param>
    public EntryBody.NoteFated Fated(string how) => new() { Sound = Id, How = how };
}
