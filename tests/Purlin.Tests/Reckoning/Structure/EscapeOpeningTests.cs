using CsCheck;

namespace Purlin.Tests.Reckoning.Structure;

/// <summary>Escape windows against the limits of the code.</summary>
public sealed class EscapeOpeningTests
{
    private static Reckoned Window(double height, double width, double? sill = null, bool? atGrade = null) => Reckoned.Of("escape-opening", FormattableString.Invariant(
        $"{{\"height\":{height:R},\"width\":{width:R}{(sill is { } up ? FormattableString.Invariant($",\"sill\":{up:R}") : "")}{(atGrade is { } level ? $",\"at_grade\":{(level ? "true" : "false")}" : "")}}}"));

    // IRC R310.2.1: 5.7 ft², 24 in high, 20 in wide; 5.0 ft² at grade; R310.2.2: sill at 44 in. Cities print that 24 in of height needs 34.2 in of width
    // and 20 in of width 41 in of height for 5.7 ft².
    [Theory]
    [InlineData(24, 34.2, 44.0, false, "within")]
    [InlineData(24, 34.1, 44.0, false, "outside")]
    [InlineData(41.04, 20, 44.0, false, "within")]
    [InlineData(36, 20, 44.0, true, "within")]
    [InlineData(36, 20, 44.0, false, "outside")]
    [InlineData(36, 20, 44.0, null, "cannot say")]
    [InlineData(24, 20, 40.0, true, "outside")]
    [InlineData(23.9, 60, 40.0, false, "outside")]
    [InlineData(60, 19.9, 40.0, false, "outside")]
    [InlineData(41.04, 20, 44.1, false, "outside")]
    [InlineData(41.04, 20, null, false, "cannot say")]
    public void A_window_is_held_to_height_width_area_and_sill(double height, double width, double? sill, bool? atGrade, string verdict) =>
        Assert.Equal(verdict, Window(height, width, sill, atGrade).Verdict);

    [Fact]
    public void A_larger_window_is_never_worse() => Gen.Select(Gen.Double[10, 60], Gen.Double[10, 60], Gen.Double[0, 20]).Sample((height, width, more) =>
        Window(height, width, 40, false).Verdict == "outside" || Window(height + more, width + more, 40, false).Verdict == "within", iter: 200);

    [Fact]
    public void What_is_known_of_the_ground_only_decides_what_was_open() => Gen.Select(Gen.Double[20, 60], Gen.Double[20, 60]).Sample((height, width) =>
    {
        var open = Window(height, width, 40).Verdict;
        return open == "cannot say" || (Window(height, width, 40, true).Verdict == open && Window(height, width, 40, false).Verdict == open);
    }, iter: 200);
}
