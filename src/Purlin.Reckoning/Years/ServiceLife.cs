using Purlin.Journal;

namespace Purlin.Reckoning.Years;

/// <summary>How long a component may still last: of those as old and alive today, how many fail when. A band, never a date.</summary>
public static class ServiceLife
{
    /// <summary>The reckoning.</summary>
    public static Calculation Calculation { get; } = new()
    {
        Name = "service-life",
        Inputs =
        [
            new Input.Text("component", "service-life.input.component", 60) { Required = true },
            new Input.Whole("year_installed", "service-life.input.year-installed", 1600, 2200) { Required = true },
            new Input.Whole("year_now", "service-life.input.year-now", 1900, 2200) { Required = true },
            new Input.Choice("condition", "service-life.input.condition", ["better", "as expected", "worse"]),
        ],
        Sources = ["published lives: each kind names its own source",
            "survival: U.S. Energy Information Administration, National Energy Modeling System, residential module, function SVRTE"],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        var age = given.Whole("year_now") - given.Whole("year_installed");
        if (age < 0) return new Refusal("year_installed", new("refused.given", ("given", given.Whole("year_installed"))),
            new("service-life.allowed.year-reckoned-earlier", ("year-now", given.Whole("year_now"))));
        if (PublishedLife.Find(given.Text("component")) is not { } life)
            return new Refusal("component", Said.Verbatim(given.Text("component")),
                new("service-life.allowed.kind-table-lives", ("component", PublishedLife.Like(given.Text("component")))));
        var sheet = new Worksheet(Calculation, given);
        sheet.From(life.Source);
        sheet.Result("component", life.Id);
        sheet.Result("age", sheet.Step("service-life.step.age", age, "years", ("year-now", given.Whole("year_now")),
            ("year-installed", given.Whole("year_installed"))), "years");
        WritePublished(sheet, life);
        Condition(sheet, given);
        sheet.Caution("service-life.caution.published-life-average-over");
        return life.Lives is { } lives ? Reckon(sheet, life, lives, age) : WithoutDistribution(sheet, life, age);
    }

    private static void WritePublished(Worksheet sheet, PublishedLife life)
    {
        foreach (var (name, years) in new[] { ("low", life.LowYears), ("typical", life.TypicalYears), ("high", life.HighYears) })
        {
            sheet.Result(name, years is { } known ? Worksheet.Quantity(known, "years") : null);
            if (years is { } published)
                sheet.Step("service-life.step.published-life", published, "years", ("life", Words.Of(life.Name)),
                    ("which", Words.Of(name)));
        }
        if (life.Note.Length > 0) sheet.Say("service-life.step.note", ("life", Words.Of(life.Name)), ("note", life.Note));
    }

    private static void Condition(Worksheet sheet, Given given)
    {
        var condition = sheet.WordOr("condition", "as expected", "service-life.why.published-lives-do-not");
        if (condition == "as expected") return;
        sheet.Say("service-life.step.looks-expected-published-lives", ("condition", Words.Of(condition)));
        if (condition == "worse") sheet.Caution("service-life.caution.looks-worse-age-what");
    }

    private static Checked<Working> Reckon(Worksheet sheet, PublishedLife life, Weibull lives, int age)
    {
        sheet.From(Calculation.Sources[1]);
        sheet.From(life.Derivation);
        sheet.Say("service-life.step.distribution", ("derivation", life.Derivation));
        sheet.Result("shape", sheet.Step("service-life.step.weibull-shape", lives.Shape));
        sheet.Result("scale", sheet.Step("service-life.step.weibull-scale", lives.ScaleYears, "years"), "years");
        sheet.Result("delay", lives.DelayYears, "years");
        sheet.Result("survival", sheet.Step("service-life.step.new-ones-alive-years", lives.Survival(age), "", ("age", age)));
        foreach (var years in new[] { 1, 5, 10 })
            sheet.Result($"fails_within_{years}",
                sheet.Step("service-life.step.those-alive-today-failed", lives.FailsWithin(age, years), "", ("years", years),
                ("age", age)));
        var median = sheet.Result("years_left_median",
            sheet.Step("service-life.step.half-those-alive-today", lives.YearsLeft(age, 0.5), "years"), "years");
        var tenth = sheet.Result("years_left_10", sheet.Step("service-life.step.tenth-them-after", lives.YearsLeft(age, 0.1), "years"),
            "years");
        var ninetieth = sheet.Result("years_left_90",
            sheet.Step("service-life.step.nine-tenths-them-after", lives.YearsLeft(age, 0.9), "years"), "years");
        var middle = lives.YearsLeft(0, 0.5);
        var band = Band(lives, age, tenth, median, ninetieth);
        return age <= middle
            ? sheet.Within("service-life.because.not-passed-age-half", ("age", Age(age)), ("middle", middle), ("band", band))
            : sheet.Outside("service-life.because.passed-age-half-kind", ("age", Age(age)), ("middle", middle), ("band", band));
    }

    private static Checked<Working> WithoutDistribution(Worksheet sheet, PublishedLife life, int age)
    {
        foreach (var name in new[] { "shape", "scale", "delay", "survival", "fails_within_1", "fails_within_5", "fails_within_10",
            "years_left_median", "years_left_10", "years_left_90" }) sheet.Result(name, null);
        sheet.Say("service-life.step.no-distribution-published-no");
        return life.HighYears is { } high && age > high
            ? sheet.Outside("service-life.because.passed-longest-life-named", ("age", Age(age)), ("high", high))
            : sheet.CannotSay("service-life.because.too-little-published-how",
                ("least", life.LowYears is { } low ? new Said("service-life.least", ("years", low)) : Said.Verbatim("")));
    }

    /// <summary>
    /// What the figures come to in words: of a very old thing its rank alone, of an old one the share that fails soon, else the spread of
    /// years left.
    /// </summary>
    private static Said Band(Weibull lives, int age, double tenth, double median, double ninetieth)
    {
        var alive = lives.Survival(age);
        if (alive < 0.02) return new Said("service-life.band.oldest", ("older", alive < 0.005 ? 99 : Math.Floor(100 * (1 - alive))));
        return tenth < 1
            ? new Said("service-life.band.soon", ("one", Math.Round(10 * lives.FailsWithin(age, 1))),
            ("five", Math.Round(10 * lives.FailsWithin(age, 5))))
            : new Said("service-life.band.spread", ("tenth", Years(tenth)), ("median", Years(median)), ("ninetieth", Years(ninetieth)));
    }

    private static Said Age(int age) => new("time.years", ("years", age));

    private static Said Years(double years) => new("time.years.about", ("years", Math.Round(years)));
}
