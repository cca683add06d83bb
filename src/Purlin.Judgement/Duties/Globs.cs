namespace Purlin.Judgement.Duties;

/// <summary>Matches ids against patterns in which <c>*</c> stands for any letters.</summary>
internal static class Globs
{
    public static bool Matches(ReadOnlySpan<char> pattern, ReadOnlySpan<char> text)
    {
        var star = pattern.IndexOf('*');
        if (star < 0) return pattern.SequenceEqual(text);
        if (!text.StartsWith(pattern[..star])) return false;
        var rest = pattern[(star + 1)..];
        if (rest.IsEmpty) return true;
        for (var from = star; from <= text.Length; from++)
            if (Matches(rest, text[from..])) return true;
        return false;
    }
}
