using System.Text.Json.Nodes;

namespace Purlin.Office.Tests.Cli;

/// <summary><c>purlin book</c>, typed as at a shell, over a small rule book written by the test.</summary>
public sealed class BookCommandTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("purlin-book-").FullName;

    public BookCommandTests()
    {
        Write("readings/water.json", "{}");
        Write("words/en-US/journal.json", "{}");
        Condition(""" "trade": "mason" """);
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private void Write(string path, string text)
    {
        var file = Path.Combine(folder, path);
        Directory.CreateDirectory(Path.GetDirectoryName(file)!);
        File.WriteAllText(file, text);
    }

    private void Condition(string members) => Write("conditions/structure/post.json",
        $$"""
        { "component": "post", "system": "structure", "conditions": [ { "id": "post.leans", "name": "n", "means": "m", "do": "d",
          "weight": { "consequence": "none" }, "sources": ["common practice"], {{members}} } ] }
        """);

    [Fact]
    public async Task A_sound_folder_is_refused_nothing_with_status_zero()
    {
        var (status, output, _) = await Typed.RunAsync(["book", "check", folder]);
        Assert.Equal(0, status);
        Assert.Contains("1 conditions", output, StringComparison.Ordinal);
        Assert.EndsWith("nothing is refused\n", output, StringComparison.Ordinal);
    }

    // Each row: what an editor of rules may slip in, and the words that tell them what was meant.
    [Theory]
    [InlineData(""" "trade": "masn" """, "masn", "perhaps mason")]
    [InlineData(""" "trade": "mason", "colour": "red" """, "member \"colour\"", "clears")]
    [InlineData(""" "trade": "mason", "sample": "yes" """, "yes", "true or false")]
    [InlineData(""" "trade": "mason", "cautions": ["dragons"] """, "caution dragons", "caution")]
    [InlineData(""" "trade": "mason", "places": ["crawlspace"] """, "crawlspace", "perhaps crawl space")]
    [InlineData(""" "trade": "mason", "look": [ { "id": "a", "ask": "b", "answers": ["post.leens"], "refer": "c", "trade": "mason" } ] """, "answer post.leens", "perhaps post.leans")]
    public async Task A_slip_is_told_with_file_id_value_and_what_is_allowed(string members, string given, string allowed)
    {
        Condition(members);
        var (status, output, _) = await Typed.RunAsync(["book", "check", folder]);
        Assert.Equal(1, status);
        foreach (var told in (string[])["rulebook/conditions/structure/post.json: post.leans", given, allowed, "1 refused"]) Assert.Contains(told, output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Broken_JSON_is_told_with_its_line()
    {
        Write("words/en-US/journal.json", "{\n  \"a\": ");
        var (status, output, _) = await Typed.RunAsync(["book", "check", folder]);
        Assert.Equal(1, status);
        Assert.Contains("no JSON at line 2", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_folder_that_is_no_rule_book_is_refused_with_status_two()
    {
        Assert.Equal(2, (await Typed.RunAsync(["book", "check", Path.Combine(folder, "nowhere")])).Status);
        Assert.Equal(2, (await Typed.RunAsync(["book", "check", Path.GetTempPath()])).Status);
        Assert.Equal(2, (await Typed.RunAsync(["book", "list", "dragons"])).Status);
    }

    [Fact]
    public async Task Stamping_names_the_files_as_they_are_and_a_change_afterwards_shows()
    {
        Assert.Equal(0, (await Typed.RunAsync(["book", "stamp", folder])).Status);
        var first = JsonNode.Parse(await File.ReadAllTextAsync(Path.Combine(folder, "edition.json"), TestContext.Current.CancellationToken))!;
        Assert.Contains($"edition {first["edition"]};", (await Typed.RunAsync(["book", "check", folder])).Out, StringComparison.Ordinal);

        Condition(""" "trade": "carpenter" """);
        Assert.Contains("changed since edition", (await Typed.RunAsync(["book", "check", folder])).Out, StringComparison.Ordinal);
        Condition(""" "trade": "nobody" """);
        Assert.Equal(1, (await Typed.RunAsync(["book", "stamp", folder])).Status);
    }

    [Theory]
    [InlineData("conditions")]
    [InlineData("readings")]
    [InlineData("facts")]
    [InlineData("places")]
    [InlineData("components")]
    [InlineData("trades")]
    [InlineData("limitations")]
    [InlineData("standards")]
    public async Task What_the_book_knows_is_listed_for_people_and_for_programs(string what)
    {
        var words = (await Typed.RunAsync(["book", "list", what])).Out.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        var json = JsonNode.Parse((await Typed.RunAsync(["book", "list", what, "--json"])).Out)!.AsArray();
        Assert.NotEmpty(words);
        Assert.Equal(words.Length, json.Count);
        Assert.All(words.Zip(json), pair => Assert.StartsWith((string)pair.Second!["id"]!, pair.First, StringComparison.Ordinal));
    }
}
