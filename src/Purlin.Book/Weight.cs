namespace Purlin.Book;

/// <summary>How much a finding matters, worked out from consequence, spread and timing. The heaviest has the highest number of bars.</summary>
public enum Weight
{
    /// <summary>No action; so that it is no surprise. One bar.</summary>
    KnowAbout = 1,

    /// <summary>Upkeep. Two bars.</summary>
    KeepUp = 2,

    /// <summary>A defect to repair in the ordinary course. Three bars.</summary>
    PutRight = 3,

    /// <summary>Damage is under way or close; settle it before buying. Four bars.</summary>
    ActNow = 4,

    /// <summary>Someone can be hurt. Five bars and the accent.</summary>
    MakeSafe = 5,
}

/// <summary>Words of the five weights.</summary>
public static class WeightWords
{
    /// <summary>All five, heaviest first.</summary>
    public static IReadOnlyList<Weight> HeaviestFirst { get; } = [Weight.MakeSafe, Weight.ActNow, Weight.PutRight, Weight.KeepUp, Weight.KnowAbout];

    /// <summary>The word as screens, pages, journals and JSON have it: <c>make safe</c>, <c>act now</c>, ...</summary>
    public static string Word(this Weight weight) => weight switch
    {
        Weight.MakeSafe => "make safe",
        Weight.ActNow => "act now",
        Weight.PutRight => "put right",
        Weight.KeepUp => "keep up",
        Weight.KnowAbout => "know about",
        _ => throw new ArgumentOutOfRangeException(nameof(weight), weight, "one of the five weights"),
    };

    /// <summary>Reads a weight's word.</summary>
    public static bool TryRead(string? word, out Weight weight)
    {
        foreach (var candidate in HeaviestFirst)
        {
            weight = candidate;
            if (candidate.Word() == word) return true;
        }
        weight = Weight.KnowAbout;
        return false;
    }
}
