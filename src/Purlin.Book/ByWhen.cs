namespace Purlin.Book;

/// <summary>When a matter wants doing. The most pressing has the lowest number.</summary>
public enum ByWhen
{
    /// <summary>Before anyone relies on it.</summary>
    Today = 1,

    /// <summary>While the buyer can still step back or ask for terms.</summary>
    BeforeBound = 2,

    /// <summary>Before the cold or wet season.</summary>
    BeforeWinter = 3,

    /// <summary>Within the year.</summary>
    WithinTheYear = 4,

    /// <summary>When somebody works there anyway.</summary>
    WhenNextWorkedOn = 5,
}

/// <summary>Words of the five.</summary>
public static class ByWhenWords
{
    /// <summary>All five, the most pressing first.</summary>
    public static IReadOnlyList<ByWhen> SoonestFirst { get; } = [ByWhen.Today, ByWhen.BeforeBound, ByWhen.BeforeWinter, ByWhen.WithinTheYear, ByWhen.WhenNextWorkedOn];

    /// <summary>The word as the rule book, journals and JSON have it: <c>today</c>, <c>before you are bound</c>, ...</summary>
    public static string Word(this ByWhen by) => by switch
    {
        ByWhen.Today => "today",
        ByWhen.BeforeBound => "before you are bound",
        ByWhen.BeforeWinter => "before winter",
        ByWhen.WithinTheYear => "within the year",
        ByWhen.WhenNextWorkedOn => "when it is next worked on",
        _ => throw new ArgumentOutOfRangeException(nameof(by), by, "one of the five"),
    };

    /// <summary>Reads a word.</summary>
    public static bool TryRead(string? word, out ByWhen by)
    {
        foreach (var candidate in SoonestFirst)
        {
            by = candidate;
            if (candidate.Word() == word) return true;
        }
        by = ByWhen.WhenNextWorkedOn;
        return false;
    }
}
