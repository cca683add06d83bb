using System.Globalization;
using System.Text.RegularExpressions;
using Purlin.Report.Drawing;
using Purlin.Report.Page;

namespace Purlin.Tests.Report;

/// <summary>Every pair of letters and ground on the page and in the drawings, reckoned without a browser.</summary>
public sealed partial class ContrastTests
{
    // WCAG 2.2, success criterion 1.4.6: text has a contrast of at least 7:1.
    private const double Enhanced = 7;

    [Fact]
    public async Task Letters_of_the_page_stand_out_from_their_ground()
    {
        var page = await PageWriter.WriteAsync(SampleReport.Paper(), SampleReport.Photo);
        var style = page[(page.IndexOf("<style>", StringComparison.Ordinal) + 7)..page.IndexOf("</style>", StringComparison.Ordinal)];
        var named = Named().Matches(style).ToDictionary(match => match.Groups["name"].Value, match => match.Groups["colour"].Value);
        var rules = Rule().Matches(style).Select(match => (Whose: match.Groups["whose"].Value.Trim(),
            Text: Colour(match.Groups["rules"].Value, "color", named), Grounds: Grounds(match.Groups["rules"].Value, named))).ToList();
        var print = rules.Single(rule => rule.Grounds is ["#ffffff"] && rule.Whose == "html").Grounds[0];
        var pairs = rules.Where(rule => rule.Text is not null || rule.Grounds.Count > 0)
            .SelectMany(rule => (rule.Grounds.Count > 0 ? rule.Grounds : [named["paper"], print]).Select(ground => (rule.Whose,
                Text: rule.Text ?? named["ink"], Ground: ground))).ToList();
        Assert.True(pairs.Count > 20, "the style was hardly read");
        Assert.Empty(pairs.Where(pair => Contrast(pair.Text, pair.Ground) < Enhanced).Select(pair =>
            $"{pair.Whose}: {pair.Text} on {pair.Ground} is {Contrast(pair.Text, pair.Ground):0.00}"));
    }

    [Fact]
    public void Letters_of_drawings_stand_out_from_their_paper()
    {
        foreach (var theme in (Theme[])[Theme.Day, Theme.Dark, Theme.Sun, Theme.Print])
            foreach (var ink in (Ink[])[Ink.Text, Ink.Quiet, Ink.Accent])
                Assert.True(Contrast(theme.Colour(ink), theme.Paper) >= Enhanced,
                    $"{theme.Name}, {ink}: {Contrast(theme.Colour(ink), theme.Paper):0.00}");
    }

    [Fact]
    public void The_arithmetic_is_that_of_the_standard()
    {
        // WCAG 2.2, definition of contrast ratio: black on white is 21:1, a colour on itself 1:1.
        Assert.Equal(21, Contrast("#000000", "#ffffff"), 9);
        Assert.Equal(1, Contrast("#a3210c", "#a3210c"), 9);
    }

    private static List<string> Grounds(string rules, Dictionary<string, string> named) =>
        [.. Declared().Matches(rules).Where(match => match.Groups["what"].Value is "background" or "background-color").SelectMany(match =>
            Value().Matches(match.Groups["value"].Value)).Select(match => Full(match, named)).Distinct()];

    private static string? Colour(string rules, string what, Dictionary<string, string> named) =>
        Declared().Matches(rules).Where(match => match.Groups["what"].Value == what && Value().IsMatch(match.Groups["value"].Value))
            .Select(match => Full(Value().Match(match.Groups["value"].Value), named)).LastOrDefault();

    private static string Full(Match value, Dictionary<string, string> named) =>
        value.Groups["name"].Success ? named[value.Groups["name"].Value] : value.Value is { Length: 4 } brief
            ? $"#{brief[1]}{brief[1]}{brief[2]}{brief[2]}{brief[3]}{brief[3]}" : value.Value;

    // WCAG 2.2, definitions of relative luminance and contrast ratio.
    private static double Contrast(string one, string other)
    {
        var (first, second) = (Luminance(one), Luminance(other));
        return (Math.Max(first, second) + 0.05) / (Math.Min(first, second) + 0.05);
    }

    private static double Luminance(string colour) => 0.2126 * Linear(colour, 1) + 0.7152 * Linear(colour, 3) + 0.0722 * Linear(colour, 5);

    private static double Linear(string colour, int at)
    {
        var part = int.Parse(colour.AsSpan(at, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
        return part <= 0.04045 ? part / 12.92 : Math.Pow((part + 0.055) / 1.055, 2.4);
    }

    [GeneratedRegex(@"--(?<name>[a-z]+): (?<colour>#[0-9a-f]{6})", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Named();

    [GeneratedRegex(@"(?<whose>[^{}]+)\{(?<rules>[^{}]*)\}", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Rule();

    [GeneratedRegex("(?<what>[a-z-]+): (?<value>[^;]+)", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Declared();

    [GeneratedRegex(@"var\(--(?<name>[a-z]+)\)|#[0-9a-f]{6}|#[0-9a-f]{3}", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Value();
}
