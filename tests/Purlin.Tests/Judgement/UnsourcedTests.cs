using System.Text.RegularExpressions;
using Purlin.Book;
using Purlin.Tests.House;

namespace Purlin.Tests.Judgement;

/// <summary>What has no published source says why on a page of its own, and is nothing that can hurt somebody.</summary>
public sealed partial class UnsourcedTests
{
    private static IEnumerable<Condition> Alone => RuleBook.BuiltIn.Conditions.Values.Where(condition => condition.Sources.All(source => source == RuleBook.CommonPractice));

    [Fact]
    public void The_page_lists_each_of_them_and_nothing_else()
    {
        var page = File.ReadAllText(Path.Combine(Repository.Root, "docs", "common-practice.md"));
        Assert.Equal(Alone.Select(condition => condition.Id).Order(StringComparer.Ordinal), Listed().Matches(page).Select(match => match.Groups[1].Value).Order(StringComparer.Ordinal));
        Assert.Contains($"Of {RuleBook.BuiltIn.Conditions.Count} conditions {Alone.Count()} have", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_that_can_hurt_rests_on_it() => Assert.DoesNotContain(Alone, condition => condition.Weight.Consequence == Consequence.Injury);

    [GeneratedRegex(@"^\* `([^`]+)`", RegexOptions.Multiline)]
    private static partial Regex Listed();
}
