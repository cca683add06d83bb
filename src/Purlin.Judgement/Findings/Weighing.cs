using Purlin.Book;
using Purlin.Journal;

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
            new Contribution("consequence", words.Say("weight.consequence." + rule.Consequence), atOnce),
            new Contribution("timing", words.Say("weight.timing." + rule.Timing), timed),
            new Contribution("spread", words.Say(SpreadKey(spread) + (spreads == timed ? "" : ".raise")), spreads),
        ];
    }

    /// <summary>One step up, never above <see cref="Weight.ActNow"/>: only a consequence makes a matter one of injury.</summary>
    public static Weight Raise(Weight weight) => weight >= Weight.ActNow ? weight : weight + 1;

    private static bool Lifts(WeightRule rule, Spread spread) => spread switch
    {
        Spread.SeveralPlaces => rule.Several == "raise",
        // What matters more in several places cannot matter less in all of them.
        Spread.Throughout => rule.Throughout == "raise" || rule.Several == "raise",
        _ => false,
    };

    private static string SpreadKey(Spread spread) => spread switch
    {
        Spread.SeveralPlaces => "weight.spread.several",
        Spread.Throughout => "weight.spread.throughout",
        _ => "weight.spread.one",
    };
}
