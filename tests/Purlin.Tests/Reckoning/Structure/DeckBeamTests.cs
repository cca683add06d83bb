using Purlin.Reckoning;

namespace Purlin.Tests.Reckoning.Structure;

/// <summary>Deck beams against published cells.</summary>
public sealed class DeckBeamTests
{
    private static readonly IReadOnlyList<TableRow> Rows = Tables.Read("structure/deck-beam.csv").Rows;

    // AWC DCA 6 Table 3 / IRC R507.5, southern pine (county handout): 2-2x10 under 12 ft joists 7-4; 3-2x12 under 6 ft joists 15-3.
    // AWC DCA 6 (2015) Table 3A, all other species: 2-2x8 under 10 ft joists 5-1; 2-2x12 under 6 ft 9-5; 3-2x10 under 18 ft 6-8.
    // Two public copies of that table, made apart, agree in every cell; a third page gives 6-7, 8-1 and 9-5 for doubled 2x8, 2x10 and
    // 2x12 under 6 ft.
    [Theory]
    [InlineData("southern pine", "2-2x10", 12, 7, 4)]
    [InlineData("southern pine", "2-2x10", 11, 7, 4)]
    [InlineData("southern pine", "3-2x12", 6, 15, 3)]
    [InlineData("southern pine", "2-2x6", 18, 4, 0)]
    [InlineData("hem-fir", "2-2x8", 10, 5, 1)]
    [InlineData("douglas fir-larch", "2-2x8", 6, 6, 7)]
    [InlineData("spruce-pine-fir", "2-2x10", 6, 8, 1)]
    [InlineData("redwood or cedar", "2-2x12", 6, 9, 5)]
    [InlineData("redwood or cedar", "3-2x10", 17, 6, 8)]
    public void Beams_reach_as_far_as_their_species(string species, string size, double joists, int feet, int inches)
    {
        var beam = FormattableString.Invariant($$"""
            {"member":"deck beam","species":"{{species}}","grade":"No. 2","size":"{{size}}","joist_span":{{joists}}}
            """);
        Reckoned.Of("joist-span", beam).Near("allowed", feet + inches / 12.0, 1e-12);
    }

    // No species carries more than southern pine, and none more on longer joists.
    [Fact]
    public void No_beam_reaches_further_than_southern_pine_and_none_further_under_longer_joists()
    {
        foreach (var row in Rows)
        {
            var (size, joists, span) = (row["size"], row.Number("joist_span_most_ft"), row.Number("span_in"));
            Assert.True(span <= Span("southern pine", size, joists));
            if (joists > 6) Assert.True(span < Span(row["species"], size, joists - 2));
        }
    }

    private static double Span(string species, string size, double joists) =>
        Rows.Single(row => row["species"] == species && row["size"] == size && row.Number("joist_span_most_ft").Equals(joists))
            .Number("span_in");
}
