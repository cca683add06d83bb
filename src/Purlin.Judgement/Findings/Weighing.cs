using Purlin.Book;
using Purlin.Journal;
using Purlin.Judgement.Evidence;

namespace Purlin.Judgement.Findings;

/// <summary>Works out a weight from consequence, timing and spread, and keeps each contribution so that it can be shown.</summary>
internal static class Weighing
{
    public static List<Contribution> Contributions(WeightRule rule, Spread spread, Tongue words)
    {
        var atOnce = rule.AtOnce();
        var timed = rule.InOnePlace();
        var spreads = Lifts(rule, spread) ? Raise(timed) : timed;
        return
        [
            new Contribution(Speaks.Consequence, words.Say("weight.consequence." + rule.Consequence.Word()), atOnce),
            new Contribution(Speaks.Timing, words.Say("weight.timing." + rule.Timing.Word()), timed),
            new Contribution(Speaks.Spread, words.Say(SpreadKey(spread) + (spreads == timed ? "" : ".raise")), spreads),
        ];
    }

    /// <summary>The rule as it holds where the house stands: short walls without bracing in earthquake country.</summary>
    public static WeightRule Here(WeightRule rule, EvidenceIndex evidence)
    {
        foreach (var there in rule.Where)
        {
            if (evidence.Component(evidence.House)?.Fact(there.Fact)?.Value is not { } known) continue;
            if (there.Is.Contains(known.Text, StringComparer.OrdinalIgnoreCase) || known.Number > there.Above) return rule with { Consequence = there.Consequence };
        }
        return rule;
    }

    /// <summary>One step up, never above <see cref="Weight.ActNow"/>: only a consequence makes a matter one of injury.</summary>
    public static Weight Raise(Weight weight) => weight >= Weight.ActNow ? weight : weight + 1;

    private static bool Lifts(WeightRule rule, Spread spread) => spread switch
    {
        Spread.SeveralPlaces => rule.Several == Lift.Raise,
        // What matters more in several places cannot matter less in all of them.
        Spread.Throughout => rule.Throughout == Lift.Raise || rule.Several == Lift.Raise,
        _ => false,
    };

    private static string SpreadKey(Spread spread) => spread switch
    {
        Spread.SeveralPlaces => "weight.spread.several",
        Spread.Throughout => "weight.spread.throughout",
        _ => "weight.spread.one",
    };
}
