namespace Purlin.Journal.Fold;

public sealed partial record Inspection
{
    /// <summary>What was not looked at or tested.</summary>
    public IReadOnlyList<Limitation> Limitations { get; init; } = [];
}

internal sealed partial class Gathered
{
    /// <summary>Limitations with what was filled in later.</summary>
    public static Gathered Limitations { get; } = new((state, inspection) => inspection with
    {
        Limitations = state.Each<EntryBody.LimitationRecorded, Limitation>((line, body) => new Limitation
        {
            Id = line.Name,
            Body = body,
            At = line.At,
            Cause = Filled(state, line.Name, EntryBody.LimitationCompleted.Cause) ?? body.Cause,
            Next = Filled(state, line.Name, EntryBody.LimitationCompleted.Next) ?? body.Next,
        }),
    });

    /// <summary>Every text that stands, one under the other: none is hidden behind the first.</summary>
    private static string? Filled(State state, EntryName limitation, string part) =>
        state.Slots.At(EntryBody.LimitationCompleted.SlotOf(limitation, part)) is { Count: > 0 } lines
        ? string.Join('\n', lines.Select(line => TextOf(line.Body))) : null;

    /// <summary>The text of a note, or of what has taken the place of one.</summary>
    private static string TextOf(EntryBody body) =>
        body is EntryBody.LimitationCompleted completed ? completed.Text : ((EntryBody.NoteWritten)body).Text;
}

/// <summary>Something not looked at or tested; cause and next step may have been filled in later.</summary>
public sealed record Limitation
{
    /// <summary>The entry.</summary>
    public required EntryName Id { get; init; }

    /// <summary>What it says.</summary>
    public required EntryBody.LimitationRecorded Body { get; init; }

    /// <summary>Why, with what was filled in later.</summary>
    public string? Cause { get; init; }

    /// <summary>What the buyer should do, with what was filled in later.</summary>
    public string? Next { get; init; }

    /// <summary>When, as its device believed.</summary>
    public required DateTimeOffset At { get; init; }
}
