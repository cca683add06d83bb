using System.Globalization;
using Purlin.Journal.Fold;
using Purlin.Book;

namespace Purlin.Judgement.Duties;

/// <summary>Days as facts write them, as sentences say them, and as settings count them.</summary>
internal static class VisitDays
{
    /// <summary>Years ahead that a setting may count: beyond that a number is a slip of the pen.</summary>
    private const int Most = 1_000;

    public static DateOnly? Read(string text) =>
        DateOnly.TryParseExact(text.Trim(), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : null;

    /// <summary>The day on which an edition was sealed, as the office's clock had it.</summary>
    public static DateOnly Of(SealedEdition edition) => new(edition.Body.At.Year, edition.Body.At.Month, edition.Body.At.Day);

    public static string Say(DateOnly day) => day.ToString("MMMM d, yyyy", CultureInfo.InvariantCulture);

    /// <summary>The last day of the time that a setting gives; none when it is no time. The day it is counted from is not counted.</summary>
    public static DateOnly? After(DateOnly from, Setting setting)
    {
        if (!int.TryParse(setting.Value, NumberStyles.None, CultureInfo.InvariantCulture, out var count) || count > Most || from.Year + Most > DateOnly.MaxValue.Year) return null;
        return setting.Unit switch
        {
            "day" or "days" => from.AddDays(count),
            "business day" or "business days" => BusinessDays.After(from, count),
            "month" or "months" => from.AddMonths(count),
            "year" or "years" => from.AddYears(count),
            _ => null,
        };
    }

    public static bool IsInBusinessDays(Setting setting) => setting.Unit.StartsWith("business", StringComparison.Ordinal);
}
