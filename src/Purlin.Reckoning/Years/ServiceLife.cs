using Purlin.Journal;

namespace Purlin.Reckoning.Years;

/// <summary>How long a component may still last: of those as old and alive today, how many fail when. A band, never a date.</summary>
public static class ServiceLife
{
    /// <summary>The reckoning.</summary>
    public static Calculation Calculation { get; } = new()
    {
        Name = "service-life",
        Title = "Service life",
        Purpose = "Chance that a component of this kind and age fails within 1, 5 and 10 years, given that it works today.",
        Inputs =
        [
            new Input.Text("component", "kind of component, such as furnace-gas", 60) { Required = true },
            new Input.Whole("year_installed", "year it was installed or made", 1600, 2200) { Required = true },
            new Input.Whole("year_now", "the year to reckon from", 1900, 2200) { Required = true },
            new Input.Choice("condition", "how worn it looks for its age", ["better", "as expected", "worse"]),
        ],
        Sources = ["published lives: each kind names its own source", "survival: U.S. Energy Information Administration, National Energy Modeling System, residential module, function SVRTE"],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        var age = given.Whole("year_now") - given.Whole("year_installed");
        if (age < 0) return new Refusal("year_installed", $"{given.Whole("year_installed")}", $"the year reckoned from, {given.Whole("year_now")}, or earlier");
        if (PublishedLife.Find(given.Text("component")) is not { } life) return new Refusal("component", given.Text("component"), $"a kind of the table of lives: {PublishedLife.Like(given.Text("component"))}");
        var sheet = new Worksheet(Calculation, given);
        sheet.From(life.Source);
        sheet.Result("component", life.Id);
        sheet.Result("age", sheet.Step($"Age: {given.Whole("year_now")} − {given.Whole("year_installed")}", age, "years"), "years");
        WritePublished(sheet, life);
        Condition(sheet, given);
        sheet.Caution("A published life is an average over many houses. It says nothing certain of this one, which may fail tomorrow or outlast it by far.");
        return life.Lives is { } lives ? Reckon(sheet, life, lives, age) : WithoutDistribution(sheet, life, age);
    }

    private static void WritePublished(Worksheet sheet, PublishedLife life)
    {
        foreach (var (name, years) in new[] { ("low", life.LowYears), ("typical", life.TypicalYears), ("high", life.HighYears) })
        {
            sheet.Result(name, years is { } known ? Worksheet.Quantity(known, "years") : null);
            if (years is { } published) sheet.Step($"{life.Name}: published {name} life", published, "years");
        }
        if (life.Note.Length > 0) sheet.Say($"{life.Name}: {life.Note}");
    }

    private static void Condition(Worksheet sheet, Given given)
    {
        var condition = sheet.WordOr("condition", "as expected", "the published lives do not tell worn from well kept");
        if (condition == "as expected") return;
        sheet.Say($"It looks {condition} than expected; the published lives do not know that, so the figures are those of all of its age");
        if (condition == "worse") sheet.Caution("It looks worse than its age. What was seen counts for more than any published life.");
    }

    private static Checked<Working> Reckon(Worksheet sheet, PublishedLife life, Weibull lives, int age)
    {
        sheet.From(Calculation.Sources[1]);
        sheet.From(life.Derivation);
        sheet.Say($"Distribution: {life.Derivation}");
        sheet.Result("shape", sheet.Step("Weibull shape", lives.Shape));
        sheet.Result("scale", sheet.Step("Weibull scale", lives.ScaleYears, "years"), "years");
        sheet.Result("delay", lives.DelayYears, "years");
        sheet.Result("survival", sheet.Step($"Of new ones, alive at {age} years: exp(−(age/scale)^shape)", lives.Survival(age)));
        foreach (var years in new[] { 1, 5, 10 })
            sheet.Result($"fails_within_{years}", sheet.Step($"Of those alive today, failed within {years}: 1 − S({age} + {years})/S({age})", lives.FailsWithin(age, years)));
        var median = sheet.Result("years_left_median", sheet.Step("Half of those alive today have failed after", lives.YearsLeft(age, 0.5), "years"), "years");
        var tenth = sheet.Result("years_left_10", sheet.Step("A tenth of them after", lives.YearsLeft(age, 0.1), "years"), "years");
        var ninetieth = sheet.Result("years_left_90", sheet.Step("Nine tenths of them after", lives.YearsLeft(age, 0.9), "years"), "years");
        var middle = lives.YearsLeft(0, 0.5);
        var band = $"of those working today, one in ten fails within {Years(tenth)}, half last more than {Years(median)} and one in ten lasts more than {Years(ninetieth)}";
        return age <= middle
            ? sheet.Within($"At {Age(age)} it has not passed the age by which half of its kind have been replaced, about {middle:0}; {band}.")
            : sheet.Outside($"At {Age(age)} it has passed the age by which half of its kind have been replaced, about {middle:0}; {band}.");
    }

    private static Checked<Working> WithoutDistribution(Worksheet sheet, PublishedLife life, int age)
    {
        foreach (var name in new[] { "shape", "scale", "delay", "survival", "fails_within_1", "fails_within_5", "fails_within_10", "years_left_median", "years_left_10", "years_left_90" }) sheet.Result(name, null);
        sheet.Say("No distribution is published, so no chance of failure is reckoned");
        return life.HighYears is { } high && age > high
            ? sheet.Outside($"At {Age(age)} it has passed the longest life that is named, {high:0} years.")
            : sheet.CannotSay($"Too little is published on how long this lasts to say how likely it is to fail{(life.LowYears is { } low ? $"; {low:0} years is the least that is named" : "")}.");
    }

    private static string Age(int age) => age == 1 ? "1 year" : $"{age} years";

    private static string Years(double years) => Math.Round(years) <= 1 ? "a year" : $"{years:0} years";
}
