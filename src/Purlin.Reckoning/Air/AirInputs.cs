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
        new Input.Quantity("dry_bulb", "air-inputs.input.dry-bulb", "°F", -40, 200) { Required = true },
        new Input.Quantity("wet_bulb", "air-inputs.input.wet-bulb", "°F", -40, 200),
        new Input.Quantity("relative_humidity", "air-inputs.input.relative-humidity", "%", 1, 100),
        new Input.Quantity("dew_point", "air-inputs.input.dew-point", "°F", -80, 200),
    ];

    internal static ImmutableArray<Input> Place { get; } =
    [
        new Input.Quantity("altitude", "air-inputs.input.altitude", "ft", -1500, 30_000),
        new Input.Quantity("pressure", "air-inputs.input.pressure", "psi", 4, 20),
    ];

    /// <summary>The pressure given, that of the height given, or that of sea level: then a step says so.</summary>
    internal static Checked<Pressure> Pressure(Given given, Worksheet sheet)
    {
        if (given.Has("pressure") && given.Has("altitude"))
            return new Refusal("pressure", "air-inputs.given.given-altitude", "air-inputs.allowed.pressure-altitude");
        if (given.NumberOrNone("pressure") is { } psi) return Quantities.Pressure.FromPsi(psi);
        var altitude = sheet.Or("altitude", 0, "ft", "air-inputs.why.sea-level");
        var pressure = Atmosphere.Pressure(Length.FromFeet(altitude));
        sheet.Step("air-inputs.step.pressure-standard-atmosphere", pressure.Psi, "psi");
        return pressure;
    }

    /// <summary>The state of one air, whose inputs stand below <paramref name="path"/>.</summary>
    internal static Checked<MoistAir> Read(Given given, Pressure pressure, string path = "")
    {
        string[] humidities = ["wet_bulb", "relative_humidity", "dew_point"];
        if (humidities.Count(given.Has) != 1)
            return new Refusal(path.Length == 0 ? "wet_bulb" : path, given.Has("wet_bulb") || given.Has("dew_point")
                ? new Said("air-inputs.given.more-humidity") : humidities.Any(given.Has)
                ? new Said("air-inputs.given.more-humidity") : new Said("refused.missing"), "air-inputs.allowed.exactly-wet-bulb-relative");
        var dryBulb = Temperature.FromFahrenheit(given.Number("dry_bulb"));
        if (given.NumberOrNone("wet_bulb") is { } wet)
            return MoistAir.FromWetBulb(dryBulb, Temperature.FromFahrenheit(wet), pressure, Name(path, "wet_bulb"));
        if (given.NumberOrNone("dew_point") is { } dew)
            return MoistAir.FromDewPoint(dryBulb, Temperature.FromFahrenheit(dew), pressure, Name(path, "dew_point"));
        return MoistAir.FromRelativeHumidity(dryBulb, RelativeHumidity.FromPercent(given.Number("relative_humidity")), pressure,
            Name(path, "relative_humidity"));
    }

    private static string Name(string path, string input) => path.Length == 0 ? input : $"{path}.{input}";
}
