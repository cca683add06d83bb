using Purlin.Journal;

namespace Purlin.Report.Writing;

/// <summary>Trades as they are said: whole, in a list, asked, and in a narrow column.</summary>
internal sealed partial class Phrase
{
    private static readonly string[] endings = [" contractor", " specialist", " firm"];

    /// <summary>A trade whole.</summary>
    public string TradeWhole(string trade) => words.Say(Said.InData("trade." + trade.ToLowerInvariant(), trade));

    /// <summary>A trade as it is said in a list.</summary>
    public string Trade(string trade) => words.Find("trade." + trade.ToLowerInvariant()) ?? Unlicensed(trade);

    /// <summary>Whose question it is: "Ask the plumber", "Ask the owner".</summary>
    public string Asking(string trade) => words.Say("report.ask", ("whom", words.Find("trade." + trade.ToLowerInvariant())
        ?? (trade.StartsWith("the ", StringComparison.Ordinal) ? trade : $"the {Unlicensed(trade)}")));

    /// <summary>The same in a narrow column.</summary>
    public string ShortTrade(string trade)
    {
        if (words.Find("trade." + trade.ToLowerInvariant()) is { } known) return words.Find("trade.short." + trade.ToLowerInvariant())
            ?? known;
        var brief = Unlicensed(trade);
        foreach (var ending in endings)
            if (brief.EndsWith(ending, StringComparison.Ordinal) && brief != "general contractor") brief = brief[..^ending.Length];
        return brief;
    }

    private static string Unlicensed(string trade) => trade.StartsWith("licensed ", StringComparison.OrdinalIgnoreCase)
        ? trade["licensed ".Length..] : trade;
}
