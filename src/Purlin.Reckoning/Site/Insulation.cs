using System.Collections.Immutable;
using Purlin.Journal;

namespace Purlin.Reckoning.Site;

/// <summary>Thermal resistance of insulation from its depth, against what an edition of the energy code asks for in a zone.</summary>
public static class Insulation
{
    private static readonly Table Materials = Tables.Read("site/r-per-inch.csv");
    private static readonly Table Required = Tables.Read("site/insulation.csv");

    /// <summary>The reckoning.</summary>
    public static Calculation Calculation { get; } = new()
    {
        Name = "insulation",
        Inputs =
        [
            new Input.List("layers", "insulation.input.layers", [
                new Input.Choice("material", "insulation.input.layers.material",
                [.. Materials.Rows.Select(row => row["material"])]) { Required = true },
                new Input.Quantity("depth", "insulation.input.layers.depth", "in", 0, 60) { Required = true },
                new Input.Flag("continuous", "insulation.input.layers.continuous")], 1, 12) { Required = true },
            new Input.Choice("climate_zone", "insulation.input.climate-zone",
                [.. Required.Rows.Select(row => row["zone"]).Distinct().Order(StringComparer.Ordinal)]) { Required = true },
            new Input.Choice("edition", "insulation.input.edition", [.. Required.Rows.Select(row => row["edition"]).Distinct()]),
            new Input.Choice("assembly", "insulation.input.assembly",
                ["ceiling", "wood wall", "floor", "basement wall", "crawl wall"]) { Required = true },
            new Input.Group("thin", "insulation.input.thin", [
                new Input.Quantity("share", "insulation.input.thin.share", "%", 0.1, 99.9) { Required = true },
                new Input.Quantity("r", "insulation.input.thin.r", "", 0.5, 60) { Required = true }]),
        ],
        Sources = [Materials.Source, .. Required.Rows.Select(row => row.Source).Distinct()],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        var sheet = new Worksheet(Calculation, given);
        sheet.From(Materials.Source);
        var edition = sheet.WordOr("edition", "2021", "insulation.why.newest-hand-house-held");
        var (cavity, continuous, low, high) = Layers(sheet, given);
        sheet.Result("r_low", low);
        sheet.Result("r_high", high);
        var total = cavity + continuous;
        sheet.Result("r", sheet.Step("insulation.step.layers", total));
        if (given.Group("thin") is { } thin)
        {
            var share = thin.Number("share") / 100;
            var whole = sheet.Step("insulation.step.whole-share-share-thin", 1 / ((1 - share) / total + share / thin.Number("r")));
            if (total > 0) (cavity, continuous, total) = (cavity * whole / total, continuous * whole / total, whole);
        }
        sheet.Result("r_effective", total);
        if (Required.Rows.FirstOrDefault(row => row["edition"] == edition && row["zone"] == given.Text("climate_zone")
            && row["assembly"] == given.Text("assembly")) is not { } row)
            return new Refusal("edition", Said.Verbatim(edition), "insulation.allowed.edition-with-part");
        sheet.From(row.Source);
        sheet.Caution("insulation.caution.depth-times-inch-estimate");
        sheet.Caution("insulation.caution.less-newer-code-asks");
        return Judge(sheet, Options(row["options"]), cavity, continuous,
            new("insulation.where", ("edition", edition), ("zone", given.Text("climate_zone")),
            ("assembly", Words.Of(given.Text("assembly")))), low, high);
    }

    private static (double Cavity, double Continuous, double Low, double High) Layers(Worksheet sheet, Given given)
    {
        double cavity = 0, continuous = 0, low = 0, high = 0;
        foreach (var layer in given.List("layers"))
        {
            var row = Materials.Rows.Single(row => row["material"] == layer.Text("material"));
            var depth = layer.Number("depth");
            var r = sheet.Step("insulation.step.inch-published", depth * row.Number("typical"), "", ("material", row["material"]),
                ("depth", depth, "in"), ("typical", row.Number("typical")), ("low", row.Number("low")), ("high", row.Number("high")));
            (low, high) = (low + depth * row.Number("low"), high + depth * row.Number("high"));
            if (layer.Flag("continuous")) continuous += r;
            else cavity += r;
            if (row["note"].Contains("asbestos", StringComparison.Ordinal))
                sheet.Caution("insulation.caution.vermiculite-may-hold-asbestos");
        }
        return (cavity, continuous, low, high);
    }

    private static Checked<Working> Judge(Worksheet sheet, ImmutableArray<(double Cavity, double Continuous)> options, double cavity,
        double continuous, Said where, double low, double high)
    {
        if (options.Contains((0, 0)))
        {
            sheet.Say("insulation.step.required-none", ("where", where));
            sheet.Result("required", 0);
            sheet.Result("share", null);
            return sheet.Within("insulation.because.asks-none", ("where", where));
        }
        var shares = options.Select(option => Share(option, cavity, continuous)).ToArray();
        Said words = new("insulation.options", ("options", SaidValue.Of(options.Select(InWords))));
        sheet.Say("insulation.step.required", ("where", where), ("words", words));
        sheet.Sentence("options", words);
        sheet.Result("required", options[0].Cavity + options[0].Continuous);
        var share = sheet.Step("insulation.step.share-what-required-option", shares.Max());
        sheet.Result("share", share);
        var total = cavity + continuous;
        if (share >= 1 - 1e-9) return sheet.Within("insulation.because.about-least", ("total", total), ("words", words), ("where", where));
        // Typical values fall short where the best published ones would do: a field estimate cannot tell.
        return total > 0 && share * high / Math.Max(total, 1e-9) >= 1 && low < high
            ? sheet.CannotSay("insulation.because.about-lies-close-range", ("total", total), ("words", words), ("where", where))
            : sheet.Outside("insulation.because.about-less", ("total", total), ("words", words), ("where", where));
    }

    // What continuous insulation there is beyond the option's share also counts for the cavity.
    private static double Share((double Cavity, double Continuous) option, double cavity, double continuous)
    {
        var spare = Math.Max(0, continuous - option.Continuous);
        var first = option.Cavity == 0 ? double.PositiveInfinity : (cavity + spare) / option.Cavity;
        var second = option.Continuous == 0 ? double.PositiveInfinity : continuous / option.Continuous;
        return Math.Min(first, second);
    }

    private static ImmutableArray<(double Cavity, double Continuous)> Options(string cell) =>
        [.. cell.Split('|').Select(option => option.Split('+')).Select(parts => (Read(parts[0]), parts.Length > 1 ? Read(parts[1]) : 0))];

    private static double Read(string text) => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);

    private static Said InWords((double Cavity, double Continuous) option) => option switch
    {
        (_, 0) => new("insulation.cavity", ("cavity", option.Cavity)),
        (0, _) => new("insulation.continuous", ("continuous", option.Continuous)),
        _ => new("insulation.both", ("cavity", option.Cavity), ("continuous", option.Continuous)),
    };
}
