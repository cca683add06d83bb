using Purlin.Book;
using Purlin.Journal;
using Purlin.Judgement;
using Purlin.Tests.Journal.Fold;

namespace Purlin.Tests.Judgement;

/// <summary>What was looked for wherever it could be, and is not there, needs no looking at. One place alone answers for no other.</summary>
public sealed class AbsenceDutyTests
{
    private static readonly RuleBook Book = SmallBook.Read(
        ("rulebook/duties/one.json", """{ "id": "one", "title": "One duty", "edition": "1", "duties": [ { "id": "1", "system": "structure", "name": "sump", "verb": "inspect", "text": "Look at the sump.", "coverage": "always", "core": ["A"] } ] }"""),
        ("rulebook/duties/core.json", """{ "core": [ { "id": "A", "system": "structure", "name": "Sump", "text": "t", "places": ["basement"], "components": ["sump pump"] } ] }"""));

    private readonly Writing writing = Writing.Opened(out _, standard: "one");

    private DutyState Duty => Judging.Judge(writing.State, Book, 2026).Coverage.Single().Duties.Single();

    [Fact]
    public void Said_for_every_place_where_it_could_be_it_is_not_there()
    {
        var front = Basement();
        var rear = Basement();
        writing.Write(new EntryBody.ComponentAbsent { Kind = "sump pump", Place = front });
        Assert.Equal(DutyStanding.Open, Duty.State);
        writing.Write(new EntryBody.ComponentAbsent { Kind = "sump pump", Place = rear });
        Assert.Equal(DutyStanding.NotPresent, Duty.State);
        Assert.Contains("sump pump", Duty.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Said_for_the_whole_house_it_is_not_there_until_one_is_found()
    {
        var place = Basement();
        var absence = writing.Write(new EntryBody.ComponentAbsent { Kind = "sump pump" });
        Assert.Equal(DutyStanding.NotPresent, Duty.State);
        writing.Write(new EntryBody.ComponentAdded { Kind = "sump pump", Place = place });
        Assert.Equal(DutyStanding.Open, Duty.State);
        writing.Write(new EntryBody.EntryWithdrawn { Entry = absence });
        Assert.Equal(DutyStanding.Open, Duty.State);
    }

    [Fact]
    public void What_is_absent_from_one_part_answers_for_no_other()
    {
        var wing = writing.Write(new EntryBody.PartAdded { Kind = PartKind.Wing, Name = "Wing" });
        Basement();
        writing.Write(new EntryBody.ComponentAbsent { Kind = "sump pump", Part = wing });
        Assert.Equal(DutyStanding.Open, Duty.State);
    }

    private EntryName Basement() => writing.Write(new EntryBody.PlaceAdded { Kind = PlaceKind.Basement, Name = "Basement" });
}
