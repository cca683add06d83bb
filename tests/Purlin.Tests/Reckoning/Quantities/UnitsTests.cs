using CsCheck;
using Purlin.Reckoning.Quantities;

namespace Purlin.Tests.Reckoning.Quantities;

public sealed class UnitsTests
{
    // NIST SP 811 (2008), appendix B.8 and B.9: exact definitions and their printed factors.
    [Theory]
    [InlineData(1, "in", "mm", 25.4, 0)]
    [InlineData(1, "ft", "m", 0.3048, 0)]
    [InlineData(1, "ft²", "m²", 0.09290304, 1e-15)]
    [InlineData(1, "gal", "L", 3.785411784, 1e-12)]
    [InlineData(1, "psi", "kPa", 6.894757, 1e-6)]
    [InlineData(1, "Btu/h", "W", 0.2930711, 1e-7)]
    [InlineData(1, "tons", "Btu/h", 12_000, 1e-9)]
    [InlineData(1, "inHg", "Pa", 3386.389, 1e-9)]
    [InlineData(1, "cfm", "L/s", 0.4719474, 1e-7)]
    [InlineData(212, "°F", "°C", 100, 1e-12)]
    [InlineData(-40, "°C", "°F", -40, 1e-12)]
    [InlineData(18, "Δ°F", "Δ°C", 10, 1e-12)]
    [InlineData(2, "kW", "VA", 2000, 0)]
    public void Published_factor(double value, string from, string to, double expected, double tolerance)
    {
        Assert.True(Units.TryConvert(value, from, to, out var got));
        Worked.Near(expected, got, tolerance);
    }

    [Theory]
    [InlineData("22 °C", "°F", 71.6)]
    [InlineData("1.9 m", "ft", 6.2335958)]
    [InlineData("20 °F", "Δ°F", 20)]
    [InlineData("10°C", "Δ°F", 18)]
    [InlineData("3 tons", "Btu/h", 36_000)]
    [InlineData("5.5e3 W", "kW", 5.5)]
    [InlineData("7", "in", 7)]
    public void Text_with_a_unit_is_read(string text, string wanted, double expected)
    {
        Assert.True(Units.TryRead(text, wanted, out var got));
        Worked.Near(expected, got, 1e-6);
    }

    [Theory]
    [InlineData("22 °C", "psi")]
    [InlineData("", "ft")]
    [InlineData("NaN ft", "ft")]
    [InlineData("-", "ft")]
    [InlineData("1e999 ft", "ft")]
    [InlineData("3 tons", "VA")]
    [InlineData("1 VA", "Btu/h")]
    [InlineData("1,5 ft", "ft")]
    [InlineData("12 parsecs", "ft")]
    public void Text_that_means_something_else_is_not_read(string text, string wanted) => Assert.False(Units.TryRead(text, wanted, out _));

    [Fact]
    public void Conversion_goes_there_and_back() =>
        Gen.Select(Gen.Double[-1e6, 1e6], Gen.Int[0, 3]).Sample((value, at) =>
        {
            var (from, to) = new[] { ("°F", "°C"), ("psi", "kPa"), ("ft²", "m²"), ("Btu/h", "kW") }[at];
            return Units.TryConvert(value, from, to, out var there) && Units.TryConvert(there, to, from, out var back) && Math.Abs(back - value) <= 1e-9 * Math.Max(1000, Math.Abs(value));
        });
}
