using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Purlin.Journal;

namespace Purlin.Reckoning.Air.Plate;

/// <summary>
/// The date of manufacture: read where it is printed, otherwise at most inferred from four digits at the head of the serial number as
/// year and week. No maker's private code is known here.
/// </summary>
internal static partial class PlateDate
{
    // Refrigeration and heating plates of houses still standing (common practice).
    private const int OldestYear = 1950;
    private const int LatestYear = 2100;

    private static readonly string[] Months = ["JAN", "FEB", "MAR", "APR", "MAY", "JUN", "JUL", "AUG", "SEP", "OCT", "NOV", "DEC"];

    internal static PlateField? Find(PlateText text, string? serial, int? yearNow)
    {
        foreach (var segment in text.Behind("date"))
            if (Read(segment, yearNow) is { } printed) return printed;
        return serial is null ? null : FromSerial(serial, yearNow ?? LatestYear);
    }

    private static PlateField? Read(string segment, int? yearNow)
    {
        var latest = yearNow ?? LatestYear;
        var head = Head().Match(segment).Groups["head"].Value.Trim();
        if (Named().Match(head) is { Success: true } named)
            return Field(Year(named.Groups["year"].Value, latest), Array.IndexOf(Months, named.Groups["month"].Value)
                + 1, latest, head, false, named.Groups["year"].Length == 2);
        var digits = PlateNumber.Digits(head);
        var mended = digits != head;
        if (YearFirst().Match(digits) is { Success: true } first)
            return Field(Number(first, "year"), Number(first, "month"), latest, head, mended, false);
        if (MonthDayYear().Match(digits) is { Success: true } full)
            return Field(Number(full, "year"), Number(full, "month"), latest, head, mended, false);
        if (MonthYear().Match(digits) is { Success: true } month)
            return Field(Number(month, "year"), Number(month, "month"), latest, head, mended, false);
        if (MonthShortYear().Match(digits) is { Success: true } brief)
            return Field(Year(brief.Groups["year"].Value, latest), Number(brief, "month"), latest, head, mended, true);
        if (FourDigits().Match(digits) is not { Success: true } four) return null;
        var year = Number(four, "year");
        if (year >= OldestYear && year <= latest) return Field(year, 0, latest, head, mended, false);
        return YearAndWeek(four.Groups["year"].Value, latest, head, "label");
    }

    private static PlateField? FromSerial(string serial, int latest) =>
        SerialHead().Match(serial) is { Success: true } match ? YearAndWeek(match.Groups["four"].Value, latest, serial, "serial") : null;

    private static PlateField? YearAndWeek(string four, int latest, string asRead, string where)
    {
        // Without the year of the inspection a two-digit year is taken to lie before 2030.
        var bound = Math.Min(latest, 2029);
        (int Year, int Week) first = (Year(four[..2], bound), int.Parse(four[2..], CultureInfo.InvariantCulture));
        (int Year, int Week) second = (Year(four[2..], bound), int.Parse(four[..2], CultureInfo.InvariantCulture));
        bool Stands((int Year, int Week) date) => date.Week is >= 1 and <= 53 && date.Year >= 1980 && date.Year <= bound;
        if (!Stands(first)) return null;
        var other = Stands(second) && second.Year != first.Year ? $"{second.Year}" : "";
        Said reason = new("nameplate.reason.year-and-week", ("digits", four), ("where", where), ("week", first.Week), ("other", other));
        return new PlateField(JsonValue.Create($"{first.Year}"), "", "inferred", reason, asRead);
    }

    private static PlateField? Field(int year, int month, int latest, string asRead, bool mended, bool brief)
    {
        if (year < OldestYear || year > latest || month is < 0 or > 12) return null;
        var value = month == 0 ? $"{year}" : $"{year}-{month:00}";
        if (brief) return new PlateField(JsonValue.Create(value), "", "inferred", "nameplate.reason.date.brief", asRead);
        return new PlateField(JsonValue.Create(value), "", mended
            ? "mended" : "clear", mended ? "nameplate.reason.date.mended" : "nameplate.reason.date", asRead);
    }

    private static int Number(Match match, string group) => int.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture);

    private static int Year(string digits, int latest)
    {
        var year = int.Parse(digits, CultureInfo.InvariantCulture);
        if (digits.Length == 4) return year;
        return 2000 + year <= Math.Min(latest, 2029) ? 2000 + year : 1900 + year;
    }

    [GeneratedRegex(@"^[\s:;.,#=-]{0,12}(?<head>[A-Z0-9|][A-Z0-9|/., -]{0,20})",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Head();

    [GeneratedRegex(@"^(?:[0-9]{1,2}[ -])?(?<month>JAN|FEB|MAR|APR|MAY|JUN|JUL|AUG|SEP|OCT|NOV|DEC)[A-Z]{0,6}[ .,/-]*(?<year>[0-9]{4}|[0-9]{2})(?![0-9])", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Named();

    [GeneratedRegex(@"^(?<year>[0-9]{4})[ ./-](?<month>[0-9]{1,2})(?![0-9])", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 1000)]
    private static partial Regex YearFirst();

    [GeneratedRegex(@"^(?<month>[0-9]{1,2})[ ./-](?:[0-9]{1,2})[ ./-](?<year>[0-9]{4})(?![0-9])",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex MonthDayYear();

    [GeneratedRegex(@"^(?<month>[0-9]{1,2})[ ./-]+(?<year>[0-9]{4})(?![0-9])", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 1000)]
    private static partial Regex MonthYear();

    [GeneratedRegex(@"^(?<month>[0-9]{1,2})[/-](?<year>[0-9]{2})(?![0-9/-])", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 1000)]
    private static partial Regex MonthShortYear();

    [GeneratedRegex(@"^(?<year>[0-9]{4})(?![0-9])", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 1000)]
    private static partial Regex FourDigits();

    [GeneratedRegex(@"^(?<four>[0-9]{4})[A-Z0-9]{4,}", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 1000)]
    private static partial Regex SerialHead();
}
