using Purlin.Book;

namespace Purlin.Judgement.Findings;

/// <summary>Says by when a finding wants doing: the first line of the book that fits it, unless the inspector set the time.</summary>
internal static class Dating
{
    public static Finding Apply(RuleBook book, Finding finding) => finding.Due is not null ? finding : finding with { Due = Of(book, finding) };

    private static Due Of(RuleBook book, Finding finding)
    {
        var weight = book.Conditions.GetValueOrDefault(finding.Condition)?.Weight;
        var rule = book.ByWhen.FirstOrDefault(line => Fits(line, finding, weight));
        return rule is not null
            ? new Due(rule.By, book.Words.Say("by-when." + rule.Id))
            : new Due(finding.Weight == Weight.MakeSafe ? ByWhen.Today : ByWhen.WhenNextWorkedOn, "");
    }

    private static bool Fits(ByWhenRule rule, Finding finding, WeightRule? weight) =>
        Has(rule.Weights, finding.Weight) && Has(rule.Consequences, weight?.Consequence) && Has(rule.Timings, weight?.Timing)
        && Has(rule.Systems, finding.System) && Has(rule.Trades, finding.Trade)
        && (rule.Conditions.Count == 0 || rule.Conditions.Contains(finding.Condition) || finding.Grouped.Any(rule.Conditions.Contains));

    private static bool Has(IReadOnlyList<string> allowed, string given) => allowed.Count == 0 || allowed.Contains(given);

    private static bool Has<T>(IReadOnlyList<T> allowed, T? given)
        where T : struct => allowed.Count == 0 || given is { } known && allowed.Contains(known);
}
