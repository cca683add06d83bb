using Purlin.Journal;

namespace Purlin.Reckoning.Electrical;

/// <summary>What a conductor may carry and the largest breaker that protects it.</summary>
internal static class Conductor
{
    internal static Calculation Calculation { get; } = new()
    {
        Name = "conductor",
        Title = "Wiring: ampacity of a conductor",
        Purpose = "What a conductor may carry where it lies, and the largest overcurrent device it may have.",
        Inputs = [ConductorInputs.Size, ConductorInputs.Material, .. ConductorInputs.Surroundings],
        Sources = ["NEC (NFPA 70) Table 310.16, 310.15(B) and (C), 110.14(C), 240.4(B) and (D), 240.6(A)"],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        if ((ConductorInputs.NotAColumn(given, "insulation") ?? ConductorInputs.NotAColumn(given, "termination") ?? ConductorInputs.NotInTable(given)) is { } refusal) return refusal;
        var sheet = new Worksheet(Calculation, given);
        sheet.Caution("For branch circuits of no special use; motor, air-conditioner and heating circuits have rules of their own (240.4(G)).");
        sheet.Caution("Conductors are looked at with the cover off only by those trained for it; parts inside are live.");
        if (Ampacity.Of(given, sheet) is not { } ampacity)
        {
            foreach (var name in new[] { "ampacity", "adjusted_ampacity", "usable_ampacity", "largest_overcurrent_device" }) sheet.NoResult(name);
            return sheet.Outside("The air around the conductor is hotter than its insulation may be used in.");
        }
        sheet.Result("ampacity", ampacity.Table, "A");
        sheet.Result("adjusted_ampacity", ampacity.Adjusted, "A");
        sheet.Result("usable_ampacity", ampacity.Usable, "A");
        var device = ampacity.LargestDevice(given, sheet, given.WholeOrNone("edition") ?? 2020);
        sheet.Result("largest_overcurrent_device", device, "A");
        return sheet.Within($"{ConductorSize.Words(given.Text("size"))} {given.Text("material")} carries {ampacity.Usable:0.#} A here; its largest overcurrent device is {device:0} A.");
    }
}
