using System.Text;
using Purlin.Journal;
using Purlin.Journal.Fold;

namespace Purlin.Tests.Journal.Fold;

/// <summary>The rules of docs/SYNC.md, section 3, one by one, in histories short enough to read.</summary>
public sealed class FoldingTests
{
    private static readonly DateTimeOffset Noon = new(2026, 11, 25, 12, 0, 0, TimeSpan.Zero);

    private readonly Pen first = new("visit", "aaa");
    private readonly Pen second = new("visit", "bbb");
    private readonly List<Entry> all = [];
    private DateTimeOffset now = Noon;

    private Entry Write(Pen pen, EntryBody body)
    {
        now = now.AddSeconds(1);
        var entry = pen.Write(body, now);
        all.Add(entry);
        return entry;
    }

    private void Exchange()
    {
        foreach (var entry in all)
        {
            first.Saw(entry, now);
            second.Saw(entry, now);
        }
    }

    private Inspection State() => Folding.Fold(all);

    private Entry Heater()
    {
        var heater = Write(first, new EntryBody.ComponentAdded { Kind = "water heater" });
        Exchange();
        return heater;
    }

    private static EntryBody.FactStated Year(EntryName component, double year, params EntryName[] replaces) =>
        new() { Component = component, Fact = "year", Value = FactValue.Of(year), Basis = Basis.Nameplate, Replaces = replaces };

    private static List<double?> Years(Inspection state) => [.. state.Components.Single(one => one.Kind == "water heater").Facts["year"].Standing.Select(value => value.Value.Value.Number)];

    [Fact]
    public void Two_devices_state_one_fact_and_both_stand()
    {
        var heater = Heater();
        Write(first, Year(heater.Name, 1994));
        Write(second, Year(heater.Name, 2004));
        Assert.Equal([1994, 2004], Years(State()));
        var shown = Assert.Single(State().Unsettled);
        Assert.Equal(UnsettledKind.Divergence, shown.Kind);
        Assert.Contains("year", shown.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_person_who_saw_both_settles_it()
    {
        var heater = Heater();
        var one = Write(first, Year(heater.Name, 1994));
        var other = Write(second, Year(heater.Name, 2004));
        Exchange();
        Write(first, Year(heater.Name, 2004, one.Name, other.Name));
        Assert.Equal([2004], Years(State()));
        Assert.Empty(State().Unsettled);
    }

    [Fact]
    public void A_value_whose_replacer_is_withdrawn_stands_again()
    {
        var heater = Heater();
        var one = Write(first, Year(heater.Name, 1994));
        var slip = Write(first, Year(heater.Name, 1949, one.Name));
        Assert.Equal([1949], Years(State()));
        Write(first, new EntryBody.EntryWithdrawn { Entry = slip.Name });
        Assert.Equal([1994], Years(State()));
    }

    [Fact]
    public void A_phone_five_years_ahead_wins_nothing_by_it()
    {
        var heater = Heater();
        now = Noon.AddYears(5);
        var early = Write(first, Year(heater.Name, 1994));
        now = Noon.AddHours(1);
        second.Saw(early, now);
        Write(second, Year(heater.Name, 2004, early.Name));
        Assert.Equal([2004], Years(State()));
        Assert.Contains(State().Unsettled, doubt => doubt.Kind == UnsettledKind.FarClock && doubt.Words.Contains("1826 days", StringComparison.Ordinal));
    }

    [Fact]
    public void A_clock_that_the_device_itself_found_wrong_is_shown()
    {
        Write(first, new EntryBody.ClockChecked { Office = Noon, AheadMilliseconds = -3 * 86_400_000L });
        var doubt = Assert.Single(State().Unsettled);
        Assert.Equal(UnsettledKind.FarClock, doubt.Kind);
        Assert.Contains("3 days behind", doubt.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Keep_wins_over_a_withdrawal_that_had_not_seen_what_was_added()
    {
        var heater = Heater();
        var withdrawal = Write(first, new EntryBody.EntryWithdrawn { Entry = heater.Name });
        Assert.Empty(State().Components);
        var added = Write(second, new EntryBody.ReadingTaken { Kind = "hot water", Amount = new Amount(131, "°F"), Component = heater.Name });
        Assert.Single(State().Components);
        var shown = Assert.Single(State().Unsettled);
        Assert.Equal((UnsettledKind.KeepWins, "aaa.1 aaa.2 bbb.1"), (shown.Kind, string.Join(' ', shown.Entries)));
        Assert.Equal([heater.Name, withdrawal.Name, added.Name], shown.Entries);
    }

    [Fact]
    public void Taking_back_again_with_everything_seen_settles_it_and_so_does_restoring()
    {
        var heater = Heater();
        Write(first, new EntryBody.EntryWithdrawn { Entry = heater.Name });
        Write(second, new EntryBody.ReadingTaken { Kind = "hot water", Amount = new Amount(131, "°F"), Component = heater.Name });
        Exchange();
        List<Entry> fork = [.. all];
        var restored = Folding.Fold([.. fork, first.Write(new EntryBody.EntryRestored { Entry = heater.Name }, now)]);
        Assert.Single(restored.Components);
        Assert.Empty(restored.Unsettled);
        Write(second, new EntryBody.EntryWithdrawn { Entry = heater.Name });
        Assert.Empty(State().Components);
        Assert.Empty(State().Unsettled);
        Assert.Single(State().Readings);
    }

    [Fact]
    public void Places_put_inside_one_another_lose_the_later_edge_and_say_so()
    {
        var attic = Write(first, new EntryBody.PlaceAdded { Kind = PlaceKind.Attic, Name = "Attic" });
        var loft = Write(first, new EntryBody.PlaceAdded { Kind = PlaceKind.Room, Name = "Loft" });
        Exchange();
        Write(first, new EntryBody.PlacePlaced { Place = attic.Name, Parent = loft.Name });
        var later = Write(second, new EntryBody.PlacePlaced { Place = loft.Name, Parent = attic.Name });
        var places = State().Places.ToDictionary(place => place.Name);
        Assert.Equal(loft.Name, places["Attic"].Parent);
        Assert.Null(places["Loft"].Parent);
        var shown = Assert.Single(State().Unsettled);
        Assert.Equal((UnsettledKind.ParentCycle, later.Name), (shown.Kind, shown.Entries[0]));
        Assert.Contains("“Attic” and “Loft”", shown.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_limitation_filled_in_later_carries_every_text_that_stands()
    {
        var limitation = Write(first, new EntryBody.LimitationRecorded { What = "North wall of the garage" });
        Exchange();
        Write(first, new EntryBody.NoteWritten { About = limitation.Name, Part = "cause", Text = "boxes" });
        Write(second, new EntryBody.NoteWritten { About = limitation.Name, Part = "cause", Text = "a parked car" });
        Write(first, new EntryBody.NoteWritten { About = limitation.Name, Text = "ask again" });
        var state = State();
        Assert.Equal("boxes\na parked car", Assert.Single(state.Limitations).Cause);
        Assert.Equal("ask again", Assert.Single(state.Notes).Text.Value);
    }

    [Fact]
    public void An_edition_cannot_be_taken_back()
    {
        var hash = new string('a', 64);
        var edition = Write(first, new EntryBody.EditionSealed { Number = 1, Heads = new Dictionary<string, int>(), EntriesRoot = hash, Page = hash, Pdf = hash, RuleBook = "1", At = now });
        Write(first, new EntryBody.EntryWithdrawn { Entry = edition.Name });
        var kept = Assert.Single(State().Editions);
        Assert.Equal(edition.Hash, kept.Seal);
    }

    [Fact]
    public void Types_of_a_newer_program_are_counted_and_passed_over()
    {
        var line = Encoding.UTF8.GetBytes("""{"v":1,"insp":"visit","dev":"zzz","seq":1,"hlc":"01994f3a2c10-0000","type":"smell.noticed","body":{"of":"gas"}}""");
        all.Add(EntryLine.Read(line).OrThrow());
        Assert.Equal(EntryName.Parse("zzz.1"), Assert.Single(State().Unknown));
        Assert.Equal(1, State().Entries);
    }

    [Fact]
    public void Forged_lines_that_each_claim_to_have_seen_the_other_still_fold()
    {
        static Entry Forged(string device, string other) =>
            EntryLine.Read(Encoding.UTF8.GetBytes("{\"v\":1,\"insp\":\"visit\",\"dev\":\"" + device + "\",\"seq\":1,\"hlc\":\"01994f3a2c10-0000\",\"seen\":{\"" + other + "\":1},\"type\":\"entry.withdrawn\",\"body\":{\"entry\":\"" + other + ".1\"}}")).OrThrow();
        Entry[] forged = [Forged("aaa", "bbb"), Forged("bbb", "aaa")];
        Assert.Equal(Dump.Of(Folding.Fold(forged)), Dump.Of(Folding.Fold(forged.Reverse())));
        Assert.Equal(2, Folding.Fold(forged).Entries);
    }

    [Fact]
    public void Two_inspections_are_not_folded_into_one() =>
        Assert.Throws<ArgumentException>(() => Folding.Fold([Heater(), new Pen("other", "ccc").Write(new EntryBody.DeviceJoined { Name = "x" }, now)]));

    [Fact]
    public void Nothing_folds_to_nothing()
    {
        var state = Folding.Fold([]);
        Assert.Equal(("", 0), (state.Id, state.Entries));
        Assert.Null(state.Opening);
    }
}
