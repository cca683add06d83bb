using Purlin.Journal.Fold;

namespace Purlin.Field.Editions;

/// <summary>Where an edition is shown, and what its file is called.</summary>
public static class EditionAddress
{
    /// <summary>Its screen.</summary>
    public static string Of(string inspection, int number) => $"/visit/{inspection}/edition/{number}";

    /// <summary>A name that says what it is to whoever receives it: the house, the day, the edition.</summary>
    public static string FileName(Inspection inspection, int number)
    {
        var address = inspection.Opening?.Body.Property.Address ?? "inspection";
        var plain = string.Concat(address.Select(letter => char.IsAsciiLetterOrDigit(letter) ? char.ToLowerInvariant(letter) : '-'));
        while (plain.Contains("--", StringComparison.Ordinal)) plain = plain.Replace("--", "-", StringComparison.Ordinal);
        plain = plain.Trim('-');
        return $"{(plain.Length == 0 ? "inspection" : plain.Length > 60 ? plain[..60] : plain)}-{inspection.Opening?.Body.Date:yyyy-MM-dd}-edition-{number}";
    }
}
