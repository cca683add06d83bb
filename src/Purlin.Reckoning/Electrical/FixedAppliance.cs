using Purlin.Reckoning.Quantities;

namespace Purlin.Reckoning.Electrical;

/// <summary>An appliance that is fastened in place or has a circuit of its own.</summary>
internal sealed record FixedAppliance
{
    internal required string Name { get; init; }

    internal required ApparentPower Load { get; init; }

    internal required bool Motor { get; init; }

    /// <summary>A room heater or cooler: a load, but no appliance in the count of four (NEC 220.53).</summary>
    internal required bool Comfort { get; init; }

    /// <summary>Its rated voltage; none when it was not given, and then nothing can be said of the neutral.</summary>
    internal required double? Volts { get; init; }

    /// <summary>The line of the three-wire service it hangs on, <c>A</c> or <c>B</c>; none when not given.</summary>
    internal required string? Line { get; init; }

    // Nominal voltages of dwellings (NEC 220.5(A)) are 120 and 240; older plates say 110 to 125 for a load from line to neutral.
    internal bool LineToNeutral => Volts is < 150;

    internal static FixedAppliance Read(Given given) => new()
    {
        Name = given.Text("name"),
        Load = ApparentPower.FromVoltAmperes(given.Number("VA")),
        Motor = given.Flag("motor"),
        Comfort = given.Flag("comfort"),
        Volts = given.NumberOrNone("volts"),
        Line = given.TextOrNone("line"),
    };
}
