namespace Purlin.Hearing.Figures;

/// <summary>
/// Finds the figures in what was said, with their units: "eleven foot four", "an inch and a half", "three quarters of an inch".
/// </summary>
internal static class FigureReader
{
    public static List<Figure> In(List<string> texts)
    {
        List<Figure> found = [];
        for (var at = 0; at < texts.Count; at++)
        {
            if (At(texts, at) is not { } figure) continue;
            found.Add(figure);
            at = figure.End - 1;
        }
        return found;
    }

    private static Figure? At(List<string> texts, int at)
    {
        if (NumberWords.At(texts, at) is not var (value, end)) return Article(texts, at);
        var isPercent = texts[at].EndsWith('%');
        var next = end < texts.Count && texts[end] == "of" ? end + 1 : end;
        if (next < texts.Count && next > end && texts[next] is "a" or "an") next++;
        if (SpokenUnits.At(texts, next) is var (unit, taken)) return Longer(texts, new Figure(at, next + taken, value, unit));
        return IsCount(texts, at, end, value) ? null : new Figure(at, end, value, isPercent ? SpokenUnits.Percent : null);
    }

    /// <summary>"an inch and a half", "inch and a quarter", "a foot".</summary>
    private static Figure? Article(List<string> texts, int at)
    {
        var unitAt = texts[at] is "a" or "an" ? at + 1 : at;
        if (unitAt >= texts.Count || texts[unitAt] is not ("inch" or "foot")) return null;
        var unit = texts[unitAt] == "inch" ? SpokenUnits.Inch : SpokenUnits.Foot;
        var figure = Longer(texts, new Figure(at, unitAt + 1, 1, unit));
        return unitAt > at || figure.End > unitAt + 1 ? figure : null;
    }

    /// <summary>What follows a unit and belongs to it: "four feet three", "an inch and a half".</summary>
    private static Figure Longer(List<string> texts, Figure figure)
    {
        var (value, end) = (figure.Value, figure.End);
        if (figure.Unit is SpokenUnits.Inch or SpokenUnits.Foot && end < texts.Count && texts[end] == "and"
            && NumberWords.Part(texts, end + 1) is var (part, after)) (value, end) = (value + part, after);
        else if (figure.Unit == SpokenUnits.Foot && NumberWords.At(texts, end) is var (inches, behind) && inches is > 0 and < 12)
        {
            (value, end) = (value + (inches / 12), behind);
            if (end < texts.Count && texts[end] is "inch" or "inches") end++;
        }
        return figure with { Value = value, End = end };
    }

    /// <summary>A small number with no unit counts things more often than it measures them.</summary>
    private static bool IsCount(List<string> texts, int at, int end, double value) => end == at + 1 && value < 5 && value % 1 == 0
        && !char.IsAsciiDigit(texts[at][0]);
}
