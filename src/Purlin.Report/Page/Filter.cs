using Purlin.Book;
using Purlin.Report.Writing;

namespace Purlin.Report.Page;

/// <summary>One choice of which matters to see.</summary>
/// <param name="Class">Class that its matters bear.</param>
/// <param name="Words">What is chosen.</param>
/// <param name="Count">How many matters it shows.</param>
public sealed record Filter(string Class, string Words, int Count)
{
    /// <summary>All choices by what they choose by.</summary>
    internal static IReadOnlyList<(string Title, IReadOnlyList<Filter> Choices)> Of(IReadOnlyList<Matter> matters, Phrase words) =>
    [
        (words.Say("page.by-when"), [.. ByWhenWords.SoonestFirst.Select(by => Choice($"d{(int)by}", words.Word(by), matters.Count(matter => matter.Due.By == by))).OfType<Filter>()]),
        (words.Say("page.by-weight"), [.. WeightWords.HeaviestFirst.Select(weight => Choice($"w{(int)weight}", words.Word(weight), matters.Count(matter => matter.Weight == weight))).OfType<Filter>()]),
        (words.Say("page.by-trade"), [.. Trades(matters).Select((trade, index) => Choice($"t{index + 1}", words.Trade(trade), matters.Count(matter => Asks(matter, trade)))).OfType<Filter>()]),
        (words.Say("page.by-place"), [.. Places(matters).Select((place, index) => Choice($"p{index + 1}", place, matters.Count(matter => matter.Places.Contains(place)))).OfType<Filter>()]),
    ];

    /// <summary>The classes that a matter bears.</summary>
    internal static string Classes(Matter matter, IReadOnlyList<Matter> all) => string.Join(' ',
    [
        $"d{(int)matter.Due.By}", $"w{(int)matter.Weight}",
        .. Trades(all).Select((trade, index) => (trade, index)).Where(pair => Asks(matter, pair.trade)).Select(pair => $"t{pair.index + 1}"),
        .. Places(all).Select((place, index) => (place, index)).Where(pair => matter.Places.Contains(pair.place)).Select(pair => $"p{pair.index + 1}"),
    ]);

    private static Filter? Choice(string name, string words, int count) => count == 0 ? null : new Filter(name, words, count);

    private static bool Asks(Matter matter, string trade) => matter.Trade == trade || matter.Questions.Any(question => question.Trade == trade);

    private static IReadOnlyList<string> Trades(IReadOnlyList<Matter> matters) => [.. matters.Select(matter => matter.Trade).Concat(matters.SelectMany(matter => matter.Questions).Select(question => question.Trade)).Where(trade => trade.Length > 0).Distinct().Order(StringComparer.Ordinal)];

    private static IReadOnlyList<string> Places(IReadOnlyList<Matter> matters) => [.. matters.SelectMany(matter => matter.Places).Distinct()];
}
