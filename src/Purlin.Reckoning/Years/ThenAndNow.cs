using System.Collections.Immutable;
using Purlin.Journal;

namespace Purlin.Reckoning.Years;

/// <summary>
/// Whether a rule was in force when something was put in. Three dates decide: the year of the edition, the years in which places usually
/// adopted it, and the date of the place itself, which is unknown unless somebody looked it up.
/// </summary>
public static class ThenAndNow
{
    /// <summary>How a sentence dates a thing whose own year is known.</summary>
    public const string Installed = "when this was installed in";

    /// <summary>How it dates a thing of which only the year of the house is known.</summary>
    public const string Built = "when the house was built in";

    /// <summary>The reckoning.</summary>
    public static Calculation Calculation { get; } = new()
    {
        Name = "then-and-now",
        Title = "Then and now",
        Purpose = "Whether a rule was asked for when something was installed, and whether it is today.",
        Inputs =
        [
            new Input.Text("rule", "id of a row of the table of eras, such as gfci-bathroom", 60) { Required = true },
            new Input.Whole("year_installed", "year the thing was installed; the year of the house when nothing newer is known", 1600, 2100) { Required = true },
            new Input.Whole("year_adopted", "year this place adopted the rule, where somebody looked it up", 1600, 2100),
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
            return new Refusal("rule", id, like.IsEmpty ? "an id of the table of eras, such as gfci-bathroom" : $"an id of the table of eras; the nearest are {string.Join(", ", like)}");
        }
        var (year, adopted) = (given.Whole("year_installed"), given.WholeOrNone("year_adopted"));
        var sheet = new Worksheet(Calculation, given);
        sheet.From(era.Source);
        var usual = WriteDates(sheet, era, adopted);
        sheet.Step("Installed", year, "years");
        var then = adopted is { } here ? year >= here ? Then.Yes : Then.No
            : era.FirstYear is not { } first ? Then.Open
            : year < first ? Then.No
            : usual is { } until && year > until ? Then.Yes
            : Then.Open;
        var sentence = EraSentence.Of(era, year, adopted, then switch { Then.Yes => true, Then.No => false, _ => null });
        WriteResult(sheet, era, then, sentence, adopted, usual);
        var because = EraSentence.First(sentence);
        return then switch
        {
            Then.Yes => sheet.Outside(because),
            Then.No => sheet.Within(because),
            _ => sheet.CannotSay(because),
        };
    }

    private static int? WriteDates(Worksheet sheet, Era era, int? adopted)
    {
        if (era.FirstYear is { } first) sheet.Step($"First edition or start ({era.Rule})", first, "years");
        else sheet.Say($"First edition ({era.Rule}): no source gives a year");
        if (era.FirstYearLatest is { } latest && latest != era.FirstYear) sheet.Step("Latest year that a source gives", latest, "years");
        var usual = era.FirstYearLatest + era.UsualLagYears;
        if (usual is { } until) sheet.Step(era.UsualLagYears == 0 ? "A law or market date: in force everywhere from then" : $"Places usually adopt an edition within {era.UsualLagYears} years: by then it was usually in force", until, "years");
        if (adopted is { } year) sheet.Step("Adopted here, as given", year, "years");
        else if (era.UsualLagYears != 0) sheet.Say("The date in this place is unknown: nobody looked it up");
        return usual;
    }

    private static void WriteResult(Worksheet sheet, Era era, Then then, string sentence, int? adopted, int? usual)
    {
        sheet.Result("rule", era.Id);
        sheet.Result("stands_in", era.Rule);
        sheet.Result("what", era.What);
        sheet.Result("first_year", era.FirstYear);
        sheet.Result("first_year_latest", era.FirstYearLatest);
        sheet.Result("usually_by", usual);
        sheet.Result("adopted_here", adopted);
        sheet.Result("required_then", then switch { Then.Yes => "yes", Then.No => "no", _ => "cannot say" });
        sheet.Result("required_now", era.RequiredNow);
        sheet.Result("hazard", era.Hazard);
        sheet.Result("sentence", sentence);
        sheet.Caution("Adoption differs from place to place. The building department can say what applied here and when.");
        if (era.Hazard is not null) sheet.Caution("That a rule did not apply does not make a hazard less of one.");
    }
}
