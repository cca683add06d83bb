namespace Purlin.Reckoning.Electrical;

/// <summary>
/// What a conductor may carry: its table value at the rating of its insulation, corrected for heat around it and company beside it,
/// and never more than its terminals bear.
/// </summary>
internal sealed record Ampacity
{
    private const string File = "electrical/ampacity.csv";

    // NEC 240.4(B): the next standard rating above an odd ampacity may be used up to this.
    private const double NextSizeUpTo = 800;

    /// <summary>The table at the insulation's rating.</summary>
    internal required double Table { get; init; }

    /// <summary>After correction for ambient temperature and number.</summary>
    internal required double Adjusted { get; init; }

    /// <summary>The adjusted value or that of the terminals, whichever is less.</summary>
    internal required double Usable { get; init; }

    internal static TableRow? Row(string material, string size) => Tables.Read(File).Rows.FirstOrDefault(row => row["material"] == material && row["size"] == size);

    /// <summary>None when the insulation may not be used in that heat.</summary>
    internal static Ampacity? Of(Given given, Worksheet sheet)
    {
        var row = Row(given.Text("material"), given.Text("size"))!;
        var edition = (int)sheet.Or("edition", 2023, "", "ampacity.why.figures-not-changed-since");
        var prefix = edition < 2011 ? "before_2011_" : "amps_";
        var insulation = (int)Math.Round(given.Number("insulation"));
        var termination = (int)Math.Round(sheet.Or("termination", Presumed(given.Text("size")), "°C", "ampacity.why.nec-awg-above-unless"));
        sheet.From(row.IsFromMemory && insulation == 90 ? row.Source : Tables.Read(File).Source);
        var table = sheet.Step("ampacity.step.column", row.Number(prefix + insulation), "A", ("size", ConductorSize.Words(given.Text("size"))), ("material", Words.Of(given.Text("material"))), ("insulation", insulation, "°C"));
        if (Ambient(given, sheet, insulation) is not { } factor) return null;
        var adjusted = sheet.Step("ampacity.step.adjusted-table-ambient-factor", table * factor * Company(given, sheet), "A");
        var terminal = row.Number(prefix + Math.Min(insulation, termination));
        sheet.From("NEC (NFPA 70) 110.14(C)");
        return new Ampacity { Table = table, Adjusted = adjusted, Usable = sheet.Step("ampacity.step.not-more-terminals-bear", Math.Min(adjusted, terminal), "A", ("termination", termination, "°C"), ("terminal", terminal, "A")) };
    }

    /// <summary>The largest breaker a conductor of this ampacity may have; the small conductors have limits of their own.</summary>
    internal double LargestDevice(Given given, Worksheet sheet, int edition)
    {
        sheet.From("NEC (NFPA 70) 240.4(B), 240.6(A)");
        var standard = StandardRatings.In(edition).Select(row => row.Number("amps")).ToList();
        var device = Usable <= NextSizeUpTo && standard.Exists(rating => rating >= Usable)
            ? standard.First(rating => rating >= Usable)
            : standard.LastOrDefault(rating => rating <= Usable);
        sheet.Step("ampacity.step.next-standard-rating", device, "A");
        return Small(given) is { } small && small.Number("amps") < device ? SmallDevice(small, sheet) : device;
    }

    /// <summary>The row of a small conductor, which has a limit of its own; none for others.</summary>
    internal static TableRow? Small(Given given) =>
        Tables.Read("electrical/small_conductors.csv").Rows.FirstOrDefault(row => row["size"] == given.Text("size") && row["material"] == given.Text("material"));

    /// <summary>The largest breaker of a small conductor.</summary>
    internal static double SmallDevice(TableRow small, Worksheet sheet)
    {
        sheet.From($"NEC (NFPA 70) {small["section"]}");
        return sheet.Step("ampacity.step.small-conductor-not-more", small.Number("amps"), "A", ("section", small["section"]));
    }

    private static double Presumed(string size) => ConductorSize.AtLeast(size, "1/0") ? 75 : 60;

    private static double? Ambient(Given given, Worksheet sheet, int insulation)
    {
        // The table's base, 30 °C.
        var fahrenheit = sheet.Or("ambient", 86, "°F", "ampacity.why.table-own-base");
        var celsius = (fahrenheit - 32) / 1.8;
        var table = Tables.Read("electrical/ambient_correction.csv");
        var row = table.Rows.FirstOrDefault(row => celsius <= row.Number("up_to_celsius") + 1e-9);
        if (row?.NumberOrNone($"factor_{insulation}") is not { } factor)
        {
            sheet.From(table.Source);
            sheet.Say("ampacity.step.code-no-factor-insulation", ("celsius", celsius, "°C"), ("insulation", insulation, "°C"));
            return null;
        }
        if (factor.Equals(1)) return factor;
        sheet.From(table.Source);
        return sheet.Step("ampacity.step.ambient-factor", factor, "", ("celsius", celsius, "°C"));
    }

    private static double Company(Given given, Worksheet sheet)
    {
        var count = sheet.Or("current_carrying", 3, "", "ampacity.why.table-own-limit");
        var row = Tables.Read("electrical/count_adjustment.csv").Rows.First(row => count <= row.Number("up_to_count"));
        if (row.Number("percent").Equals(100)) return 1;
        sheet.From(row.Source);
        return sheet.Step("ampacity.step.number-factor-current-carrying", row.Number("percent") / 100, "", ("count", count));
    }
}
