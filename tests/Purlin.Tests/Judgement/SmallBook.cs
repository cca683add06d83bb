using System.Text;
using Purlin.Book;

namespace Purlin.Tests.Judgement;

/// <summary>A rule book of a few lines, with the sentences of the real one, so that the engine is tested apart from the knowledge.</summary>
internal static class SmallBook
{
    public const string Conditions = """
        { "component": "pipe", "system": "plumbing", "conditions": [
          { "id": "pipe.crust", "name": "Crust at a joint", "places": ["garage", "kitchen", "attic"], "means": "Water has been getting out.", "leads": "It can drip.",
            "weight": { "consequence": "function", "timing": "soon", "several": "raise", "throughout": "raise" }, "do": "Repair the joint.", "trade": "licensed plumber",
            "look": [ { "id": "others", "ask": "Look at the other joints.", "in": ["garage", "kitchen", "attic"], "answers": ["pipe.crust"], "need": "any", "refer": "Have the plumber look at the others.", "trade": "licensed plumber" },
                      { "id": "pressure", "ask": "Measure the pressure.", "readings": ["static water pressure"], "block": true, "refer": "Have it measured.", "trade": "licensed plumber" } ],
            "sources": ["common practice"] },
          { "id": "pipe.pressure-high", "name": "Water pressure too high", "means": "It strains the pipes.", "weight": { "consequence": "damage", "timing": "soon" },
            "do": "Fit a regulator.", "trade": "licensed plumber", "sources": ["code-608"] },
          { "id": "pipe.stain", "name": "Stain below a pipe", "means": "Water was here.", "weight": { "consequence": "upkeep" },
            "do": "Clean it.", "trade": "the owner", "sources": ["common practice"],
            "look": [ { "id": "each", "ask": "Look under each sink.", "in": ["kitchen", "bathroom"], "answers": ["pipe.crust"], "need": "all", "refer": "Have each looked at.", "trade": "licensed plumber" } ] }
        ] }
        """;

    public const string Heaters = """
        { "component": "water heater", "system": "plumbing", "conditions": [
          { "id": "water-heater.no-pipe", "name": "Relief valve without a pipe", "places": ["garage"], "means": "Scalding water can spray.",
            "weight": { "consequence": "injury" }, "do": "Fit a pipe.", "trade": "licensed plumber", "cautions": ["scald"], "sources": ["code-608"] } ] }
        """;

    public const string Readings = """
        { "kinds": [ { "kind": "static water pressure", "unit": "psi", "least": 0, "most": 300, "house": true,
            "raises": [ { "condition": "pipe.pressure-high", "above": 80, "clears": true } ], "sources": ["code-608"] } ] }
        """;

    public const string Sources = """{ "code-608": { "document": "Plumbing code", "section": "608.2", "edition": "2021", "publisher": "A council", "mark": "confirmed" } }""";

    public static RuleBook Book { get; } = Read();

    public static RuleBook Read(params (string Path, string Text)[] more)
    {
        List<BookFile> files = [.. BookFiles.Embedded().Where(file => file.Path.StartsWith("rulebook/words/", StringComparison.Ordinal))];
        (string, string)[] own = [("rulebook/conditions/plumbing/pipe.json", Conditions), ("rulebook/conditions/plumbing/water-heater.json", Heaters), ("rulebook/readings/water.json", Readings), ("rulebook/sources/code.json", Sources)];
        foreach (var (path, text) in own.Concat(more))
        {
            files.RemoveAll(file => file.Path == path);
            files.Add(new BookFile(path, Encoding.UTF8.GetBytes(text)));
        }
        return BookReader.Read(files);
    }
}
