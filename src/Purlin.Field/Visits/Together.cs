using Purlin.Journal;

namespace Purlin.Field.Visits;

/// <summary>Names that entries written in one transaction use for one another before the device has given them their own.</summary>
public static class Together
{
    /// <summary>The first entry of the same write.</summary>
    public static EntryName First { get; } = Nth(1);

    /// <summary>An entry of the same write, counted from 1.</summary>
    public static EntryName Nth(int number) => new("writtentogether", number);
}
