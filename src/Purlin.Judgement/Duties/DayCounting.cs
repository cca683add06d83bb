using Purlin.Book;
using Purlin.Journal;
using Purlin.Judgement.Evidence;

namespace Purlin.Judgement.Duties;

/// <summary>Counts the day that a duty sets: delivery, retention, the ban on repair work. What day it is today is nobody's business here.</summary>
internal sealed class DayCounting(EvidenceIndex evidence, VisitFacts facts)
{
    private Tongue Words => evidence.Book.Words;

    public VisitDuty Count(VisitRule rule, VisitDuty duty)
    {
        var date = rule.Date!;
        var agreed = facts.Day(date.Agreed);
        List<VisitAsked> asked = [.. duty.Asked.Select(one => one with { Day = agreed ?? Of(date, one) })];
        List<DateOnly> days = [.. asked.Select(one => one.Day).OfType<DateOnly>()];
        List<VisitQuestion> questions = [.. rule.Facts.Select(FactClosing.Question)];
        if (days.Count == 0) return duty with { State = VisitStanding.Listed, Words = rule.Open, Questions = questions };
        var day = date.Pick == DayPick.Earliest ? days.Min() : days.Max();
        var said = agreed is { } kept ? [Words.Say("visit.agreed", ("day", VisitDays.Say(kept)))] : asked.Select(one => How(date, one, days.Distinct().Skip(1).Any())).OfType<string>().Distinct(StringComparer.Ordinal).ToList();
        var done = date.Done == "edition" ? facts.FirstEdition : null;
        if (done is not null) said.Add(Words.Say("visit.sealed", ("number", $"{done.Body.Number}"), ("day", VisitDays.Say(VisitDays.Of(done)))));
        return duty with
        {
            State = VisitStanding.Dated,
            Asked = asked,
            Day = day,
            AwaitsEdition = date.Done == "edition",
            Done = done is null ? null : VisitDays.Of(done),
            Words = string.Join(' ', [date.Words.Replace("{day}", VisitDays.Say(day), StringComparison.Ordinal), .. said]),
            Evidence = [.. rule.Facts.Select(fact => facts.Stated(fact.Name)?.By).OfType<Journal.EntryName>()],
            Questions = questions,
        };
    }

    private Standard? StandardOf(VisitAsked asked) => evidence.Standards.FirstOrDefault(standard => asked.Duty.Standard == standard.Id);

    private Setting? SettingOf(VisitDay date, VisitAsked asked) => StandardOf(asked)?.Settings.GetValueOrDefault(date.Setting);

    private DateOnly? Of(VisitDay date, VisitAsked asked) => SettingOf(date, asked) is { } setting ? VisitDays.After(From(setting), setting) : null;

    private DateOnly From(Setting setting) => setting.From switch
    {
        "visit or payment" when facts.Day("paid") is { } paid && paid > facts.Opening.Date => paid,
        "issue" when facts.LastEdition is { } sealedOn && sealedOn > facts.Opening.Date => sealedOn,
        _ => facts.Opening.Date,
    };

    /// <summary>The day is told again only where the standards come to different ones.</summary>
    private string? How(VisitDay date, VisitAsked asked, bool each)
    {
        if (asked.Day is not { } day || SettingOf(date, asked) is not { } setting) return null;
        var from = From(setting);
        var whence = from == facts.Opening.Date ? "visit.from.visit" : setting.From == "issue" ? "visit.from.issue" : "visit.from.payment";
        var said = Words.Say(each ? "visit.count.each" : "visit.count", ("standard", asked.Standard), ("amount", $"{setting.Value} {setting.Unit}"), ("from", Words.Say(whence)), ("day", VisitDays.Say(day)));
        if (setting.From == "visit or payment" && facts.Day("paid") is null) said += " " + Words.Say("visit.unpaid");
        return VisitDays.IsInBusinessDays(setting) ? said + " " + Words.Say("visit.business") : said;
    }
}
