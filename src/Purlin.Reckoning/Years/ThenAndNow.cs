using System.Collections.Immutable;
using Purlin.Journal;

namespace Purlin.Reckoning.Years;

/// <summary>
/// Whether a rule was in force when something was put in. Three dates decide: the year of the edition, the years in which places usually
/// adopted it, and the date of the place itself, which is unknown unless somebody looked it up.
/// </summary>
public static class ThenAndNow
{
    /// <summary>The reckoning.</summary>
    public static Calculation Calculation { get; } = new()
    {
        Name = "then-and-now",
        Inputs =
        [
            new Input.Text("rule", "then-and-now.input.rule", 60) { Required = true },
            new Input.Whole("year_installed", "then-and-now.input.year-installed", 1600, 2100) { Required = true },
            new Input.Whole("year_adopted", "then-and-now.input.year-adopted", 1600, 2100),
            new Input.Text("built", "then-and-now.input.built", 40),
        ],
        Sources = ["table of eras: each row names its own sources"],
        Work = Work,
    };

    private enum Then { Yes, No, Open }

    private static Checked<Working> Work(Given given)
    {
        var id = given.Text("rule");
        if (Eras.Find(id) is not { } era)
        {
            var like = Eras.Like(id);
            return new Refusal("rule", Said.Verbatim(id), like.IsEmpty ? new Said("then-and-now.allowed.id-table-eras-such")
                : new Said("then-and-now.allowed.id-table-eras-nearest", ("like", SaidValue.Of(like))));
        }
        var (year, adopted) = (given.Whole("year_installed"), given.WholeOrNone("year_adopted"));
        var sheet = new Worksheet(Calculation, given);
        sheet.From(era.Source);
        var usual = WriteDates(sheet, era, adopted);
        sheet.Step("then-and-now.step.installed", year, "years");
        var then = adopted is { } here ? year >= here ? Then.Yes : Then.No
            : era.FirstYear is not { } first ? Then.Open
            : year < first ? era.EarlierOpen ? Then.Open : Then.No
            : usual is { } until && year > until ? Then.Yes
            : Then.Open;
        var because = new EraSentence(era, year, given.TextOrNone("built"))
            .Then(adopted, then switch { Then.Yes => true, Then.No => false, _ => null });
        WriteResult(sheet, era, then, EraSentence.Of(because, era), adopted, usual);
        return then switch
        {
            Then.Yes => sheet.Outside(because),
            Then.No => sheet.Within(because),
            _ => sheet.CannotSay(because),
        };
    }

    private static int? WriteDates(Worksheet sheet, Era era, int? adopted)
    {
        if (era.FirstYear is { } first) sheet.Step("then-and-now.step.first-edition-start", first, "years", ("rule", era.Rule));
        else sheet.Say("then-and-now.step.first-edition-no-source", ("rule", era.Rule));
        if (era.FirstYearLatest is { } latest && latest != era.FirstYear)
            sheet.Step("then-and-now.step.latest-year-source-gives", latest, "years");
        var usual = era.FirstYearLatest + era.UsualLagYears;
        if (usual is { } until)
            sheet.Step(era.UsualLagYears == 0 ? new Said("then-and-now.step.law-market-date-force")
                : new Said("then-and-now.step.places-usually-adopt-edition", ("usual-lag-years", era.UsualLagYears ?? 0)), until, "years");
        if (adopted is { } year) sheet.Step("then-and-now.step.adopted-here-given", year, "years");
        else if (era.UsualLagYears != 0) sheet.Say("then-and-now.step.date-place-unknown-nobody");
        return usual;
    }

    private static void WriteResult(Worksheet sheet, Era era, Then then, Said sentence, int? adopted, int? usual)
    {
        sheet.Result("rule", era.Id);
        sheet.Result("stands_in", era.Rule);
        sheet.Sentence("what", era.WhatSaid);
        sheet.Result("first_year", era.FirstYear);
        sheet.Result("first_year_latest", era.FirstYearLatest);
        sheet.Result("usually_by", usual);
        sheet.Result("adopted_here", adopted);
        sheet.Result("required_then", then switch { Then.Yes => "yes", Then.No => "no", _ => "cannot say" });
        sheet.Result("required_now", era.RequiredNow);
        if (era.HazardSaid is { } hazard) sheet.Sentence("hazard", hazard);
        else sheet.NoResult("hazard");
        sheet.Sentence("sentence", sentence);
        sheet.Caution("then-and-now.caution.adoption-differs-place-place");
        if (era.Hazard is not null) sheet.Caution("then-and-now.caution.rule-did-not-apply");
    }
}
