using System.Text.RegularExpressions;
using Purlin.Book;

namespace Purlin.Tests.Judgement;

/// <summary>What every line of the duties around the visit must keep to.</summary>
public sealed class VisitLint
{
    private static readonly RuleBook Book = RuleBook.BuiltIn;

    [Fact]
    public void Every_report_rule_is_sorted_under_the_core_of_the_visit()
    {
        var known = Book.Visit.Select(rule => rule.Id).ToHashSet(StringComparer.Ordinal);
        var rules = Book.Standards.Values.SelectMany(standard => standard.Duties.Where(duty => duty.Coverage == DutyCounts.ReportRule).Select(duty => (Id: $"{standard.Id}:{duty.Id}", duty.Core))).ToList();
        Assert.True(rules.Count >= 83, $"{rules.Count} report rules");
        Assert.Empty(rules.Where(rule => rule.Core.Count == 0 || !rule.Core.All(known.Contains)).Select(rule => rule.Id));
        Assert.Empty(known.Except(rules.SelectMany(rule => rule.Core)));
    }

    [Fact]
    public void Every_line_can_be_closed_in_its_way()
    {
        Assert.All(Book.Visit.Where(rule => rule.Close == VisitClose.Fact), rule => Assert.True(rule.Facts.Count > 0 && rule.Open.Length > 0, rule.Id));
        Assert.All(Book.Visit.Where(rule => rule.Close == VisitClose.Program), rule => Assert.True(rule.Where.Length > 0 && rule.Proof is not null, rule.Id));
        Assert.All(Book.Visit.Where(rule => rule.Close == VisitClose.Date), rule => Assert.Contains("{day}", rule.Date!.Words, StringComparison.Ordinal));
        Assert.All(Book.Visit.SelectMany(rule => rule.Facts), fact => Assert.True(fact.Kind is AnswerKind.Day or AnswerKind.Words || (fact.Kind == AnswerKind.Choice && fact.Choices.Count > 0), fact.Name));
    }

    [Fact]
    public void A_fact_about_the_visit_has_one_name_and_no_component_has_it()
    {
        var names = Book.Visit.SelectMany(rule => rule.Facts.Select(fact => fact.Name)).ToList();
        Assert.Equal(names.Distinct(StringComparer.Ordinal), names);
        // A fact of the house named like a kind of component would say that there is none of it.
        Assert.DoesNotContain(names, Book.ComponentKinds().Contains);
    }

    [Fact]
    public void No_line_promises_or_shouts() => Assert.DoesNotContain(Book.Visit.SelectMany(rule => new[] { rule.Name, rule.Text, rule.Open, rule.Where }.Concat(rule.Facts.Select(fact => fact.Ask))),
        text => text.Contains('!', StringComparison.Ordinal) || Regex.IsMatch(text, @"\b(guarantee|no problems?|is safe|is fine)\b", RegexOptions.IgnoreCase));
}
