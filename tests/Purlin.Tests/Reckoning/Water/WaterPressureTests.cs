using CsCheck;

namespace Purlin.Tests.Reckoning.Water;

/// <summary>Pressure against the code's limits, flow against published flow tests, and water that has nowhere to grow.</summary>
public sealed class WaterPressureTests
{
    private static Reckoned At(string more) => Reckoned.Of("water-pressure", "{" + more + "}");

    // IRC P2903.3 (older editions) 40 psi; IRC P2903.3.1 and UPC 608.2 80 psi; 100 psi is common practice.
    [Theory]
    [InlineData(38, "outside", "low")]
    [InlineData(39.9, "outside", "low")]
    [InlineData(40, "within", "usual")]
    [InlineData(80, "within", "usual")]
    [InlineData(81, "outside", "high")]
    [InlineData(101, "outside", "very high")]
    public void Static_pressure_is_held_to_forty_and_eighty(double psi, string verdict, string level)
    {
        var house = At(FormattableString.Invariant($"\"static\":{psi}"));
        Assert.Equal(verdict, house.Verdict);
        Assert.Equal(level, house.Text("level"));
        Assert.Equal(psi > 80, house.Flag("regulator_needed"));
    }

    // Published flow tests by NFPA 291: 800 gpm, 65 to 50 psi gives 1,424 gpm with 3^0.54 rounded to 1.78 (a hydrant-records guide);
    // 1,100 gpm, 85 to 72 psi gives 2,618 gpm with 5^0.54 rounded to 2.38 (a sprinkler design reference). Scaled to a house by 1/100.
    [Theory]
    [InlineData(65, 50, 8.00, 14.24, 0.25)]
    [InlineData(85, 72, 11.00, 26.18, 0.1)]
    public void Flow_is_carried_to_twenty_psi(double still, double residual, double flow, double expected, double within) =>
        At(FormattableString.Invariant($"\"static\":{still},\"residual\":{residual},\"flow\":{flow}")).Near("flow_at_20", expected, within);

    // UPC 608.1: 15 psi residual.
    [Theory]
    [InlineData(15, "within")]
    [InlineData(14, "outside")]
    public void Fifteen_psi_must_be_left(double residual, string verdict) => Assert.Equal(verdict, At(FormattableString.Invariant($"\"static\":50,\"residual\":{residual}")).Verdict);

    // UPC 608.3, IRC P2903.4: a closed system with a tank heater needs control; 62 rising to 118 psi shows it is missing or has failed
    // (common practice).
    [Theory]
    [InlineData("\"storage_heater\":true,\"check_valve\":true,\"expansion_control\":true", "needed", "within")]
    [InlineData("\"storage_heater\":true,\"check_valve\":true,\"expansion_control\":false", "needed", "outside")]
    [InlineData("\"storage_heater\":true,\"check_valve\":true", "needed", "within")]
    [InlineData("\"storage_heater\":true,\"check_valve\":false", "not needed", "within")]
    [InlineData("\"storage_heater\":false", "not needed", "within")]
    [InlineData("\"storage_heater\":true", "cannot say", "within")]
    [InlineData("\"peak\":118", "cannot say", "outside")]
    [InlineData("\"peak\":70", "cannot say", "within")]
    public void Heated_water_needs_somewhere_to_grow(string more, string control, string verdict)
    {
        var house = At("\"static\":62," + more);
        Assert.Equal(control, house.Text("expansion_control"));
        Assert.Equal(verdict, house.Verdict);
    }

    [Fact]
    public void Bar_and_psi_give_the_same_answer() => Gen.Double[5, 150].Sample(psi =>
    {
        var (here, there) = (At(FormattableString.Invariant($"\"static\":{psi:R}")), At(FormattableString.Invariant($"\"static\":\"{psi * 0.0689475729316836:R} bar\"")));
        there.Near("static", psi, 1e-9);
        Assert.Equal(here.Text("level"), there.Text("level"));
    }, iter: 100);

    [Theory]
    [InlineData("{}", "static: missing")]
    [InlineData("""{"static":-1}""", "static: -1; a number in psi or text with a unit, from 0 to 400 psi")]
    [InlineData("""{"static":60,"residual":70}""", "residual: 70 psi; the static pressure, 60 psi, or less")]
    [InlineData("""{"static":60,"flow":5}""", "residual: missing")]
    [InlineData("""{"static":60,"peak":50}""", "peak: 50 psi")]
    [InlineData("""{"static":"sixty"}""", "static")]
    [InlineData("""{"static":60,"static":61}""", "input")]
    public void Bad_input_names_itself(string json, string expected) => Assert.Contains(expected, Reckoned.Refused("water-pressure", json), StringComparison.Ordinal);
}
