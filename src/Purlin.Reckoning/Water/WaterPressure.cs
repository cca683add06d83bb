using Purlin.Journal;

namespace Purlin.Reckoning.Water;

/// <summary>Whether the pressure of a house is right, what the supply can carry, and whether heated water has somewhere to grow.</summary>
public static class WaterPressure
{
    // NFPA 291: flow grows with the pressure drop to the power 0.54 (Hazen and Williams, 1/1.85).
    private const double FlowExponent = 0.54;

    private static readonly Table Limits = Tables.Read("water/pressure.csv");

    /// <summary>The reckoning.</summary>
    public static Calculation Calculation { get; } = new()
    {
        Name = "water-pressure",
        Inputs =
        [
            new Input.Quantity("static", "water-pressure.input.static", "psi", 0, 400) { Required = true },
            new Input.Quantity("residual", "water-pressure.input.residual", "psi", 0, 400),
            new Input.Quantity("flow", "water-pressure.input.flow", "gpm", 0.1, 500),
            new Input.Quantity("peak", "water-pressure.input.peak", "psi", 0, 600),
            new Input.Flag("storage_heater", "water-pressure.input.storage-heater"),
            new Input.Flag("check_valve", "water-pressure.input.check-valve"),
            new Input.Flag("expansion_control", "water-pressure.input.expansion-control"),
        ],
        Sources = [.. Limits.Rows.Select(row => row.Source).Distinct()],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        var measured = given.Number("static");
        if (given.NumberOrNone("residual") > measured)
            return new Refusal("residual", new("refused.given.hundredth", ("given", given.Number("residual"), "psi")),
                new("water-pressure.allowed.static-pressure-less", ("measured", measured, "psi")));
        if (given.Has("flow") && !given.Has("residual"))
            return new Refusal("residual", "refused.missing", "water-pressure.allowed.pressure-while-flow-ran");
        if (given.NumberOrNone("peak") < measured)
            return new Refusal("peak", new("refused.given.hundredth", ("given", given.Number("peak"), "psi")),
                new("water-pressure.allowed.static-pressure-more", ("measured", measured, "psi")));
        var sheet = new Worksheet(Calculation, given);
        var said = new List<(bool Good, Said Words)> { Static(sheet, measured) };
        if (given.NumberOrNone("residual") is { } residual) said.Add(Residual(sheet, measured, residual, given.NumberOrNone("flow")));
        if (Expansion(sheet, given, measured) is { } growth) said.Add(growth);
        sheet.Caution("water-pressure.caution.pressure-changes-hour-season");
        var wrong = said.Where(one => !one.Good).ToArray();
        return wrong.Length > 0 ? sheet.Outside(Sentence(wrong)) : sheet.Within(Sentence(said));
    }

    private static (bool, Said) Static(Worksheet sheet, double measured)
    {
        var (least, most, urgent) = (Limit(sheet, "static-least"), Limit(sheet, "static-most"),
            Limits.Rows.Single(row => row["limit"] == "static-urgent").Number("value"));
        sheet.Result("static", sheet.Step("water-pressure.step.static-pressure-nothing-running", measured, "psi"), "psi");
        sheet.Result("least", least, "psi");
        sheet.Result("most", most, "psi");
        var level = measured < least ? "low" : measured <= most ? "usual" : measured <= urgent ? "high" : "very high";
        sheet.Result("level", level);
        sheet.Result("regulator_needed", measured > most);
        if (measured > urgent)
        {
            Limit(sheet, "static-urgent");
            sheet.Caution("water-pressure.caution.pressure-hoses-water-heater");
        }
        return level switch
        {
            "low" => (false, new("water-pressure.said.below", ("measured", measured, "psi"), ("least", least, "psi"))),
            "usual" => (true, new("water-pressure.said.between", ("measured", measured, "psi"), ("least", least), ("most", most, "psi"))),
            _ => (false, new("water-pressure.said.above", ("measured", measured, "psi"), ("most", most, "psi"))),
        };
    }

    private static (bool, Said) Residual(Worksheet sheet, double measured, double residual, double? flow)
    {
        var least = Limit(sheet, "residual-least");
        sheet.Result("drop", sheet.Step("water-pressure.step.drop-while-water-ran", measured - residual, "psi"), "psi");
        sheet.Result("drop_share", measured == 0
            ? 0 : sheet.Step("water-pressure.step.share-static-pressure-lost", (measured - residual) / measured));
        if (flow is { } gallons && measured > residual)
        {
            var at = Limit(sheet, "flow-test");
            if (measured > at) sheet.Result("flow_at_20",
                sheet.Step("water-pressure.step.flow-flow-static-static",
                gallons * Math.Pow((measured - at) / (measured - residual), FlowExponent), "gpm", ("at", at, "psi"), ("again", at),
                ("flow-exponent", FlowExponent)), "gpm");
        }
        return (residual >= least,
            new("water-pressure.said.residual", ("residual", residual, "psi"), ("enough", residual >= least ? "yes" : "no"),
            ("least", least, "psi")));
    }

    private static (bool, Said)? Expansion(Worksheet sheet, Given given, double measured)
    {
        var most = Limits.Rows.Single(row => row["limit"] == "static-most").Number("value");
        var peak = given.NumberOrNone("peak");
        var closed = given.Has("check_valve") ? given.Flag("check_valve") : (bool?)null;
        var needed = given.Flag("storage_heater") && closed == true;
        var known = given.Has("storage_heater") && (closed is not null || !given.Flag("storage_heater"));
        sheet.Result("expansion_control", known ? needed ? "needed" : "not needed" : "cannot say");
        if (peak is { } reached)
            sheet.Result("rise", sheet.Step("water-pressure.step.rise-while-heater-fired", reached - measured, "psi"), "psi");
        if (peak > most && peak > measured) return (false, new("water-pressure.said.peak", ("peak", peak ?? 0, "psi")));
        if (!needed) return null;
        sheet.Say("water-pressure.step.tank-heater-behind-check");
        sheet.From("IRC P2903.4; UPC 608.3: thermal expansion control in closed systems");
        if (!given.Has("expansion_control")) return (true, "water-pressure.said.unrecorded");
        return given.Flag("expansion_control") ? (true, "water-pressure.said.controlled") : (false, "water-pressure.said.uncontrolled");
    }

    private static double Limit(Worksheet sheet, string name)
    {
        var row = Limits.Rows.Single(row => row["limit"] == name);
        sheet.From(row.Source);
        return row.Number("value");
    }

    private static Said Sentence(IEnumerable<(bool Good, Said Words)> said) =>
        new("water-pressure.because", ("said", new Said("list.apart", ("of", SaidValue.Of(said.Select(one => one.Words))))));
}
