using System.Text.Json.Nodes;
using Purlin.Reckoning;

namespace Purlin.Office.Tests.Cli;

public sealed class ReckonCommandTests
{
    [Fact]
    public async Task Prints_the_working_of_one_reckoning()
    {
        var (status, output, error) = await Typed.RunAsync(["reckon", "air-state"], """{"dry_bulb": "100 °F", "wet_bulb": 65}""");
        Assert.Equal((0, ""), (status, error));
        var working = JsonNode.Parse(output)!;
        Assert.Equal(["because", "cautions", "result", "sources", "steps", "verdict"], working.AsObject().Select(member => member.Key).Order());
        // ASHRAE Fundamentals 2017, chapter 1, example 1: 100 °F dry bulb, 65 °F wet bulb at 14.696 psi gives a humidity ratio of 0.00523.
        Assert.Equal(0.00523, (double)working["result"]!["humidity_ratio"]!["value"]!, 4);
    }

    [Fact]
    public async Task Lists_every_reckoning_with_its_purpose()
    {
        var (status, output, _) = await Typed.RunAsync(["reckon", "--list"]);
        Assert.Equal(0, status);
        var lines = output.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(Reckonings.All.Select(calculation => calculation.Name), lines.Select(line => line.Split(' ')[0]));
        Assert.All(lines, line => Assert.True(line.Length > 30, line));
    }

    [Fact]
    public async Task Every_reckoning_explains_its_inputs_and_sources()
    {
        foreach (var calculation in Reckonings.All)
        {
            var (status, output, _) = await Typed.RunAsync(["reckon", calculation.Name, "--help"]);
            Assert.Equal(0, status);
            Assert.All(calculation.Inputs, input => Assert.Contains(input.Name, output, StringComparison.Ordinal));
            Assert.All(calculation.Sources, source => Assert.Contains(source, output, StringComparison.Ordinal));
        }
    }

    [Theory]
    [InlineData("""{"dry_bulb": 75}""", "wet_bulb")]
    [InlineData("""{"dry_bulb": 75, "wet_bulb": 80}""", "wet_bulb")]
    [InlineData("""{"dry_bulb": "NaN", "wet_bulb": 60}""", "dry_bulb")]
    [InlineData("""{"dry_bulb": 1e999, "wet_bulb": 60}""", "dry_bulb")]
    [InlineData("""{"dry_bulb": 75, "wet_bulb": 60, "colour": "red"}""", "colour")]
    [InlineData("""{"dry_bulb": "75 psi", "wet_bulb": 60}""", "dry_bulb")]
    [InlineData("[]", "standard input")]
    [InlineData("{", "standard input")]
    [InlineData("", "standard input")]
    public async Task Refuses_bad_input_by_name_with_status_two(string input, string named)
    {
        var (status, output, error) = await Typed.RunAsync(["reckon", "air-state"], input);
        Assert.Equal((2, ""), (status, output));
        Assert.Contains(named, error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("reckon")]
    [InlineData("reckon", "no-such-thing")]
    [InlineData("no-such-command")]
    public async Task Refuses_a_name_it_does_not_know_with_status_two(params string[] arguments)
    {
        var (status, output, error) = await Typed.RunAsync(arguments, "{}");
        Assert.Equal((2, ""), (status, output));
        Assert.NotEqual("", error);
    }
}
