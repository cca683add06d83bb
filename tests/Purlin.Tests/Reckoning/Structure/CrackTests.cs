using CsCheck;

namespace Purlin.Tests.Reckoning.Structure;

/// <summary>Cracks against the published width classes and the meanings that foundation engineers give.</summary>
public sealed class CrackTests
{
    private static Reckoned Of(string more) => Reckoned.Of("crack", "{" + more + "}");

    // Building Research Establishment Digest 251: 0 below 0.1 mm, 1 to 1 mm, 2 to 5, 3 to 15, 4 to 25, 5 above (as an engineering practice
    // gives it).
    [Theory]
    [InlineData(0.05, 0)]
    [InlineData(0.1, 0)]
    [InlineData(0.11, 1)]
    [InlineData(1, 1)]
    [InlineData(1.1, 2)]
    [InlineData(5, 2)]
    [InlineData(5.1, 3)]
    [InlineData(15, 3)]
    [InlineData(15.1, 4)]
    [InlineData(25, 4)]
    [InlineData(26, 5)]
    public void Width_classes_are_the_digests(double millimetres, int category)
    {
        var crack = Of(FormattableString.Invariant($"\"material\":\"brick veneer\",\"width\":\"{millimetres} mm\",\"direction\":\"vertical\",\"pattern\":\"near a corner\""));
        Assert.Equal(category, crack.Number("class"));
        Assert.Equal(category >= 3 ? "outside" : "within", crack.Verdict);
    }

    // Poured wall, vertical hairline: shrinkage. Horizontal: pressure. Matching pair: the part between has settled (Concrete Construction
    // magazine). Slab to 3/16 in and 1/8 in step: shrinkage (building questions page). Drywall from 1/4 in: structure (engineer's page).
    [Theory]
    [InlineData("\"material\":\"poured wall\",\"direction\":\"vertical\",\"width\":0.03", "within", "shrinkage")]
    [InlineData("\"material\":\"poured wall\",\"direction\":\"horizontal\",\"width\":0.03", "outside", "pressing the wall inward")]
    [InlineData("\"material\":\"block wall\",\"direction\":\"horizontal\",\"width\":0.1", "outside", "pressing the wall inward")]
    [InlineData("\"material\":\"block wall\",\"direction\":\"horizontal\",\"width\":0.03", "cannot say", "start of a bow")]
    [InlineData("\"material\":\"poured wall\",\"direction\":\"vertical\",\"width\":0.1,\"pattern\":\"matching pair\"", "outside", "has settled")]
    [InlineData("\"material\":\"poured wall\",\"direction\":\"diagonal\",\"width\":0.1,\"pattern\":\"ends and middle\"", "outside", "soil pressing")]
    [InlineData("\"material\":\"block wall\",\"direction\":\"stair-step\",\"width\":0.19", "cannot say", "settlement")]
    [InlineData("\"material\":\"slab\",\"width\":0.1875", "within", "shrinkage")]
    [InlineData("\"material\":\"slab\",\"width\":0.25", "cannot say", "settling or lifting")]
    [InlineData("\"material\":\"slab\",\"width\":0.1,\"offset\":0.2", "outside", "shrinkage")]
    [InlineData("\"material\":\"drywall\",\"width\":0.05,\"direction\":\"diagonal\",\"pattern\":\"corner of opening\"", "within", "seasons")]
    [InlineData("\"material\":\"drywall\",\"width\":0.26,\"direction\":\"diagonal\"", "outside", "movement of the structure")]
    [InlineData("\"material\":\"brick veneer\",\"width\":0.15,\"direction\":\"horizontal\",\"pattern\":\"at a lintel\"", "within", "lintel that rusts")]
    [InlineData("\"material\":\"pier\",\"width\":0.01", "outside", "too much load")]
    public void Kind_and_shape_give_the_likely_meaning(string crack, string verdict, string meaning)
    {
        var found = Of(crack);
        Assert.Equal(verdict, found.Verdict);
        Assert.Contains(meaning, found.Text("likely_meaning"), StringComparison.Ordinal);
        Assert.NotEmpty(found.Text("look_for"));
    }

    [Fact]
    public void What_moves_is_never_within() => Assert.Equal("outside", Of("\"material\":\"poured wall\",\"direction\":\"vertical\",\"width\":0.03,\"active\":\"yes\"").Verdict);

    [Fact]
    public void What_fits_no_row_cannot_be_said()
    {
        var crack = Of("\"material\":\"stucco\",\"direction\":\"vertical\",\"width\":0.03");
        Assert.Equal("cannot say", crack.Verdict);
        Assert.True(crack.IsNull("likely_meaning"));
    }

    [Fact]
    public void Wider_is_never_better() => Gen.Select(Gen.Int[0, 7], Gen.Double[0, 1], Gen.Double[0, 1]).Sample((kind, width, more) =>
    {
        string[] order = ["within", "cannot say", "outside"];
        string[] kinds = ["poured wall\",\"direction\":\"vertical", "poured wall\",\"direction\":\"horizontal", "block wall\",\"direction\":\"stair-step", "block wall\",\"direction\":\"horizontal", "slab", "drywall\",\"direction\":\"diagonal", "brick veneer\",\"direction\":\"stair-step", "chimney\",\"pattern\":\"separation"];
        int At(double wide) => Array.IndexOf(order, Of(FormattableString.Invariant($"\"material\":\"{kinds[kind]}\",\"width\":{wide:R}")).Verdict);
        Assert.True(At(width + more) >= At(width));
    }, iter: 200);

    [Theory]
    [InlineData("{}", "material: missing")]
    [InlineData("""{"material":"ice","width":1}""", "material: \"ice\"")]
    [InlineData("""{"material":"slab","width":-1}""", "width: -1")]
    [InlineData("""{"material":"slab","width":"wide"}""", "width")]
    [InlineData("""{"material":"slab","width":1,"active":true}""", "active")]
    public void Bad_input_names_itself(string json, string expected) => Assert.Contains(expected, Reckoned.Refused("crack", json), StringComparison.Ordinal);
}
