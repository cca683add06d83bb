using Purlin.Journal;

namespace Purlin.Book;

/// <summary>What every line of the book must keep to: known words, and references that lead somewhere.</summary>
internal static class BookCheck
{
    internal static readonly string[] Consequences = ["injury", "damage", "function", "upkeep", "none"];
    internal static readonly string[] Timings = ["now", "soon", "later"];
    internal static readonly string[] Lifts = ["raise", "same"];
    internal static readonly string[] Needs = ["any", "all"];
    internal static readonly string[] Closes = ["program", "fact", "date", "word"];
    internal static readonly string[] Uses = ["limit", "date", "sample", "shown"];
    internal static readonly string[] Verbs = ["inspect", "describe", "report", "operate", "must-state-limitation", "not-required"];
    internal static readonly string[] Coverages = ["always", "if agreed", "report rule", "none"];
    internal static readonly string[] Withins = ["house", "place"];
    internal static readonly string[] Bywhens = [.. ByWhenWords.SoonestFirst.Select(by => by.Word())];
    internal static readonly string[] Weights = [.. WeightWords.HeaviestFirst.Select(weight => weight.Word())];
    internal static readonly string[] Bys = ["set", "component", "place", "house", "reading"];

    /// <summary>Words of one condition that must come from a closed list.</summary>
    public static void Words(string path, Condition condition, Action<string, string, string> refuse)
    {
        var line = $"{path}: {condition.Id}";
        OneOf(line + " weight.consequence", condition.Weight.Consequence, Consequences, refuse);
        OneOf(line + " weight.timing", condition.Weight.Timing, Timings, refuse);
        OneOf(line + " weight.several", condition.Weight.Several, Lifts, refuse);
        OneOf(line + " weight.throughout", condition.Weight.Throughout, Lifts, refuse);
        OneOf(line + " trade", condition.Trade, Trades.All, refuse);
        foreach (var place in condition.Places) OneOf(line + " places", place, PlaceKind.All, refuse);
        foreach (var follow in condition.Look)
        {
            OneOf($"{line} look {follow.Id} need", follow.Need, Needs, refuse);
            OneOf($"{line} look {follow.Id} trade", follow.Trade, Trades.All, refuse);
            foreach (var place in follow.In) OneOf($"{line} look {follow.Id} in", place, PlaceKind.All, refuse);
        }
    }

    /// <summary>References between lines, once all files are read.</summary>
    public static void References(BookDraft draft) => new BookReferences(draft).Check();

    internal static void OneOf(string line, string given, IReadOnlyList<string> allowed, Action<string, string, string> refuse)
    {
        if (!allowed.Contains(given)) refuse(line, given, Nearest.InWords(given, allowed, "word"));
    }
}
