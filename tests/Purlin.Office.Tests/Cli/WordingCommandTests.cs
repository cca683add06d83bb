using System.Text.Json.Nodes;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Book;

namespace Purlin.Office.Tests.Cli;

/// <summary>Own wording at the shell: what an inspection holds, a file of it, and a run with one laid over.</summary>
public sealed class WordingCommandTests : IDisposable
{
    private const string Key = "supply-piping.corroded-joint/do";
    private static readonly DateTimeOffset Noon = new(2026, 11, 25, 12, 0, 0, TimeSpan.Zero);
    private static readonly Condition Bats = new() { Id = "own.bats", Name = "Bats in the attic", Component = "attic framing", System = "attic", Places = [PlaceKind.Attic], Means = "Bats live here.", Weight = new WeightRule { Consequence = Consequence.Upkeep }, Do = "Ask a specialist.", Trade = "pest control firm" };

    private readonly string folder = Directory.CreateTempSubdirectory("purlin-wording-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public async Task What_an_inspection_says_its_own_way_is_listed_exported_and_found_in_order()
    {
        var visit = Visit(Overlay.Empty.Say(RuleBook.BuiltIn, Key, "Renew the run.") with { Conditions = [Bats] });
        var (status, words, _) = await Typed.RunAsync(["wording", "list", visit]);
        Assert.Equal(0, status);
        Assert.Contains($"{Key}: Renew the run.", words, StringComparison.Ordinal);
        Assert.Contains("own.bats: Bats in the attic", words, StringComparison.Ordinal);

        var file = Path.Combine(folder, "mine.json");
        Assert.Equal(0, (await Typed.RunAsync(["wording", "export", visit, "--out", file])).Status);
        Assert.Equal(await File.ReadAllTextAsync(file), (await Typed.RunAsync(["wording", "export", visit])).Out.TrimEnd('\n'));
        var (checkedStatus, said, _) = await Typed.RunAsync(["wording", "check", file]);
        Assert.Equal(0, checkedStatus);
        Assert.EndsWith("0 conflicts, 0 doubtful words\n", said, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_inspection_is_judged_and_set_with_the_wording_in_its_journal()
    {
        var visit = Visit(Overlay.Empty.Say(RuleBook.BuiltIn, Key, "Renew the run."), "supply-piping.corroded-joint");
        Assert.Equal("Renew the run.", await DoAsync(visit));
        Assert.Equal(0, (await Typed.RunAsync(["report", visit, "--out", folder])).Status);
        Assert.Contains("Renew the run.", await File.ReadAllTextAsync(Path.Combine(folder, "report.html")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_is_laid_over_the_book_for_one_run_and_what_the_inspection_holds_goes_over_it()
    {
        var file = FileOf(Overlay.Empty.Say(RuleBook.BuiltIn, Key, "Ask for a price."));
        Assert.Equal("Ask for a price.", await DoAsync(Visit(Overlay.Empty, "supply-piping.corroded-joint"), "--wording", file));
        var visit = Visit(Overlay.Empty.Say(RuleBook.BuiltIn, Key, "Renew the run."), "supply-piping.corroded-joint");
        Assert.Equal("Renew the run.", await DoAsync(visit, "--wording", file));
        Assert.Equal(0, (await Typed.RunAsync(["report", visit, "--out", folder, "--wording", file])).Status);
    }

    [Fact]
    public async Task A_sentence_that_the_book_says_otherwise_by_now_is_a_conflict_and_stands()
    {
        Overlay old = new() { Sentences = new Dictionary<string, OwnSentence> { [Key] = new("What an older edition said.", "Renew the run."), ["nothing.at-all/do"] = new("x", "y") } };
        var (status, words, _) = await Typed.RunAsync(["wording", "check", FileOf(old)]);
        Assert.Equal(1, status);
        foreach (var part in (string[])["book was: What an older edition said.", RuleBook.BuiltIn.Conditions["supply-piping.corroded-joint"].Do, "mine:     Renew the run.", "2 conflicts"]) Assert.Contains(part, words, StringComparison.Ordinal);
        var judged = await JudgedAsync(Visit(old, "supply-piping.corroded-joint"));
        Assert.Equal(["nothing.at-all/do", Key], judged["wording_conflicts"]!.AsArray().Select(conflict => (string)conflict!["key"]!));
        Assert.Equal("Renew the run.", (string)judged["findings"]![0]!["text"]!["do"]!);
    }

    [Theory]
    [InlineData("The panel is safe to use.", "promise")]
    [InlineData("Monitor the crack.", "when to act")]
    [InlineData("Repair it!", "shouts")]
    [InlineData("This is a code violation.", "building department")]
    public async Task Doubtful_words_are_named_with_status_one(string now, string why)
    {
        var (status, words, _) = await Typed.RunAsync(["wording", "check", FileOf(Overlay.Empty.Say(RuleBook.BuiltIn, Key, now))]);
        Assert.Equal(1, status);
        Assert.Contains(why, words, StringComparison.Ordinal);
        Assert.EndsWith("0 conflicts, 1 doubtful words\n", words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("wording", "check")]
    [InlineData("judge", "--wording")]
    public async Task A_file_that_is_none_is_bad_input(params string[] command)
    {
        var (bad, visit) = (Path.Combine(folder, "bad.json"), Visit(Overlay.Empty));
        await File.WriteAllTextAsync(bad, "{\"sentences\": 5}");
        foreach (var path in (string[])[bad, Path.Combine(folder, "absent.json")])
        {
            var (status, output, error) = await Typed.RunAsync(command[0] == "judge" ? ["judge", visit, "--wording", path] : [.. command, path]);
            Assert.Equal((2, ""), (status, output));
            Assert.StartsWith("purlin: ", error, StringComparison.Ordinal);
        }
    }

    private static async Task<JsonNode> JudgedAsync(string visit, params string[] more)
    {
        var (status, json, _) = await Typed.RunAsync(["judge", visit, "--json", .. more]);
        Assert.Equal(0, status);
        return JsonNode.Parse(json)!;
    }

    private static async Task<string> DoAsync(string visit, params string[] more) => (string)(await JudgedAsync(visit, more))["findings"]![0]!["text"]!["do"]!;

    private string FileOf(Overlay overlay)
    {
        var path = Path.Combine(folder, "overlay.json");
        File.WriteAllBytes(path, overlay.Write());
        return path;
    }

    private string Visit(Overlay overlay, params string[] seen)
    {
        var pen = new Pen("i1", "aaa");
        List<Entry> entries = [pen.Write(new EntryBody.InspectionOpened { Property = new Property { Address = "1 Invented Lane" }, Date = new DateOnly(2026, 11, 25) }, Noon)];
        var kitchen = pen.Write(new EntryBody.PlaceAdded { Kind = PlaceKind.Kitchen, Name = "Kitchen" }, Noon);
        entries.Add(kitchen);
        entries.AddRange(OwnWording.Entries(overlay, Folding.Fold([])).Select(body => pen.Write(body, Noon)));
        entries.AddRange(seen.Select(condition => pen.Write(new EntryBody.ObservationMade { Place = kitchen.Name, Condition = condition, Outcome = Outcome.Seen }, Noon)));
        var path = Path.Combine(folder, "visit.jsonl");
        using var file = File.Create(path);
        foreach (var entry in entries)
        {
            file.Write(entry.Line.Span);
            file.WriteByte((byte)'\n');
        }
        return path;
    }
}
