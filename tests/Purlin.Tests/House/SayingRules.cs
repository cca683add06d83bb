using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Purlin.Journal;
using Purlin.Journal.Tongues;

namespace Purlin.Tests.House;

/// <summary>
/// What a person reads is a sentence of <c>rulebook/words</c>, named in the code by its key. A key without a sentence, a sentence that
/// nobody says and a place that nobody fills are failures here, so that nobody meets them in an attic.
/// </summary>
public sealed class SayingRules
{
    private const int MostOverstated = 60;

    private static readonly string[] Rooms = ["src/Purlin.Journal", "src/Purlin.Reckoning", "src/Purlin.Book", "src/Purlin.Hearing",
        "src/Purlin.Judgement", "src/Purlin.Report", "src/Purlin.Cli", "src/Purlin.Field"];

    private static readonly IReadOnlyList<(string File, SyntaxNode Tree)> Sources = Repository.Sources(Rooms);

    private static readonly Tongue Words = Tongue.BuiltIn(Tongue.Standard);

    private static readonly HashSet<string> Keys = [.. Words.Sentences.Select(line => line.Key)];

    // The first part of a key says whose it is: no other text of the code begins so and is all lower case with dots.
    private static readonly HashSet<string> Owners = [.. Keys.Select(key => key.Split('.')[0])];

    [Fact]
    public void Every_key_in_the_code_has_a_sentence() =>
        Nothing(from source in Sources
                from literal in source.Tree.DescendantNodes().OfType<LiteralExpressionSyntax>()
                where literal.IsKind(SyntaxKind.StringLiteralExpression) && IsKey(literal.Token.ValueText)
                    && !Keys.Contains(literal.Token.ValueText)
                select $"{source.File}: {literal.Token.ValueText}");

    [Fact]
    public void Every_sentence_is_said_by_somebody()
    {
        var said = Sources.SelectMany(source => source.Tree.DescendantNodes().OfType<LiteralExpressionSyntax>())
            .Select(literal => literal.Token.ValueText).ToHashSet(StringComparer.Ordinal);
        List<Regex> made = [.. Sources.SelectMany(source => source.Tree.DescendantNodes().OfType<InterpolatedStringExpressionSyntax>())
            .Select(Pattern).Distinct().Select(pattern => new Regex(pattern, RegexOptions.None, TimeSpan.FromSeconds(1)))];
        // "weight.consequence." + word.
        List<string> begun = [.. said.Where(text => Begun.IsMatch(text))];
        // spread + ".raise".
        List<string> ended = [.. said.Where(text => text.Length > 1 && text[0] == '.')];
        var screens = string.Join('\n', Repository.Files("src/Purlin.Field", "*.razor")
            .Concat(Repository.Files("src/Purlin.Report", "*.razor")).Concat(Repository.Files("src/Purlin.Field/wwwroot", "*.js"))
            .Select(File.ReadAllText));
        Nothing(Keys.Where(key => !said.Contains(key) && !key.StartsWith("language.", StringComparison.Ordinal)
            && !begun.Exists(key.StartsWith)
            && !ended.Exists(end => key.EndsWith(end, StringComparison.Ordinal) && said.Contains(key[..^end.Length]))
            && !made.Exists(pattern => pattern.IsMatch(key)) && !screens.Contains($"\"{key}\"", StringComparison.Ordinal)).Order());
    }

    [Fact]
    public void Every_place_of_a_sentence_is_filled()
    {
        var calls = from source in Sources
                    from list in source.Tree.DescendantNodes().OfType<ArgumentListSyntax>()
                    where list.Arguments is [{ Expression: LiteralExpressionSyntax }, ..] && Says(list.Parent)
                    let key = ((LiteralExpressionSyntax)list.Arguments[0].Expression).Token.ValueText
                    where Keys.Contains(key)
                    let values = list.Arguments.Skip(Fixed(list)).ToList()
                    where values.TrueForAll(value => value.Expression is TupleExpressionSyntax)
                    let filled = values.Select(value => ((TupleExpressionSyntax)value.Expression).Arguments[0].Expression.ToString()
                        .Trim('"')).ToHashSet(StringComparer.Ordinal)
                    from place in Template.Read(Words.Find(key)!).Places
                    where place != "#" && !filled.Contains(place)
                    select $"{source.File}: {key} needs {place}";
        Nothing(calls);
    }

    [Fact]
    public void No_key_stands_in_two_files()
    {
        var lines = Repository.Files($"rulebook/words/{Tongue.Standard}", "*.json")
            .SelectMany(file => WordsFile.Read(File.ReadAllBytes(file)).Select(line => (line.Key, File: Repository.Short(file))));
        Nothing(lines.GroupBy(line => line.Key).Where(group => group.Count() > 1)
            .Select(group => $"{group.Key}: {string.Join(", ", group.Select(line => line.File))}"));
    }

    /// <summary>
    /// A text of two English words or more in the code of a room is a sentence that no other language can have. What is left is counted in
    /// <c>sentences-in-code.json</c>, file by file: a number there may fall and never rise. Who takes texts out lowers it; the list must
    /// not tell of many more than there are.
    /// </summary>
    [Fact]
    public void No_room_holds_sentences_in_its_code()
    {
        Ratchet.Holds("sentences-in-code.json", Counted(), MostOverstated, "Say it by key (docs/adding-a-language.md).");
    }

    private static void Nothing(IEnumerable<string> wrong)
    {
        Told.Nothing(wrong);
    }

    private static Dictionary<string, int> Counted() =>
        Sources.Where(source => !source.File.StartsWith("src/Purlin.Cli", StringComparison.Ordinal)
            && !source.File.StartsWith("src/Purlin.Field", StringComparison.Ordinal))
        .Select(source => (source.File, Count: source.Tree.DescendantNodes().Count(node => IsSentence(node))))
        .Where(source => source.Count > 0).ToDictionary(source => source.File, source => source.Count);

    private static bool IsSentence(SyntaxNode node)
    {
        var text = node switch
        {
            LiteralExpressionSyntax literal when literal.IsKind(SyntaxKind.StringLiteralExpression) => literal.Token.ValueText,
            InterpolatedStringExpressionSyntax made =>
                string.Concat(made.Contents.Select(part => part is InterpolatedStringTextSyntax words
                    ? words.TextToken.ValueText : "\uFFFC")),
            _ => "",
        };
        return TwoWords.IsMatch(text) && !Keys.Contains("word." + text) && !node.Ancestors().Any(IsForNobody);
    }

    // Compared words of a closed list, documents that are cited, messages for ourselves, patterns.
    private static bool IsForNobody(SyntaxNode ancestor) => ancestor switch
    {
        AttributeSyntax or ThrowStatementSyntax or ThrowExpressionSyntax or ConstantPatternSyntax or CaseSwitchLabelSyntax => true,
        BinaryExpressionSyntax { RawKind: (int)SyntaxKind.EqualsExpression or (int)SyntaxKind.NotEqualsExpression } => true,
        InvocationExpressionSyntax
        {
            Expression: MemberAccessExpressionSyntax
            {
                Name.Identifier.Text: "From" or "Replace" or "Contains"
            or "StartsWith" or "EndsWith" or "IndexOf"
            }
        } => true,
        ObjectCreationExpressionSyntax created =>
            created.Type.ToString() is "Input.Choice" or "Unit" || created.Type.ToString().EndsWith("Exception", StringComparison.Ordinal),
        AssignmentExpressionSyntax { Left: IdentifierNameSyntax { Identifier.Text: "Sources" } } => true,
        PropertyDeclarationSyntax { Identifier.Text: "Source" or "All" } => true,
        FieldDeclarationSyntax field =>
            field.Modifiers.Any(SyntaxKind.ConstKeyword) || field.Declaration.Type.ToString() is "string[]" or "Regex",
        _ => false,
    };

    private static readonly Regex TwoWords = new(@"[A-Za-z]{2,}[,;:]? [A-Za-z]{2,}", RegexOptions.None, TimeSpan.FromSeconds(1));

    private static bool IsKey(string text) =>
        Shape.IsMatch(text) && Owners.Contains(text.Split('.')[0]) && !BodyJson.Types.Contains(text)
            && !text.EndsWith(".csv", StringComparison.Ordinal) && !text.EndsWith(".json", StringComparison.Ordinal)
            && !text.EndsWith(".jsonl", StringComparison.Ordinal);

    private static readonly Regex Shape = new(@"^[a-z0-9]+(-[a-z0-9]+)*(\.[a-z0-9 -]+)+$", RegexOptions.None, TimeSpan.FromSeconds(1));

    private static readonly Regex Begun = new(@"^[a-z0-9-]+\.([a-z0-9-]+\.)*$", RegexOptions.None, TimeSpan.FromSeconds(1));

    private static string Pattern(InterpolatedStringExpressionSyntax made) =>
        $"^{string.Concat(made.Contents.Select(part => part is InterpolatedStringTextSyntax words ? Regex.Escape(words.TextToken.ValueText) : "[a-z0-9 -]*"))}$" is var pattern && pattern.Contains(@"\.", StringComparison.Ordinal) ? pattern : "^$";

    private static bool Says(SyntaxNode? call) => call is BaseObjectCreationExpressionSyntax
        or InvocationExpressionSyntax
    {
        Expression: MemberAccessExpressionSyntax
        {
            Name.Identifier.Text: "Say" or "Step" or "Caution"
        or "Within" or "Outside" or "CannotSay"
        }
    };

    /// <summary>How many arguments stand before the values: a step has its number and unit there.</summary>
    private static int Fixed(ArgumentListSyntax list) =>
        list.Parent is InvocationExpressionSyntax { Expression: MemberAccessExpressionSyntax { Name.Identifier.Text: "Step" } }
        ? Math.Min(3, list.Arguments.Count) : 1;
}
