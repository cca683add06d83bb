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
        HashSet<string> listed = [.. Listed().Matches(page).Select(match => match.Groups[1].Value)], alone = [.. Alone.Select(condition => condition.Id)];
        Told.Nothing(
        [
            .. alone.Except(listed).Select(id => $"{id} rests on common practice alone: list it in docs/common-practice.md under the reason why, or give it a source"),
            .. listed.Except(alone).Select(id => $"{id} has a source now, or is gone: take it off docs/common-practice.md"),
        ]);
    }

    [Fact]
    public void Nothing_that_can_hurt_rests_on_it() => Assert.DoesNotContain(Alone, condition => condition.Weight.Consequence == Consequence.Injury);

    [GeneratedRegex(@"^\* `([^`]+)`", RegexOptions.Multiline)]
    private static partial Regex Listed();
}
