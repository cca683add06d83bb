using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Purlin.Tests.House;

/// <summary>
/// The border between the screens and the device module: what the screens call is there, with as many values; what is there is called; and only
/// the border calls.
/// </summary>
public sealed partial class BorderRules
{
    private static readonly string[] Calls = ["AskAsync", "TellAsync", "KeepAsync", "JsonAsync"];

    private static IReadOnlyDictionary<string, (int Least, int Most)> Exported { get; } = ReadExported();

    private static IReadOnlyList<(string Name, int Values)> Called { get; } = ReadCalled();

    [Fact]
    public void What_is_called_is_there_with_as_many_values()
    {
        Assert.True(Called.Count > 40);
        Assert.Empty(Called.Where(call => !Exported.TryGetValue(call.Name, out var takes) || call.Values < takes.Least || call.Values > takes.Most).Select(call => $"{call.Name}, {call.Values} values"));
    }

    [Fact]
    public void What_is_there_is_called() => Assert.Empty(Exported.Keys.Except(Called.Select(call => call.Name)).Except(["listen"]));

    [Fact]
    public void What_the_device_calls_is_there()
    {
        var called = InvokePattern().Matches(Device("device.js")).Select(match => match.Groups[1].Value).Distinct().Order();
        var methods = Sources().SelectMany(source => source.DescendantNodes().OfType<MethodDeclarationSyntax>()).Where(method => method.AttributeLists.ToString().Contains("JSInvokable", StringComparison.Ordinal)).Select(method => method.Identifier.Text);
        Assert.Equal(called, methods.Order());
    }

    /// <summary>The device reads what an entry builds on from the same members as the rooms: a kind of entry that names others in a new one is told to it too.</summary>
    [Fact]
    public void The_device_knows_every_member_that_names_an_entry()
    {
        var known = NamesPattern().Match(Device("causal.js")).Groups[1].Value.Split(',', StringSplitOptions.TrimEntries).Select(name => name.Trim('\''));
        var named = typeof(Purlin.Journal.EntryBody).GetNestedTypes().Where(kind => kind.IsAssignableTo(typeof(Purlin.Journal.EntryBody)))
            .SelectMany(kind => kind.GetProperties()).Where(member => member.PropertyType == typeof(Purlin.Journal.EntryName) || member.PropertyType == typeof(Purlin.Journal.EntryName?) || member.PropertyType == typeof(IReadOnlyList<Purlin.Journal.EntryName>))
            .Select(member => char.ToLowerInvariant(member.Name[0]) + member.Name[1..]).Distinct().Order(StringComparer.Ordinal);
        Assert.Empty(named.Except(known));
    }

    [Fact]
    public void Nobody_else_calls_by_a_name()
    {
        var folder = Path.Combine(Repository.Root, "src", "Purlin.Field");
        var strays = Directory.EnumerateFiles(folder, "*.*", SearchOption.AllDirectories)
            .Where(file => file.EndsWith(".razor", StringComparison.Ordinal) || (file.EndsWith(".cs", StringComparison.Ordinal) && !file.Contains("/obj/", StringComparison.Ordinal) && !Path.GetFileName(file).StartsWith("Phone", StringComparison.Ordinal)))
            .Where(file => InteropPattern().IsMatch(File.ReadAllText(file)));
        Assert.Empty(strays);
    }

    private static IEnumerable<Microsoft.CodeAnalysis.SyntaxNode> Sources() => Repository.Sources("src/Purlin.Field/Device").Where(source => source.File.Contains("/Phone", StringComparison.Ordinal)).Select(source => source.Tree);

    private static List<(string Name, int Values)> ReadCalled() =>
    [
        .. from source in Sources()
           from call in source.DescendantNodes().OfType<InvocationExpressionSyntax>()
           let name = call.Expression switch { GenericNameSyntax generic => generic.Identifier.Text, IdentifierNameSyntax plain => plain.Identifier.Text, _ => "" }
           where Calls.Contains(name) && call.ArgumentList.Arguments[0].Expression is LiteralExpressionSyntax
           select (((LiteralExpressionSyntax)call.ArgumentList.Arguments[0].Expression).Token.ValueText, call.ArgumentList.Arguments.Count - 1),
    ];

    private static Dictionary<string, (int Least, int Most)> ReadExported()
    {
        var text = Device("device.js");
        var exported = FunctionPattern().Matches(text).ToDictionary(match => match.Groups[1].Value, match => Takes(text, match), StringComparer.Ordinal);
        foreach (Match match in HandedOnPattern().Matches(text))
        {
            var other = Device(match.Groups[2].Value);
            foreach (var name in match.Groups[1].Value.Split(',', StringSplitOptions.TrimEntries))
                exported[name] = Takes(other, FunctionPattern().Matches(other).Single(function => function.Groups[1].Value == name));
        }

        return exported;
    }

    // A parameter that its comment sets in brackets may be left out.
    private static (int Least, int Most) Takes(string text, Match function)
    {
        var most = function.Groups[2].Value.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Length;
        var comment = text[Math.Max(0, text.LastIndexOf("/**", function.Index, StringComparison.Ordinal))..function.Index];
        return (most - (comment.Count(letter => letter == '\n') < 2 ? OptionalPattern().Count(comment) : 0), most);
    }

    private static string Device(string file) => File.ReadAllText(Path.Combine(Repository.Root, "src", "Purlin.Field", "wwwroot", "device", file));

    [GeneratedRegex(@"^export (?:async )?function (\w+)\(([^)]*)\)", RegexOptions.Multiline, 5000)]
    private static partial Regex FunctionPattern();

    [GeneratedRegex(@"^export \{ ([\w, ]+) \} from '\./([\w-]+\.js)'", RegexOptions.Multiline, 5000)]
    private static partial Regex HandedOnPattern();

    [GeneratedRegex(@"invokeMethodAsync\('(\w+)'", RegexOptions.None, 5000)]
    private static partial Regex InvokePattern();

    [GeneratedRegex(@"const NAMES = \[([^\]]*)\]", RegexOptions.None, 5000)]
    private static partial Regex NamesPattern();

    [GeneratedRegex(@"@param \{[^}]*\} \[", RegexOptions.None, 5000)]
    private static partial Regex OptionalPattern();

    [GeneratedRegex(@"IJSRuntime|IJSObjectReference|InvokeVoidAsync|\.(AskAsync|TellAsync|JsonAsync)[<(]", RegexOptions.None, 5000)]
    private static partial Regex InteropPattern();
}
