using Purlin.Journal;

namespace Purlin.Reckoning.Electrical;

/// <summary>Whether a breaker is too large for its wire, by what the circuit is for.</summary>
internal static class Circuit
{
    internal static Calculation Calculation { get; } = new()
    {
        Name = "circuit",
        Title = "Wiring: breaker against conductor",
        Purpose = "Whether a breaker is too large for its conductor, for a branch circuit, a dwelling service or equipment with a plate.",
        Inputs =
        [
            new Input.Quantity("breaker", "Rating of the breaker or fuse", "A", 1, 1200) { Required = true },
            ConductorInputs.Size,
            ConductorInputs.Material,
            .. ConductorInputs.Surroundings,
            new Input.Choice("use", "What the circuit is for", ["branch", "dwelling service", "equipment"]) { Required = true },
            new Input.Quantity("mca", "Minimum circuit ampacity on the equipment's plate", "A", 0.1, 1000),
            new Input.Quantity("mocp", "Largest overcurrent device on the equipment's plate", "A", 1, 1200),
        ],
        Sources = ["NEC (NFPA 70) Table 310.16, 310.12, 110.14(C), 240.4(B), (D) and (G), 240.6(A), 110.3(B), 440.4(B)"],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        if ((ConductorInputs.NotAColumn(given, "insulation") ?? ConductorInputs.NotAColumn(given, "termination") ?? ConductorInputs.NotInTable(given)) is { } refusal) return refusal;
        var equipment = given.Text("use") == "equipment";
        foreach (var plate in new[] { "mca", "mocp" })
        {
            if (equipment && !given.Has(plate)) return new Refusal(plate, "missing", "the plate's figure in A, when use is equipment");
            if (!equipment && given.Has(plate)) return new Refusal(plate, $"given with use {given.Text("use")}", $"{plate} only with use equipment");
        }
        if (equipment && given.Number("mca") > given.Number("mocp")) return new Refusal("mca", $"{given.Number("mca"):0.##} A", $"at most mocp, {given.Number("mocp"):0.##} A");
        var sheet = new Worksheet(Calculation, given);
        sheet.Caution("A breaker too large for its wire lets the wire overheat before it trips. It is exchanged only by a licensed electrician.");
        return given.Text("use") switch
        {
            "equipment" => Equipment(given, sheet),
            "dwelling service" => Service(given, sheet),
            _ => Branch(given, sheet),
        };
    }

    private static Checked<Working> Branch(Given given, Worksheet sheet)
    {
        if (Ampacity.Of(given, sheet) is not { } ampacity) return TooHot(sheet);
        var largest = ampacity.LargestDevice(given, sheet, given.WholeOrNone("edition") ?? 2020);
        sheet.Result("ampacity", ampacity.Usable, "A");
        sheet.Result("largest_allowed", largest, "A");
        sheet.Caution("Motor, air-conditioner, heating and tap circuits may lawfully have a larger device (240.4(E) and (G)): read the plate before calling it overfused.");
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
            sheet.Say($"{ConductorSize.Words(size)} {material} is smaller than anything in the table of dwelling services, which begins at 100 A");
            sheet.NoResult("largest_allowed");
            return sheet.Outside($"{ConductorSize.Words(size)} {material} is too small for any dwelling service of 100 A or more.");
        }
        sheet.Result("largest_allowed", sheet.Step($"Largest dwelling service on {ConductorSize.Words(size)} {material}", largest.Number("rating"), "A"), "A");
        sheet.Caution("The table is for conductors that carry the whole load of one dwelling, where no correction for heat or number is needed.");
        return Judge(given, sheet, largest.Number("rating"));
    }

    private static Checked<Working> Equipment(Given given, Worksheet sheet)
    {
        sheet.From("NEC (NFPA 70) 110.3(B), 240.4(G), 440.4(B)");
        sheet.Say("Equipment with a plate: the plate's MCA sizes the wire, its MOCP caps the breaker; the small-conductor limits do not apply (240.4(G))");
        if (Ampacity.Of(given, sheet) is not { } ampacity) return TooHot(sheet);
        var (breaker, mca, mocp) = (given.Number("breaker"), given.Number("mca"), given.Number("mocp"));
        sheet.Result("ampacity", ampacity.Usable, "A");
        sheet.Result("largest_allowed", sheet.Step("Largest breaker by the plate (MOCP)", mocp, "A"), "A");
        sheet.Step("Least ampacity by the plate (MCA)", mca, "A");
        sheet.Caution("A plate that says fuse takes fuses, unless a breaker is marked for such use (from memory).");
        if (breaker > mocp) return sheet.Outside($"The {breaker:0} A breaker is larger than the {mocp:0} A the plate allows.");
        if (ampacity.Usable < mca) return sheet.Outside($"The conductor carries {ampacity.Usable:0.#} A, less than the {mca:0.#} A the plate asks for.");
        if (breaker < mca) return sheet.Outside($"The {breaker:0} A breaker is smaller than the {mca:0.#} A the plate asks for; it will trip in ordinary running.");
        return sheet.Within($"The {breaker:0} A breaker is within the plate's {mocp:0} A, and the conductor carries the {mca:0.#} A asked for.");
    }

    private static Checked<Working> Judge(Given given, Worksheet sheet, double largest)
    {
        var breaker = given.Number("breaker");
        var wire = $"{ConductorSize.Words(given.Text("size"))} {given.Text("material")}";
        return breaker > largest
            ? sheet.Outside($"The {breaker:0} A breaker is too large for {wire}; at most {largest:0} A is allowed.")
            : sheet.Within($"The {breaker:0} A breaker is within the {largest:0} A allowed for {wire}.");
    }

    private static Checked<Working> TooHot(Worksheet sheet)
    {
        sheet.NoResult("largest_allowed");
        return sheet.Outside("The air around the conductor is hotter than its insulation may be used in.");
    }
}
