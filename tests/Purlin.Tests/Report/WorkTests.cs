using Purlin.Book;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Judgement;
using Purlin.Report;
using Purlin.Report.Page;

namespace Purlin.Tests.Report;

/// <summary>The one way from lines to papers.</summary>
public static class WorkTests
{
    private static readonly DateTimeOffset Visit = new(2025, 12, 30, 10, 0, 0, TimeSpan.Zero);

    /// <summary>A visit on the last day but one of 2025; the alarm is ten years old in that year and eleven in the next.</summary>
    private static List<Entry> Lines()
    {
        Pen pen = new("visit1", "phone1");
        var opened = pen.Write(new EntryBody.InspectionOpened { Property = new Property { Address = "3 Invented Close", YearBuilt = 1998 }, Date = new DateOnly(2025, 12, 30) }, Visit);
        var hall = pen.Write(new EntryBody.PlaceAdded { Kind = PlaceKind.Room, Name = "Hall" }, Visit);
        var alarm = pen.Write(new EntryBody.ComponentAdded { Kind = "smoke alarm", Place = hall.Name }, Visit);
        return [opened, hall, alarm, pen.Write(new EntryBody.FactStated { Component = alarm.Name, Fact = "year", Value = FactValue.Of(2015), Basis = Basis.Nameplate }, Visit.AddMinutes(5))];
    }

    [Fact]
    public static async Task A_visit_of_December_says_the_same_whatever_year_its_doors_believe_in()
    {
        var lines = Lines();
        // A phone on the day, a command line three days later, an office whose clock is six years off.
        Work[] works = [Work.Of(lines, RuleBook.BuiltIn, 2025), Work.Of([.. Enumerable.Reverse(lines)], RuleBook.BuiltIn, 2026), Work.Of(Folding.Fold(lines), lines, RuleBook.BuiltIn, 2031, new JudgingMemory())];
        Assert.All(works, work => Assert.Equal(2025, work.Judged.Year));
        // NFPA 72, 2022, section 14.4.7: smoke alarms are replaced after ten years; in 2025 one of 2015 is not beyond them.
        Assert.All(works, work => Assert.Empty(work.Judged.Findings));
        Assert.Single(works.Select(work => JudgementJson.Write(work.Judged, work.Inspection).ToJsonString()).Distinct());
        List<string> pages = [];
        foreach (var work in works) pages.Add(await PageWriter.WriteAsync(work.Paper(PaperKind.Report, work.Copy), _ => null));
        Assert.Single(pages.Distinct());
    }

    [Fact]
    public static void While_no_opening_has_arrived_the_callers_year_counts()
    {
        var headless = Lines()[1..];
        Assert.Empty(Work.Of(headless, RuleBook.BuiltIn, 2025).Judged.Findings);
        Assert.Contains(Work.Of(headless, RuleBook.BuiltIn, 2026).Judged.Findings, finding => finding.Condition.StartsWith("smoke-alarm", StringComparison.Ordinal));
    }

    [Fact]
    public static void A_working_copy_bears_the_time_of_its_last_line()
    {
        var work = Work.Of(Lines(), RuleBook.BuiltIn, 2040);
        Assert.Equal(Visit.AddMinutes(5), work.Copy.At);
    }
}
