using Purlin.Journal;
using Purlin.Reckoning;

namespace Purlin.Book;

/// <summary>Holds every reference of a draft against what it points to; one that leads nowhere is told with what is nearest to it.</summary>
internal sealed class BookReferences(BookDraft draft)
{
    private readonly HashSet<string> readings =
    [
        .. draft.ReadingKinds.Keys, .. draft.Aliases.Keys, .. draft.Feeds.Values.SelectMany(feed => feed.Rule.Answers),
    ];

    public void Check()
    {
        foreach (var (id, (condition, path)) in draft.Conditions) Of(condition, $"{path}: {id}");
        foreach (var (id, (kind, path)) in draft.ReadingKinds) Raised($"{path}: {id}", kind.Sources, kind.Raises, kind.Places);
        foreach (var (id, (feed, path)) in draft.Feeds) Of(feed, $"{path}: {id}");
        foreach (var (id, (sheet, path)) in draft.Sheets) Raised($"{path}: {id}", sheet.Sources, [], sheet.Places);
        foreach (var (id, (rule, path)) in draft.FactRules) Raised($"{path}: {id}", rule.Sources, [rule.Raise], []);
        Causes();
        ByWhen();
        Looking();
        Naming.SynonymCheck.Check(draft);
        Hearing();
        Duties();
        foreach (var (id, (limitation, path)) in draft.Limitations)
        {
            Sources($"{path}: {id}", limitation.Sources);
            Places($"{path}: {id}", limitation.Places);
            if (limitation.When?.Reading is { } reading) Known($"{path}: {id}", "reading", reading, readings);
            if (limitation.When?.Setting is { } setting) Known($"{path}: {id}", "setting", setting, draft.Settings.Keys);
        }
        foreach (var (id, (profile, path)) in draft.Profiles)
        {
            Sources($"{path}: {id}", profile.Sources);
            Conditions($"{path}: {id}", profile.Conditions);
        }
    }

    private void Hearing()
    {
        Keys("seen", "condition", draft.Conditions.Keys);
        Keys("clear", "condition", draft.Conditions.Keys);
        Keys("places", "place", PlaceKind.All);
        Keys("things", "component", [.. draft.Conditions.Values.Select(line => line.Rule.Component), .. draft.Sheets.Keys]);
        Keys("trades", "trade", Trades.All);

        void Keys(string file, string what, IEnumerable<string> known)
        {
            foreach (var key in draft.Hearing.GetValueOrDefault(file)?.Keys.ToArray() ?? []) Known($"rulebook/hearing/{file}.json", what, key, known.ToHashSet(StringComparer.Ordinal));
        }
    }

    private void Of(Condition condition, string line)
    {
        Sources(line, condition.Sources);
        foreach (var caution in condition.Cautions) Known(line, "caution", caution, draft.Cautions.Keys);
        foreach (var era in condition.Eras.Values.Append(condition.Era).OfType<string>())
            if (draft.Eras.Count > 0) Known(line, "era", era, draft.Eras);
        foreach (var follow in condition.Look)
        {
            foreach (var answer in follow.Answers) Known($"{line} look {follow.Id}", "answer", answer, draft.Conditions.Keys);
            foreach (var reading in follow.Readings) Known($"{line} look {follow.Id}", "reading", reading, readings);
        }
    }

    private void Of(Feed feed, string line)
    {
        Raised(line, feed.Sources, feed.Raises, feed.Places);
        foreach (var kind in feed.ReadingKinds) Known(line, "reading", kind, draft.ReadingKinds.Keys);
        foreach (var map in feed.Inputs.Values.SelectMany(taking => taking.WordMaps)) Known(line, "map of words", map, draft.WordMaps.Keys);
        var found = Reckonings.Find(feed.Reckoning);
        if (!found.IsAccepted)
        {
            Known(line, "reckoning", feed.Reckoning, [.. Reckonings.All.Select(calculation => calculation.Name)]);
            return;
        }
        var inputs = found.OrThrow().Inputs;
        foreach (var name in feed.Inputs.Keys) Known(line, "input", name, [.. inputs.Select(input => input.Name)]);
        foreach (var missing in inputs.Where(input => input.Required && !feed.Inputs.ContainsKey(input.Name)))
            draft.Refuse(line, $"no input \"{missing.Name}\"", $"{feed.Reckoning} cannot do without it");
    }

    private void Raised(string line, IReadOnlyList<string> sources, IReadOnlyList<Raise> raises, IReadOnlyList<string> places)
    {
        Sources(line, sources);
        Places(line, places);
        Conditions(line, raises.Select(raise => raise.Condition));
        foreach (var raise in raises) Places(line + " raises", raise.In);
    }

    private void Causes()
    {
        Dictionary<string, string> explained = new(StringComparer.Ordinal);
        foreach (var (id, (cause, path)) in draft.Causes)
        {
            var line = $"{path}: {id}";
            Sources(line, cause.Sources);
            Conditions(line, cause.Conditions);
            foreach (var condition in cause.Needs.Concat(cause.SamePlace)) Known(line, "condition of this cause", condition, [.. cause.Conditions]);
            if (cause.Trade is { } trade) BookCheck.OneOf(line + " trade", trade, Trades.All, draft.Refuse);
            foreach (var condition in cause.Conditions.Where(condition => !explained.TryAdd(condition, id)))
                draft.Refuse(line, $"condition {condition}", $"a condition of one cause only; {explained[condition]} explains it");
        }
        foreach (var (id, (rule, path)) in draft.Escalations)
        {
            Sources($"{path}: {id}", rule.Sources);
            Conditions($"{path}: {id}", rule.With.Append(rule.Condition));
        }
    }

    private void ByWhen()
    {
        foreach (var (id, (rule, path)) in draft.ByWhen)
        {
            var line = $"{path}: {id}";
            Sources(line, rule.Sources);
            foreach (var trade in rule.Trades) BookCheck.OneOf(line + " trades", trade, Trades.All, draft.Refuse);
            Conditions(line, rule.Conditions);
        }
    }

    private void Looking()
    {
        HashSet<string> kinds = [.. draft.Conditions.Values.Select(line => line.Rule.Component), .. draft.Sheets.Keys];
        foreach (var (id, (usual, path)) in draft.Usual)
        {
            var line = $"{path}: {id}";
            Places(line, [id]);
            Sources(line, usual.Sources);
            foreach (var thing in usual.Things) Known(line, "component", thing.Component, kinds);
            var here = draft.Conditions.Where(known => known.Value.Rule.Places.Contains(id)).Select(known => known.Key).ToHashSet(StringComparer.Ordinal);
            foreach (var first in usual.First) Known(line, $"condition of a {id}", first, here);
        }
        foreach (var (id, (_, path)) in draft.Often) Conditions(path, [id]);
        foreach (var (fit, path) in draft.Fits)
        {
            Known(path, "component", fit.Component, kinds);
            Conditions($"{path}: {fit.Component}", fit.Conditions);
        }
    }

    private void Duties()
    {
        foreach (var (id, (standard, path)) in draft.Standards)
            foreach (var duty in standard.Duties)
            {
                var line = $"{path}: {id}:{duty.Id}";
                foreach (var core in duty.Core) Known(line, "core duty", core, duty.Coverage == DutyCounts.ReportRule ? draft.Visit.Keys : draft.Core.Keys);
            }
        foreach (var (id, (standard, path)) in draft.Standards)
            foreach (var setting in standard.Settings.Keys) Known($"{path}: {id}", "setting", setting, draft.Settings.Keys);
        foreach (var (id, (core, path)) in draft.Core)
        {
            Places($"{path}: {id}", core.Places);
            foreach (var reading in core.Readings) Known($"{path}: {id}", "reading", reading, readings);
        }
        foreach (var (id, (rule, path)) in draft.Visit)
        {
            foreach (var setting in rule.Facts.Select(fact => fact.Within).Append(rule.Date?.Setting ?? "").Where(setting => setting.Length > 0))
                Known($"{path}: {id}", "setting", setting, draft.Settings.Keys);
        }
        foreach (var (id, (rule, path)) in draft.Settings)
        {
            Places($"{path}: {id}", rule.Places);
        }
    }

    private void Sources(string line, IReadOnlyList<string> sources)
    {
        foreach (var source in sources.Where(source => source != RuleBook.CommonPractice)) Known(line, "source", source, draft.Sources.Keys);
    }

    private void Places(string line, IReadOnlyList<string> places)
    {
        foreach (var place in places) BookCheck.OneOf(line + " places", place, PlaceKind.All, draft.Refuse);
    }

    private void Conditions(string line, IEnumerable<string> conditions)
    {
        foreach (var condition in conditions) Known(line, "condition", condition, draft.Conditions.Keys);
    }

    private void Known(string line, string what, string id, ICollection<string> known)
    {
        if (!known.Contains(id)) draft.Refuse(line, $"{what} {id}", Nearest.InWords(id, [.. known], what));
    }
}
