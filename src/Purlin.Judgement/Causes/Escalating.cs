using Purlin.Book;
using Purlin.Judgement.Findings;

namespace Purlin.Judgement.Causes;

/// <summary>Lifts a matter one step when another one was seen with it: poor drainage where a wall already moves.</summary>
internal static class Escalating
{
    public static IEnumerable<Finding> Apply(BookIndex book, IReadOnlyList<Finding> findings, IReadOnlyList<Concern> matters)
    {
        var seen = matters.ToLookup(matter => matter.Condition.Id, StringComparer.Ordinal);
        foreach (var finding in findings)
        {
            var lifted = finding;
            foreach (var rule in book.Escalations[finding.Condition])
            {
                if (!rule.With.Any(other => seen[other].Any(matter => Together(rule, finding, matter)))) continue;
                var raised = Weighing.Raise(lifted.Weight);
                lifted = lifted with { Weight = raised, Why = [.. lifted.Why, new Contribution(Speaks.Together, rule.Because, raised)] };
            }
            yield return lifted;
        }
    }

    private static bool Together(Escalation rule, Finding finding, Concern matter) => rule.Within == Within.House || matter.Places.Intersect(finding.Places).Any();
}
