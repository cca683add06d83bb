using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using Purlin.Journal;

namespace Purlin.Book;

/// <summary>
/// Reads the files of a rule book. A line that cannot be read, has no source or points to something that is not there is refused with
/// file and id named; the rest of the book stands, since a phone in an attic must not be left without any rule because of one.
/// </summary>
public static class BookReader
{
    /// <summary>Edition of the built-in book.</summary>
    public const string Edition = "2026.11.1";

    /// <summary>Reads all files; what was refused is in <see cref="RuleBook.Refused"/>.</summary>
    public static RuleBook Read(IReadOnlyList<BookFile> files)
    {
        ArgumentNullException.ThrowIfNull(files);
        var draft = new BookDraft();
        foreach (var file in files.OrderBy(file => file.Path, StringComparer.Ordinal)) ReadFile(file, draft);
        BookCheck.References(draft);
        return draft.ToBook(Edition);
    }

    private static void ReadFile(BookFile file, BookDraft draft)
    {
        try
        {
            var folder = Folder(file.Path);
            if (folder == "conditions") ReadConditions(file, draft);
            else if (folder == "limitations") EachElement(file, draft, BookJson.Default.LimitationRule, rule => draft.Add(draft.Limitations, rule.Id, rule, file, rule.Sources));
            else if (folder == "profiles") EachElement(file, draft, BookJson.Default.Profile, rule => draft.Add(draft.Profiles, rule.Id, rule, file, rule.Sources));
            else if (folder == "sources") EachMember(file, draft, BookJson.Default.SourceLine, (id, source) => draft.AddSource(id, source, file));
            else if (folder == "words") ReadWords(file, draft);
            else if (folder == "readings") ReadReadings(file, draft);
            else if (folder == "causes") ReadCauses(file, draft);
            else if (folder == "looking") ReadLooking(file, draft);
            else if (folder == "duties") ReadDuties(file, draft);
            else if (folder == "by-when") EachElement(file, draft, BookJson.Default.ByWhenRule, rule => draft.Add(draft.ByWhen, rule.Id, rule, file, rule.Sources));
        }
        catch (JsonException refused)
        {
            draft.Refuse(file.Path, Short(refused.Message), "JSON of the form described in docs/adding-a-condition.md");
        }
    }

    private static string Folder(string path)
    {
        var parts = path.Split('/');
        return parts.Length > 2 ? parts[1] : "";
    }

    private static void ReadConditions(BookFile file, BookDraft draft)
    {
        var read = JsonSerializer.Deserialize(file.Bytes.Span, BookJson.Default.ConditionFile)!;
        foreach (var element in read.Conditions)
        {
            if (TryRead(file, draft, element, BookJson.Default.Condition) is not { } condition) continue;
            var whole = condition with { Component = read.Component, System = read.System };
            draft.Add(draft.Conditions, whole.Id, whole, file, whole.Sources);
            BookCheck.Words(file.Path, whole, draft.Refuse);
        }
    }

    private static void ReadReadings(BookFile file, BookDraft draft)
    {
        var read = JsonSerializer.Deserialize(file.Bytes.Span, BookJson.Default.ReadingFile)!;
        foreach (var element in read.Kinds)
            if (TryRead(file, draft, element, BookJson.Default.ReadingKind) is { } kind) draft.Add(draft.ReadingKinds, kind.Kind, kind, file, kind.Sources);
        foreach (var element in read.Feeds)
            if (TryRead(file, draft, element, BookJson.Default.Feed) is { } feed) draft.Add(draft.Feeds, feed.Id, feed, file, feed.Sources);
        foreach (var element in read.Facts)
            if (TryRead(file, draft, element, BookJson.Default.FactRule) is { } rule) draft.Add(draft.FactRules, $"{rule.Component}/{rule.Fact} {rule.Raise.Condition}", rule, file, rule.Sources);
        foreach (var element in read.Sheets)
            if (TryRead(file, draft, element, BookJson.Default.FactSheet) is { } sheet) draft.Add(draft.Sheets, sheet.Component, sheet, file, sheet.Sources);
        foreach (var (name, alias) in read.Aliases) draft.Aliases[name] = alias;
    }

    private static void ReadLooking(BookFile file, BookDraft draft)
    {
        var read = JsonSerializer.Deserialize(file.Bytes.Span, BookJson.Default.LookingFile)!;
        foreach (var usual in read.Usual) draft.Add(draft.Usual, usual.Place, usual, file, usual.Sources);
        foreach (var often in read.Often) draft.Add(draft.Often, often.Condition, often, file, null);
        foreach (var fit in read.Fits) draft.Fits.Add((fit, file.Path));
    }

    private static void ReadCauses(BookFile file, BookDraft draft)
    {
        var read = JsonSerializer.Deserialize(file.Bytes.Span, BookJson.Default.CauseFile)!;
        foreach (var element in read.Causes)
            if (TryRead(file, draft, element, BookJson.Default.CauseRule) is { } cause) draft.Add(draft.Causes, cause.Id, cause, file, cause.Sources);
        foreach (var element in read.Escalations)
            if (TryRead(file, draft, element, BookJson.Default.Escalation) is { } rule) draft.Add(draft.Escalations, rule.Id, rule, file, rule.Sources);
    }

    /// <summary>A standard is its own source: document, section and edition stand in it.</summary>
    private static void ReadDuties(BookFile file, BookDraft draft)
    {
        if (file.Path.EndsWith("/core.json", StringComparison.Ordinal))
        {
            foreach (var element in JsonSerializer.Deserialize(file.Bytes.Span, BookJson.Default.CoreFile)!.Core)
                if (TryRead(file, draft, element, BookJson.Default.CoreDuty) is { } core) draft.Add(draft.Core, core.Id, core, file, null);
            return;
        }
        if (file.Path.EndsWith("/visit.json", StringComparison.Ordinal))
        {
            foreach (var element in JsonSerializer.Deserialize(file.Bytes.Span, BookJson.Default.VisitFile)!.Visit)
                if (TryRead(file, draft, element, BookJson.Default.VisitRule) is { } rule) draft.Add(draft.Visit, rule.Id, rule, file, null);
            return;
        }
        if (file.Path.EndsWith("/settings.json", StringComparison.Ordinal))
        {
            foreach (var element in JsonSerializer.Deserialize(file.Bytes.Span, BookJson.Default.SettingFile)!.Settings)
                if (TryRead(file, draft, element, BookJson.Default.SettingRule) is { } rule) draft.Add(draft.Settings, rule.Id, rule, file, null);
            return;
        }
        var standard = JsonSerializer.Deserialize(file.Bytes.Span, BookJson.Default.Standard)!;
        draft.Add(draft.Standards, standard.Id, standard, file, null);
    }

    private static void ReadWords(BookFile file, BookDraft draft)
    {
        if (file.Path.EndsWith("/cautions.json", StringComparison.Ordinal)) Fill(draft.Cautions);
        else if (file.Path.EndsWith("/told-apart.json", StringComparison.Ordinal))
            draft.ToldApart.UnionWith(JsonSerializer.Deserialize(file.Bytes.Span, BookJson.Default.StringArray)!);
        else if (file.Path.StartsWith($"rulebook/words/{Tongue.Standard}/", StringComparison.Ordinal)) Fill(draft.Sentences);
        else if (file.Path.EndsWith("/spoken.json", StringComparison.Ordinal)) Fill(draft.SameWords);
        else if (file.Path.EndsWith("/misheard.json", StringComparison.Ordinal)) Fill(draft.Misheard);
        else if (file.Path.EndsWith("/filler.json", StringComparison.Ordinal))
            draft.FillerWords.UnionWith(JsonSerializer.Deserialize(file.Bytes.Span, BookJson.Default.StringArray)!);

        void Fill(Dictionary<string, string> into)
        {
            foreach (var (key, sentence) in JsonSerializer.Deserialize(file.Bytes.Span, BookJson.Default.DictionaryStringString)!) into[key] = sentence;
        }
    }

    private static void EachElement<T>(BookFile file, BookDraft draft, JsonTypeInfo<T> type, Action<T> take) where T : class
    {
        foreach (var element in JsonSerializer.Deserialize(file.Bytes.Span, BookJson.Default.JsonElementArray)!)
            if (TryRead(file, draft, element, type) is { } rule) take(rule);
    }

    private static void EachMember<T>(BookFile file, BookDraft draft, JsonTypeInfo<T> type, Action<string, T> take) where T : class
    {
        foreach (var (id, element) in JsonSerializer.Deserialize(file.Bytes.Span, BookJson.Default.DictionaryStringJsonElement)!)
            if (TryRead(file, draft, element, type) is { } rule) take(id, rule);
    }

    private static T? TryRead<T>(BookFile file, BookDraft draft, JsonElement element, JsonTypeInfo<T> type) where T : class
    {
        try
        {
            return element.Deserialize(type);
        }
        catch (JsonException refused)
        {
            var id = element.ValueKind == JsonValueKind.Object && element.TryGetProperty("id", out var name) ? name.ToString() : "a line";
            draft.Refuse($"{file.Path}: {id}", Short(refused.Message), "the members described in docs/adding-a-condition.md");
            return null;
        }
    }

    private static string Short(string text) => text.Length <= 160 ? text : text[..157] + "...";
}
