namespace Purlin.Journal.Fold;

public sealed partial record Inspection
{
    /// <summary>What was looked for, and the outcome.</summary>
    public IReadOnlyList<Observation> Observations { get; init; } = [];
}

internal sealed partial class Gathered
{
    /// <summary>Observations.</summary>
    public static Gathered Observations { get; } = new((state, inspection) => inspection with
    {
        Observations = state.Each<EntryBody.ObservationMade, Observation>((line,
            body) => new Observation { Id = line.Name, Body = body, At = line.At }),
    });
}

/// <summary>Something looked for, with its outcome.</summary>
public sealed record Observation
{
    /// <summary>The entry.</summary>
    public required EntryName Id { get; init; }

    /// <summary>What it says.</summary>
    public required EntryBody.ObservationMade Body { get; init; }

    /// <summary>When, as its device believed.</summary>
    public required DateTimeOffset At { get; init; }
}
