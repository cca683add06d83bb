using Purlin.Book;
using Purlin.Journal;
using Purlin.Judgement;
using Purlin.Tests.Journal.Fold;

namespace Purlin.Tests.Judgement;

/// <summary>A lighter weight covers what the one who gave it had in hand. Which clock says what is nothing to it.</summary>
public sealed class OverruledByCauseTests
{
    private const string Causes = """
        { "causes": [ { "id": "pipes", "title": "The pipes are giving out", "conditions": ["pipe.crust", "pipe.stain", "pipe.pressure-high"], "means": "These belong together.", "trade": "licensed plumber", "sources": ["common practice"] } ] }
        """;

    private static readonly RuleBook Book = SmallBook.Read(("rulebook/causes/pipes.json", Causes));
    private readonly Writing writing = Writing.Opened(out _);
    private readonly EntryName kitchen;

    public OverruledByCauseTests()
    {
        kitchen = writing.Write(new EntryBody.PlaceAdded { Kind = PlaceKind.Kitchen, Name = "Kitchen" });
        writing.Write(new EntryBody.ObservationMade { Place = kitchen, Condition = "pipe.crust", Outcome = Outcome.Seen });
        writing.Meet("aaa", "bbb");
    }

    private Finding Only => Assert.Single(Judging.Judge(writing.State, Book, 2026).Findings);

    [Theory]
    [InlineData(0)]
    [InlineData(-5)]
    [InlineData(5)]
    public void What_another_phone_measured_and_had_not_sent_is_not_hidden_by_it_whatever_its_clock_says(int years)
    {
        writing.Write(High, "bbb", TimeSpan.FromDays(365 * years));
        writing.Write(Lighter);
        Assert.Equal(Weight.ActNow, Only.Weight);

        // Once it is here, the same words said again cover it too.
        writing.Meet("aaa", "bbb");
        writing.Write(Lighter);
        Assert.Equal(Weight.KeepUp, Only.Weight);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(5)]
    public void What_was_in_hand_is_covered_though_the_clock_that_dated_it_ran_ahead(int years)
    {
        writing.Write(High, "bbb", TimeSpan.FromDays(365 * years));
        writing.Meet("aaa", "bbb");
        writing.Write(Lighter);
        Assert.Equal(Weight.KeepUp, Only.Weight);
    }

    private EntryBody High => new EntryBody.ReadingTaken { Kind = "static water pressure", Amount = new Amount(95, "psi"), Place = kitchen };

    private static EntryBody Lighter => new EntryBody.JudgementOverruled { Finding = "pipe.crust", Part = "weight", Value = "keep up", Reason = "The plumber comes tomorrow." };
}
