using Purlin.Book;

namespace Purlin.Field.MyWording;

/// <summary>One line of a file of wording beside what stands here.</summary>
/// <param name="Key">Key of the sentence, or id of the condition.</param>
/// <param name="About">What it is about, in words.</param>
/// <param name="Mine">What I say there; empty when it is new to me.</param>
/// <param name="Theirs">What the file says.</param>
public sealed record Brought(string Key, string About, string Mine, string Theirs)
{
    public bool IsNew => Mine.Length == 0;

    /// <summary>What a file would change: lines that say the same are not among them.</summary>
    public static IReadOnlyList<Brought> Of(Overlay file, Overlay mine)
    {
        var own = mine.Conditions.ToDictionary(condition => condition.Id, StringComparer.Ordinal);
        return
        [
            .. file.Sentences.OrderBy(line => line.Key, StringComparer.Ordinal).Select(line => new Brought(line.Key, AboutOf(line.Key), mine.Sentences.GetValueOrDefault(line.Key)?.Now ?? "", line.Value.Now)).Where(brought => brought.Mine != brought.Theirs),
            .. file.Conditions.OrderBy(condition => condition.Id, StringComparer.Ordinal).Where(condition => !own.TryGetValue(condition.Id, out var known) || !OwnWording.IsSame(known, condition))
                .Select(condition => new Brought(condition.Id, $"Own condition: {condition.Name}", own.TryGetValue(condition.Id, out var known) ? Said(known, condition) : "", Said(condition, known))),
        ];
    }

    /// <summary>The part of a file that was chosen.</summary>
    public static Overlay Chosen(Overlay file, IReadOnlySet<string> keys) => file with
    {
        Sentences = file.Sentences.Where(line => keys.Contains(line.Key)).ToDictionary(line => line.Key, line => line.Value, StringComparer.Ordinal),
        Conditions = [.. file.Conditions.Where(condition => keys.Contains(condition.Id))],
    };

    private static string AboutOf(string key) => Sentence.Of(RuleBook.BuiltIn, key) is { } sentence ? $"{sentence.About}: {sentence.Part}" : $"{key}: the rule book has no such sentence";

    /// <summary>What a condition says where another one of the same id says otherwise; its heading and meaning where there is none.</summary>
    private static string Said(Condition one, Condition? other)
    {
        if (other is null) return $"{one.Name}. {one.Means} {one.Do}";
        var says = Sentences.Of(other with { Own = false }).ToDictionary(sentence => sentence.Key, sentence => sentence.Text, StringComparer.Ordinal);
        List<string> parts = [.. Sentences.Of(one with { Own = false }).Where(sentence => says.GetValueOrDefault(sentence.Key) != sentence.Text).Select(sentence => $"{sentence.Part}: {sentence.Text}")];
        if (parts.Count == 0) parts.Add($"looked for in {string.Join(", ", one.Places)}; {one.Weight.Consequence.Word()}, {one.Weight.Timing.Word()}");
        return string.Join('\n', parts);
    }
}
