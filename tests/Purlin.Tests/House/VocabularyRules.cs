using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Purlin.Tests.House;

/// <summary>
/// House rules over docs/VOCABULARY.md: whoever reads the judgement finds each of its words there, and each word of ours for a known idea
/// says so.
/// </summary>
public sealed class VocabularyRules
{
    private const string Known = "## Well-known ideas";

    private static readonly string Text = File.ReadAllText(Path.Combine(Repository.Root, "docs/VOCABULARY.md"));

    private static readonly ILookup<string, (string File, MemberDeclarationSyntax Declared)> Declared = Repository.Sources("src")
        .SelectMany(source => source.Tree.DescendantNodes().OfType<MemberDeclarationSyntax>()
            .Select(member => (Name: NameOf(member), source.File, Declared: member)))
        .Where(one => one.Name.Length > 0).ToLookup(one => one.Name, one => (one.File, one.Declared), StringComparer.Ordinal);

    /// <summary>Word, meaning, elsewhere called, in code.</summary>
    private static IEnumerable<string[]> Rows(string text) =>
        text.Split('\n').Where(line => line.StartsWith("| ", StringComparison.Ordinal)
            && !line.StartsWith("| word", StringComparison.Ordinal) && !line.StartsWith("| ---", StringComparison.Ordinal))
        .Select(line => line.Trim('|').Split('|', StringSplitOptions.TrimEntries));

    [Fact]
    public void A_known_idea_says_its_term_in_its_first_line() =>
        Told.Nothing(from row in Rows(Text[Text.IndexOf(Known, StringComparison.Ordinal)..])
                     let name = row[3].Trim('`')
                     where !Declared[name].Any(one => Summary(one.Declared).Contains(row[2], StringComparison.OrdinalIgnoreCase))
                     select Declared[name].Any()
                         ? $"{name}: its summary does not say \"{row[2]}\"" : $"{name}: there is no such type or member");

    [Fact]
    public void Every_name_in_the_vocabulary_is_in_the_code() =>
        Told.Nothing(from row in Rows(Text)
                     from name in row[^1].Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
                         .Select(name => name.Trim('`'))
                     where !Declared[name].Any()
                     select $"{row[0]}: {name} is no type or member of src");

    [Fact]
    public void Every_word_of_the_judgement_is_in_the_vocabulary()
    {
        var told = Rows(Text).SelectMany(row => row[^1].Split(',', StringSplitOptions.TrimEntries)).Select(name => name.Trim('`'))
            .ToHashSet(StringComparer.Ordinal);
        Told.Nothing(from source in Repository.Sources("src/Purlin.Judgement")
                     from type in source.Tree.DescendantNodes().OfType<BaseTypeDeclarationSyntax>()
                     where type.Parent is BaseNamespaceDeclarationSyntax && type.Modifiers.Any(modifier => modifier.Text == "public")
                         && !told.Contains(type.Identifier.Text)
                     select $"{type.Identifier.Text} ({source.File})",
                         "Give each a row in docs/VOCABULARY.md: the word, what it means, how others call it, its name in the code.");
    }

    private static string NameOf(MemberDeclarationSyntax member)
    {
        var own = member switch
        {
            BaseTypeDeclarationSyntax type => type.Identifier.Text,
            MethodDeclarationSyntax method => method.Identifier.Text,
            PropertyDeclarationSyntax property => property.Identifier.Text,
            _ => "",
        };
        return own.Length > 0 && member is not BaseTypeDeclarationSyntax && member.Parent is BaseTypeDeclarationSyntax owner
            ? $"{owner.Identifier.Text}.{own}" : own;
    }

    private static string Summary(MemberDeclarationSyntax member) =>
        string.Join(' ', member.GetLeadingTrivia().ToString().Split("</summary>")[0].Split('\n')
            .Select(line => line.Trim().TrimStart('/').Trim()));
}
