using System.Text.Json.Nodes;
using Purlin.Journal;

namespace Purlin.Reckoning.Years;

/// <summary>
/// What the replacements of a house may cost over the years, with the user's own prices. Each component fails and is replaced as its
/// published life says; the spread of the sum is worked out exactly, by convolution.
/// </summary>
public static class CostHorizon
{
    private const int MostComponents = 200;

    /// <summary>The reckoning.</summary>
    public static Calculation Calculation { get; } = new()
    {
        Name = "cost-horizon",
        Title = "Cost horizon",
        Purpose = "Expected cost of replacements a year and the spread of their sum, from your own prices.",
        Inputs =
        [
            new Input.List("components", "what may have to be replaced", [
                new Input.Text("component", "kind of component, such as furnace-gas", 60) { Required = true },
                new Input.Whole("year_installed", "year it was installed or made", 1600, 2200) { Required = true },
                new Input.Quantity("price", "what replacing it costs, your own figure in today's money", "$", 0, 10_000_000) { Required = true },
                new Input.Quantity("low", "your own low life: a tenth have failed by then", "years", 0.5, 500),
                new Input.Quantity("high", "your own high life: nine tenths have failed by then", "years", 0.6, 1000)], 1, MostComponents) { Required = true },
            new Input.Whole("year_now", "the year to reckon from", 1900, 2200) { Required = true },
            new Input.Whole("years", "how many years ahead", 1, Renewal.MostYears) { Required = true },
            new Input.Quantity("reserve", "what is to be set aside, to be held against the sum", "$", 0, 1_000_000_000),
            new Input.Whole("seed", "runs a simulation beside the exact reckoning, as a check, from this seed", 0, int.MaxValue),
        ],
        Sources = ["published lives: each kind names its own source", "renewal equation: D. R. Cox, Renewal Theory (1962), chapter 4, in whole years"],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        List<Refusal> refusals = [];
        var now = given.Whole("year_now");
        var read = given.List("components").Select((component, at) => Read(component, at, now, refusals)).ToArray();
        if (refusals.Count > 0) return Checked<Working>.Refused(refusals);
        Renewal[] renewals = [.. read.OfType<Renewal>()];
        var years = given.Whole("years");
        var sheet = new Worksheet(Calculation, given);
        foreach (var source in renewals.Select(renewal => renewal.Source).Distinct()) sheet.From(source);
        sheet.From(Calculation.Sources[1]);
        sheet.Say("Each component fails in whole years as its distribution says, given that it works today, and is replaced by a new one of the same kind");
        WriteComponents(sheet, renewals, years);
        var sums = CostSums.Over(renewals, years);
        sheet.Step(sums.IsExact ? "Sums are counted in steps of the greatest common measure of the prices: exact" : "Prices have no common measure that keeps the count small: sums are counted in steps of this size, the mean kept exact", sums.Step, "$");
        WriteYears(sheet, renewals, sums, years);
        if (given.WholeOrNone("seed") is { } seed) WriteSimulation(sheet, renewals, years, seed);
        sheet.Caution("Prices are yours, in today's money; inflation, repairs short of replacement and early failures from damage are not in it.");
        sheet.Caution("Components are taken to fail independently of each other.");
        return Judge(sheet, given, sums, years);
    }

    private static Renewal? Read(Given component, int at, int now, List<Refusal> refusals)
    {
        var (path, age) = ($"components[{at}]", now - component.Whole("year_installed"));
        if (age < 0) refusals.Add(new Refusal($"{path}.year_installed", $"{component.Whole("year_installed")}", $"the year reckoned from, {now}, or earlier"));
        var (low, high) = (component.NumberOrNone("low"), component.NumberOrNone("high"));
        if (low is null != high is null) refusals.Add(new Refusal($"{path}.{(low is null ? "low" : "high")}", "missing", "both low and high, or neither"));
        if (low >= high) refusals.Add(new Refusal($"{path}.high", $"{high}", $"more than low, {low}"));
        var life = PublishedLife.Find(component.Text("component"));
        if (low is { } tenth && high is { } ninetieth && low < high) return new Renewal(component.Text("component"), Weibull.FromTenthAndNinetieth(tenth, ninetieth), Math.Max(age, 0), component.Number("price"), $"low and high life of {component.Text("component")} given by the user");
        if (life is null) refusals.Add(new Refusal($"{path}.component", component.Text("component"), $"a kind of the table of lives, or your own low and high: {PublishedLife.Like(component.Text("component"))}"));
        else if (life.Lives is null && low is null) refusals.Add(new Refusal($"{path}.component", life.Id, "your own low and high life with it: no distribution is published for this kind"));
        return life?.Lives is { } lives ? new Renewal(life.Id, lives, Math.Max(age, 0), component.Number("price"), life.Source) : null;
    }

    private static void WriteComponents(Worksheet sheet, Renewal[] renewals, int years) =>
        sheet.Result("components", new JsonArray([.. renewals.Select(renewal => (JsonNode)new JsonObject
        {
            ["component"] = renewal.Component,
            ["age"] = Worksheet.Quantity(renewal.AgeYears, "years"),
            ["replacements"] = sheet.Step($"{renewal.Component}, {renewal.AgeYears} years old: replacements expected within {years} years", renewal.Expected(years).Sum()),
            ["expected_cost"] = Worksheet.Quantity(renewal.Price * renewal.Expected(years).Sum(), "$"),
        })]));

    private static void WriteYears(Worksheet sheet, Renewal[] renewals, CostSums sums, int years)
    {
        var replacements = renewals.Select(renewal => renewal.Expected(years)).ToArray();
        var expected = Enumerable.Range(0, years).Select(year => renewals.Select((renewal, at) => renewal.Price * replacements[at][year]).Sum()).ToArray();
        sheet.Result("expected_a_year", sheet.Step($"Expected cost a year, mean of {years} years", expected.Average(), "$"), "$");
        sheet.Result("expected_total", sheet.Step("Expected cost in all", expected.Sum(), "$"), "$");
        foreach (var (name, share) in CostSums.Shares) sheet.Result(name, sheet.Step($"Sum that {share:0 %} of such houses stay within", sums.Quantile(years, share), "$"), "$");
        sheet.Result("by_year", new JsonArray([.. Enumerable.Range(1, years).Select(year => (JsonNode)new JsonObject
        {
            ["year"] = year,
            ["expected"] = Worksheet.Quantity(expected[year - 1], "$"),
            ["cumulative"] = Worksheet.Quantity(expected[..year].Sum(), "$"),
            ["cumulative_10"] = Worksheet.Quantity(sums.Quantile(year, 0.1), "$"),
            ["cumulative_50"] = Worksheet.Quantity(sums.Quantile(year, 0.5), "$"),
            ["cumulative_90"] = Worksheet.Quantity(sums.Quantile(year, 0.9), "$"),
        })]));
        sheet.Result("exact", sums.IsExact);
    }

    private static void WriteSimulation(Worksheet sheet, Renewal[] renewals, int years, int seed)
    {
        var runs = CostSimulation.Run(renewals, years, seed);
        sheet.Result("simulated", new JsonObject
        {
            ["runs"] = runs.Length,
            ["expected_total"] = Worksheet.Quantity(sheet.Step($"Simulation of {runs.Length} houses, as a check: mean sum", runs.Average(), "$"), "$"),
            ["cumulative_10"] = Worksheet.Quantity(runs[runs.Length / 10], "$"),
            ["cumulative_50"] = Worksheet.Quantity(runs[runs.Length / 2], "$"),
            ["cumulative_90"] = Worksheet.Quantity(runs[runs.Length * 9 / 10], "$"),
        });
    }

    private static Checked<Working> Judge(Worksheet sheet, Given given, CostSums sums, int years)
    {
        var likely = sums.Quantile(years, 0.9);
        if (given.NumberOrNone("reserve") is not { } reserve) return sheet.CannotSay($"Nothing was given to hold the sum against; nine such houses in ten stay within ${likely:#,0} over {years} years.");
        return reserve >= likely
            ? sheet.Within($"${reserve:#,0} covers the replacements of nine such houses in ten over {years} years, ${likely:#,0}.")
            : sheet.Outside($"${reserve:#,0} does not cover the replacements of nine such houses in ten over {years} years, ${likely:#,0}.");
    }
}
