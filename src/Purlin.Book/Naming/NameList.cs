using Purlin.Journal;

namespace Purlin.Book.Naming;

/// <summary>The names of one kind that the book knows, and how what people write is found among them.</summary>
internal sealed class NameList
{
    // Below five letters one slip makes another word of almost any.
    private const int Shortest = 5;
    private const int Long = 9;
    private const int MostNearest = 3;
    private const int MostAllowed = 20;

    private readonly HashSet<string> known;
    private readonly Dictionary<string, string> folded = new(StringComparer.Ordinal);
    private readonly Func<string, string> reduce;

    /// <summary>Lays out names and synonyms.</summary>
    /// <param name="names">Names as the book has them; of two that differ in nothing but their form the first is taken.</param>
    /// <param name="synonyms">What is written, and the name that it means.</param>
    /// <param name="reduced">Takes from words what tells nothing; none where every word counts.</param>
    public NameList(IEnumerable<string> names, IEnumerable<(string Said, string Means)> synonyms, Func<string, string>? reduced = null)
    {
        List<string> all = [.. names];
        known = new HashSet<string>(all, StringComparer.Ordinal);
        reduce = reduced ?? Fold;
        foreach (var name in all) folded.TryAdd(Fold(name), name);
        foreach (var (said, means) in synonyms)
            if (known.Contains(means)) folded.TryAdd(Fold(said), means);
        // What has neither letter nor digit says nothing.
        folded.Remove("");
        if (reduced is null) return;
        foreach (var (form, name) in folded.ToList()) folded.TryAdd(reduced(form), name);
    }

    /// <summary>Every name.</summary>
    public IReadOnlyCollection<string> Names => known;

    /// <summary>What a name means.</summary>
    public Meant Find(string given)
    {
        if (known.Contains(given)) return Meant.AsWritten(given);
        var form = Fold(given);
        if (folded.TryGetValue(form, out var same) || folded.TryGetValue(reduce(form), out same)) return new Meant(same, Found.Same, []);
        var near = Nearest.Ranked(form, folded.Keys).Select(pair => (Name: folded[pair.Word], pair.Wrong)).DistinctBy(pair =>
            pair.Name).ToList();
        IReadOnlyList<string> names = near.Count > 0 ? [.. near.Take(MostNearest).Select(pair => pair.Name)] : Sharing(form);
        if (near is [var first, ..] && IsSlip(form, first.Wrong) && (near.Count == 1 || near[1].Wrong > first.Wrong + 1))
            return new Meant(first.Name, Found.Slip, names);
        IReadOnlyList<string> allowed = names.Count == 0 && known.Count <= MostAllowed ? [.. known.Order(StringComparer.Ordinal)] : [];
        return new Meant(given, Found.Unknown, names) { Allowed = allowed };
    }

    /// <summary>Names that share their last long word with what was written: another thing may have the same fault.</summary>
    private IReadOnlyList<string> Sharing(string form) =>
        form.Split(' ').LastOrDefault(word => word.Length >= Shortest) is { } telling
            ? [.. folded.Where(line => line.Key.Split(' ').Contains(telling)).Select(line => line.Value).Distinct(StringComparer.Ordinal)
                .Take(MostNearest)] : [];

    /// <summary>A figure is never a slip: R-22 is not R-32, nor a 2x6 a 2x8.</summary>
    private static bool IsSlip(string form, int wrong) => form.Length >= Shortest && wrong <= (form.Length >= Long ? 2 : 1)
        && !form.Any(char.IsDigit);

    /// <summary>Lower case, one space for all that is no letter or digit, no plural.</summary>
    public static string Fold(string text)
    {
        Span<char> plain = stackalloc char[Math.Min(text.Length, 256)];
        for (var at = 0; at < plain.Length; at++) plain[at] = char.IsLetterOrDigit(text[at]) || text[at] is '%' or '/'
            ? char.ToLowerInvariant(text[at]) : ' ';
        return string.Join(' ', plain.ToString().Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(One));
    }

    private static string One(string word) => word.Length > 3 && word[^1] == 's' && word[^2] is not 's' and not 'u' ? word[..^1] : word;
}
