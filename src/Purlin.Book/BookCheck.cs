using Purlin.Journal;

namespace Purlin.Book;

/// <summary>What every line of the book must keep to: known words, and references that lead somewhere.</summary>
internal static class BookCheck
{
    private static readonly string[] Consequences = ["injury", "damage", "function", "upkeep", "none"];
    private static readonly string[] Timings = ["now", "soon", "later"];
    private static readonly string[] Lifts = ["raise", "same"];
    private static readonly string[] Needs = ["any", "all"];
    private static readonly string[] Closes = ["program", "fact", "date", "word"];
    private static readonly string[] Uses = ["limit", "date", "sample", "shown"];

    /// <summary>Words of one condition that must come from a closed list.</summary>
    public static void Words(string path, Condition condition, Action<string, string, string> refuse)
    {
        var line = $"{path}: {condition.Id}";
        OneOf(line + " weight.consequence", condition.Weight.Consequence, Consequences, refuse);
        OneOf(line + " weight.timing", condition.Weight.Timing, Timings, refuse);
        OneOf(line + " weight.several", condition.Weight.Several, Lifts, refuse);
        OneOf(line + " weight.throughout", condition.Weight.Throughout, Lifts, refuse);
        OneOf(line + " trade", condition.Trade, Trades.All, refuse);
        foreach (var place in condition.Places) OneOf(line + " places", place, PlaceKind.All, refuse);
        foreach (var follow in condition.Look)
        {
            OneOf($"{line} look {follow.Id} need", follow.Need, Needs, refuse);
            OneOf($"{line} look {follow.Id} trade", follow.Trade, Trades.All, refuse);
            foreach (var place in follow.In) OneOf($"{line} look {follow.Id} in", place, PlaceKind.All, refuse);
        }
    }

    /// <summary>References between lines, once all files are read.</summary>
    public static void References(BookDraft draft)
    {
        foreach (var (id, (condition, path)) in draft.Conditions)
        {
            var line = $"{path}: {id}";
            Sources(line, condition.Sources, draft);
            foreach (var caution in condition.Cautions) Known(line, "caution", caution, draft.Cautions.ContainsKey(caution), draft);
            foreach (var follow in condition.Look)
                foreach (var answer in follow.Answers) Known($"{line} look {follow.Id}", "answer", answer, draft.Conditions.ContainsKey(answer), draft);
        }
        Raised(draft);
        Causes(draft);
        ByWhen(draft);
        Looking(draft);
        foreach (var (id, (standard, path)) in draft.Standards)
            foreach (var duty in standard.Duties)
                foreach (var core in duty.Core) Known($"{path}: {id}:{duty.Id}", "core duty", core, duty.Coverage == "report rule" ? draft.Visit.ContainsKey(core) : draft.Core.ContainsKey(core), draft);
        foreach (var (id, (rule, path)) in draft.Visit)
        {
            OneOf($"{path}: {id} close", rule.Close, Closes, draft.Refuse);
            foreach (var setting in rule.Facts.Select(fact => fact.Within).Append(rule.Date?.Setting ?? "").Where(setting => setting.Length > 0)) Known($"{path}: {id}", "setting", setting, draft.Settings.ContainsKey(setting), draft);
        }
        foreach (var (id, (rule, path)) in draft.Settings) OneOf($"{path}: {id} use", rule.Use, Uses, draft.Refuse);
        foreach (var (id, (limitation, path)) in draft.Limitations) Sources($"{path}: {id}", limitation.Sources, draft);
        foreach (var (id, (profile, path)) in draft.Profiles)
        {
            Sources($"{path}: {id}", profile.Sources, draft);
            foreach (var condition in profile.Conditions) Known($"{path}: {id}", "condition", condition, draft.Conditions.ContainsKey(condition), draft);
        }
    }

    private static void Raised(BookDraft draft)
    {
        foreach (var (id, (kind, path)) in draft.ReadingKinds) Line($"{path}: {id}", kind.Sources, kind.Raises);
        foreach (var (id, (feed, path)) in draft.Feeds) Line($"{path}: {id}", feed.Sources, feed.Raises);
        foreach (var (id, (sheet, path)) in draft.Sheets) Line($"{path}: {id}", sheet.Sources, []);
        foreach (var (id, (rule, path)) in draft.FactRules) Line($"{path}: {id}", rule.Sources, [rule.Raise]);

        void Line(string line, IReadOnlyList<string> sources, IReadOnlyList<Raise> raises)
        {
            Sources(line, sources, draft);
            foreach (var raise in raises) Known(line, "condition", raise.Condition, draft.Conditions.ContainsKey(raise.Condition), draft);
        }
    }

    private static void Causes(BookDraft draft)
    {
        Dictionary<string, string> explained = new(StringComparer.Ordinal);
        foreach (var (id, (cause, path)) in draft.Causes)
        {
            Sources($"{path}: {id}", cause.Sources, draft);
            foreach (var condition in cause.Needs.Concat(cause.SamePlace)) Known($"{path}: {id}", "condition of this cause", condition, cause.Conditions.Contains(condition), draft);
            foreach (var condition in cause.Conditions)
            {
                Known($"{path}: {id}", "condition", condition, draft.Conditions.ContainsKey(condition), draft);
                if (!explained.TryAdd(condition, id)) draft.Refuse($"{path}: {id}", $"condition {condition}", $"a condition of one cause only; {explained[condition]} explains it");
            }
        }
        foreach (var (id, (rule, path)) in draft.Escalations)
        {
            Sources($"{path}: {id}", rule.Sources, draft);
            foreach (var condition in rule.With.Append(rule.Condition)) Known($"{path}: {id}", "condition", condition, draft.Conditions.ContainsKey(condition), draft);
        }
    }

    private static void ByWhen(BookDraft draft)
    {
        foreach (var (id, (rule, path)) in draft.ByWhen)
        {
            var line = $"{path}: {id}";
            Sources(line, rule.Sources, draft);
            OneOf(line + " by", rule.By, [.. ByWhenWords.SoonestFirst.Select(by => by.Word())], draft.Refuse);
            foreach (var weight in rule.Weights) OneOf(line + " weights", weight, [.. WeightWords.HeaviestFirst.Select(known => known.Word())], draft.Refuse);
            foreach (var consequence in rule.Consequences) OneOf(line + " consequences", consequence, Consequences, draft.Refuse);
            foreach (var timing in rule.Timings) OneOf(line + " timings", timing, Timings, draft.Refuse);
            foreach (var trade in rule.Trades) OneOf(line + " trades", trade, Trades.All, draft.Refuse);
            foreach (var condition in rule.Conditions) Known(line, "condition", condition, draft.Conditions.ContainsKey(condition), draft);
        }
    }

    private static void Looking(BookDraft draft)
    {
        HashSet<string> kinds = [.. draft.Conditions.Values.Select(line => line.Rule.Component), .. draft.Sheets.Keys];
        foreach (var (id, (usual, path)) in draft.Usual)
        {
            OneOf($"{path}: {id}", id, PlaceKind.All, draft.Refuse);
            Sources($"{path}: {id}", usual.Sources, draft);
            foreach (var thing in usual.Things) Known($"{path}: {id}", "component", thing.Component, kinds.Contains(thing.Component), draft);
            foreach (var first in usual.First) Known($"{path}: {id}", $"condition of a {id}", first, draft.Conditions.TryGetValue(first, out var line) && line.Rule.Places.Contains(id), draft);
        }
        foreach (var (id, (_, path)) in draft.Often) Known($"{path}: {id}", "condition", id, draft.Conditions.ContainsKey(id), draft);
        foreach (var (fit, path) in draft.Fits)
        {
            Known(path, "component", fit.Component, kinds.Contains(fit.Component), draft);
            foreach (var id in fit.Conditions) Known($"{path}: {fit.Component}", "condition", id, draft.Conditions.ContainsKey(id), draft);
        }
    }

    private static void Sources(string line, IReadOnlyList<string> sources, BookDraft draft)
    {
        foreach (var source in sources) Known(line, "source", source, source == RuleBook.CommonPractice || draft.Sources.ContainsKey(source), draft);
    }

    private static void Known(string line, string what, string id, bool known, BookDraft draft)
    {
        if (!known) draft.Refuse(line, $"{what} {id}", $"a {what} that the book has");
    }

    private static void OneOf(string line, string given, IReadOnlyList<string> allowed, Action<string, string, string> refuse)
    {
        if (!allowed.Contains(given)) refuse(line, given, $"one of {string.Join(", ", allowed)}");
    }
}
