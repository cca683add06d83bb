using CsCheck;
using Purlin.Journal;
using Purlin.Journal.Fold;

namespace Purlin.Tests.Journal.Fold;

/// <summary>Folding as entries come must be folding them all, whatever comes and in whatever parts.</summary>
public sealed class GrowingFoldTests
{
    private static readonly DateTimeOffset Morning = new(2026, 10, 14, 9, 0, 0, TimeSpan.Zero);

    [Fact]
    public void Entry_by_entry_the_state_is_that_of_the_whole() =>
        Gen.Select(History.Steps, Gen.Bool, Gen.Bool).Sample(
            (steps, wildClocks, copies) =>
            {
                var entries = History.Of(steps, wildClocks, copies).Entries;
                GrowingFold growing = new();
                for (var count = 1; count <= entries.Count; count++)
                {
                    Assert.True(growing.Add([entries[count - 1]]));
                    Assert.Equal(Dump.Of(Folding.Fold(entries.Take(count))), Dump.Of(growing.Inspection));
                }
            },
            iter: 300);

    [Fact]
    public void Any_order_and_repetition_of_delivery_gives_the_same_state() =>
        Gen.Select(History.Steps, Gen.Int[0, int.MaxValue], Gen.Bool).Sample(
            (steps, seed, copies) =>
            {
                var entries = History.Of(steps, copies: copies).Entries;
                var chance = new Random(seed);
                var shuffled = History.Delivered(entries, chance);
                GrowingFold growing = new();
                for (var at = 0; at < shuffled.Length;)
                {
                    var part = 1 + chance.Next(4);
                    growing.Add(shuffled.Skip(at).Take(part));
                    at += part;
                }
                Assert.Equal(Dump.Of(Folding.Fold(entries)), Dump.Of(growing.Inspection));
            },
            iter: 500);

    [Fact]
    public void What_an_entry_does_not_touch_stays_the_same_object()
    {
        Pen pen = new("grow", "phone");
        GrowingFold growing = new();
        EntryName Write(EntryBody body)
        {
            var entry = pen.Write(body, Morning.AddSeconds(growing.Entries.Count));
            growing.Add([entry]);
            return entry.Name;
        }
        Write(new EntryBody.InspectionOpened { Property = new Property { Address = "1 Invented Lane" }, Date = new DateOnly(2026, 10, 14) });
        var room = Write(new EntryBody.PlaceAdded { Kind = PlaceKind.Room, Name = "Room" });
        var heater = Write(new EntryBody.ComponentAdded { Kind = "water heater", Place = room });
        var window = Write(new EntryBody.ComponentAdded { Kind = "window", Place = room });
        var look = Write(new EntryBody.ObservationMade { Place = room, Condition = "window.seal-failed", Outcome = Outcome.Seen, Component = window });
        var before = growing.Inspection;

        Write(new EntryBody.FactStated { Component = heater, Fact = "year", Value = FactValue.Of(2001), Basis = Basis.Seen });
        var after = growing.Inspection;
        Assert.Same(before.Observations, after.Observations);
        Assert.Same(before.Places, after.Places);
        Assert.Same(before.Components.Single(component => component.Id == window), after.Components.Single(component => component.Id == window));
        Assert.Equal(2001, after.Components.Single(component => component.Id == heater).Fact("year")!.Value.Number);

        Write(new EntryBody.EntryWithdrawn { Entry = look });
        Assert.Empty(growing.Inspection.Observations);
        Assert.Same(after.Components, growing.Inspection.Components);
    }

    [Fact]
    public void A_line_that_arrives_after_one_that_has_seen_it_still_comes_before_it()
    {
        Pen first = new("grow", "aaa");
        Pen second = new("grow", "bbb");
        var opened = first.Write(new EntryBody.DeviceJoined { Name = "first" }, Morning);
        second.Saw(opened, Morning);
        var joined = second.Write(new EntryBody.DeviceJoined { Name = "second" }, Morning);
        // The first phone's clock is an hour fast; the second has its line in hand, believes its own wall, and its line arrives first.
        EntryBody.ReadingTaken Read(double psi) => new() { Kind = "static water pressure", Amount = new Amount(psi, "psi") };
        var cause = first.Write(Read(61), Morning.AddHours(1));
        second.Saw(cause, Morning.AddMinutes(1));
        var effect = second.Write(Read(62), Morning.AddMinutes(1));
        GrowingFold growing = new();
        foreach (var entry in new[] { opened, joined, effect, cause }) growing.Add([entry]);
        Assert.Equal([cause.Name, effect.Name], growing.Inspection.Readings.Select(reading => reading.Id));
        Assert.Equal(Dump.Of(Folding.Fold([opened, joined, cause, effect])), Dump.Of(growing.Inspection));
    }

    [Fact]
    public void Another_inspection_is_refused_and_nothing_of_it_taken()
    {
        GrowingFold growing = new();
        growing.Add([new Pen("one", "aaa").Write(new EntryBody.DeviceJoined { Name = "x" }, Morning)]);
        Assert.Throws<ArgumentException>(() => growing.Add([new Pen("two", "aaa").Write(new EntryBody.DeviceJoined { Name = "x" }, Morning)]));
        Assert.Single(growing.Entries);
        Assert.Equal(1, growing.Inspection.Entries);
    }
}
