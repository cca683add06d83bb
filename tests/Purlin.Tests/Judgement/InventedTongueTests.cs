using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Purlin.Demo;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Judgement;
using Purlin.Reckoning;
using Purlin.Tests.House;

namespace Purlin.Tests.Judgement;

/// <summary>An invented language laid over everything: no sentence of a reckoning or of a judgement stays in plain English.</summary>
public sealed class InventedTongueTests
{
    // Ids, words of closed lists that programs read, cited documents, and the evidence as it was entered.
    private static readonly HashSet<string> NotSentences = new(StringComparer.Ordinal)
    {
        "sources", "source", "id", "condition", "grouped", "system", "component", "places", "name", "trade", "verdict", "state", "spread", "kind", "weight", "inputs", "result",
        "reading", "fact", "place", "spot", "caption", "document", "section", "standard", "setting", "cautions", "client", "of", "word", "part", "readings", "unit", "mark",
        // Titles of documents; what a standard sets is a figure of its text, quoted.
        ".coverage.title", ".wanted.value",
    };

    private static readonly Regex TwoWords = new("[A-Za-z]{2,}[,;:]? [A-Za-z]{2,}", RegexOptions.None, TimeSpan.FromSeconds(1));

    [Theory]
    [InlineData("Fall of {reach:0.##}", "⟦Fáll óf {reach:0.##}⟧")]
    [InlineData("{n, plural, one {# bar} other {# bars}} in {place}", "⟦{n, plural, one {# bár} other {# bárs}} íñ {place}⟧")]
    [InlineData("{a, select, none {} other { or {a} aluminum}}.", "⟦{a, select, none {} other { ór {a} álúmíñúm}}.⟧")]
    public void Places_are_kept_as_they_are(string sentence, string accented) => Assert.Equal(accented, InventedTongue.Accented(sentence));

    [Fact]
    public void No_step_verdict_caution_or_refusal_of_a_reckoning_is_plain()
    {
        List<string> plain = [];
        foreach (var (name, input) in Examples())
        {
            var reckoning = Reckonings.Find(name).OrThrow();
            plain.AddRange(Plain(name, [reckoning.Title, reckoning.Purpose, .. Meanings(reckoning.Inputs)]));
            reckoning.Reckon(input).Match(
                working => { plain.AddRange(Plain(name, [.. working.Steps.Select(step => step.Text), working.Verdict.Because, .. working.Cautions])); return 0; },
                refusals => { plain.AddRange(Plain(name, [.. refusals.SelectMany(refusal => (Said[])[refusal.Given, refusal.Allowed])])); return 0; });
            plain.AddRange(Plain(name, [.. reckoning.Reckon(new JsonObject { ["no_such_input"] = 1 }).Refusals.SelectMany(refusal => (Said[])[refusal.Given, refusal.Allowed])]));
        }
        Assert.True(plain.Count == 0, $"{plain.Count}:\n{string.Join('\n', plain.Distinct().Take(60))}");
    }

    [Fact]
    public void No_sentence_of_the_judged_demo_is_plain()
    {
        var entries = DemoInspection.Write().Entries;
        var inspection = Folding.Fold(entries);
        var judged = Judging.Judge(inspection, InventedTongue.Book, 2026);
        HashSet<string> entered = new(StringComparer.Ordinal);
        foreach (var entry in entries) Enter(JsonNode.Parse(entry.Line.Span), entered);
        string[] evidence = [.. entered.Where(text => text.Contains(' ', StringComparison.Ordinal)).OrderByDescending(text => text.Length)];
        List<string> plain = [];
        Walk(JudgementJson.Write(judged, inspection), "", evidence, plain);
        Assert.True(plain.Count == 0, $"{plain.Count}:\n{string.Join('\n', plain.Distinct().Take(60))}");
    }

    private static IEnumerable<(string Name, JsonObject Input)> Examples() =>
        Directory.EnumerateFiles(Path.Combine(Repository.Root, "docs", "reckonings"), "*.md").Order(StringComparer.Ordinal).SelectMany(page =>
            Regex.Matches(File.ReadAllText(page), "```reckon\n(?<name>[^\n]+)\n(?<input>[^\n]+)\n", RegexOptions.None, TimeSpan.FromSeconds(1))
                .Select(match => (match.Groups["name"].Value.Trim(), JsonNode.Parse(match.Groups["input"].Value)!.AsObject())));

    private static IEnumerable<Said> Meanings(IEnumerable<Input> inputs) =>
        inputs.SelectMany(input => (Said[])[input.Meaning, input.Allowed, .. input is Input.List list ? Meanings(list.Of) : input is Input.Group group ? Meanings(group.Of) : []]);

    private static IEnumerable<string> Plain(string name, Said[] said) =>
        said.Select(InventedTongue.Words.Say).Where(words => TwoWords.IsMatch(InventedTongue.Plain(words))).Select(words => $"{name}: {words}");

    private static void Enter(JsonNode? node, HashSet<string> entered)
    {
        if (node is JsonObject group)
            foreach (var (_, inner) in group) Enter(inner, entered);
        else if (node is JsonArray list)
            foreach (var inner in list) Enter(inner, entered);
        else if (node is JsonValue value && value.TryGetValue<string>(out var text)) entered.Add(text.TrimEnd('.'));
    }

    private static string Without(string[] evidence, string text)
    {
        foreach (var entered in evidence) text = text.Replace(entered, "…", StringComparison.OrdinalIgnoreCase);
        return text;
    }

    private static void Walk(JsonNode? node, string member, string[] evidence, List<string> plain)
    {
        if (node is JsonObject group)
        {
            foreach (var (name, inner) in group)
                if (!NotSentences.Contains(name) && !NotSentences.Contains($"{member}.{name}")) Walk(inner, $"{member}.{name}", evidence, plain);
        }
        else if (node is JsonArray list)
        {
            foreach (var inner in list) Walk(inner, member, evidence, plain);
        }
        else if (node is JsonValue value && value.TryGetValue<string>(out var text) && TwoWords.IsMatch(Without(evidence, InventedTongue.Plain(text))))
            plain.Add($"{member}: {text}");
    }
}
