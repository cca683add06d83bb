using System.Buffers;
using System.Text.Json;
using Purlin.Journal;

namespace Purlin.Book;

/// <summary>Conditions of the inspector's own: held to what the book holds its own lines to, with words that say what to change.</summary>
public static class OwnConditions
{
    /// <summary>What the id of each begins with.</summary>
    public const string Prefix = "own.";

    private static readonly SearchValues<char> IdLetters = SearchValues.Create("abcdefghijklmnopqrstuvwxyz0123456789-");

    /// <summary>The building systems one can belong to.</summary>
    public static IReadOnlyList<string> Systems { get; } = ["site", "exterior", "roof", "attic", "structure", "plumbing", "electrical",
        "heating", "cooling", "interior"];

    private const int IdCharacters = 64;
    private const int NameCharacters = 160;
    private const int MostQuestions = 12;

    /// <summary>Reads one as it travels in a journal or a file. Members that a newer program added are passed over.</summary>
    public static Checked<Condition> Read(JsonElement json)
    {
        try
        {
            if (Wrong(json) is { Count: > 0 } wrong) return Checked<Condition>.Refused(wrong);
            return json.Deserialize(OverlayJson.Default.Condition) is not { } own ? new Refusal("condition", "null", "an object")
                : Broken(own) is { Count: > 0 } refusals ? Checked<Condition>.Refused(refusals) : own;
        }
        catch (JsonException refused)
        {
            return new Refusal("condition", Short(refused.Message), "the members of a condition of the rule book");
        }
    }

    /// <summary>Words in it that its closed lists do not have; what else is wrong shows when it is read.</summary>
    internal static IReadOnlyList<Refusal> Wrong(JsonElement json) =>
        [.. BookMembers.WrongWords(json, OverlayJson.Default.Condition)
        .Select(one => new Refusal(one.Where, Short(one.Given), one.Allowed))];

    /// <summary>One as JSON, for a journal.</summary>
    public static JsonElement Write(Condition own) => JsonSerializer.SerializeToElement(own, OverlayJson.Default.Condition);

    /// <summary>An id made of the name, free among those taken.</summary>
    public static string IdFor(string name, IReadOnlySet<string> taken)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(taken);
        var slug = string.Join('-',
            new string([.. name.ToLowerInvariant().Select(letter => char.IsAsciiLetterOrDigit(letter) ? letter : ' ')])
            .Split(' ', StringSplitOptions.RemoveEmptyEntries));
        slug = slug.Length == 0 ? "condition" : slug.Length <= 48 ? slug : slug[..48].TrimEnd('-');
        for (var number = 1; ; number++)
        {
            var id = number == 1 ? Prefix + slug : $"{Prefix}{slug}-{number}";
            if (!taken.Contains(id)) return id;
        }
    }

    /// <summary>What keeps it from being judged at all; empty for a whole one.</summary>
    public static IReadOnlyList<Refusal> Broken(Condition own)
    {
        ArgumentNullException.ThrowIfNull(own);
        List<Refusal> refusals = [];
        if (!IsId(own.Id)) refusals.Add(new Refusal("id", Short(own.Id),
            $"{Prefix} and small letters, figures and hyphens, {IdCharacters} at most"));
        Filled("name", own.Name, NameCharacters);
        Filled("component", own.Component, NameCharacters);
        Filled("what it means", own.Means, Limits.SentenceCharacters);
        Filled("what to do", own.Do, Limits.SentenceCharacters);
        if (own.Leads.Length > Limits.SentenceCharacters)
            refusals.Add(new Refusal("what it leads to", $"{own.Leads.Length} characters", $"at most {Limits.SentenceCharacters}"));
        if (own.Places.Count == 0) refusals.Add(new Refusal("places", "none", "at least one kind of place where it is looked for"));
        if (own.Look.Count > MostQuestions) refusals.Add(new Refusal("questions", $"{own.Look.Count}", $"at most {MostQuestions}"));
        if (own.Look.Select(follow => follow.Id).Distinct(StringComparer.Ordinal).Count() != own.Look.Count)
            refusals.Add(new Refusal("questions", "two of one id", "an id of its own for each"));
        foreach (var follow in own.Look)
        {
            Filled("question", follow.Ask, Limits.SentenceCharacters);
            Filled("how a question is handed on", follow.Refer, Limits.SentenceCharacters);
            if (follow.Answers.Count + follow.Readings.Count + follow.Facts.Count == 0)
                refusals.Add(new Refusal("question", Short(follow.Ask), "something that answers it: a condition, a reading or a fact"));
        }
        if (!Systems.Contains(own.System))
            refusals.Add(new Refusal("system", own.System.Length == 0
                ? "nothing" : Short(own.System), $"one of {string.Join(", ", Systems)}"));
        Filled("by whom", own.Trade, NameCharacters, "one of the trades");
        // What is left empty was told already, without the whole list of what could stand there.
        BookCheck.Words("", own, (what, given, allowed) =>
        {
            if (given.Length > 0) refusals.Add(new Refusal(what[(what.IndexOf(own.Id, StringComparison.Ordinal) + own.Id.Length)..].Trim(),
                Short(given), allowed));
        });
        return refusals;

        void Filled(string what, string text, int most, string wanted = "words of yours")
        {
            if (string.IsNullOrWhiteSpace(text)) refusals.Add(new Refusal(what, "nothing", wanted));
            else if (text.Length > most) refusals.Add(new Refusal(what, $"{text.Length} characters", $"at most {most}"));
        }
    }

    /// <summary>What it points to that a book does not have: conditions that answer, cautions.</summary>
    public static IReadOnlyList<string> Dangling(Condition own, RuleBook book)
    {
        ArgumentNullException.ThrowIfNull(own);
        ArgumentNullException.ThrowIfNull(book);
        return
        [
            .. own.Look.SelectMany(follow => follow.Answers)
            .Where(answer => answer != own.Id && !answer.StartsWith(Prefix, StringComparison.Ordinal)
            && !book.Conditions.ContainsKey(answer)).Distinct(StringComparer.Ordinal),
            .. own.Cautions.Where(caution => !book.Cautions.ContainsKey(caution)),
        ];
    }

    private static bool IsId(string id) =>
        id.StartsWith(Prefix, StringComparison.Ordinal) && id.Length > Prefix.Length && id.Length <= IdCharacters
        && id.AsSpan(Prefix.Length).IndexOfAnyExcept(IdLetters) < 0;

    private static string Short(string text) => text.Length <= 80 ? text : text[..77] + "...";
}
