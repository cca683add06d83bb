using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Purlin.Reckoning;
using Purlin.Tests.House;

namespace Purlin.Tests.Reckoning;

/// <summary>The examples in the documents are run: name, input, then one line for each result as printed, met to half its last digit.</summary>
public sealed class DocumentedExamplesTests
{
    private static readonly List<(string Page, string[] Lines)> All =
        [.. Directory.EnumerateFiles(Path.Combine(Repository.Root, "docs", "reckonings"), "*.md").Order(StringComparer.Ordinal).SelectMany(page =>
            Regex.Matches(File.ReadAllText(page), "```reckon\n(?<block>.*?)```", RegexOptions.Singleline, TimeSpan.FromSeconds(1))
                .Select(match => (Path.GetFileName(page), match.Groups["block"].Value.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))))];

    public static TheoryData<int> Examples() => [.. Enumerable.Range(0, All.Count)];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Example_comes_out_as_printed(int index)
    {
        var (page, lines) = All[index];
        var working = Worked.Of(lines[0], lines[1]);
        Assert.True(lines.Length > 2, $"{page}: the example of {lines[0]} checks nothing");
        foreach (var line in lines[2..])
        {
            var sides = line.Split(" = ", 2);
            if (sides[0] == "verdict") Assert.Equal(sides[1], working.Verdict.Word);
            else Check(page, line, sides[1], sides[0].Split('.').Aggregate(working.ToJson(InWords.Tongue)["result"]!, (node, member) => node[member] ?? throw new InvalidOperationException($"{page}: no {line}")));
        }
    }

    private static void Check(string page, string line, string printed, JsonNode got)
    {
        if (got is not JsonObject quantity)
        {
            var plain = got.GetValueKind() == System.Text.Json.JsonValueKind.String ? got.GetValue<string>() : got.ToJsonString();
            Assert.True(plain == printed || (double.TryParse(plain, CultureInfo.InvariantCulture, out var a) && double.TryParse(printed, CultureInfo.InvariantCulture, out var b) && Math.Abs(a - b) <= HalfLastDigit(printed)), $"{page}: {line}, got {plain}");
            return;
        }
        var loose = printed.Split(" ± ");
        var parts = loose[0].Split(' ', 2);
        Assert.Equal(parts[1], (string?)quantity["unit"]);
        var tolerance = loose.Length > 1 ? double.Parse(loose[1], CultureInfo.InvariantCulture) : HalfLastDigit(parts[0]);
        var value = (double)quantity["value"]!;
        Assert.True(Math.Abs(value - double.Parse(parts[0], CultureInfo.InvariantCulture)) <= tolerance, $"{page}: {line}, got {value:R}");
    }

    private static double HalfLastDigit(string printed) =>
        0.5000001 * Math.Pow(10, printed.Contains('.', StringComparison.Ordinal) ? printed.IndexOf('.', StringComparison.Ordinal) + 1 - printed.Length : 0);

    // Every reckoning has a section in a page of its family.
    [Fact]
    public void Every_reckoning_has_its_section()
    {
        var headings = Directory.EnumerateFiles(Path.Combine(Repository.Root, "docs", "reckonings"), "*.md")
            .SelectMany(File.ReadLines).Where(line => line.StartsWith("## ", StringComparison.Ordinal)).Select(line => line[3..].Trim()).ToHashSet(StringComparer.Ordinal);
        (string Page, System.Collections.Immutable.ImmutableArray<Calculation> Family)[] families =
        [
            ("electrical.md", Purlin.Reckoning.Electrical.ElectricalReckonings.All), ("air.md", Purlin.Reckoning.Air.AirReckonings.All), ("moisture.md", Purlin.Reckoning.Moisture.MoistureReckonings.All),
            ("water.md", Purlin.Reckoning.Water.WaterReckonings.All), ("structure.md", Purlin.Reckoning.Structure.StructureReckonings.All),
            ("site.md", Purlin.Reckoning.Site.SiteReckonings.All), ("years.md", Purlin.Reckoning.Years.YearsReckonings.All),
        ];
        foreach (var (page, family) in families)
            Assert.All(family, reckoning =>
            {
                Assert.Contains(reckoning.Name, headings);
                Assert.Contains(All, example => example.Page == page && example.Lines[0] == reckoning.Name);
            });
    }
}
