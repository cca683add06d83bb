using Purlin.Book;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Judgement;
using Purlin.Report;
using Purlin.Report.Page;
using Purlin.Tests.Journal.Fold;

namespace Purlin.Tests.Report;

/// <summary>Nothing said is silent: a note stands in the way of issue until it is a matter, words in the report, or kept out with a reason.</summary>
public sealed class NotesInReportTests
{
    private readonly Writing writing = Writing.Opened(out _);
    private readonly EntryName garage;
    private readonly EntryName heater;

    public NotesInReportTests()
    {
        garage = writing.Write(new EntryBody.PlaceAdded { Kind = PlaceKind.Garage, Name = "Garage", Storey = 0 });
        heater = writing.Write(new EntryBody.ComponentAdded { Kind = "water heater", Place = garage });
    }

    private Work Work => Work.Of(writing.Entries, RuleBook.BuiltIn, 2026);

    private IEnumerable<Obstacle.NoteUnspoken> InTheWay => Work.Judged.Obstacles.OfType<Obstacle.NoteUnspoken>();

    private Task<string> Page => PageWriter.WriteAsync(Work.Paper(PaperKind.Report, Work.Copy), _ => null);

    [Fact]
    public async Task A_smell_of_gas_that_was_typed_stands_in_the_way_and_then_in_the_report()
    {
        var note = writing.Write(new EntryBody.NoteWritten { About = garage, Part = "n1", Text = "smell of gas" });
        var obstacle = Assert.Single(InTheWay);
        Assert.Equal((note, garage), (obstacle.Note, obstacle.Place!.Value));
        Assert.Contains("smell of gas", obstacle.Words, StringComparison.Ordinal);

        writing.Write(writing.State.Notes[0].Fated(Fate.Matter) with { Title = "Smell of gas", Weight = "make safe", Recommendation = "Leave and call the gas utility.", Trade = "plumber" });
        Assert.Empty(InTheWay);
        var finding = Assert.Single(Work.Judged.Findings);
        Assert.Equal(($"note@{note}", Weight.MakeSafe, "Smell of gas", "Garage"), (finding.Id.ToString(), finding.Weight, finding.Title, finding.Where));
        Assert.Equal([note], finding.Evidence);
        var page = await Page;
        Assert.Contains("Smell of gas", page, StringComparison.Ordinal);
        Assert.Contains("Leave and call the gas utility.", page, StringComparison.Ordinal);
        var json = JudgementJson.Write(Work.Judged, writing.State);
        Assert.Equal((finding.Id.ToString(), "matter"), ((string?)json["notes"]![0]!["finding"], (string?)json["notes"]![0]!["fate"]));

        // The inspector can put it otherwise like any other matter.
        writing.Write(new EntryBody.JudgementOverruled { Finding = finding.Id.ToString(), Part = "weight", Value = "act now", Reason = "the valve is shut" });
        Assert.Equal(Weight.ActNow, Assert.Single(Work.Judged.Findings).Weight);
    }

    [Fact]
    public async Task Words_that_go_under_a_thing_or_a_place_stand_there()
    {
        writing.Write(new EntryBody.NoteWritten { About = heater, Part = "n1", Text = "drained by the seller in spring" });
        writing.Write(new EntryBody.NoteWritten { About = garage, Part = "n2", Text = "swept before we came" });
        writing.Write(writing.State.Notes[0].Fated(Fate.Under) with { Under = heater });
        writing.Write(writing.State.Notes[1].Fated(Fate.Under) with { Under = garage });
        Assert.Empty(InTheWay);
        Assert.Empty(Work.Judged.Findings);
        var page = await Page;
        Assert.Contains("Noted: Drained by the seller in spring.", page, StringComparison.Ordinal);
        Assert.Contains("Noted: Swept before we came.", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_kept_out_is_in_the_record_with_its_reason_and_not_in_the_report()
    {
        writing.Write(new EntryBody.NoteWritten { About = garage, Part = "n1", Text = "buyer nervous about the roof" });
        writing.Write(writing.State.Notes[0].Fated(Fate.KeptOut) with { Reason = "not about the house" });
        Assert.Empty(InTheWay);
        Assert.DoesNotContain("nervous", await Page, StringComparison.Ordinal);
        var spoken = Assert.Single(Work.Judged.Notes);
        Assert.Equal((Fate.KeptOut, "not about the house"), (spoken.Fate, spoken.Reason));
    }

    [Fact]
    public async Task A_sound_note_stands_in_the_way_until_it_is_written_down_and_spoken_for()
    {
        var sound = writing.Write(new EntryBody.SoundTaken { Sha = new string('b', 64), Size = 9, MediaType = "audio/webm", Place = garage });
        Assert.Equal((sound, garage), (Assert.Single(InTheWay).Note, Assert.Single(InTheWay).Place!.Value));
        writing.Write(new EntryBody.NoteWritten { About = sound, Text = "the door opener grinds" });
        Assert.Single(InTheWay);
        writing.Write(writing.State.Sounds[0].Fated(Fate.Under) with { Under = garage });
        Assert.Empty(InTheWay);
        Assert.Contains("The door opener grinds.", await Page, StringComparison.Ordinal);
    }

    [Fact]
    public void A_sound_that_goes_into_the_report_without_words_still_stands_in_the_way()
    {
        writing.Write(new EntryBody.SoundTaken { Sha = new string('b', 64), Size = 9, MediaType = "audio/webm", Place = garage });
        writing.Write(writing.State.Sounds[0].Fated(Fate.Under) with { Under = garage });
        Assert.Single(InTheWay);
    }

    [Fact]
    public void Facts_that_earlier_journals_hid_in_notes_ask_for_no_fate()
    {
        writing.Write(new EntryBody.NoteWritten { About = garage, Part = "absent window", Text = "No window here." });
        var limitation = writing.Write(new EntryBody.LimitationRecorded { What = "the north wall", Place = garage });
        writing.Write(new EntryBody.NoteWritten { About = limitation, Part = "cause", Text = "stored goods" });
        Assert.Empty(InTheWay);
    }
}
