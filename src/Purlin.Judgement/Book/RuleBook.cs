using Purlin.Journal;

namespace Purlin.Judgement.Book;

/// <summary>All knowledge as typed rules, read from <c>rulebook/</c>; a rule without a source is refused.</summary>
public sealed record RuleBook
{
    /// <summary>Edition, year and month and a counter: <c>2026.11.1</c>.</summary>
    public required string Edition { get; init; }

    /// <summary>The rule book built into this program.</summary>
    public static RuleBook BuiltIn { get; } = Load().OrThrow();

    private static Checked<RuleBook> Load() => new RuleBook { Edition = "2026.11.1" };
}
