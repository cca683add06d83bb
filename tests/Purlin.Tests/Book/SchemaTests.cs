using System.Text.Json;
using Json.Schema;
using Purlin.Book;
using Purlin.Tests.House;

namespace Purlin.Tests.Book;

/// <summary>
/// The schemas in docs/schema/rulebook are those of the types that the book is read into, and every file of the book keeps to its own. They are
/// written again by running this class with PURLIN_WRITE=1.
/// </summary>
public sealed class SchemaTests
{
    private static readonly string Folder = Path.Combine(Repository.Root, "docs/schema/rulebook");

    private static readonly JsonDocumentOptions Lenient = new() { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true };

    private static readonly Dictionary<string, JsonSchema> Schemas = SchemaOfBook.All.ToDictionary(line => line.Key, line => JsonSchema.FromText(line.Value));

    public static TheoryData<string> Names => [.. SchemaOfBook.All.Keys];

    public static TheoryData<string> Files => [.. BookFiles.Whole().Where(file => file.Path.EndsWith(".json", StringComparison.Ordinal)).Select(file => file.Path)];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_schema_that_is_published_is_that_of_the_types(string name)
    {
        var path = Path.Combine(Folder, name + ".schema.json");
        if (Environment.GetEnvironmentVariable("PURLIN_WRITE") == "1")
        {
            Directory.CreateDirectory(Folder);
            File.WriteAllText(path, SchemaOfBook.All[name]);
        }
        Assert.True(File.Exists(path) && File.ReadAllText(path) == SchemaOfBook.All[name],
            $"docs/schema/rulebook/{name}.schema.json is not what the types of the rule book say now. Run this class with PURLIN_WRITE=1 to write it again.");
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Every_file_of_the_book_keeps_to_its_schema(string path)
    {
        using var document = JsonDocument.Parse(File.ReadAllBytes(Path.Combine(Repository.Root, path)), Lenient);
        var result = Schemas[SchemaOfBook.NameFor(path)].Evaluate(document.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
        var wrong = (result.Details ?? []).Where(detail => detail.Errors is { Count: > 0 }).Take(5).Select(detail => $"{detail.InstanceLocation}: {string.Join("; ", detail.Errors!.Values)}");
        Assert.True(result.IsValid, $"{path}\n{string.Join('\n', wrong)}");
    }

    // Slips of the pen; the reader of the book refuses each of them too (BookReaderTests, BookCommandTests).
    [Theory]
    [InlineData("\"trade\"", "\"trad\"")]
    [InlineData("\"mason\"", "\"masn\"")]
    [InlineData("\"attic\"", "\"loft\"")]
    [InlineData("\"injury\"", "\"hurt\"")]
    [InlineData("\"name\": \"n\",", "")]
    [InlineData("\"sample\": true", "\"sample\": \"yes\"")]
    public void A_slip_of_the_pen_does_not_keep_to_the_schema(string good, string bad)
    {
        const string Text = """
            { "$schema": "x", "component": "post", "system": "structure", "conditions": [ { "id": "post.leans", "name": "n", "means": "m", "places": ["attic"], "do": "d",
              "weight": { "consequence": "injury" }, "trade": "mason", "era": null, "sample": true, "sources": ["common practice"] } ] }
            """;
        Assert.True(IsValid(Text));
        Assert.Contains(good, Text, StringComparison.Ordinal);
        Assert.False(IsValid(Text.Replace(good, bad, StringComparison.Ordinal)));

        static bool IsValid(string text)
        {
            using var document = JsonDocument.Parse(text);
            return Schemas["conditions"].Evaluate(document.RootElement).IsValid;
        }
    }

    [Fact]
    public void Members_are_explained() => Assert.Contains("\"description\": \"Who deals with it.\"", SchemaOfBook.All["conditions"], StringComparison.Ordinal);
}
