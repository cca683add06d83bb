using Purlin.Journal;
using Purlin.Book;
using Purlin.Judgement.Evidence;

namespace Purlin.Judgement.Duties;

/// <summary>Closes a duty around the visit by the facts that it asks for, all of them, each within its limits.</summary>
internal sealed class FactClosing(EvidenceIndex evidence, VisitFacts facts)
{
    private Tongue Words => evidence.Book.Words;

    public VisitDuty Close(VisitRule rule, VisitDuty duty)
    {
        List<string> said = [], wrong = [];
        List<EntryName> by = [];
        List<VisitQuestion> missing = [];
        foreach (var fact in rule.Facts)
        {
            if (facts.Answer(fact) is not { } answer)
            {
                missing.Add(Question(fact));
                continue;
            }
            if (Wrong(fact, answer.Text, duty) is { } problem)
            {
                wrong.Add(problem);
                missing.Add(Question(fact));
            }
            by.Add(answer.By);
            said.Add(Said(fact, answer));
        }
        if (missing.Count > 0) return duty with { State = VisitStanding.Open, Words = string.Join(' ', [.. wrong, rule.Open]), Questions = missing, BarsIssue = true };
        return duty with { State = VisitStanding.Closed, Words = string.Join(' ', [.. said.Distinct(StringComparer.Ordinal), .. rule.Where.Length > 0 ? [rule.Where] : Array.Empty<string>()]), Evidence = [.. by.Distinct()] };
    }

    public static VisitQuestion Question(VisitFact fact) => new(fact.Name, fact.Kind, fact.Ask, fact.Choices, fact.Free, fact.NotAfter == "visit");

    /// <summary>The fact in a sentence. A licence that stands beside the inspector's name is said with the name.</summary>
    private string Said(VisitFact fact, (string Text, EntryName By) answer)
    {
        var name = fact.Fills == "licence" && answer.By == evidence.House ? "inspector" : fact.Name;
        return Words.Say("visit.fact", ("what", Findings.FindingWriting.Sentence(name, stop: false)), ("value", VisitDays.Read(answer.Text) is { } day ? VisitDays.Say(day) : answer.Text.TrimEnd('.')));
    }

    private string? Wrong(VisitFact fact, string text, VisitDuty duty)
    {
        if (fact.Kind != AnswerKind.Day) return null;
        var what = Findings.FindingWriting.Sentence(fact.Name, stop: false);
        if (VisitDays.Read(text) is not { } day) return Words.Say("visit.no-day", ("what", what), ("given", text));
        if (fact.NotAfter == "visit" && day > facts.Opening.Date) return Words.Say("visit.after", ("what", what), ("day", VisitDays.Say(day)), ("visit", VisitDays.Say(facts.Opening.Date)));
        return Due(fact, duty) is { } due && day > due ? Words.Say("visit.late", ("what", what), ("day", VisitDays.Say(day)), ("due", VisitDays.Say(due))) : null;
    }

    /// <summary>The earliest last day that a standard which asks for it sets.</summary>
    private DateOnly? Due(VisitFact fact, VisitDuty duty)
    {
        if (fact.Within.Length == 0 || facts.Day(fact.Since) is not { } since) return null;
        return evidence.Standards.Where(standard => duty.Asked.Any(asked => asked.Duty.Standard == standard.Id))
            .Select(standard => standard.Settings.TryGetValue(fact.Within, out var setting) ? VisitDays.After(since, setting) : null).Min();
    }
}
