namespace Purlin.Book;

/// <summary>A measure that a standard names.</summary>
public sealed record Threshold
{
    /// <summary>What is measured.</summary>
    public required string Measure { get; init; }

    /// <summary><c>above</c>, <c>below</c>, <c>equal</c>, <c>at_least</c>, <c>at_most</c>.</summary>
    public required string Comparison { get; init; }

    /// <summary>The value as words.</summary>
    public required string Value { get; init; }

    /// <summary>Its unit.</summary>
    public string Unit { get => field ?? ""; init; }

    /// <summary>
    /// <c>defect_when</c>, <c>exempt_when</c>, <c>required</c>, <c>applies_when</c>, <c>test_setup</c>, <c>reference</c>.
    /// </summary>
    public string Role { get => field ?? ""; init; }
}
