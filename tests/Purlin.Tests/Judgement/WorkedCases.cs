using System.Text.Json;
using System.Text.Json.Nodes;
using Purlin.Journal;
using Purlin.Judgement;
using Purlin.Book;
using Purlin.Tests.House;

namespace Purlin.Tests.Judgement;

/// <summary>
/// Small inspections with the judgement that belongs to them: evidence in, judgement out. Each stands in a file of
/// <c>Fixtures/cases</c> with the published text it is checked against, or <c>common practice</c>.
/// </summary>
public sealed class WorkedCases
{
    private static readonly string Folder = Path.Combine(Repository.Root, "tests/Purlin.Tests/Fixtures/cases");

    public static TheoryData<string> All => [.. Files()];

    public static IEnumerable<string> Files() => Directory.GetFiles(Folder, "*.json").Select(file => Path.GetFileName(file)).Order(StringComparer.Ordinal);

    public static JudgedInspection Judge(string file)
    {
        var one = Read(file);
        return Judging.Judge(CaseHouse.Build(one), RuleBook.BuiltIn, (int)one["year"]!);
    }

    [Fact]
    public void At_least_forty_of_which_half_stand_beside_a_published_text()
    {
        var cases = Files().Select(file => (Name: file, Read: Read(file))).ToList();
        Told.Nothing(
        [
            .. from one in cases
               from member in (string[])["title", "source", "year", "published", "expect"]
               where one.Read[member] is null || member == "source" && string.IsNullOrWhiteSpace((string?)one.Read[member])
               select $"{one.Name} has no \"{member}\"",
        ], "A case names itself, its source, whether that is published, the year and what it expects: docs/worked-cases.md.");
        Assert.True(cases.Count >= 40, $"{cases.Count} cases");
        Assert.True(cases.Count(one => (bool)one.Read["published"]!) * 2 >= cases.Count, "half of the cases stand beside a published text");
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Case(string file)
    {
        var one = Read(file);
        var judged = Judging.Judge(CaseHouse.Build(one), RuleBook.BuiltIn, (int)one["year"]!);
        var wrong = new CaseCheck(judged).Against(one["expect"]!.AsObject());
        Assert.True(wrong.Count == 0, $"{(string?)one["title"]} ({(string?)one["source"]})\n{string.Join('\n', wrong)}\ngot: {string.Join("; ", judged.Findings.Select(finding => $"{finding.Id} {finding.Weight.Word()} [{string.Join(",", finding.Grouped)}]"))}");
    }

    private static JsonObject Read(string file) => JsonNode.Parse(File.ReadAllText(Path.Combine(Folder, file)), documentOptions: new JsonDocumentOptions { CommentHandling = JsonCommentHandling.Skip })!.AsObject();
}
