using Purlin.Reckoning.Quantities;

namespace Purlin.Tests.Reckoning.Quantities;

/// <summary>Every factory, valid and invalid: the only way in checks.</summary>
public sealed class QuantityTests
{
    public static TheoryData<string> Factories() => [.. All.Keys];

    private static readonly Dictionary<string, Func<double, object>> All = new(StringComparer.Ordinal)
    {
        ["temperature"] = value => Temperature.FromFahrenheit(value),
        ["temperature, °C"] = value => Temperature.FromCelsius(value),
        ["temperature difference"] = value => TemperatureDifference.FromFahrenheit(value),
        ["pressure"] = value => Pressure.FromPsi(value),
        ["pressure, Pa"] = value => Pressure.FromPascals(value),
        ["relative humidity"] = value => RelativeHumidity.FromPercent(value),
        ["humidity ratio"] = value => HumidityRatio.FromPoundsPerPound(value),
        ["enthalpy"] = value => SpecificEnthalpy.FromBtuPerPound(value),
        ["specific volume"] = value => SpecificVolume.FromCubicFeetPerPound(value),
        ["airflow"] = value => Airflow.FromCubicFeetPerMinute(value),
        ["heat"] = value => HeatRate.FromBtuPerHour(value),
        ["gas"] = value => GasFlow.FromCubicFeetPerHour(value),
        ["load"] = value => ApparentPower.FromVoltAmperes(value),
        ["current"] = value => Current.FromAmperes(value),
        ["voltage"] = value => Voltage.FromVolts(value),
        ["resistance"] = value => Resistance.FromOhms(value),
        ["length"] = value => Length.FromInches(value),
        ["area"] = value => Area.FromSquareFeet(value),
        ["volume"] = value => Volume.FromCubicFeet(value),
        ["moisture"] = value => MoistureContent.FromPercent(value),
    };

    [Theory]
    [MemberData(nameof(Factories))]
    public void Takes_a_plain_number_and_refuses_what_is_none(string name)
    {
        Assert.NotNull(All[name](12));
        foreach (var bad in new[] { double.NaN, double.PositiveInfinity, double.NegativeInfinity })
            Assert.Throws<ArgumentOutOfRangeException>(() => All[name](bad));
    }

    [Theory]
    [InlineData("temperature", -460)]
    [InlineData("temperature, °C", -273.2)]
    [InlineData("pressure", -0.1)]
    [InlineData("relative humidity", 100.01)]
    [InlineData("relative humidity", -1)]
    [InlineData("humidity ratio", -1e-9)]
    [InlineData("airflow", -1)]
    [InlineData("area", -1)]
    [InlineData("moisture", -1)]
    public void Refuses_what_cannot_be(string name, double value) => Assert.Throws<ArgumentOutOfRangeException>(() => All[name](value));

    [Fact]
    public void Readers_agree_with_factories()
    {
        Worked.Near(25, Temperature.FromCelsius(25).Celsius, 1e-12);
        Worked.Near(10, TemperatureDifference.FromFahrenheit(18).Celsius, 1e-12);
        Worked.Near(101_325, Pressure.FromPascals(101_325).Pascals, 1e-9);
        Worked.Near(3, HeatRate.FromBtuPerHour(36_000).Tons, 1e-12);
        Worked.Near(70, HumidityRatio.FromPoundsPerPound(0.01).GrainsPerPound, 1e-12);
        Worked.Near(7.48051948, Volume.FromCubicFeet(1).Gallons, 1e-8);
        Worked.Near(20, (Temperature.FromFahrenheit(75) - Temperature.FromFahrenheit(55)).Fahrenheit, 1e-12);
        Worked.Near(77.5, (ApparentPower.FromKilovoltAmperes(18.6) / Voltage.FromVolts(240)).Amperes, 1e-12);
    }
}
