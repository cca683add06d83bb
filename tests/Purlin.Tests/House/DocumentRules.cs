using System.Text.RegularExpressions;

namespace Purlin.Tests.House;

/// <summary>House rules over the documents: one title each, and every path they name exists.</summary>
public sealed class DocumentRules
{
    private static readonly string[] Tops = ["src/", "tests/", "docs/", "rulebook/", "demo/", "bench/", ".ci/"];

    public static TheoryData<string> Documents()
    {
        var documents = new TheoryData<string>();
        foreach (var file in Directory.EnumerateFiles(Repository.Root, "*.md").Concat(Repository.Files("docs", "*.md"))) documents.Add(Repository.Short(file));
        return documents;
    }

    [Theory]
    [MemberData(nameof(Documents))]
    public void A_document_has_one_title(string document)
    {
        var text = WithoutCode(Read(document));
        Assert.Single(Regex.Matches(text, "^# ", RegexOptions.Multiline, TimeSpan.FromSeconds(1)));
    }

    [Theory]
    [MemberData(nameof(Documents))]
    public void Every_path_a_document_names_exists(string document)
    {
        var text = Read(document);
        var here = Path.GetDirectoryName(Path.Combine(Repository.Root, document))!;
        var links = Regex.Matches(text, @"\]\((?!https?:|#|mailto:)([^)#\s]+)", RegexOptions.None, TimeSpan.FromSeconds(1)).Select(match => Path.Combine(here, match.Groups[1].Value));
        var named = Regex.Matches(text, "`([^`\\s*<>{}$]+)`", RegexOptions.None, TimeSpan.FromSeconds(1)).Select(match => match.Groups[1].Value)
            .Where(name => Tops.Any(top => name.StartsWith(top, StringComparison.Ordinal)) && !name.Contains("...", StringComparison.Ordinal))
            .Select(name => Path.Combine(Repository.Root, name));
        Told.Nothing(links.Concat(named).Where(path => !File.Exists(path) && !Directory.Exists(path)).Select(path => $"{document} names {Repository.Short(path)}, which is not there"));
    }

    [Fact]
    public void Every_decision_is_listed()
    {
        var list = Read("docs/decisions/README.md");
        var pages = Repository.Files("docs/decisions", "*.md").Select(Path.GetFileName).Where(page => page != "README.md");
        Assert.All(pages, page => Assert.Contains($"]({page})", list, StringComparison.Ordinal));
    }

    private static string Read(string document) => File.ReadAllText(Path.Combine(Repository.Root, document));

    private static string WithoutCode(string text) => Regex.Replace(text, "```.*?```", "", RegexOptions.Singleline, TimeSpan.FromSeconds(1));
}
