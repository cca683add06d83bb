namespace Purlin.Book;

/// <summary>Every sentence of a book that reaches a person: the inspector on site, or whoever reads the report.</summary>
public static partial class Sentences
{
    private const string Wordings = "how things are said";

    private static readonly string[] Screens = ["language.", "unit.", "field.", "cli."];

    /// <summary>All of them, in no particular order.</summary>
    public static IEnumerable<Sentence> In(RuleBook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        return book.Conditions.Values.SelectMany(Of)
            .Concat(book.Limitations.Values.SelectMany(Of))
            .Concat(book.Causes.SelectMany(Of))
            .Concat(book.Escalations.SelectMany(rule => Of(rule, book)))
            .Concat(book.Profiles.SelectMany(Of))
            .Concat(book.Cautions.Select(line => OfCaution(line.Key, line.Value)))
            .Concat(book.Core.Values.SelectMany(Of))
            .Concat(book.Standards.Values.SelectMany(Of))
            .Concat(book.Visit.SelectMany(Of))
            .Concat(book.Settings.Values.SelectMany(Of))
            .Concat(book.ReadingKinds.Values.SelectMany(Of))
            .Concat(book.Feeds.SelectMany(Of))
            .Concat(book.FactRules.SelectMany(Of))
            .Concat(book.Words.Sentences.Where(line => IsForReaders(line.Key)).Select(line => OfWords(line.Key, line.Value)));
    }

    /// <summary>Whether a sentence reaches whoever reads the report: not the rules of the language, not the screens of the app.</summary>
    private static bool IsForReaders(string key) => !Screens.Any(prefix => key.StartsWith(prefix, StringComparison.Ordinal));

    /// <summary>
    /// The sentences that a judged matter is written from: the cause that leads it, its conditions, their cautions, and what makes it weigh
    /// more.
    /// </summary>
    public static IEnumerable<Sentence> Behind(RuleBook book, string leading, IReadOnlyList<string> grouped)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(grouped);
        List<Condition> conditions = [.. grouped.Prepend(leading).Select(book.Conditions.GetValueOrDefault).OfType<Condition>()];
        var causes = grouped.Count == 0 ? [] : book.Causes.Where(cause => cause.Conditions.Contains(leading));
        return causes.SelectMany(Of)
            .Concat(conditions.SelectMany(Of))
            .Concat(book.Escalations.Where(rule => rule.Condition == leading).SelectMany(rule => Of(rule, book)))
            .Concat(conditions.SelectMany(condition => condition.Cautions).Distinct(StringComparer.Ordinal).Where(book.Cautions.ContainsKey)
                .Select(caution => OfCaution(caution, book.Cautions[caution])));
    }

    /// <summary>
    /// The sentences of one condition. Those of one's own are not among them: a condition of one's own is written anew as a whole.
    /// </summary>
    public static IEnumerable<Sentence> Of(Condition condition)
    {
        ArgumentNullException.ThrowIfNull(condition);
        if (condition.Own) return [];
        return Said(condition.Id, condition.System, condition.Name,
        [
            ("name", "heading", condition.Name), ("signs", "how it is recognised", string.Join(Sentence.Between, condition.Signs)),
            ("means", "what it means", condition.Means),
            ("leads", "what it leads to", condition.Leads), ("clears", "what one sees when it is not there", condition.Clears),
            ("do", "what to do", condition.Do), ("trade", "by whom", condition.Trade),
            .. condition.Look.SelectMany(Of),
        ]);
    }

    /// <summary>The sentences of one limitation.</summary>
    public static IEnumerable<Sentence> Of(LimitationRule rule)
    {
        ArgumentNullException.ThrowIfNull(rule);
        return Said(rule.Id, "could not look", rule.What,
            [("what", "what was not looked at", rule.What), ("reasons", "usual reasons", string.Join(Sentence.Between, rule.Reasons)),
                ("next", "what should be done", rule.Next)]);
    }

    internal static IEnumerable<Sentence> Of(CauseRule cause) =>
        Said($"causes/{cause.Id}", "causes", cause.Title,
        [("title", "heading", cause.Title), ("means", "what it means", cause.Means), ("do", "what to do", cause.Do),
        ("trade", "by whom", cause.Trade)]);

    internal static IEnumerable<Sentence> Of(Escalation rule, RuleBook book) =>
        Said($"escalations/{rule.Id}", "causes", book.Conditions.TryGetValue(rule.Condition, out var condition)
        ? condition.Name : rule.Condition, [("because", "why it matters more together", rule.Because)]);

    internal static IEnumerable<Sentence> Of(Profile profile) =>
        Said($"profiles/{profile.Id}", "be alert to", profile.Title,
        [("title", "heading", profile.Title), ("reason", "why in such a house", profile.Reason), ("look", "where to look", profile.Look)]);

    internal static IEnumerable<Sentence> Of(CoreDuty core) =>
        Said($"core/{core.Id}", "duties", core.Name, [("name", "what it is about", core.Name), ("text", "what to look for", core.Text)]);

    internal static IEnumerable<Sentence> Of(Standard standard) =>
        standard.Duties.Select(duty => new Sentence($"duties/{standard.Id}/{duty.Id}", "duties", $"{standard.Title}, {duty.Id}", "the duty",
            duty.Text));

    internal static IEnumerable<Sentence> Of(VisitRule rule) => Said($"visit/{rule.Id}", "duties", rule.Name,
    [
        ("name", "what it is about", rule.Name), ("text", "what is asked", rule.Text), ("open", "what to do while it is open", rule.Open),
        ("where", "where it is done", rule.Where), ("day", "what to do by a day", rule.Date?.Words),
        .. rule.Facts.Select(fact => ($"ask/{fact.Name}", "the question", (string?)fact.Ask)),
    ]);

    internal static IEnumerable<Sentence> Of(SettingRule rule) =>
        Said($"settings/{rule.Id}", "duties", rule.Name, [("name", "what it sets", rule.Name)]);

    internal static IEnumerable<Sentence> Of(ReadingKind kind) =>
        Said($"readings/{kind.Kind}", "readings", kind.Kind, Becauses(kind.Raises));

    internal static IEnumerable<Sentence> Of(Feed feed) => Said($"feeds/{feed.Id}", "readings", feed.Id, Becauses(feed.Raises));

    internal static IEnumerable<Sentence> Of(FactRule rule) =>
        Said($"facts/{rule.Component}/{rule.Fact}", "readings", $"{rule.Component}, {rule.Fact}", Becauses([rule.Raise]));

    internal static Sentence OfWords(string key, string text) =>
        new($"words/{key}", Wordings, key.Replace('.', ' ').Replace('-', ' '), "the sentence", text);

    internal static Sentence OfCaution(string id, string text) =>
        new($"cautions/{id}", "cautions", id.Replace('-', ' '), "the caution", text);

    /// <summary>The part of a key under which a raise says why; a second one for the same condition is counted.</summary>
    internal static string PartOf(IReadOnlyList<Raise> raises, int index)
    {
        var before = raises.Take(index).Count(other => other.Condition == raises[index].Condition);
        return before == 0 ? raises[index].Condition : $"{raises[index].Condition}~{before + 1}";
    }

    private static IEnumerable<(string, string, string?)> Becauses(IReadOnlyList<Raise> raises) =>
        raises.Select((raise, index) => (PartOf(raises, index), "what the number says", raise.Because));

    private static IEnumerable<(string, string, string?)> Of(Follow follow) =>
        [($"look/{follow.Id}/ask", "what else to look at", follow.Ask), ($"look/{follow.Id}/refer", "how it is handed on", follow.Refer),
        ($"look/{follow.Id}/trade", "to whom it is handed", follow.Trade)];

    /// <summary>A part that the book leaves empty has no sentence to say otherwise.</summary>
    private static IEnumerable<Sentence> Said(string id, string group, string about,
        IEnumerable<(string Key, string Part, string? Text)> parts) =>
        parts.Where(part => !string.IsNullOrEmpty(part.Text))
        .Select(part => new Sentence($"{id}/{part.Key}", group, about, part.Part, part.Text!));
}
