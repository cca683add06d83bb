using System.Text.Json.Nodes;
using Purlin.Book;
using Purlin.Judgement;

namespace Purlin.Tests.Judgement;

/// <summary>Holds a judgement against what a case file expects; every difference is one line.</summary>
internal sealed class CaseCheck(JudgedInspection judged)
{
    private readonly List<string> wrong = [];

    public IReadOnlyList<string> Against(JsonObject expect)
    {
        foreach (var (what, node) in expect)
        {
            switch (what)
            {
                case "weights": Each(node!, (id, want) => Same(id, "weight", Finding(id)?.Weight.Word(), want)); break;
                case "spread": Each(node!, (id, want) => Same(id, "spread", Finding(id)?.Spread switch { Spread.OnePlace => "one place", Spread.SeveralPlaces => "several places", Spread.Throughout => "throughout", _ => null }, want)); break;
                case "trade": Each(node!, (id, want) => Same(id, "trade", Finding(id)?.Trade, want)); break;
                case "years": Each(node!, (id, want) => Same(id, "then and now", want == "any" && Finding(id)?.ThenAndNow is not null ? "any" : Finding(id)?.ThenAndNow?.Kind.Word(), want)); break;
                case "why": Each(node!, (id, want) => Same(id, "why", Finding(id)?.Why.Any(step => step.What.Word() == want) == true ? want : null, want)); break;
                case "text": Each(node!, (id, want) => Same(id, "observed", Finding(id)?.Observed.Contains(want, StringComparison.Ordinal) == true ? want : Finding(id)?.Observed, want)); break;
                case "conditions": foreach (var id in Texts(node)) Same(id, "finding", Finding(id) is null ? "none" : "there", "there"); break;
                case "none": foreach (var id in Texts(node)) Same(id, "finding", Finding(id) is null ? "none" : "there", "none"); break;
                case "one": Same("one matter", "finding", string.Join(", ", Texts(node).Select(id => Finding(id)?.Id.ToString()).Distinct()), Texts(node).Select(id => Finding(id)?.Id.ToString()).First()); break;
                case "apart": Apart([.. Texts(node)]); break;
                case "titles": Each(node!, (id, want) => Same(id, "title", Finding(id)?.Title, want)); break;
                case "do": Each(node!, (id, want) => Same(id, "do", Finding(id)?.Do.Contains(want, StringComparison.Ordinal) == true ? want : Finding(id)?.Do, want)); break;
                case "loose": foreach (var id in Texts(node)) Same(id, "loose end", judged.LooseEnds.Any(end => end.Id.ToString() == id) ? "there" : null, "there"); break;
                case "open": foreach (var id in Texts(node)) Same(id, "loose end", judged.LooseEnds.SingleOrDefault(end => end.Id.ToString() == id) is { } end ? end.Tied?.How ?? "open" : null, "open"); break;
                case "tied": Each(node!, (id, want) => Same(id, "loose end", judged.LooseEnds.SingleOrDefault(end => end.Id.ToString() == id)?.Tied?.How, want)); break;
                case "verdicts": Each(node!, (name, want) => Same(name, "verdict", judged.Workings.FirstOrDefault(working => working.Working.Name == name)?.Working.Verdict.Word, want)); break;
                case "results": foreach (var (name, members) in node!.AsObject()) Each(members!, (member, want) => Figure(name, member, want)); break;
                case "refused": foreach (var name in Texts(node)) Same(name, "refused", judged.Refused.Any(refused => refused.Reckoning == name) ? name : null, name); break;
                case "notRefused": foreach (var name in Texts(node)) Same(name, "refused", judged.Refused.FirstOrDefault(refused => refused.Reckoning == name)?.Reasons[0], null); break;
                case "asks": foreach (var words in Texts(node)) Same("an ask", "words", judged.Asks.Any(ask => ask.Words == words) ? words : string.Join(" | ", judged.Asks.Select(ask => ask.Words)), words); break;
                case "cleared": foreach (var id in Texts(node)) Same(id, "cleared", judged.LooseEnds.Any(end => end.Tied?.How == "evidence" && end.Answers.Contains(id)) ? id : null, id); break;
                case "offers": foreach (var id in Texts(node)) Same(id, "offer", judged.Offers.Any(offer => offer.Rule == id) ? "there" : null, "there"); break;
                case "noOffers": foreach (var id in Texts(node)) Same(id, "offer", judged.Offers.Any(offer => offer.Rule == id) ? "there" : null, null); break;
                case "visit": Each(node!, (id, want) => Same(id, "state", Visit(id)?.State.ToString(), want)); break;
                case "days": Each(node!, (id, want) => Same(id, "day", Visit(id)?.Day?.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture), want)); break;
                case "says": Each(node!, (id, want) => Same(id, "words", Visit(id)?.Words.Contains(want, StringComparison.Ordinal) == true ? want : Visit(id)?.Words, want)); break;
                case "limitations": foreach (var text in Texts(node)) Same(text, "limitation", judged.Limitations.Any(limitation => limitation.Cause?.Contains(text, StringComparison.Ordinal) == true) ? "there" : null, "there"); break;
                case "duties": foreach (var (standard, states) in node!.AsObject()) foreach (var (state, _) in states!.AsObject()) Same(standard, "a duty", States(standard).Contains(state) ? state : null, state); break;
                default: wrong.Add($"{what} is nothing a case can expect"); break;
            }
        }
        return wrong;
    }

    /// <summary>A member of a result to four figures, or its words; a dot goes a level down.</summary>
    private void Figure(string name, string member, string want)
    {
        JsonNode? node = judged.Workings.FirstOrDefault(working => working.Working.Name == name)?.Working.Result;
        foreach (var part in member.Split('.')) node = (node as JsonObject)?[part];
        var value = node is JsonObject quantity && quantity["value"] is { } inner ? inner : node;
        Same(name, member, value is JsonValue number && number.TryGetValue<double>(out var figure) ? figure.ToString("G4", System.Globalization.CultureInfo.InvariantCulture) : value?.ToString(), want);
    }

    private void Apart(List<string> conditions) =>
        Same("matters told apart", string.Join(", ", conditions), $"{conditions.Select(id => Finding(id)?.Id.ToString()).Distinct().Count(id => id is not null)}", $"{conditions.Count}");

    private Finding? Finding(string condition) => judged.Findings.FirstOrDefault(finding => finding.Condition == condition || finding.Grouped.Contains(condition));

    private VisitDuty? Visit(string id) => judged.Visit.SingleOrDefault(duty => duty.Id.ToString() == "core:" + id);

    private HashSet<string> States(string standard) => [.. judged.Coverage.Where(coverage => coverage.Standard == standard).SelectMany(coverage => coverage.Duties)
        .Select(duty => duty.State switch { DutyStanding.Met => "met", DutyStanding.Limited => "limited", DutyStanding.NotPresent => "not present", _ => "open" })];

    private void Same(string id, string part, string? got, string? want)
    {
        if (got != want) wrong.Add($"{id} {part}: expected {want}, got {got ?? "nothing"}");
    }

    private static void Each(JsonNode node, Action<string, string> check)
    {
        foreach (var (id, want) in node.AsObject()) check(id, (string)want!);
    }

    private static IEnumerable<string> Texts(JsonNode? node) => node!.AsArray().Select(text => (string)text!);
}
