namespace Purlin.Journal.Fold;

public sealed partial record Inspection
{
    /// <summary>What readers of plates, words and files offered, and what became of it.</summary>
    public IReadOnlyList<Proposal> Proposals { get; init; } = [];
}

internal sealed partial class Gathered
{
    /// <summary>Proposals with what became of them.</summary>
    public static Gathered Proposals { get; } = new((state, inspection) => inspection with { Proposals = ProposalsOf(state) });

    private static List<Proposal> ProposalsOf(State state)
    {
        var made = state.Of<EntryBody.ProposalMade>();
        if (made.Count == 0) return [];
        var takings = state.Takings.Where(line => line.Stands).ToLookup(line => line.Body.Origin!.Value);
        HashSet<EntryName> dropped = [.. state.Of<EntryBody.ProposalDropped>().Where(line => line.Stands)
            .Select(line => ((EntryBody.ProposalDropped)line.Body).Proposal)];
        List<Proposal> all = [];
        foreach (var line in made.Where(line => line.Stands))
        {
            var body = (EntryBody.ProposalMade)line.Body;
            // An entry of another kind is not what was offered, whatever it says of its origin.
            List<Line> taken = [.. takings[line.Name].Where(taking => taking.Body.Type == body.Entry)];
            var became = taken.Count > 0
                ? taken.TrueForAll(taking => IsAsOffered(body, taking.Body)) ? ProposalState.Taken : ProposalState.Changed
                : dropped.Contains(line.Name) ? ProposalState.Dropped : ProposalState.Open;
            all.Add(new Proposal
            {
                Id = line.Name,
                Body = body,
                State = became,
                TakenBy = [.. taken.Select(taking => taking.Name)],
                At = line.At
            });
        }
        return all;
    }

    private static bool IsAsOffered(EntryBody.ProposalMade made, EntryBody taken) =>
        made.Offered().Match(offered => Bare(offered) == Bare(taken), _ => false);

    private static string Bare(EntryBody body) =>
        BodyJson.Write((body is EntryBody.Stating stating ? stating with { Replaces = [] } : body) with { Origin = null });
}

/// <summary>What became of a proposal.</summary>
public enum ProposalState
{
    /// <summary>Neither taken nor dropped yet.</summary>
    Open,

    /// <summary>Taken as it was offered.</summary>
    Taken,

    /// <summary>Taken with other values.</summary>
    Changed,

    /// <summary>Dropped.</summary>
    Dropped,
}

/// <summary>An entry that was offered by a reader of plates, words or files.</summary>
public sealed record Proposal
{
    /// <summary>The entry.</summary>
    public required EntryName Id { get; init; }

    /// <summary>What it says.</summary>
    public required EntryBody.ProposalMade Body { get; init; }

    /// <summary>What became of it; what was taken counts as taken even where another hand dropped it.</summary>
    public required ProposalState State { get; init; }

    /// <summary>The entries that took it.</summary>
    public IReadOnlyList<EntryName> TakenBy { get; init; } = [];

    /// <summary>When, as its device believed.</summary>
    public required DateTimeOffset At { get; init; }
}
