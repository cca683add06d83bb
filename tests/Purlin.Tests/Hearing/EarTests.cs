using System.Text.Json;
using Json.Schema;
using Purlin.Book;
using Purlin.Hearing;
using Purlin.Hearing.Listening;
using Purlin.Journal;
using Purlin.Tests.House;

namespace Purlin.Tests.Hearing;

/// <summary>What is understood of single statements. Ways of speaking: common practice.</summary>
public sealed class EarTests
{
    private static readonly Ear Ear = new(RuleBook.BuiltIn);

    [Theory]
    [InlineData("toilet rocks front to back", "toilet.loose", Outcome.Seen)]
    [InlineData("toilet is solid doesn't rock", "toilet.loose", Outcome.Clear)]
    [InlineData("no handrail on these steps", "handrail.missing", Outcome.Seen)]
    [InlineData("gutter is packed with leaves", "gutter.full", Outcome.Seen)]
    [InlineData("the filter is filthy", "air-filter.dirty", Outcome.Seen)]
    [InlineData("the filter is clean", "air-filter.dirty", Outcome.Clear)]
    [InlineData("no expansion tank on the water heater", "water-heater.no-expansion-control", Outcome.Seen)]
    [InlineData("double tapped breaker in the panel", "panelboard.breaker-doubled", Outcome.Seen)]
    [InlineData("no double taps", "panelboard.breaker-doubled", Outcome.Clear)]
    public void A_statement_is_understood(string said, string condition, string outcome)
    {
        var proposal = Assert.Single(Ear.Listen(Transcript.Of(said)).Proposals);
        Assert.Equal((condition, outcome), (proposal.Condition, proposal.Outcome));
    }

    [Theory]
    [InlineData("good morning how are you nice weather today")]
    [InlineData("my wife is texting me about dinner hang on")]
    [InlineData("")]
    public void Talk_is_no_evidence(string said) => Assert.Empty(Ear.Listen(Transcript.Of(said)).Proposals);

    [Fact]
    public void No_figure_is_made_up()
    {
        foreach (var narration in Narration.Open())
            foreach (var amount in Ear.Listen(narration.Transcript).Proposals.SelectMany(proposal => proposal.Amounts))
                Assert.True(double.IsFinite(amount.Value)
                    && (RuleBook.BuiltIn.ReadingKinds.ContainsKey(amount.Kind)
                    || RuleBook.BuiltIn.Sheets.Values.Any(sheet => sheet.Facts.Any(fact => fact.Fact == amount.Kind))),
                    $"{narration.Name}: {amount}");
    }

    [Fact]
    public void Every_proposal_marks_words_that_were_said()
    {
        foreach (var narration in Narration.Open())
            foreach (var proposal in Ear.Listen(narration.Transcript).Proposals)
            {
                Assert.NotEmpty(proposal.Words);
                Assert.All(proposal.Words, range =>
                    Assert.True(range.Start >= 0 && range.Start < range.End && range.End <= narration.Transcript.Words.Length));
                Assert.InRange(proposal.Confidence, 0, 1);
            }
    }

    [Fact]
    public void What_is_written_keeps_to_its_schema()
    {
        var schema = JsonSchema.FromText(File.ReadAllText(Path.Combine(Repository.Root, "docs/schema/heard.schema.json")));
        foreach (var narration in Narration.Open())
        {
            using var written = JsonDocument.Parse(HeardJson.Write(Ear.Listen(narration.Transcript)));
            Assert.True(schema.Evaluate(written.RootElement).IsValid, narration.Name);
        }
    }

    [Fact]
    public void A_photograph_goes_with_the_words_around_it()
    {
        const string Said = "WEBVTT\n\n00:10.000 --> 00:12.000\ngutter is packed with leaves\n\n01:00.000 --> 01:02.000\ntoilet rocks front to back\n";
        var heard = Ear.Listen(TranscriptReader.Read(Said).OrThrow());
        var placed = heard.With([new TimedPhoto("aa", 14), new TimedPhoto("bb", 59), new TimedPhoto("cc", 300)]);
        Assert.Equal(["aa"], placed.Proposals[0].Photos);
        Assert.Equal(["bb"], placed.Proposals[1].Photos);
    }
}
