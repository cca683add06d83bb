using System.Text.Json;
using Purlin.Journal;
using Purlin.Journal.Fold;

namespace Purlin.Tests.Journal.Fold;

/// <summary>What a reader offers is evidence of nothing until the inspector takes it.</summary>
public sealed class ProposalsTests
{
    private readonly Writing writing = Writing.Opened(out _);
    private readonly EntryName heater;
    private readonly EntryName offer;

    public ProposalsTests()
    {
        heater = writing.Write(new EntryBody.ComponentAdded { Kind = "water heater" });
        offer = writing.Write(new EntryBody.ProposalMade { Entry = "fact.stated", Body = JsonElement.Parse(BodyJson.Write(Year(1994))), From = [new ReadFrom(heater)], Confidence = 0.7 });
    }

    [Fact]
    public void Until_it_is_taken_it_states_nothing()
    {
        Assert.Empty(writing.State.Components.Single(component => component.Id == heater).Facts);
        Assert.Equal(ProposalState.Open, Only().State);
    }

    [Fact]
    public void Taken_as_offered_or_with_other_values_is_told_apart()
    {
        var taken = writing.Write(Year(1994) with { Origin = offer });
        Assert.Equal((ProposalState.Taken, taken), (Only().State, Assert.Single(Only().TakenBy)));
        writing.Write(new EntryBody.EntryWithdrawn { Entry = taken });
        Assert.Equal(ProposalState.Open, Only().State);
        writing.Write(Year(1984) with { Origin = offer });
        Assert.Equal(ProposalState.Changed, Only().State);
    }

    [Fact]
    public void Dropped_is_dropped_and_can_still_be_taken()
    {
        writing.Write(new EntryBody.ProposalDropped { Proposal = offer });
        Assert.Equal(ProposalState.Dropped, Only().State);
        writing.Write(Year(1994) with { Origin = offer });
        Assert.Equal(ProposalState.Taken, Only().State);
    }

    [Fact]
    public void An_entry_of_another_kind_takes_nothing_whatever_it_says_of_its_origin()
    {
        writing.Write(new EntryBody.ComponentAdded { Kind = "water heater", Origin = offer });
        Assert.Equal(ProposalState.Open, Only().State);
    }

    private Proposal Only() => Assert.Single(writing.State.Proposals);

    private EntryBody.FactStated Year(int year) => new() { Component = heater, Fact = "year", Value = FactValue.Of(year), Basis = Basis.Nameplate };
}
