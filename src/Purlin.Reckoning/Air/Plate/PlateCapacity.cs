using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Purlin.Journal;
using Purlin.Reckoning.Quantities;

namespace Purlin.Reckoning.Air.Plate;

/// <summary>
/// Nominal capacity: read where the plate prints it, otherwise at most inferred from the digits of the model number, with the reason.
/// A code is a run of two or three digits of its own, or the last three of a longer run. Two that differ are no code at all.
/// </summary>
internal static partial class PlateCapacity
{
    internal static PlateField? Find(PlateText text, string? model, bool burnsFuel)
    {
        if (Printed(text) is { } printed) return printed;
        if (model is null || burnsFuel) return null;
        var codes = Codes(model);
        var mended = false;
        if (codes.Count == 0)
        {
            // A letter between two digits that cameras take for a digit may have been one.
            var digits = Between().Replace(model, match => PlateNumber.Digits(match.Value));
            mended = digits != model;
            codes = mended ? Codes(digits) : codes;
        }
        if (codes.Select(code => code.Number("tons")).Distinct().Count() != 1) return null;
        var row = codes[0];
        var heat = HeatRate.FromTons(row.Number("tons"));
        Said reason = new("nameplate.reason.capacity-digits", ("digits", row["code"]),
            ("kind", row["kind"] == "one more" ? "odd" : "usual"), ("letters", mended ? "yes" : "no"));
        return new PlateField(JsonValue.Create(heat.BtuPerHour), "Btu/h", "inferred", reason, model);
    }

    /// <summary>For a fuel-burning appliance: thousands of Btu/h of input in the model number.</summary>
    internal static PlateField? FuelInput(string? model)
    {
        if (model is null) return null;
        // Inputs of house furnaces run from 40 to 140 thousand Btu/h in steps of five (common practice).
        var inputs = Runs().Matches(model).Select(match => match.Value).Where(run => run.Length == 3)
            .Select(run => int.Parse(run, System.Globalization.CultureInfo.InvariantCulture))
            .Where(value => value is >= 40 and <= 140 && value % 5 == 0).Distinct().ToList();
        return inputs.Count == 1
            ? new PlateField(JsonValue.Create(1000.0 * inputs[0]), "Btu/h", "inferred",
            new("nameplate.reason.input-digits", ("digits", $"{inputs[0]:000}")), model)
            : null;
    }

    private static PlateField? Printed(PlateText text)
    {
        foreach (var segment in text.Behind("capacity"))
            if (segment.Contains("BTU", StringComparison.Ordinal)
                && PlateNumber.First(segment) is { Value: >= 5_000 and <= 600_000 } number)
                return new PlateField(JsonValue.Create(number.Value), "Btu/h", number.Confidence, "nameplate.reason.label-capacity",
                    number.AsRead);
        var tons = Tons().Match(text.Raw);
        return tons.Success && PlateNumber.Of(tons.Groups["tons"].Value) is { Value: >= 0.5 and <= 50 } printed
            ? new PlateField(JsonValue.Create(HeatRate.FromTons(printed.Value).BtuPerHour), "Btu/h", printed.Confidence,
            "nameplate.reason.tons", tons.Value)
            : null;
    }

    private static List<TableRow> Codes(string model)
    {
        List<TableRow> found = [];
        foreach (Match run in Runs().Matches(model))
        {
            var code = run.Value.Length switch { 2 => "0" + run.Value, 3 => run.Value, > 3 => run.Value[^3..], _ => "" };
            if (Tables.Read("air/capacity_codes.csv").Rows.FirstOrDefault(row => row["code"] == code) is { } row) found.Add(row);
        }
        return found;
    }

    [GeneratedRegex("[0-9]+", RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Runs();

    [GeneratedRegex("(?<=[0-9])[OILSB](?=[0-9])", RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Between();

    [GeneratedRegex(@"(?<![A-Z0-9.])(?<tons>[0-9]{1,2}(?:\.[0-9]{1,2})?)[ -]*TONS?(?![A-Z])",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Tons();
}
