using Purlin.Journal;

namespace Purlin.Reckoning.Electrical;

/// <summary>What a conductor may carry and the largest breaker that protects it.</summary>
internal static class Conductor
{
    internal static Calculation Calculation { get; } = new()
    {
        Name = "conductor",
        Inputs = [ConductorInputs.Size, ConductorInputs.Material, .. ConductorInputs.Surroundings],
        Sources = ["NEC (NFPA 70) Table 310.16, 310.15(B) and (C), 110.14(C), 240.4(B) and (D), 240.6(A)"],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        if ((ConductorInputs.NotAColumn(given, "insulation") ?? ConductorInputs.NotAColumn(given, "termination")
            ?? ConductorInputs.NotInTable(given)) is { } refusal) return refusal;
        var sheet = new Worksheet(Calculation, given);
        sheet.Caution("conductor.caution.branch-circuits-no-special");
        sheet.Caution("conductor.caution.conductors-looked-cover-off");
        if (Ampacity.Of(given, sheet) is not { } ampacity)
        {
            foreach (var name in new[] { "ampacity", "adjusted_ampacity", "usable_ampacity", "largest_overcurrent_device" })
                sheet.NoResult(name);
            return sheet.Outside("conductor.because.air-around-conductor-hotter");
        }
        sheet.Result("ampacity", ampacity.Table, "A");
        sheet.Result("adjusted_ampacity", ampacity.Adjusted, "A");
        sheet.Result("usable_ampacity", ampacity.Usable, "A");
        var device = ampacity.LargestDevice(given, sheet, given.WholeOrNone("edition") ?? 2020);
        sheet.Result("largest_overcurrent_device", device, "A");
        return sheet.Within("conductor.because.carries-here-largest-overcurrent", ("size", ConductorSize.Words(given.Text("size"))),
            ("material", Words.Of(given.Text("material"))), ("usable", ampacity.Usable, "A"), ("device", device, "A"));
    }
}
