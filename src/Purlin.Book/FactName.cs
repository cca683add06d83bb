namespace Purlin.Book;

/// <summary>A fact as rules name it: <c>water heater/year</c>, or <c>year</c> alone where the component is understood.</summary>
/// <param name="Kind">Kind of component; none where it is understood.</param>
/// <param name="Fact">Name of the fact.</param>
public readonly record struct FactName(string? Kind, string Fact)
{
    private const char Between = '/';

    /// <summary>Reads what <see cref="ToString"/> wrote. Any text is a name; the fact is what stands behind the last slash.</summary>
    public static FactName Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var at = text.LastIndexOf(Between);
        return at < 0 ? new FactName(null, text) : new FactName(text[..at], text[(at + 1)..]);
    }

    /// <inheritdoc/>
    public override string ToString() => Kind is null ? Fact : $"{Kind}{Between}{Fact}";
}
