using System.Globalization;
using Purlin.Book;
using Purlin.Journal;
using Purlin.Reckoning;

namespace Purlin.Cli;

/// <summary>What a rule book knows, list by list: each thing by its id with a line on it.</summary>
internal static class BookListing
{
    private static readonly SortedDictionary<string, Func<RuleBook, IEnumerable<(string Id, string Words)>>> Lists = new(StringComparer.Ordinal)
    {
        ["causes"] = book => book.Causes.Select(cause => (cause.Id, cause.Title)),
        ["cautions"] = book => book.Cautions.Select(line => (line.Key, line.Value)),
        ["components"] = book => book.ComponentKinds().Select(kind => (kind, Count(book.ConditionsOf(kind).Length, "condition"))),
        ["conditions"] = book => book.Conditions.Values.Select(condition => (condition.Id, condition.Name)),
        ["core"] = book => book.Core.Values.Select(core => (core.Id, core.Name)).Concat(book.Visit.Select(rule => (rule.Id, rule.Name))),
        ["escalations"] = book => book.Escalations.Select(rule => (rule.Id, rule.Because)),
        ["facts"] = book => book.Sheets.Values.SelectMany(sheet => sheet.Facts.Select(fact => ($"{sheet.Component}/{fact.Fact}",
            Asked(fact)))),
        ["feeds"] = book => book.Feeds.Select(feed => (feed.Id, $"{feed.Reckoning}, for each {feed.By}")),
        ["limitations"] = book => book.Limitations.Values.Select(rule => (rule.Id, rule.What)),
        ["places"] = book => PlaceKind.All.Select(kind => (kind, Count(book.ConditionsIn(kind).Length, "condition"))),
        ["profiles"] = book => book.Profiles.Select(profile => (profile.Id, profile.Title)),
        ["readings"] = book => book.ReadingKinds.Values.Select(kind => (kind.Kind,
            $"{Number(kind.Least)} to {Number(kind.Most)} {kind.Unit}".TrimEnd())),
        ["reckonings"] = _ => Reckonings.All.Select(calculation => (calculation.Name, Terminal.Words.Say(calculation.Purpose))),
        ["settings"] = book => book.Settings.Values.Select(setting => (setting.Id, setting.Name)),
        ["sources"] = book => book.Sources.Select(line => (line.Key, line.Value.InWords())),
        ["standards"] = book =>
            book.Standards.Values.Select(standard => (standard.Id, $"{standard.Title}, {Count(standard.Duties.Count, "line")}")),
        ["trades"] = _ => Trades.All.Select(trade => (trade, "")),
    };

    /// <summary>Names of the lists.</summary>
    public static IEnumerable<string> Names => Lists.Keys;

    /// <summary>One list in the order of its ids; none when there is no such list.</summary>
    public static IReadOnlyList<(string Id, string Words)>? Of(RuleBook book, string name) =>
        Lists.TryGetValue(name, out var list) ? [.. list(book).OrderBy(line => line.Id, StringComparer.Ordinal)] : null;

    private static string Asked(FactKind fact) =>
        fact.Choices.Count > 0 ? string.Join(" | ", fact.Choices) : fact.Number ? $"a number {fact.Unit}".TrimEnd() : "words";

    private static string Count(int number, string what) => number == 1 ? $"1 {what}" : $"{number} {what}s";

    private static string Number(double number) => number.ToString("R", CultureInfo.InvariantCulture);
}
