namespace Purlin.Judgement.Duties;

/// <summary>
/// Counts business days: Monday to Friday without the legal public holidays of 5 U.S.C. 6103. A holiday on a Saturday is kept on the Friday before
/// (6103(b)), one on a Sunday on the Monday after (Executive Order 11582). A state's own holidays are not counted: the rules at hand do not name them.
/// </summary>
internal static class BusinessDays
{
    /// <summary>The last of so many business days, the first of which comes after the day given.</summary>
    public static DateOnly After(DateOnly day, int count)
    {
        while (count > 0)
        {
            day = day.AddDays(1);
            if (Is(day)) count--;
        }
        return day;
    }

    /// <summary>Whether it is a business day.</summary>
    public static bool Is(DateOnly day) => day.DayOfWeek is not (DayOfWeek.Saturday or DayOfWeek.Sunday) && !IsHoliday(day);

    // New Year's Day is kept on the last day of the year before when it falls on a Saturday.
    private static bool IsHoliday(DateOnly day) => Fixed(day.Year).Append(new DateOnly(day.Year + 1, 1, 1)).Select(Kept).Concat(Moving(day.Year)).Contains(day);

    private static DateOnly[] Fixed(int year) =>
    [
        new(year, 1, 1), new(year, 6, 19), new(year, 7, 4), new(year, 11, 11), new(year, 12, 25),
    ];

    private static DateOnly[] Moving(int year) =>
    [
        Nth(3, DayOfWeek.Monday, year, 1), Nth(3, DayOfWeek.Monday, year, 2), Nth(1, DayOfWeek.Monday, year, 6).AddDays(-7),
        Nth(1, DayOfWeek.Monday, year, 9), Nth(2, DayOfWeek.Monday, year, 10), Nth(4, DayOfWeek.Thursday, year, 11),
    ];

    private static DateOnly Kept(DateOnly holiday) => holiday.DayOfWeek switch
    {
        DayOfWeek.Saturday => holiday.AddDays(-1),
        DayOfWeek.Sunday => holiday.AddDays(1),
        _ => holiday,
    };

    private static DateOnly Nth(int nth, DayOfWeek weekday, int year, int month)
    {
        DateOnly first = new(year, month, 1);
        return first.AddDays((weekday - first.DayOfWeek + 7) % 7 + 7 * (nth - 1));
    }
}
