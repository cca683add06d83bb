using System.Collections.Immutable;
using Purlin.Journal;
using Purlin.Reckoning.Quantities;

namespace Purlin.Reckoning.Air;

/// <summary>How a state of air is given: the same inputs wherever one is asked for.</summary>
internal static class AirInputs
{
    // The ranges are those of houses and their ducts, well inside the equations' -148 to 392 °F.
    internal static ImmutableArray<Input> State { get; } =
    [
        new Input.Quantity("dry_bulb", "Air temperature", "°F", -40, 200) { Required = true },
        new Input.Quantity("wet_bulb", "Temperature of a wet wick in moving air", "°F", -40, 200),
        new Input.Quantity("relative_humidity", "Relative humidity", "%", 1, 100),
        new Input.Quantity("dew_point", "Temperature at which dew forms", "°F", -80, 200),
    ];

    internal static ImmutableArray<Input> Place { get; } =
    [
        new Input.Quantity("altitude", "Height above the sea; gives the air's pressure", "ft", -1500, 30_000),
        new Input.Quantity("pressure", "Absolute pressure of the air, instead of the height", "psi", 4, 20),
    ];

    /// <summary>The pressure given, that of the height given, or that of sea level: then a step says so.</summary>
    internal static Checked<Pressure> Pressure(Given given, Worksheet sheet)
    {
        if (given.Has("pressure") && given.Has("altitude")) return new Refusal("pressure", "given with altitude", "one of pressure, altitude");
        if (given.NumberOrNone("pressure") is { } psi) return Quantities.Pressure.FromPsi(psi);
        var altitude = sheet.Or("altitude", 0, "ft", "sea level");
        var pressure = Atmosphere.Pressure(Length.FromFeet(altitude));
        sheet.Step("Pressure of the standard atmosphere at that height", pressure.Psi, "psi");
        return pressure;
    }

    /// <summary>The state of one air, whose inputs stand below <paramref name="path"/>.</summary>
    internal static Checked<MoistAir> Read(Given given, Pressure pressure, string path = "")
    {
        string[] humidities = ["wet_bulb", "relative_humidity", "dew_point"];
        if (humidities.Count(given.Has) != 1)
            return new Refusal(path.Length == 0 ? "wet_bulb" : path, given.Has("wet_bulb") || given.Has("dew_point") ? "more than one humidity" : humidities.Any(given.Has) ? "more than one humidity" : "missing", "exactly one of wet_bulb, relative_humidity, dew_point");
        var dryBulb = Temperature.FromFahrenheit(given.Number("dry_bulb"));
        if (given.NumberOrNone("wet_bulb") is { } wet) return MoistAir.FromWetBulb(dryBulb, Temperature.FromFahrenheit(wet), pressure, Name(path, "wet_bulb"));
        if (given.NumberOrNone("dew_point") is { } dew) return MoistAir.FromDewPoint(dryBulb, Temperature.FromFahrenheit(dew), pressure, Name(path, "dew_point"));
        return MoistAir.FromRelativeHumidity(dryBulb, RelativeHumidity.FromPercent(given.Number("relative_humidity")), pressure, Name(path, "relative_humidity"));
    }

    private static string Name(string path, string input) => path.Length == 0 ? input : $"{path}.{input}";
}
