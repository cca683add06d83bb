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
        Inputs =
        [
            new Input.List("components", "cost-horizon.input.components", [
                new Input.Text("component", "cost-horizon.input.components.component", 60) { Required = true },
                new Input.Whole("year_installed", "cost-horizon.input.components.year-installed", 1600, 2200) { Required = true },
                new Input.Quantity("price", "cost-horizon.input.components.price", "$", 0, 10_000_000) { Required = true },
                new Input.Quantity("low", "cost-horizon.input.components.low", "years", 0.5, 500),
                new Input.Quantity("high", "cost-horizon.input.components.high", "years", 0.6, 1000)], 1,
                    MostComponents) { Required = true },
            new Input.Whole("year_now", "cost-horizon.input.year-now", 1900, 2200) { Required = true },
            new Input.Whole("years", "cost-horizon.input.years", 1, Renewal.MostYears) { Required = true },
            new Input.Quantity("reserve", "cost-horizon.input.reserve", "$", 0, 1_000_000_000),
            new Input.Whole("seed", "cost-horizon.input.seed", 0, int.MaxValue),
        ],
        Sources = ["published lives: each kind names its own source",
            "renewal equation: D. R. Cox, Renewal Theory (1962), chapter 4, in whole years"],
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
        sheet.Say("cost-horizon.step.component-fails-whole-years");
        WriteComponents(sheet, renewals, years);
        var sums = CostSums.Over(renewals, years);
        sheet.Step(sums.IsExact ? new Said("cost-horizon.step.sums-counted-steps-greatest")
            : new Said("cost-horizon.step.prices-no-common-measure"), sums.Step, "$");
        WriteYears(sheet, renewals, sums, years);
        if (given.WholeOrNone("seed") is { } seed) WriteSimulation(sheet, renewals, years, seed);
        sheet.Caution("cost-horizon.caution.prices-yours-today-money");
        sheet.Caution("cost-horizon.caution.components-taken-fail");
        return Judge(sheet, given, sums, years);
    }

    private static Renewal? Read(Given component, int at, int now, List<Refusal> refusals)
    {
        var (path, age) = ($"components[{at}]", now - component.Whole("year_installed"));
        if (age < 0) refusals.Add(new Refusal($"{path}.year_installed", new("refused.given", ("given", component.Whole("year_installed"))),
            new("cost-horizon.allowed.year-reckoned-earlier", ("now", now))));
        var (low, high) = (component.NumberOrNone("low"), component.NumberOrNone("high"));
        if (low is null != high is null)
            refusals.Add(new Refusal($"{path}.{(low is null ? "low" : "high")}", "refused.missing",
                "cost-horizon.allowed.both-low-high-neither"));
        if (low >= high) refusals.Add(new Refusal($"{path}.high", new("refused.given", ("given", high ?? 0)),
            new("cost-horizon.allowed.more-low", ("low", low ?? 0))));
        var life = PublishedLife.Find(component.Text("component"));
        if (low is { } tenth && high is { } ninetieth && low < high)
            return new Renewal(component.Text("component"), Weibull.FromTenthAndNinetieth(tenth, ninetieth), Math.Max(age, 0),
                component.Number("price"), $"low and high life of {component.Text("component")} given by the user");
        if (life is null) refusals.Add(new Refusal($"{path}.component", Said.Verbatim(component.Text("component")),
            new("cost-horizon.allowed.kind-table-lives-your", ("component", PublishedLife.Like(component.Text("component"))))));
        else if (life.Lives is null && low is null)
            refusals.Add(new Refusal($"{path}.component", Said.Verbatim(life.Id), "cost-horizon.allowed.your-own-low-high"));
        return life?.Lives is { } lives ? new Renewal(life.Id, lives, Math.Max(age, 0), component.Number("price"), life.Source) : null;
    }

    private static void WriteComponents(Worksheet sheet, Renewal[] renewals, int years) =>
        sheet.Result("components", new JsonArray([.. renewals.Select(renewal => (JsonNode)new JsonObject
        {
            ["component"] = renewal.Component,
            ["age"] = Worksheet.Quantity(renewal.AgeYears, "years"),
            ["replacements"] = sheet.Step("cost-horizon.step.years-old-replacements-expected", renewal.Expected(years).Sum(), "",
                ("component", renewal.Component), ("age-years", renewal.AgeYears), ("years", years)),
            ["expected_cost"] = Worksheet.Quantity(renewal.Price * renewal.Expected(years).Sum(), "$"),
        })]));

    private static void WriteYears(Worksheet sheet, Renewal[] renewals, CostSums sums, int years)
    {
        var replacements = renewals.Select(renewal => renewal.Expected(years)).ToArray();
        var expected = Enumerable.Range(0, years)
            .Select(year => renewals.Select((renewal, at) => renewal.Price * replacements[at][year]).Sum()).ToArray();
        sheet.Result("expected_a_year", sheet.Step("cost-horizon.step.expected-cost-year-mean", expected.Average(), "$", ("years", years)),
            "$");
        sheet.Result("expected_total", sheet.Step("cost-horizon.step.expected-cost", expected.Sum(), "$"), "$");
        foreach (var (name, share) in CostSums.Shares)
            sheet.Result(name, sheet.Step("cost-horizon.step.sum-such-houses-stay", sums.Quantile(years, share), "$", ("share", share)),
                "$");
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
            ["expected_total"] = Worksheet.Quantity(sheet.Step("cost-horizon.step.simulation-houses-check-mean", runs.Average(), "$",
                ("count", runs.Length)), "$"),
            ["cumulative_10"] = Worksheet.Quantity(runs[runs.Length / 10], "$"),
            ["cumulative_50"] = Worksheet.Quantity(runs[runs.Length / 2], "$"),
            ["cumulative_90"] = Worksheet.Quantity(runs[runs.Length * 9 / 10], "$"),
        });
    }

    private static Checked<Working> Judge(Worksheet sheet, Given given, CostSums sums, int years)
    {
        var likely = sums.Quantile(years, 0.9);
        if (given.NumberOrNone("reserve") is not { } reserve)
            return sheet.CannotSay("cost-horizon.because.nothing-given-hold-sum", ("likely", likely), ("years", years));
        return reserve >= likely
            ? sheet.Within("cost-horizon.because.covers-replacements-nine-such", ("reserve", reserve), ("years", years), ("likely", likely))
            : sheet.Outside("cost-horizon.because.does-not-cover-replacements", ("reserve", reserve), ("years", years), ("likely", likely));
    }
}
