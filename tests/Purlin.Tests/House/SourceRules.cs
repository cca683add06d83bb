using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Purlin.Tests.House;

/// <summary>House rules over the C# sources: a rule of style that matters is a failing test.</summary>
public sealed class SourceRules
{
    private static readonly string[] BannedWords = ["Manager", "Helper", "Util", "Utils", "Utility", "Utilities", "Common", "Misc", "Processor"];

    // A service feeds a house and a service life ends: words of the trade in front, a name that says nothing only at the end.
    private static readonly string[] BannedEndings = ["Base", "Service", "Handler"];

    private static readonly IReadOnlyList<(string File, SyntaxNode Tree)> All = Repository.Sources("src", "demo", "tests", "bench");

    [Fact]
    public void No_type_file_or_folder_has_a_name_that_says_nothing()
    {
        var types = All.SelectMany(source => source.Tree.DescendantNodes().OfType<BaseTypeDeclarationSyntax>()
            .Where(type => SaysNothing(type.Identifier.Text))
            .Select(type => $"{source.File}: {type.Identifier.Text}"));
        var paths = All.Select(source => source.File).Where(file => file.Split('/').Any(part => SaysNothing(Path.GetFileNameWithoutExtension(part))));
        Told.Nothing(types.Concat(paths), "A name says what the thing is; these words say nothing.");
    }

    [Fact]
    public void Every_class_is_sealed_static_or_abstract()
    {
        var open = All.SelectMany(source => source.Tree.DescendantNodes().OfType<TypeDeclarationSyntax>()
            .Where(type => type is ClassDeclarationSyntax or RecordDeclarationSyntax { RawKind: (int)SyntaxKind.RecordDeclaration })
            .Where(type => !type.Modifiers.Any(modifier => modifier.IsKind(SyntaxKind.SealedKeyword) || modifier.IsKind(SyntaxKind.StaticKeyword) || modifier.IsKind(SyntaxKind.AbstractKeyword) || modifier.IsKind(SyntaxKind.PartialKeyword)))
            .Select(type => $"{source.File}: {type.Identifier.Text}"));
        Told.Nothing(open, "A class is sealed, static or abstract.");
    }

    [Fact]
    public void Nobody_uses_DateTime()
    {
        var users = All.Where(source => source.Tree.DescendantNodes().OfType<IdentifierNameSyntax>().Any(name => name.Identifier.Text == "DateTime")).Select(source => source.File);
        Told.Nothing(users, "Use DateTimeOffset, DateOnly or TimeOnly instead of DateTime.");
    }

    [Fact]
    public void A_namespace_is_its_folder()
    {
        var strays = All.Where(source => !source.File.EndsWith("Program.cs", StringComparison.Ordinal)).SelectMany(source => source.Tree.DescendantNodes().OfType<BaseNamespaceDeclarationSyntax>()
            .Where(space => space.Name.ToString() != Folder(source.File))
            .Select(space => $"{source.File}: {space.Name}, expected {Folder(source.File)}"));
        Told.Nothing(strays, "A namespace is the folder of its file.");
    }

    [Theory]
    [InlineData("Journal", "")]
    [InlineData("Reckoning", "Journal")]
    [InlineData("Book", "Reckoning")]
    [InlineData("Judgement", "Book")]
    [InlineData("Report", "Judgement")]
    public void A_room_refers_only_to_the_room_before_it(string room, string allowed)
    {
        var project = File.ReadAllText(Path.Combine(Repository.Root, "src", $"Purlin.{room}", $"Purlin.{room}.csproj"));
        var references = System.Text.RegularExpressions.Regex.Matches(project, "ProjectReference Include=\"([^\"]+)\"", System.Text.RegularExpressions.RegexOptions.None, TimeSpan.FromSeconds(1)).Select(match => Path.GetFileNameWithoutExtension(match.Groups[1].Value));
        Assert.Equal(allowed.Length == 0 ? [] : [$"Purlin.{allowed}"], references);
    }

    [Fact]
    public void The_doors_fold_judge_and_report_by_the_one_way()
    {
        string[] own = ["Judging.Judge(", "ReportModel.Build(", "JudgedInspection {"];
        var doors = Directory.EnumerateFiles(Path.Combine(Repository.Root, "src"), "*.*", SearchOption.AllDirectories)
            .Where(file => file.EndsWith(".cs", StringComparison.Ordinal) || file.EndsWith(".razor", StringComparison.Ordinal))
            .Where(file => (string[])["Purlin.Cli", "Purlin.Field", "Purlin.Office"] is var names && names.Any(door => file.Contains($"{Path.DirectorySeparatorChar}{door}{Path.DirectorySeparatorChar}", StringComparison.Ordinal)))
            .Where(file => !file.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal));
        Told.Nothing(doors.SelectMany(file => own.Where(way => File.ReadAllText(file).Contains(way, StringComparison.Ordinal)).Select(way => $"{file}: {way} is for Work alone")));
    }

    private static bool SaysNothing(string name) =>
        BannedWords.Any(word => Words(name).Contains(word, StringComparer.OrdinalIgnoreCase)) || BannedEndings.Any(word => Words(name).LastOrDefault() == word);

    private static string Folder(string file)
    {
        var parts = file.Split('/');
        return string.Join('.', parts[1..^1]);
    }

    /// <summary>The words of a name in capitals: PhotoStore is Photo, Store.</summary>
    private static IEnumerable<string> Words(string name) =>
        System.Text.RegularExpressions.Regex.Matches(name, "[A-Z]?[a-z]+|[A-Z]+(?![a-z])", System.Text.RegularExpressions.RegexOptions.None, TimeSpan.FromSeconds(1)).Select(match => match.Value);
}
