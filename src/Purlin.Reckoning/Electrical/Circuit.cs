using Purlin.Journal;

namespace Purlin.Reckoning.Electrical;

/// <summary>Whether a breaker is too large for its wire, by what the circuit is for.</summary>
internal static class Circuit
{
    internal static Calculation Calculation { get; } = new()
    {
        Name = "circuit",
        Inputs =
        [
            new Input.Quantity("breaker", "circuit.input.breaker", "A", 1, 1200) { Required = true },
            ConductorInputs.Size,
            ConductorInputs.Material,
            .. ConductorInputs.Surroundings,
            new Input.Choice("use", "circuit.input.use", ["branch", "dwelling service", "equipment"]) { Required = true },
            new Input.Quantity("mca", "circuit.input.mca", "A", 0.1, 1000),
            new Input.Quantity("mocp", "circuit.input.mocp", "A", 1, 1200),
        ],
        Sources = ["NEC (NFPA 70) Table 310.16, 310.12, 110.14(C), 240.4(B), (D) and (G), 240.6(A), 110.3(B), 440.4(B)"],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        // A small conductor without an ampacity in the tables still has a largest breaker: copper-clad aluminum of 14 AWG.
        var limited = given.Text("use") == "branch" && Ampacity.Small(given) is not null;
        if ((ConductorInputs.NotAColumn(given, "insulation") ?? ConductorInputs.NotAColumn(given, "termination") ?? (limited ? null : ConductorInputs.NotInTable(given))) is { } refusal) return refusal;
        var equipment = given.Text("use") == "equipment";
        foreach (var plate in new[] { "mca", "mocp" })
        {
            if (equipment && !given.Has(plate)) return new Refusal(plate, "refused.missing", "circuit.allowed.plate-figure-when-use");
            if (!equipment && given.Has(plate)) return new Refusal(plate, new("circuit.given.given-use", ("use", given.Text("use"))), new("circuit.allowed.only-use-equipment", ("plate", plate)));
        }
        if (equipment && given.Number("mca") > given.Number("mocp")) return new Refusal("mca", new("refused.given.hundredth", ("given", given.Number("mca"), "A")), new("circuit.allowed.most-mocp", ("mocp", given.Number("mocp"), "A")));
        var sheet = new Worksheet(Calculation, given);
        sheet.Caution("circuit.caution.breaker-too-large-wire");
        return given.Text("use") switch
        {
            "equipment" => Equipment(given, sheet),
            "dwelling service" => Service(given, sheet),
            _ => Branch(given, sheet),
        };
    }

    private static Checked<Working> Branch(Given given, Worksheet sheet)
    {
        if (ConductorInputs.NotInTable(given) is not null && Ampacity.Small(given) is { } small)
        {
            sheet.NoResult("ampacity");
            return Judge(given, sheet, sheet.Result("largest_allowed", Ampacity.SmallDevice(small, sheet), "A"));
        }
        if (Ampacity.Of(given, sheet) is not { } ampacity) return TooHot(sheet);
        var largest = ampacity.LargestDevice(given, sheet, given.WholeOrNone("edition") ?? 2020);
        sheet.Result("ampacity", ampacity.Usable, "A");
        sheet.Result("largest_allowed", largest, "A");
        sheet.Caution("circuit.caution.motor-air-conditioner-heating");
        return Judge(given, sheet, largest);
    }

    private static Checked<Working> Service(Given given, Worksheet sheet)
    {
        var table = Tables.Read("electrical/dwelling_service.csv");
        sheet.From(table.Source);
        var (size, material) = (given.Text("size"), given.Text("material"));
        var largest = table.Rows.LastOrDefault(row => ConductorSize.AtLeast(size, row[material]));
        if (largest is null)
        {
            sheet.Say("circuit.step.smaller-anything-table-dwelling", ("size", ConductorSize.Words(size)), ("material", Words.Of(material)));
            sheet.NoResult("largest_allowed");
            return sheet.Outside("circuit.because.too-small-dwelling-service", ("size", ConductorSize.Words(size)), ("material", Words.Of(material)));
        }
        sheet.Result("largest_allowed", sheet.Step("circuit.step.largest-dwelling-service", largest.Number("rating"), "A", ("size", ConductorSize.Words(size)), ("material", Words.Of(material))), "A");
        sheet.Caution("circuit.caution.table-conductors-carry-whole");
        return Judge(given, sheet, largest.Number("rating"));
    }

    private static Checked<Working> Equipment(Given given, Worksheet sheet)
    {
        sheet.From("NEC (NFPA 70) 110.3(B), 240.4(G), 440.4(B)");
        sheet.Say("circuit.step.equipment-plate-plate-mca");
        if (Ampacity.Of(given, sheet) is not { } ampacity) return TooHot(sheet);
        var (breaker, mca, mocp) = (given.Number("breaker"), given.Number("mca"), given.Number("mocp"));
        sheet.Result("ampacity", ampacity.Usable, "A");
        sheet.Result("largest_allowed", sheet.Step("circuit.step.largest-breaker-plate-mocp", mocp, "A"), "A");
        sheet.Step("circuit.step.least-ampacity-plate-mca", mca, "A");
        sheet.Caution("circuit.caution.plate-says-fuse-takes");
        if (breaker > mocp) return sheet.Outside("circuit.because.breaker-larger-plate-allows", ("breaker", breaker, "A"), ("mocp", mocp, "A"));
        if (ampacity.Usable < mca) return sheet.Outside("circuit.because.conductor-carries-less-plate", ("usable", ampacity.Usable, "A"), ("mca", mca, "A"));
        if (breaker < mca) return sheet.Outside("circuit.because.breaker-smaller-plate-asks", ("breaker", breaker, "A"), ("mca", mca, "A"));
        return sheet.Within("circuit.because.breaker-within-plate-conductor", ("breaker", breaker, "A"), ("mocp", mocp, "A"), ("mca", mca, "A"));
    }

    private static Checked<Working> Judge(Given given, Worksheet sheet, double largest)
    {
        var breaker = given.Number("breaker");
        Said wire = new("circuit.wire", ("size", ConductorSize.Words(given.Text("size"))), ("material", Words.Of(given.Text("material"))));
        return breaker > largest
            ? sheet.Outside("circuit.because.breaker-too-large-most", ("breaker", breaker, "A"), ("wire", wire), ("largest", largest, "A"))
            : sheet.Within("circuit.because.breaker-within-allowed", ("breaker", breaker, "A"), ("largest", largest, "A"), ("wire", wire));
    }

    private static Checked<Working> TooHot(Worksheet sheet)
    {
        sheet.NoResult("largest_allowed");
        return sheet.Outside("circuit.because.air-around-conductor-hotter");
    }
}
