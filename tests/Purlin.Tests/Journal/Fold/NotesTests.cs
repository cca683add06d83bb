using Purlin.Journal;
using Purlin.Journal.Fold;

namespace Purlin.Tests.Journal.Fold;

/// <summary>Notes and what becomes of them, and the facts that earlier journals hid in notes and captions.</summary>
public sealed class NotesTests
{
    [Fact]
    public void Notes_of_two_phones_on_one_place_stand_beside_one_another()
    {
        var writing = Writing.Opened(out _);
        var attic = writing.Write(new EntryBody.PlaceAdded { Kind = PlaceKind.Attic, Name = "Attic" });
        writing.Meet("aaa", "bbb");
        writing.Write(new EntryBody.NoteWritten { About = attic, Part = "k3q8", Text = "dark" });
        writing.Write(new EntryBody.NoteWritten { About = attic, Part = "x0z5", Text = "hot" }, "bbb");
        Assert.Equal(["dark", "hot"], writing.State.Notes.Select(note => note.Text.Value));
        Assert.Empty(writing.State.Unsettled);
    }

    [Fact]
    public void What_becomes_of_a_note_stays_with_it_when_its_text_is_written_again()
    {
        var writing = Writing.Opened(out _);
        var attic = writing.Write(new EntryBody.PlaceAdded { Kind = PlaceKind.Attic, Name = "Attic" });
        writing.Write(new EntryBody.NoteWritten { About = attic, Part = "n12", Text = "smell of gas" });
        Assert.Null(Assert.Single(writing.State.Notes).Fate);
        var fated = writing.State.Notes[0].Fated(Fate.Matter) with { Title = "Smell of gas", Weight = "make safe" };
        var said = writing.Write(fated);
        writing.Write(new EntryBody.NoteWritten { About = attic, Part = "n12", Text = "strong smell of gas" });
        var note = Assert.Single(writing.State.Notes);
        Assert.Equal(("strong smell of gas", "Smell of gas"), (note.Text.Value, note.Fate!.Value.Title));

        writing.Write(note.Fated(Fate.KeptOut) with { Reason = "it was paint" });
        Assert.Equal(Fate.KeptOut, writing.State.Notes[0].Fate!.Value.How);
        Assert.Empty(writing.State.Unsettled);
        writing.Write(new EntryBody.EntryWithdrawn { Entry = said });
        Assert.Equal(Fate.KeptOut, writing.State.Notes[0].Fate!.Value.How);
    }

    [Fact]
    public void Two_fates_written_apart_both_stand_until_a_person_settles_them()
    {
        var writing = Writing.Opened(out var house);
        writing.Write(new EntryBody.NoteWritten { About = house, Part = "a", Text = "x" });
        writing.Meet("aaa", "bbb");
        writing.Write(writing.State.Notes[0].Fated(Fate.KeptOut) with { Reason = "mine" });
        writing.Write(writing.State.Notes[0].Fated(Fate.Under) with { Under = house, Text = "yours" }, "bbb");
        Assert.Equal(UnsettledKind.Divergence, Assert.Single(writing.State.Unsettled).Kind);
        Assert.Equal(2, writing.State.Notes[0].Fate!.Standing.Count);
    }

    [Fact]
    public void A_sound_note_is_written_down_and_has_a_fate_of_its_own()
    {
        var writing = Writing.Opened(out var house);
        var sound = writing.Write(new EntryBody.SoundTaken { Sha = new string('b', 64), Size = 9, MediaType = "audio/webm" });
        writing.Write(new EntryBody.NoteWritten { About = sound, Text = "the furnace rattles" });
        writing.Write(new EntryBody.NoteWritten { About = sound, Text = "the furnace fan rattles" });
        Assert.Empty(writing.State.Notes);
        Assert.Equal("the furnace fan rattles", Assert.Single(writing.State.Sounds).Written!.Value);
        writing.Write(writing.State.Sounds[0].Fated(Fate.Under) with { Under = house });
        Assert.Equal(house, writing.State.Sounds[0].Fate!.Value.Under);
    }

    [Fact]
    public void Facts_that_earlier_journals_hid_in_notes_and_captions_mean_what_they_meant()
    {
        var writing = Writing.Opened(out _);
        var room = writing.Write(new EntryBody.PlaceAdded { Kind = PlaceKind.Room, Name = "Room" });
        var absent = writing.Write(new EntryBody.NoteWritten { About = room, Part = "absent window", Text = "No window here." });
        var photo = writing.Write(new EntryBody.PhotoTaken { Sha = new string('a', 64), Size = 9, MediaType = "image/jpeg", Place = room });
        writing.Write(new EntryBody.PhotoPlaced { Photo = photo, Use = PhotoUse.Context, Caption = "Nameplate" });
        var limitation = writing.Write(new EntryBody.LimitationRecorded { What = "the closet", Place = room });
        writing.Write(new EntryBody.NoteWritten { About = limitation, Part = "cause", Text = "locked" });
        var old = writing.Write(new EntryBody.NoteWritten { About = room, Part = "n12", Text = "dry" });
        var state = writing.State;
        Assert.Equal((absent, "window", room), (state.Absences.Single().Id, state.Absences.Single().Kind, state.Absences.Single().Place!.Value));
        Assert.Equal((PhotoUse.Nameplate, null), (state.Photos.Single().Use, state.Photos.Single().Caption));
        Assert.Equal("locked", state.Limitations.Single().Cause);
        Assert.Equal(old, Assert.Single(state.Notes).Text.Standing[0].By);

        // What is said now replaces what a note said then.
        writing.Write(new EntryBody.LimitationCompleted { Limitation = limitation, Member = EntryBody.LimitationCompleted.Cause, Text = "no key" });
        Assert.Equal("no key", writing.State.Limitations.Single().Cause);
        Assert.Empty(writing.State.Unsettled);
        writing.Write(new EntryBody.EntryWithdrawn { Entry = limitation });
        Assert.Equal(old, Assert.Single(writing.State.Notes).Text.Standing[0].By);
    }

    [Fact]
    public void A_photograph_says_what_it_was_taken_as_until_it_is_said_otherwise()
    {
        var writing = Writing.Opened(out _);
        var photo = writing.Write(new EntryBody.PhotoTaken { Sha = new string('a', 64), Size = 9, MediaType = "image/jpeg", Use = PhotoUse.Overview });
        Assert.Equal(PhotoUse.Overview, writing.State.Photos.Single().Use);
        writing.Write(new EntryBody.PhotoPlaced { Photo = photo, Use = PhotoUse.Limitation, Caption = "stored goods" });
        Assert.Equal((PhotoUse.Limitation, "stored goods"), (writing.State.Photos.Single().Use, writing.State.Photos.Single().Caption));
        var mark = writing.Write(new EntryBody.PhotoMarked { Photo = photo, Shape = MarkShape.Ring, From = new PicturePoint(0.1, 0.1), To = new PicturePoint(0.2, 0.3) });
        Assert.Equal(mark, Assert.Single(writing.State.Photos.Single().Marks).Id);
        writing.Write(new EntryBody.EntryWithdrawn { Entry = mark });
        Assert.Empty(writing.State.Photos.Single().Marks);
    }
}
