using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Purlin.Tests.House;

/// <summary>
/// House rules of shape: lines that are read without scrolling, files and functions of one thought, one meaning for a name.
/// </summary>
public sealed class ShapeRules
{
    private const int WidestLine = 140;
    private const int LongestFile = 200;
    private const int LongestFunction = 45;

    private static readonly IReadOnlyList<(string File, SyntaxNode Tree)> All = Repository.Sources("src", "demo", "tests", "bench");

    private static readonly IReadOnlyList<(string File, SyntaxNode Tree)> Shipped = [.. All.Where(source => source.File.StartsWith("src/",
        StringComparison.Ordinal))];

    [Fact]
    public void Lines_are_read_without_scrolling() =>
        Ratchet.Holds("wide-lines.json", Count(All.GroupBy(source => string.Join('/', source.File.Split('/').Take(2)))
            .Select(room => (room.Key, room.Sum(source => source.Tree.GetText().Lines.Count(line => line.Span.Length > WidestLine))))),
            slack: 500, $"A line has at most {WidestLine} characters: break it, behind a comma or before an operator.");

    [Fact]
    public void Files_are_of_one_thought() =>
        Ratchet.Holds("long-files.json", Count(All.Select(source => (source.File, Lines: source.Tree.GetText().Lines.Count))
            .Where(source => source.Lines > LongestFile)), slack: 400,
                $"A file has at most {LongestFile} lines: put one of its thoughts into a file of its own.");

    [Fact]
    public void Functions_are_of_one_thought() =>
        Ratchet.Holds("long-functions.json", Count(All.Select(source => (source.File, Long: source.Tree.DescendantNodes().Count(IsLong)))),
            slack: 3, $"A function has at most {LongestFunction} lines: give a part of it a name.");

    /// <summary>
    /// Types that stand by themselves: a nested case is called by its owner's name, so it may share its own with something else.
    /// </summary>
    [Fact]
    public void A_name_stands_for_one_thing()
    {
        var declared = from source in Shipped
                       from type in source.Tree.DescendantNodes().OfType<BaseTypeDeclarationSyntax>()
                       where type.Parent is BaseNamespaceDeclarationSyntax
                       select (Name: type.Identifier.Text, Room: string.Join('.', source.File.Split('/')[1..^1]), source.File);
        var screens = Repository.Files("src", "*.razor").Select(Repository.Short)
            .Where(file => !file.EndsWith("_Imports.razor", StringComparison.Ordinal))
            .Select(file => (Name: Path.GetFileNameWithoutExtension(file), Room: string.Join('.', file.Split('/')[1..^1]), File: file));
        var shared = declared.Concat(screens).GroupBy(type => type.Name)
            .Select(name => (name.Key, Rooms: name.Select(type => type.Room).Distinct().ToList()))
            .Where(name => name.Rooms.Count > 1 && name.Key != "Program").ToList();
        Ratchet.Holds("shared-names.json", Count(shared.Select(name => (name.Key, name.Rooms.Count))), slack: 0,
            $"A type's name stands for one thing in src: {string.Join("; ", shared.Select(name => $"{name.Key} in {string.Join(" and ", name.Rooms)}"))}.");
    }

    private static Dictionary<string, int> Count(IEnumerable<(string Key, int Count)> counted) =>
        counted.Where(line => line.Count > 0).ToDictionary(line => line.Key, line => line.Count);

    private static bool IsLong(SyntaxNode node)
    {
        if (node is not (BaseMethodDeclarationSyntax or LocalFunctionStatementSyntax or AccessorDeclarationSyntax)) return false;
        var span = node.SyntaxTree.GetLineSpan(node.Span);
        return span.EndLinePosition.Line - span.StartLinePosition.Line + 1 > LongestFunction;
    }
}
