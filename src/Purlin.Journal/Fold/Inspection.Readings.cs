namespace Purlin.Journal.Fold;

public sealed partial record Inspection
{
    /// <summary>Measured quantities.</summary>
    public IReadOnlyList<Reading> Readings { get; init; } = [];
}

internal sealed partial class Gathered
{
    /// <summary>Readings.</summary>
    public static Gathered Readings { get; } = new((state, inspection) => inspection with
    {
        Readings = state.Each<EntryBody.ReadingTaken, Reading>((line, body) => new Reading { Id = line.Name, Body = body, At = line.At }),
    });
}

/// <summary>A measured quantity.</summary>
public sealed record Reading
{
    /// <summary>The entry.</summary>
    public required EntryName Id { get; init; }

    /// <summary>What it says.</summary>
    public required EntryBody.ReadingTaken Body { get; init; }

    /// <summary>When, as its device believed.</summary>
    public required DateTimeOffset At { get; init; }
}
