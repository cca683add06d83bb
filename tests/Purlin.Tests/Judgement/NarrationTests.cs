using System.Text.Json;
using System.Text.RegularExpressions;
using Purlin.Book;
using Purlin.Journal;
using Purlin.Tests.House;

namespace Purlin.Tests.Judgement;

/// <summary>
/// The narrations of <c>Fixtures/narrations</c> and their labels hold together: every label names what the rule book knows, every stretch of words is in
/// the text. All invented. What a reader makes of them is looked at elsewhere.
/// </summary>
public sealed partial class NarrationTests
{
    private static readonly string Folder = Path.Combine(Repository.Root, "tests/Purlin.Tests/Fixtures/narrations");
    private static readonly RuleBook Book = RuleBook.BuiltIn;
    private static readonly HashSet<string> Components = [.. Book.ComponentKinds()];
    private static readonly HashSet<string> Facts = [.. Book.Sheets.Values.SelectMany(sheet => sheet.Facts).Select(fact => fact.Fact)];
    private static readonly HashSet<string> Places = [.. typeof(PlaceKind).GetFields().Where(field => field.IsLiteral).Select(field => (string)field.GetRawConstantValue()!)];

    public static TheoryData<string> All => new(Directory.GetFiles(Folder, "*.json", SearchOption.AllDirectories).Select(path => Path.GetRelativePath(Folder, path)).Order(StringComparer.Ordinal));

    [Fact]
    public void There_are_enough_and_every_third_is_held_out()
    {
        var numbers = All.Select(row => (Path: (string)row, Number: int.Parse(Path.GetFileName((string)row)[..2]))).OrderBy(line => line.Number).ToList();
        Assert.True(numbers.Count >= Least, $"{numbers.Count} narrations");
        Assert.Equal(Enumerable.Range(1, numbers.Count), numbers.Select(line => line.Number));
        Assert.All(numbers, line => Assert.Equal(line.Number % 3 == 0, line.Path.StartsWith("held-out", StringComparison.Ordinal)));
    }

    [Theory]
    [MemberData(nameof(All))]
    public void It_is_what_dictation_hands_over(string path)
    {
        var words = Words(path);
        Assert.InRange(words.Count, 600, 1800);
        Assert.All(words, word => Assert.Matches(Word(), word));
        using var gold = Gold(path);
        Assert.Equal(gold.RootElement.GetProperty("words").GetInt32(), words.Count);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Every_label_names_what_the_book_knows_and_rests_on_words_of_the_text(string path)
    {
        using var gold = Gold(path);
        var count = Words(path).Count;
        var proposals = gold.RootElement.GetProperty("proposals").EnumerateArray().ToList();
        Assert.NotEmpty(proposals);
        Assert.All(proposals, proposal => Resolves(proposal, count));
        Assert.Equal(proposals.Select(Start).Order(), proposals.Select(Start));
        Assert.All(gold.RootElement.GetProperty("asides").EnumerateArray(), span => Within(span, count));
        Assert.NotEmpty(gold.RootElement.GetProperty("phenomena").EnumerateArray());
    }

    private const int Least = 15;

    private static void Resolves(JsonElement proposal, int count)
    {
        var text = proposal.ToString();
        var component = proposal.GetProperty("component").GetString()!;
        Assert.True(Components.Contains(component), text);
        if (proposal.GetProperty("condition").GetString() is { } id) Assert.True(Book.Conditions.TryGetValue(id, out var condition) && condition.Component == component, text);
        if (proposal.GetProperty("place").GetString() is { } place) Assert.True(Places.Contains(place), text);
        Assert.Contains(proposal.GetProperty("outcome").GetString(), (string[])["seen", "clear", "not visible"]);
        if (proposal.GetProperty("trade").GetString() is { } trade) Assert.Contains(trade, Trades.All);
        foreach (var amount in proposal.GetProperty("amounts").EnumerateArray())
        {
            var kind = amount.GetProperty("kind").GetString()!;
            var unit = amount.GetProperty("unit").GetString();
            if (Book.ReadingKinds.TryGetValue(kind, out var reading)) Assert.True(reading.Unit == unit, text);
            else Assert.True(Facts.Contains(kind) && Book.Sheets.Values.SelectMany(sheet => sheet.Facts).Any(fact => fact.Fact == kind && fact.Unit == unit), text);
            Assert.True(double.IsFinite(amount.GetProperty("value").GetDouble()), text);
        }
        Assert.NotEmpty(proposal.GetProperty("words").EnumerateArray());
        Assert.All(proposal.GetProperty("words").EnumerateArray(), span => Within(span, count));
        if (proposal.GetProperty("from").ValueKind == JsonValueKind.Number) Assert.True(proposal.GetProperty("from").GetDouble() < proposal.GetProperty("to").GetDouble(), text);
    }

    private static void Within(JsonElement span, int count)
    {
        var (start, end) = (span[0].GetInt32(), span[1].GetInt32());
        Assert.True(start >= 0 && start < end && end <= count, $"{span} of {count} words");
    }

    private static int Start(JsonElement proposal) => proposal.GetProperty("words")[0][0].GetInt32();

    private static JsonDocument Gold(string path) => JsonDocument.Parse(File.ReadAllBytes(Path.Combine(Folder, path)));

    private static List<string> Words(string path)
    {
        var beside = ((string[])[".txt", ".vtt", ".srt"]).Select(ending => Path.ChangeExtension(Path.Combine(Folder, path), ending)).Single(File.Exists);
        var lines = File.ReadAllLines(beside).Where(line => line.Length > 0 && line != "WEBVTT" && !line.Contains("-->", StringComparison.Ordinal));
        if (beside.EndsWith(".srt", StringComparison.Ordinal)) lines = lines.Where(line => !line.All(char.IsDigit));
        return [.. lines.SelectMany(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries))];
    }

    [GeneratedRegex("^[a-z0-9'&/.-]+$", RegexOptions.None, 1000)]
    private static partial Regex Word();
}
