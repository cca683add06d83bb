namespace Purlin.Journal.Fold;

public sealed partial record Inspection
{
    /// <summary>Kinds of component that were looked for and are not there.</summary>
    public IReadOnlyList<Absence> Absences { get; init; } = [];
}

internal sealed partial class Gathered
{
    private const string AbsentNote = "absent ";

    /// <summary>What is not there. In earlier journals a note about the place said so, with the kind in its part.</summary>
    public static Gathered Absences { get; } = new((state, inspection) => inspection with
    {
        Absences =
        [
            .. state.Each<EntryBody.ComponentAbsent, Absence>((line, body) =>
                new Absence { Id = line.Name, Kind = body.Kind, Place = body.Place, Part = body.Part, Words = body.Words, At = line.At }),
            .. from slot in state.Slots.OfType("note.written")
               where IsAbsence(state, slot.Key)
               let first = slot.Standing[0]
               select new Absence { Id = first.Name, Kind = slot.Key.Which[AbsentNote.Length..], Place = slot.Key.Of, At = first.At },
        ],
    });

    private static bool IsAbsence(State state, SlotKey key) =>
        key.Which.Length > AbsentNote.Length && key.Which.StartsWith(AbsentNote, StringComparison.Ordinal) && key.Of is { } about
        && state.Is<EntryBody.PlaceAdded>(about);
}

/// <summary>A kind of component that was looked for and is not there. Negative evidence is evidence.</summary>
public sealed record Absence
{
    /// <summary>The entry.</summary>
    public required EntryName Id { get; init; }

    /// <summary>Kind as the rule book names it.</summary>
    public required string Kind { get; init; }

    /// <summary>Where it is not; none for a part of the house, or the whole of it.</summary>
    public EntryName? Place { get; init; }

    /// <summary>The part of the house that has none; none for the whole house, or when a place is said.</summary>
    public EntryName? Part { get; init; }

    /// <summary>More about it, in the inspector's words.</summary>
    public string? Words { get; init; }

    /// <summary>When, as its device believed.</summary>
    public required DateTimeOffset At { get; init; }
}
