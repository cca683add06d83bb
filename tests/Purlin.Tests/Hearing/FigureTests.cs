using Purlin.Hearing.Figures;

namespace Purlin.Tests.Hearing;

/// <summary>Numbers as they are spoken on site. Common practice.</summary>
public sealed class FigureTests
{
    [Theory]
    [InlineData("eleven foot four inches", 11.3333, "ft")]
    [InlineData("five foot ten", 5.8333, "ft")]
    [InlineData("an inch and a half", 1.5, "in")]
    [InlineData("inch and a quarter", 1.25, "in")]
    [InlineData("three quarters of an inch", 0.75, "in")]
    [InlineData("an eighth of an inch", 0.125, "in")]
    [InlineData("two and a half inches", 2.5, "in")]
    [InlineData("quarter inch", 0.25, "in")]
    [InlineData("1/8 inch", 0.125, "in")]
    [InlineData("eighty four percent", 84, "%")]
    [InlineData("one hundred thousand b t u h", 100000, "Btu/h")]
    [InlineData("seventy four pounds", 74, "psi")]
    [InlineData("a hundred and thirty one degrees", 131, "°F")]
    [InlineData("sixty eight point five degrees", 68.5, "°F")]
    [InlineData("minus two point one inches", -2.1, "in")]
    public void A_measure_is_read(string said, double value, string unit)
    {
        var figure = Assert.Single(FigureReader.In([.. said.Split(' ')]));
        Assert.Equal(value, figure.Value, 3);
        Assert.Equal(unit, figure.Unit);
    }

    [Theory]
    [InlineData("two thousand nine", 2009)]
    [InlineData("nineteen ninety one", 1991)]
    [InlineData("twenty twelve", 2012)]
    [InlineData("oh four", 2004)]
    [InlineData("one thirty one", 131)]
    [InlineData("22.8", 22.8)]
    public void A_bare_number_is_read(string said, double value) =>
        Assert.Equal(value, Assert.Single(FigureReader.In([.. said.Split(' ')])).Value, 3);

    [Fact]
    public void What_counts_is_no_measure() => Assert.Empty(FigureReader.In(["two", "outlets", "and", "one", "more"]));
}
