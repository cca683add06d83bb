using System.Globalization;
using Purlin.Reckoning.Air;
using Purlin.Reckoning.Quantities;

namespace Purlin.Tests.Reckoning.Air;

/// <summary>The equations of moist air against published values, in both systems of units.</summary>
public sealed class PsychrometricsTests
{
    // Rows S to X: check values of PsychroLib 2.5.0, tests/test_psychrolib_ip.py and test_psychrolib_si.py at commit 3066345
    // (github.com/psychrometrics/psychrolib). S from ASHRAE Fundamentals 2017 chapter 1 table 3, W and E from table 2 (whose real-gas
    // factor the ideal equations lack, so these agree to 0.5 to 2 % only), P and T from table 1, X from the chapter's example 1.
    // P1 to P5 are held to 0.003 psi; the library's own test allows 1 psi, which would pass almost anything.
    // H4 is held to 0.4 %: below freezing the handbook's inch-pound form, which this program uses, and its metric form, which gave the
    // published figure, lie 0.33 % apart at that point.
    // Rows R: values of the library's own code at that commit, run apart from this project.
    private const string Published =
        """
        S1 | saturation pressure psia | t=-76 F | 0.000157 | 1e-05 | abs
        S2 | saturation pressure psia | t=-4 F | 0.014974 | 0.0003 | rel
        S3 | saturation pressure psia | t=23 F | 0.058268 | 0.0003 | rel
        S4 | saturation pressure psia | t=41 F | 0.12656 | 0.0003 | rel
        S5 | saturation pressure psia | t=77 F | 0.45973 | 0.0003 | rel
        S6 | saturation pressure psia | t=122 F | 1.7914 | 0.0003 | rel
        S7 | saturation pressure psia | t=212 F | 14.7094 | 0.0003 | rel
        S8 | saturation pressure psia | t=300 F | 67.0206 | 0.0003 | rel
        S9 | saturation pressure Pa | t=-60 C | 1.08 | 0.01 | abs
        S10 | saturation pressure Pa | t=-20 C | 103.24 | 0.0003 | rel
        S11 | saturation pressure Pa | t=-5 C | 401.74 | 0.0003 | rel
        S12 | saturation pressure Pa | t=5 C | 872.6 | 0.0003 | rel
        S13 | saturation pressure Pa | t=25 C | 3169.7 | 0.0003 | rel
        S14 | saturation pressure Pa | t=50 C | 12351.3 | 0.0003 | rel
        S15 | saturation pressure Pa | t=100 C | 101418.0 | 0.0003 | rel
        S16 | saturation pressure Pa | t=150 C | 476101.4 | 0.0003 | rel
        W1 | saturation humidity ratio | t=-58 F;P=14.696 | 2.43e-05 | 0.01 | rel
        W2 | saturation humidity ratio | t=-4 F;P=14.696 | 0.0006373 | 0.01 | rel
        W3 | saturation humidity ratio | t=23 F;P=14.696 | 0.0024863 | 0.005 | rel
        W4 | saturation humidity ratio | t=41 F;P=14.696 | 0.005425 | 0.005 | rel
        W5 | saturation humidity ratio | t=77 F;P=14.696 | 0.020173 | 0.005 | rel
        W6 | saturation humidity ratio | t=122 F;P=14.696 | 0.086863 | 0.01 | rel
        W7 | saturation humidity ratio | t=185 F;P=14.696 | 0.838105 | 0.02 | rel
        E1 | saturated-air enthalpy Btu/lb | t=-58 F;P=14.696 | -13.906 | 0.01 | rel
        E2 | saturated-air enthalpy Btu/lb | t=-4 F;P=14.696 | -0.286 | 0.01 | rel
        E3 | saturated-air enthalpy Btu/lb | t=23 F;P=14.696 | 8.186 | 0.03 | rel
        E4 | saturated-air enthalpy Btu/lb | t=41 F;P=14.696 | 15.699 | 0.01 | rel
        E5 | saturated-air enthalpy Btu/lb | t=77 F;P=14.696 | 40.576 | 0.01 | rel
        E6 | saturated-air enthalpy Btu/lb | t=122 F;P=14.696 | 126.066 | 0.01 | rel
        E7 | saturated-air enthalpy Btu/lb | t=185 F;P=14.696 | 999.749 | 0.01 | rel
        H1 | humidity ratio from wet bulb | db=86;wb=77;P=14.175 | 0.0187193288418892 | 0.0003 | rel
        H2 | humidity ratio from wet bulb (below freezing) | db=30.2;wb=23.0;P=14.175 | 0.00114657481090184 | 0.0003 | rel
        H3 | humidity ratio from wet bulb | db=30;wb=25;P=95461 | 0.0192281274241096 | 0.0003 | rel
        H4 | humidity ratio from wet bulb (below freezing) | db=-1;wb=-5;P=95461 | 0.00120399819933844 | 0.004 | rel
        H5 | wet bulb from humidity ratio F | db=86;W=0.0187193288418892;P=14.175 | 77 | 0.01 | abs
        H6 | humidity ratio from vapour pressure | pw=0.45973;P=14.175 | 0.0208473311024865 | 1e-06 | rel
        H7 | humidity ratio from vapour pressure | pw=3169.7;P=95461 | 0.0213603998047487 | 1e-06 | rel
        H8 | wet bulb from RH C | db=7;RH=0.61;P=100000 | 3.92667433781955 | 0.001 | rel
        D1 | dew point round trip F | pws(-4);db=59 | -4.0 | 0.001 | abs
        D2 | dew point round trip F | pws(41);db=59 | 41.0 | 0.001 | abs
        D3 | dew point round trip F | pws(122);db=140 | 122.0 | 0.001 | abs
        D4 | vapour pressure from RH psia | db=77;RH=0.8 | 0.367784 | 0.0003 | rel
        A1 | dry-air enthalpy Btu/lb | t=77 | 18.498 | 0.001 | rel
        A2 | dry-air volume ft3/lb | t=77;P=14.696 | 13.5251 | 0.001 | rel
        A3 | moist-air enthalpy Btu/lb | t=86;W=0.02 | 42.6168 | 0.0003 | rel
        A4 | moist-air volume ft3/lb | t=86;W=0.02;P=14.175 | 14.7205749002918 | 0.0003 | rel
        A5 | moist-air density lb/ft3 | t=86;W=0.02;P=14.175 | 0.0692907720594378 | 0.0003 | rel
        A6 | dry bulb from enthalpy F | h=42.6168;W=0.02 | 85.97 | 0.05 | abs
        A7 | moist-air enthalpy J/kg | t=30;W=0.02 | 81316 | 0.0003 | rel
        A8 | moist-air volume m3/kg | t=30;W=0.02;P=95461 | 0.940855374352943 | 0.0003 | rel
        A9 | moist-air density kg/m3 | t=30;W=0.02;P=95461 | 1.08411986348219 | 0.0003 | rel
        P1 | standard pressure psia | Z=-1000 ft | 15.236 | 0.003 | abs
        P2 | standard pressure psia | Z=0 ft | 14.696 | 0.003 | abs
        P3 | standard pressure psia | Z=1000 ft | 14.175 | 0.003 | abs
        P4 | standard pressure psia | Z=3000 ft | 13.173 | 0.003 | abs
        P5 | standard pressure psia | Z=10000 ft | 10.108 | 0.003 | abs
        P6 | standard pressure Pa | Z=-500 m | 107478 | 1 | abs
        P7 | standard pressure Pa | Z=0 m | 101325 | 1 | abs
        P8 | standard pressure Pa | Z=500 m | 95461 | 1 | abs
        P9 | standard pressure Pa | Z=1000 m | 89875 | 1 | abs
        P10 | standard pressure Pa | Z=4000 m | 61640 | 1 | abs
        P11 | standard pressure Pa | Z=10000 m | 26436 | 1 | abs
        T1 | standard temperature F | Z=-1000 ft | 62.6 | 0.1 | abs
        T2 | standard temperature F | Z=1000 ft | 55.4 | 0.1 | abs
        T3 | standard temperature F | Z=3000 ft | 48.3 | 0.1 | abs
        T4 | standard temperature F | Z=10000 ft | 23.4 | 0.1 | abs
        X1 | Example 1 humidity ratio | db=100;wb=65;P=14.696 | 0.00523 | 0.001 | abs
        X2 | Example 1 dew point F | db=100;wb=65;P=14.696 | 40 | 1.0 | abs
        X3 | Example 1 RH | db=100;wb=65;P=14.696 | 0.13 | 0.01 | abs
        X4 | Example 1 enthalpy Btu/lb | db=100;wb=65;P=14.696 | 29.8 | 0.1 | abs
        X5 | Example 1 volume ft3/lb | db=100;wb=65;P=14.696 | 14.22 | 0.01 | rel
        X6 | Example 1 humidity ratio | db=40;wb=20;P=101325 | 0.0065 | 0.0001 | abs
        X7 | Example 1 enthalpy J/kg | db=40;wb=20;P=101325 | 56700 | 100 | abs
        X8 | Example 1 volume m3/kg | db=40;wb=20;P=101325 | 0.896 | 0.01 | rel
        R1a | humidity ratio | db=75;wb=63;P=14.696 | 0.009532 | 2e-06 | abs
        R1b | enthalpy Btu/lb | db=75;wb=63;P=14.696 | 28.4313 | 0.002 | abs
        R1c | dew point F | db=75;wb=63;P=14.696 | 55.978 | 0.005 | abs
        R2a | humidity ratio | db=80;wb=67;P=14.696 | 0.011169 | 2e-06 | abs
        R2b | enthalpy Btu/lb | db=80;wb=67;P=14.696 | 31.4472 | 0.002 | abs
        R2c | dew point F | db=80;wb=67;P=14.696 | 60.318 | 0.005 | abs
        R3a | humidity ratio | db=78;wb=65;P=14.696 | 0.010206 | 2e-06 | abs
        R3b | enthalpy Btu/lb | db=78;wb=65;P=14.696 | 29.902 | 0.002 | abs
        R3c | dew point F | db=78;wb=65;P=14.696 | 57.839 | 0.005 | abs
        R4a | humidity ratio | db=56;wb=55;P=14.696 | 0.008965 | 2e-06 | abs
        R4b | enthalpy Btu/lb | db=56;wb=55;P=14.696 | 23.175 | 0.002 | abs
        R4c | dew point F | db=56;wb=55;P=14.696 | 54.316 | 0.005 | abs
        R5a | humidity ratio | db=75;wb=63;P=12.2278 | 0.012062 | 2e-06 | abs
        R5b | enthalpy Btu/lb | db=75;wb=63;P=12.2278 | 31.1997 | 0.002 | abs
        R5c | dew point F | db=75;wb=63;P=12.2278 | 57.292 | 0.005 | abs
        """;

    public static TheoryData<string> Rows() => [.. Published.Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)];

    [Fact]
    public void All_89_published_checks_are_here() => Assert.Equal(89, Rows().Count);

    [Theory]
    [MemberData(nameof(Rows))]
    public void Published_value_is_met(string row)
    {
        var cells = row.Split('|', StringSplitOptions.TrimEntries);
        var (expected, tolerance) = (Number(cells[3]), Number(cells[4]));
        var got = Compute(cells[1], new Inputs(cells[2]));
        Worked.Near(expected, got, cells[5] == "rel" ? tolerance * Math.Abs(expected) : tolerance);
    }

    private static double Compute(string quantity, Inputs given) => quantity.Replace("Example 1 ", "", StringComparison.Ordinal) switch
    {
        "saturation pressure psia" => Psychrometrics.SaturationPressure(given.Temperature("t")).Psi,
        "saturation pressure Pa" => Psychrometrics.SaturationPressure(given.Temperature("t")).Pascals,
        "saturation humidity ratio" => Psychrometrics.SaturationRatio(given.Temperature("t"), given.Air).PoundsPerPound,
        "saturated-air enthalpy Btu/lb" => Psychrometrics.Enthalpy(given.Temperature("t"), Psychrometrics.SaturationRatio(given.Temperature("t"), given.Air)).BtuPerPound,
        "humidity ratio from wet bulb" or "humidity ratio from wet bulb (below freezing)" or "humidity ratio" => Psychrometrics.RatioFromWetBulb(given.Temperature("db"), given.Temperature("wb"), given.Air),
        "wet bulb from humidity ratio F" => Psychrometrics.WetBulb(given.Temperature("db"), given.Ratio, given.Air).Fahrenheit,
        "humidity ratio from vapour pressure" => Psychrometrics.HumidityRatio(given.Pressure("pw"), given.Air).PoundsPerPound,
        "wet bulb from RH C" => MoistAir.FromRelativeHumidity(given.Temperature("db"), given.Humidity, given.Air).OrThrow().WetBulb.Celsius,
        "dew point round trip F" => Psychrometrics.DewPoint(Psychrometrics.SaturationPressure(given.Temperature("pws"))).Fahrenheit,
        "vapour pressure from RH psia" => given.Humidity.Share * Psychrometrics.SaturationPressure(given.Temperature("db")).Psi,
        "dry-air enthalpy Btu/lb" => Psychrometrics.Enthalpy(given.Temperature("t"), HumidityRatio.FromPoundsPerPound(0)).BtuPerPound,
        "dry-air volume ft3/lb" => Psychrometrics.Volume(given.Temperature("t"), HumidityRatio.FromPoundsPerPound(0), given.Air).CubicFeetPerPound,
        "moist-air enthalpy Btu/lb" => Psychrometrics.Enthalpy(given.Temperature("t"), given.Ratio).BtuPerPound,
        "moist-air volume ft3/lb" => Psychrometrics.Volume(given.Temperature("t"), given.Ratio, given.Air).CubicFeetPerPound,
        "moist-air density lb/ft3" => (1 + given.Ratio.PoundsPerPound) / Psychrometrics.Volume(given.Temperature("t"), given.Ratio, given.Air).CubicFeetPerPound,
        "dry bulb from enthalpy F" => Psychrometrics.DryBulb(SpecificEnthalpy.FromBtuPerPound(given["h"]), given.Ratio).Fahrenheit,
        "moist-air enthalpy J/kg" => Psychrometrics.EnthalpyJoulesPerKilogram(given.Temperature("t"), given.Ratio),
        "moist-air volume m3/kg" => CubicMetresPerKilogram(Psychrometrics.Volume(given.Temperature("t"), given.Ratio, given.Air)),
        "moist-air density kg/m3" => (1 + given.Ratio.PoundsPerPound) / CubicMetresPerKilogram(Psychrometrics.Volume(given.Temperature("t"), given.Ratio, given.Air)),
        "standard pressure psia" => Atmosphere.Pressure(given.Altitude).Psi,
        "standard pressure Pa" => Atmosphere.Pressure(given.Altitude).Pascals,
        "standard temperature F" => Atmosphere.Temperature(given.Altitude).Fahrenheit,
        "dew point F" => given.State.DewPoint.Fahrenheit,
        "RH" => given.State.RelativeHumidity.Share,
        "enthalpy Btu/lb" => given.State.Enthalpy.BtuPerPound,
        "volume ft3/lb" => given.State.Volume.CubicFeetPerPound,
        "enthalpy J/kg" => Psychrometrics.EnthalpyJoulesPerKilogram(given.State.DryBulb, given.State.Ratio),
        "volume m3/kg" => CubicMetresPerKilogram(given.State.Volume),
        _ => throw new InvalidOperationException($"no check for {quantity}"),
    };

    // ft³/lb in m³/kg: exact foot and pound, NIST SP 811 B.8.
    private static double CubicMetresPerKilogram(SpecificVolume volume) => volume.CubicFeetPerPound * 0.3048 * 0.3048 * 0.3048 / 0.45359237;

    private static double Number(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);

    // "db=86;wb=77;P=14.175", "t=-76 F", "Z=500 m", "pws(-4);db=59": pressures over 1,000 are pascals, temperatures there are °C.
    private sealed class Inputs
    {
        private readonly Dictionary<string, double> values = [];
        private readonly bool metric;

        internal Inputs(string text)
        {
            metric = text.EndsWith(" C", StringComparison.Ordinal) || text.EndsWith(" m", StringComparison.Ordinal);
            foreach (var part in text.Replace("(", "=", StringComparison.Ordinal).Replace(")", "", StringComparison.Ordinal).Split(';'))
            {
                var sides = part.Split('=');
                values[sides[0]] = Number(sides[1].Split(' ')[0]);
            }
            metric |= values.TryGetValue("P", out var pressure) && pressure > 1000;
            // Rows A7: the library's metric enthalpy has no pressure beside it; its 30 is in °C.
            metric |= text == "t=30;W=0.02";
        }

        internal double this[string name] => values[name];

        internal Temperature Temperature(string name) => metric ? Purlin.Reckoning.Quantities.Temperature.FromCelsius(this[name]) : Purlin.Reckoning.Quantities.Temperature.FromFahrenheit(this[name]);

        internal Pressure Pressure(string name) => metric ? Purlin.Reckoning.Quantities.Pressure.FromPascals(this[name]) : Purlin.Reckoning.Quantities.Pressure.FromPsi(this[name]);

        internal Pressure Air => Pressure("P");

        internal HumidityRatio Ratio => HumidityRatio.FromPoundsPerPound(this["W"]);

        internal RelativeHumidity Humidity => RelativeHumidity.FromPercent(100 * this["RH"]);

        internal Length Altitude => metric ? Length.FromMillimetres(1000 * this["Z"]) : Length.FromFeet(this["Z"]);

        internal MoistAir State => MoistAir.FromWetBulb(Temperature("db"), Temperature("wb"), Air).OrThrow();
    }
}
