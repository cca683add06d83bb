namespace Purlin.Book.Naming;

/// <summary>
/// A name of the book, and what inspectors write for it: <c>panelboard</c> is also a breaker box. What only differs in case, lines or
/// number needs no synonym.
/// </summary>
public sealed record Synonym
{
    /// <summary>What is named.</summary>
    public required Named Of { get; init; }

    /// <summary>The name as the book has it; none for a filler.</summary>
    public string Means { get => field ?? ""; init; }

    /// <summary>What is written for it.</summary>
    public required IReadOnlyList<string> Said { get; init; }

    /// <summary>Kinds of component on which it means that; empty for all. For facts and values.</summary>
    public IReadOnlyList<string> Components { get => field ?? []; init; }

    /// <summary>The fact whose value it is.</summary>
    public string Fact { get => field ?? ""; init; }
}
