using System.Collections.Immutable;
using Purlin.Reckoning.Quantities;

namespace Purlin.Reckoning.Electrical;

/// <summary>What a dwelling has that draws current, checked; defaults that were taken stand as steps on the sheet.</summary>
internal sealed record DwellingLoads
{
    internal required Area FloorArea { get; init; }

    internal required int SmallApplianceCircuits { get; init; }

    internal required int LaundryCircuits { get; init; }

    internal required ImmutableArray<double> RangesKilowatts { get; init; }

    internal required ImmutableArray<ApparentPower> Dryers { get; init; }

    internal required ImmutableArray<FixedAppliance> Appliances { get; init; }

    internal required ApparentPower Cooling { get; init; }

    internal required ApparentPower Heating { get; init; }

    /// <summary>None when there is no electric heating.</summary>
    internal required string? HeatingKind { get; init; }

    internal required int HeatingUnits { get; init; }

    internal required ApparentPower Supplement { get; init; }

    internal required bool SupplementLocksOut { get; init; }

    internal required ApparentPower Vehicle { get; init; }

    internal required ApparentPower LargestMotor { get; init; }

    internal required Voltage Volts { get; init; }

    internal static DwellingLoads Read(Given given, Worksheet sheet)
    {
        ImmutableArray<FixedAppliance> appliances = [.. given.List("fixed_appliances").Select(FixedAppliance.Read)];
        var cooling = Load(given, "cooling");
        var kind = given.TextOrNone("heating_kind");
        var heating = Load(given, "heating");
        if (kind == "heat pump" && !given.Has("heating"))
        {
            sheet.Say("dwelling-loads.step.heat-pump-compressor-counted");
            heating = cooling;
        }
        var motor = given.NumberOrNone("largest_motor")
            ?? appliances.Where(appliance => appliance.Motor).Select(appliance => appliance.Load.VoltAmperes).DefaultIfEmpty(0).Max();
        return new DwellingLoads
        {
            FloorArea = Area.FromSquareFeet(given.Number("floor_area")),
            SmallApplianceCircuits = (int)sheet.Or("small_appliance_circuits", 2, "", "dwelling-loads.why.least-code-asks-nec"),
            LaundryCircuits = (int)sheet.Or("laundry_circuits", 1, "", "dwelling-loads.why.least-code-asks-nec-2"),
            RangesKilowatts = given.Numbers("ranges"),
            Dryers = [.. given.Numbers("dryers").Select(ApparentPower.FromVoltAmperes)],
            Appliances = appliances,
            Cooling = cooling,
            Heating = heating,
            HeatingKind = kind,
            HeatingUnits = given.WholeOrNone("heating_units") ?? 1,
            Supplement = Load(given, "supplement"),
            SupplementLocksOut = given.Flag("supplement_locks_out"),
            Vehicle = Load(given, "vehicle_charger"),
            LargestMotor = ApparentPower.FromVoltAmperes(motor),
            Volts = Voltage.FromVolts(sheet.Or("volts", 240, "V", "dwelling-loads.why.usual-three-wire")),
        };
    }

    /// <summary>Nameplates of everything but lighting, circuits, comfort and vehicle, as the optional methods pool them.</summary>
    internal double NameplatesVoltAmperes =>
        1000 * RangesKilowatts.Sum() + Dryers.Sum(dryer => dryer.VoltAmperes)
        + Appliances.Where(appliance => !appliance.Comfort).Sum(appliance => appliance.Load.VoltAmperes);

    private static ApparentPower Load(Given given, string name) => ApparentPower.FromVoltAmperes(given.NumberOrNone(name) ?? 0);
}
