namespace Purlin.Book;

/// <summary>
/// The name of a duty: the standard and its section, or the thing of the common core that several standards ask for. Written
/// <c>washington:308-408C-080(1)(a)</c>, <c>core:S-01</c>. Closing one of the core by hand closes it for every standard.
/// </summary>
/// <param name="Standard">Id of the standard, or <c>core</c>.</param>
/// <param name="Section">Section as the standard has it, or id in the core.</param>
public readonly record struct DutyId(string Standard, string Section)
{
    private const string CoreName = "core";

    /// <summary>Whether it is a thing of the common core.</summary>
    public bool IsCore => Standard == CoreName;

    /// <summary>A thing of the common core, or a duty around the visit.</summary>
    public static DutyId OfCore(string id) => new(CoreName, id);

    /// <summary>Reads what <see cref="ToString"/> wrote.</summary>
    /// <exception cref="FormatException">The text has no colon.</exception>
    public static DutyId Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        // Ids of standards have no colon; sections may.
        return text.Split(':', 2) is [{ Length: > 0 } standard, { Length: > 0 } section]
            ? new DutyId(standard, section)
            : throw new FormatException($"'{text}' is not a duty like washington:308-408C-080(1)(a) or core:S-01");
    }

    /// <inheritdoc/>
    public override string ToString() => $"{Standard}:{Section}";
}
