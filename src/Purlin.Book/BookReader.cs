using System.Text.Json;
using Purlin.Journal;

namespace Purlin.Book;

/// <summary>
/// Reads the files of a rule book. A line that cannot be read, has no source or points to something that is not there is refused with
/// file and id named; the rest of the book stands, since a phone in an attic must not be left without any rule because of one.
/// </summary>
public static class BookReader
{
    /// <summary>Reads all files; what was refused is in <see cref="RuleBook.Refused"/>.</summary>
    public static RuleBook Read(IReadOnlyList<BookFile> files) => Read(files, () => files);

    /// <summary>Reads the lines, and takes the hash over all files when it is first asked for.</summary>
    internal static RuleBook Read(IReadOnlyList<BookFile> files, Func<IReadOnlyList<BookFile>> whole)
    {
        ArgumentNullException.ThrowIfNull(files);
        var draft = new BookDraft();
        foreach (var file in files.OrderBy(file => file.Path, StringComparer.Ordinal)) ReadFile(new BookLines(file, draft), draft);
        BookCheck.References(draft);
        return draft.ToBook(BookEdition.In(files), new Lazy<string>(() => BookEdition.HashOf(whole())));
    }

    private static void ReadFile(BookLines file, BookDraft draft)
    {
        try
        {
            Read(file, draft);
        }
        catch (JsonException refused)
        {
            draft.Refuse(file.Path, refused.LineNumber is { } line ? $"no JSON at line {line + 1}, character {refused.BytePositionInLine + 1}" : "no JSON", "JSON of the form that docs/adding-a-condition.md describes");
        }
    }

    private static void Read(BookLines file, BookDraft draft)
    {
        switch (file.Folder)
        {
            case "": file.Whole(BookJson.Default.BookEdition); break;
            case "conditions": ReadConditions(file, draft); break;
            case "limitations": file.Each(BookJson.Default.LimitationRule, rule => file.Add(draft.Limitations, rule.Id, rule, rule.Sources)); break;
            case "profiles": file.Each(BookJson.Default.Profile, rule => file.Add(draft.Profiles, rule.Id, rule, rule.Sources)); break;
            case "sources": file.EachMember(BookJson.Default.SourceLine, (id, source) => draft.AddSource(id, source, file)); break;
            case "words": ReadWords(file, draft); break;
            case "readings": ReadReadings(file, draft); break;
            case "causes": ReadCauses(file, draft); break;
            case "duties": ReadDuties(file, draft); break;
            case "looking": ReadLooking(file, draft); break;
            case "hearing": ReadHearing(file, draft); break;
            case "by-when": file.Each(BookJson.Default.ByWhenRule, rule => file.Add(draft.ByWhen, rule.Id, rule, rule.Sources)); break;
            case "synonyms": file.Each(BookJson.Default.Synonym, line => draft.Synonyms.Add((line, file.Path))); break;
            case "tables": ReadTable(file, draft); break;
            default: draft.Refuse(file.Path, file.Folder, Nearest.InWords(file.Folder, Folders, "folder")); break;
        }
    }

    /// <summary>The folders of a rule book.</summary>
    public static IReadOnlyList<string> Folders { get; } = ["by-when", "causes", "conditions", "duties", "hearing", "limitations", "looking",
        "profiles", "readings", "sources", "synonyms", "tables", "words"];

    private static void ReadConditions(BookLines file, BookDraft draft)
    {
        if (file.Whole(BookJson.Default.ConditionFile) is not { } read) return;
        file.Each(read.Conditions, BookJson.Default.Condition, condition =>
        {
            var whole = condition with { Component = read.Component, System = read.System };
            file.Add(draft.Conditions, whole.Id, whole, whole.Sources);
            BookCheck.Words(file.Path, whole, draft.Refuse);
        });
    }

    private static void ReadReadings(BookLines file, BookDraft draft)
    {
        if (file.Whole(BookJson.Default.ReadingFile) is not { } read) return;
        file.Each(read.Kinds, BookJson.Default.ReadingKind, kind => file.Add(draft.ReadingKinds, kind.Kind, kind, kind.Sources));
        file.Each(read.Feeds, BookJson.Default.Feed, feed => file.Add(draft.Feeds, feed.Id, feed, feed.Sources));
        file.Each(read.Facts, BookJson.Default.FactRule, rule => file.Add(draft.FactRules, $"{rule.Component}/{rule.Fact} {rule.Raise.Condition}", rule, rule.Sources));
        file.Each(read.Sheets, BookJson.Default.FactSheet, sheet => file.Add(draft.Sheets, sheet.Component, sheet, sheet.Sources));
        foreach (var (name, words) in read.Words)
            if (!draft.WordMaps.TryAdd(name, words)) draft.Refuse($"{file.Path}: words {name}", "a name that is taken", "a name of its own; another map has this one");
        foreach (var (name, alias) in read.Aliases) draft.Aliases[name] = alias;
    }

    private static void ReadLooking(BookLines file, BookDraft draft)
    {
        if (file.Whole(BookJson.Default.LookingFile) is not { } read) return;
        foreach (var usual in read.Usual) file.Add(draft.Usual, usual.Place, usual, usual.Sources);
        foreach (var often in read.Often) file.Add(draft.Often, often.Condition, often, null);
        foreach (var fit in read.Fits) draft.Fits.Add((fit, file.Path));
    }

    private static void ReadHearing(BookLines file, BookDraft draft)
    {
        var name = file.Name[..^".json".Length];
        if (!HearingWords.Files.Contains(name)) draft.Refuse(file.Path, file.Name, Nearest.InWords(name, HearingWords.Files, "file"));
        else if (file.Whole(BookJson.Default.DictionaryStringStringArray) is { } lines) draft.Hearing[name] = lines;
    }

    private static void ReadCauses(BookLines file, BookDraft draft)
    {
        if (file.Whole(BookJson.Default.CauseFile) is not { } read) return;
        file.Each(read.Causes, BookJson.Default.CauseRule, cause => file.Add(draft.Causes, cause.Id, cause, cause.Sources));
        file.Each(read.Escalations, BookJson.Default.Escalation, rule => file.Add(draft.Escalations, rule.Id, rule, rule.Sources));
    }

    /// <summary>A standard is its own source: document, section and edition stand in it.</summary>
    private static void ReadDuties(BookLines file, BookDraft draft)
    {
        switch (file.Name)
        {
            case "core.json": file.Each(file.Whole(BookJson.Default.CoreFile)?.Core, BookJson.Default.CoreDuty, core => file.Add(draft.Core, core.Id, core, null)); break;
            case "visit.json": file.Each(file.Whole(BookJson.Default.VisitFile)?.Visit, BookJson.Default.VisitRule, rule => file.Add(draft.Visit, rule.Id, rule, null)); break;
            case "settings.json": file.Each(file.Whole(BookJson.Default.SettingFile)?.Settings, BookJson.Default.SettingRule, rule => file.Add(draft.Settings, rule.Id, rule, null)); break;
            default:
                if (file.Whole(BookJson.Default.Standard) is { } standard) file.Add(draft.Standards, standard.Id, standard, null);
                break;
        }
    }

    /// <summary>Sentences of a language stand in a folder of its own; the standard one is the one that is read by.</summary>
    private static void ReadWords(BookLines file, BookDraft draft)
    {
        if (file.Language is { } language)
        {
            Fill(language == Tongue.Standard ? draft.Sentences : []);
            return;
        }
        switch (file.Name)
        {
            case "cautions.json": Fill(draft.Cautions); break;
            case "told-apart.json": draft.ToldApart.UnionWith(file.Whole(BookJson.Default.StringArray) ?? []); break;
            case "spoken.json": Fill(draft.SameWords); break;
            case "misheard.json": Fill(draft.Misheard); break;
            case "filler.json": draft.FillerWords.UnionWith(file.Whole(BookJson.Default.StringArray) ?? []); break;
            default: draft.Refuse(file.Path, file.Name, "one of cautions.json, filler.json, misheard.json, spoken.json, told-apart.json, or a folder of a language"); break;
        }

        void Fill(Dictionary<string, string> into)
        {
            foreach (var (key, sentence) in file.Whole(BookJson.Default.DictionaryStringString) ?? [])
                if (key != BookLines.Schema) into[key] = sentence;
        }
    }

    /// <summary>Of the tables only the names of the eras are pointed to; what stands in them belongs to the reckonings.</summary>
    private static void ReadTable(BookLines file, BookDraft draft)
    {
        if (file.Name != "eras.csv") return;
        foreach (var line in file.Text().Split('\n').Where(line => line.Length > 0 && line[0] != '#').Skip(1)) draft.Eras.Add(line.Split(',')[0].Trim());
    }
}
