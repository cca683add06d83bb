using System.Text;
using Purlin.Judgement;
using Purlin.Book;
using Purlin.Tests.House;

namespace Purlin.Tests.Judgement;

/// <summary>
/// Holds the rule book against an open public standard that classes deficiencies: HUD, National Standards for the Physical Inspection of
/// Real Estate, inspection standards notice, 88 FR 40832 (22 June 2023), version 3.0; items and severities in our own words in
/// <c>Fixtures/nspire.csv</c>. A row marked confirmed was read in a published account of that version (a housing authority's guide for
/// owners, a manual that cites it); the others are from memory. Its severities rank danger to tenants and days to repair; our weights
/// rank danger and cost to a buyer. The mapping: life-threatening is at least make safe, severe at least put right, moderate at least
/// keep up, low at least know about.
/// </summary>
public sealed class FederalStandardTests
{
    private static readonly List<Line> Lines = [.. File.ReadLines(Path.Combine(Repository.Root, "tests/Purlin.Tests/Fixtures/nspire.csv")).Skip(1).Select(Line.Read)];

    [Fact]
    public void Every_deficiency_of_a_house_has_a_condition()
    {
        var gaps = Lines.Where(line => line.Conditions.Count == 0 && line.WhyNot.Length == 0).Select(line => line.Name).ToList();
        var unknown = Lines.SelectMany(line => line.Conditions).Where(id => !RuleBook.BuiltIn.Conditions.ContainsKey(id)).Distinct().ToList();
        Report();
        Assert.True(gaps.Count == 0, $"no condition for: {string.Join("; ", gaps)}");
        Assert.True(unknown.Count == 0, $"the book has no {string.Join(", ", unknown)}");
    }

    /// <summary>Where the two rank differently it is told with a reason; nothing that can kill may rank as upkeep, a device that no rule asks for aside.</summary>
    [Fact]
    public void Severities_and_weights_agree_but_for_what_is_explained()
    {
        var lighter = Lines.Where(IsLighter).Select(line => line.Name).ToHashSet(StringComparer.Ordinal);
        var untold = Lines.Where(line => IsLighter(line) && !Explained.ContainsKey(line.Name))
            .Select(line => $"{line.Name} is {line.Severity} there and {Heaviest(line).Word()} here ({string.Join(", ", line.Conditions)})").ToList();
        Assert.True(untold.Count == 0, string.Join('\n', untold));
        var stale = Explained.Keys.Where(name => !lighter.Contains(name)).ToList();
        Assert.True(stale.Count == 0, $"explained, yet not lighter here: {string.Join("; ", stale)}");
        Assert.DoesNotContain(Lines, line => line.Severity == "life-threatening" && line.Item != "fire extinguisher" && line.Conditions.Count > 0 && Heaviest(line) <= Weight.KeepUp);
    }

    private static readonly Dictionary<string, string> Explained = new(StringComparer.Ordinal)
    {
        ["fire extinguisher: missing, expired, damaged where required"] = "no rule asks for one in a single house",
        ["heating, ventilation, air conditioning: no heat in the cold season"] = "the severity depends on the season; a buyer can have it repaired",
        ["structural system: signs of serious failure"] = "act now by an engineer; whether it can fall is for the engineer to say",
        ["guardrail: too low; openings too wide"] = "what an older rule allowed is put right, not made safe today",
        ["mould-like substance: more than 9 sq ft"] = "act now: the cause first",
        ["water heater: gas shut-off missing"] = "put right: the main valve still shuts the gas off",
        ["food preparation area: counter missing or damaged"] = "a matter of looks where the room can be used",
        ["leak, gas or oil: any leak of oil"] = "act now: the soil is spoiled, nobody is hurt at once",
        ["clothes dryer exhaust: missing"] = "put right by a duct outdoors; a duct that is off or blocked is made safe",
        ["toilet: the only one missing or out of use"] = "put right before moving in: a buyer does not yet live there",
    };

    private static bool IsLighter(Line line) => line.Conditions.Count > 0 && Heaviest(line) < Least(line.Severity);

    private static Weight Least(string severity) => severity switch
    {
        "life-threatening" => Weight.MakeSafe,
        "severe" => Weight.PutRight,
        "moderate" => Weight.KeepUp,
        _ => Weight.KnowAbout,
    };

    private static Weight Heaviest(Line line) => line.Conditions.Where(RuleBook.BuiltIn.Conditions.ContainsKey).Select(WeightOf).DefaultIfEmpty(Weight.KnowAbout).Max();

    private static Weight WeightOf(string condition)
    {
        var house = new SmallHouse();
        house.Seen(condition, house.Place("room"));
        return Judging.Judge(house.Build(), RuleBook.BuiltIn, 2026).Findings.Single(finding => finding.Condition == condition).Weight;
    }

    private static void Report()
    {
        var report = new StringBuilder("# The federal housing inspection standard beside our rule book: item, deficiency, its severity, our heaviest weight, our conditions\n");
        report.AppendLine($"{Lines.Count} deficiencies, {Lines.Count(line => line.Mark == "confirmed")} read in a published text, {Lines.Count(line => line.Mark != "confirmed")} from memory");
        foreach (var line in Lines) report.AppendLine(line.Conditions.Count == 0 ? $"{line.Name} | {line.Severity} | no condition: {line.WhyNot} | {line.Mark}" : $"{line.Name} | {line.Severity} | {Heaviest(line).Word()} | {string.Join(", ", line.Conditions)} | {line.Mark}");
        report.AppendLine("# Ranked lighter here, and why");
        foreach (var line in Lines.Where(IsLighter)) report.AppendLine($"{line.Name} | {line.Severity} there, {Heaviest(line).Word()} here | {Explained.GetValueOrDefault(line.Name, "not explained")}");
        Directory.CreateDirectory(Path.Combine(Repository.Root, "artifacts"));
        File.WriteAllText(Path.Combine(Repository.Root, "artifacts/federal-standard.txt"), report.ToString());
    }

    private sealed record Line(string Item, string Deficiency, string Severity, IReadOnlyList<string> Conditions, string WhyNot, string Mark)
    {
        public string Name => $"{Item}: {Deficiency}";

        public static Line Read(string text)
        {
            List<string> cells = [""];
            var quoted = false;
            foreach (var letter in text)
            {
                if (letter == '"') quoted = !quoted;
                else if (letter == ',' && !quoted) cells.Add("");
                else cells[^1] += letter;
            }
            return new Line(cells[0], cells[1], cells[2], cells[3].Split(' ', StringSplitOptions.RemoveEmptyEntries), cells[4], cells[5]);
        }
    }
}
