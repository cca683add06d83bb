using Purlin.Journal;

namespace Purlin.Book;

/// <summary>What every line of the book must keep to: known words, and references that lead somewhere.</summary>
internal static class BookCheck
{
    /// <summary>Words of one condition that must come from a closed list.</summary>
    public static void Words(string path, Condition condition, Action<string, string, string> refuse)
    {
        var line = $"{path}: {condition.Id}";
        OneOf(line + " trade", condition.Trade, Trades.All, refuse);
        foreach (var place in condition.Places) OneOf(line + " places", place, PlaceKind.All, refuse);
        foreach (var follow in condition.Look)
        {
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
