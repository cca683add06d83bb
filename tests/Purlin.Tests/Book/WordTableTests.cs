using System.Text;
using System.Text.Json;
using Purlin.Book;

namespace Purlin.Tests.Book;

/// <summary>Closed lists have one word for each case, and nothing else names one.</summary>
public sealed class WordTableTests
{
    [Fact]
    public void Every_case_has_a_word_that_reads_back()
    {
        Assert.All(Enum.GetValues<Weight>(), weight => Assert.Equal(weight, WordTable.Read<Weight>(weight.Word())));
        Assert.All(Enum.GetValues<DutyCounts>(), counts => Assert.Equal(counts, WordTable.Read<DutyCounts>(counts.Word())));
        Assert.Equal(["today", "before you are bound", "before winter", "within the year", "when it is next worked on"],
            WordTable.Words<ByWhen>());
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("Soon")]
    [InlineData("1")]
    [InlineData("soon, later")]
    public void What_is_no_word_of_the_list_names_none(string? word) => Assert.Null(WordTable.Read<Timing>(word));

    [Fact]
    public void A_number_names_none() => Assert.Throws<JsonException>(() => JsonSerializer.Deserialize<Consequence>("0"));

    [Fact]
    public void A_word_slipped_in_a_condition_of_ones_own_is_told_with_what_may_stand_there()
    {
        const string Own = """
            { "id": "own.bats", "name": "Bats", "component": "attic", "system": "attic", "places": ["attic"], "means": "m", "do": "d", "trade": "pest control firm",
              "weight": { "consequence": "injry" }, "later": 1 }
            """;
        var refused = Assert.Single(OwnConditions.Read(JsonDocument.Parse(Own).RootElement).Refusals);
        Assert.Equal("weight.consequence", refused.Input);
        Assert.Contains("perhaps injury", refused.ToString(), StringComparison.Ordinal);
        var file = Encoding.UTF8.GetBytes($$"""{ "format": "purlin-wording", "version": 1, "conditions": [ {{Own}} ] }""");
        Assert.Contains("perhaps injury", Assert.Single(Overlay.Read(file).Refusals).ToString(), StringComparison.Ordinal);
    }
}
