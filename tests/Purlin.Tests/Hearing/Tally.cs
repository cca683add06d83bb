using Purlin.Hearing;

namespace Purlin.Tests.Hearing;

/// <summary>How well narrations were understood: what was proposed against what should have been.</summary>
internal sealed class Tally
{
    public int Proposed { get; private set; }

    public int Wanted { get; private set; }

    /// <summary>Component, condition and outcome are right, and the words overlap.</summary>
    public int Right { get; private set; }

    public int PlaceRight { get; private set; }

    public int TradeRight { get; private set; }

    public int HedgeRight { get; private set; }

    /// <summary>Of the right ones that should have amounts, how many have exactly those.</summary>
    public int AmountsRight { get; private set; }

    public int AmountsWanted { get; private set; }

    public int Asides { get; private set; }

    /// <summary>Asides in which no proposal rests for the most part.</summary>
    public int AsidesQuiet { get; private set; }

    public double Precision => Proposed == 0 ? 0 : (double)Right / Proposed;

    public double Recall => Wanted == 0 ? 0 : (double)Right / Wanted;

    public double F1 => Right == 0 ? 0 : 2 * Precision * Recall / (Precision + Recall);

    public static Tally Of(IEnumerable<Narration> narrations, Func<Narration, Heard> listen)
    {
        var tally = new Tally();
        foreach (var narration in narrations) tally.Count(narration, listen(narration));
        return tally;
    }

    public string Row(string name) =>
        $"| {name} | {Wanted} | {Proposed} | {Precision:0.000} | {Recall:0.000} | {F1:0.000} | {Share(PlaceRight, Right)} "
        + $"| {Share(AmountsRight, AmountsWanted)} | {Share(TradeRight, Right)} | {Share(HedgeRight, Right)} | {Share(AsidesQuiet, Asides)} |";

    private void Count(Narration narration, Heard heard)
    {
        Proposed += heard.Proposals.Length;
        Wanted += narration.Labels.Count;
        var left = heard.Proposals.ToList();
        foreach (var label in narration.Labels)
        {
            if (left.Where(proposal => Same(label, proposal)).OrderByDescending(proposal =>
                Overlap(label.Words, proposal)).FirstOrDefault() is not { } found) continue;
            left.Remove(found);
            Compare(label, found);
        }
        foreach (var aside in narration.Asides)
        {
            Asides++;
            if (!heard.Proposals.Any(proposal =>
                proposal.Words.Any(range => 2 * Shared(aside, range) > Math.Min(aside.End - aside.Start,
                range.End - range.Start)))) AsidesQuiet++;
        }
    }

    private void Compare(Label label, HeardProposal found)
    {
        Right++;
        if (found.Place == label.Place) PlaceRight++;
        if (found.Trade == label.Trade) TradeRight++;
        if (found.Hedged == label.Hedged) HedgeRight++;
        if (label.Amounts.Count == 0) return;
        AmountsWanted++;
        if (label.Amounts.Order().SequenceEqual(found.Amounts
            .Select(amount => (amount.Kind, Math.Round(amount.Value, 2))).Order())) AmountsRight++;
    }

    private static bool Same(Label label, HeardProposal proposal) =>
        proposal.Component == label.Component && proposal.Condition == label.Condition && proposal.Outcome == label.Outcome
            && Overlap(label.Words, proposal) > 0;

    private static int Overlap(IEnumerable<(int Start, int End)> words, HeardProposal proposal) =>
        words.Sum(one => proposal.Words.Sum(range => Shared(one, range)));

    private static int Shared((int Start, int End) one, WordRange other) =>
        Math.Max(0, Math.Min(one.End, other.End) - Math.Max(one.Start, other.Start));

    private static string Share(int part, int whole) => whole == 0 ? "" : $"{(double)part / whole:0.00}";
}
