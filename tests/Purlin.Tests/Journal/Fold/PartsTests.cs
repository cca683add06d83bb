using Purlin.Journal;
using Purlin.Journal.Fold;

namespace Purlin.Tests.Journal.Fold;

/// <summary>Parts of the house: each with its own year, levels, foundation and sides, and places that belong to it.</summary>
public sealed class PartsTests
{
    [Fact]
    public void A_journal_that_never_spoke_of_parts_is_one_main_part()
    {
        var writing = Writing.Opened(out var house, new Property { Address = "1 Invented Way", YearBuilt = 1962, Storeys = 2, Foundation = "basement", RoofForm = "hip" });
        var room = writing.Write(new EntryBody.PlaceAdded { Kind = PlaceKind.Room, Name = "Room", Storey = 1 });
        var main = Assert.Single(writing.State.Parts);
        Assert.Equal((house, PartKind.Main, 1962d, Basis.Told, "basement", "hip"), (main.Id, main.Kind, main.Year!.Value.Number!.Value, main.Year.Basis, main.Foundation!.Value.Text, main.RoofForm!.Value.Text));
        Assert.Equal([-1, 0, 1], main.Levels.Select(level => level.At));
        Assert.Equal(main.Id, writing.State.PartOf(room)!.Id);
        Assert.Equal(1d, writing.State.Places.Single().Level);
        Assert.Null(writing.State.Places.Single().Part);

        // Facts of the house are facts of its main part.
        writing.Write(new EntryBody.FactStated { Component = house, Fact = "year", Value = FactValue.Of(1958), Basis = Basis.Nameplate });
        Assert.Equal((1958d, Basis.Nameplate), (writing.State.YearOf(room)!.Value.Number, writing.State.YearOf(room)!.Basis));
    }

    [Fact]
    public void A_wing_has_its_own_year_and_what_is_in_it_goes_by_it()
    {
        var writing = Writing.Opened(out var house);
        var wing = writing.Write(new EntryBody.PartAdded { Kind = PartKind.Addition, Name = "Rear addition", Side = "rear" });
        writing.Write(new EntryBody.FactStated { Component = wing, Fact = "year", Value = FactValue.Of(2004), Basis = Basis.Told });
        writing.Write(new EntryBody.FactStated { Component = wing, Fact = "foundation", Value = FactValue.Of("slab"), Basis = Basis.Seen });
        var bedroom = writing.Write(new EntryBody.PlaceAdded { Kind = PlaceKind.Bedroom, Name = "Bedroom", Part = wing });
        var closet = writing.Write(new EntryBody.PlaceAdded { Kind = PlaceKind.Room, Name = "Closet", Parent = bedroom });
        var window = writing.Write(new EntryBody.ComponentAdded { Kind = "window", Place = closet });
        var heater = writing.Write(new EntryBody.ComponentAdded { Kind = "water heater", Part = wing });
        var kitchen = writing.Write(new EntryBody.PlaceAdded { Kind = PlaceKind.Kitchen, Name = "Kitchen" });

        Assert.Equal([house, wing], writing.State.Parts.Select(part => part.Id));
        Assert.Equal([2004d, 2004d, 2004d, 2004d, 1962d, 1962d], new EntryName?[] { bedroom, closet, window, heater, kitchen, null }.Select(thing => writing.State.YearOf(thing)!.Value.Number!.Value));
        Assert.Equal("slab", writing.State.PartOf(closet)!.Foundation!.Value.Text);
        Assert.Null(writing.State.PartOf(kitchen)!.Foundation);

        // Moved to the main part, and back by undo.
        var move = writing.Write(new EntryBody.PlacePlaced { Place = bedroom, Part = house });
        Assert.Equal(house, writing.State.PartOf(window)!.Id);
        writing.Write(new EntryBody.EntryWithdrawn { Entry = move });
        Assert.Equal(wing, writing.State.PartOf(window)!.Id);

        // A part that was taken back has nothing in it any more.
        writing.Write(new EntryBody.EntryWithdrawn { Entry = wing });
        Assert.Equal(house, writing.State.PartOf(window)!.Id);
        Assert.Equal(house, writing.State.PartOf(heater)!.Id);
    }

    [Fact]
    public void A_split_level_says_its_levels_in_halves_and_its_claddings_by_side()
    {
        var writing = Writing.Opened(out var house);
        writing.Write(new EntryBody.PartLeveled { Part = house, Levels = [new Level(-0.5, LevelForm.Lower), new Level(0, LevelForm.Full), new Level(0.5, LevelForm.Full)] });
        writing.Write(new EntryBody.PartClad { Part = house, Side = "front", Claddings = [new Cladding("brick veneer", "lower half"), new Cladding("wood siding")], Basis = Basis.Seen });
        writing.Write(new EntryBody.PartClad { Part = house, Side = "rear", Claddings = [new Cladding("wood siding")], Basis = Basis.Seen });
        writing.Write(new EntryBody.PartClad { Part = house, Side = "rear", Claddings = [new Cladding("stucco")], Basis = Basis.Seen });
        var den = writing.Write(new EntryBody.PlaceAdded { Kind = PlaceKind.Room, Name = "Den", Level = -0.5 });
        var main = writing.State.Parts[0];
        Assert.Equal([-0.5, 0, 0.5], main.Levels.Select(level => level.At));
        Assert.Equal(["brick veneer", "wood siding"], main.Claddings["front"].Value.Claddings.Select(cladding => cladding.Material));
        Assert.Equal("stucco", Assert.Single(main.Claddings["rear"].Standing).Value.Claddings.Single().Material);
        Assert.False(main.Claddings.ContainsKey("left"));
        Assert.Equal((-0.5, -1), (writing.State.Places.Single(place => place.Id == den).Level, writing.State.Places.Single(place => place.Id == den).Storey!.Value));
    }

    [Fact]
    public void A_circuit_is_of_its_panel_and_a_ring_of_pieces_says_nothing()
    {
        var writing = Writing.Opened(out _);
        var panel = writing.Write(new EntryBody.ComponentAdded { Kind = "panelboard" });
        var circuit = writing.Write(new EntryBody.ComponentAdded { Kind = "circuit", Of = panel });
        Component? At(EntryName name) => writing.State.Components.Single(component => component.Id == name);
        Assert.Equal(panel, At(circuit)!.Of);

        writing.Meet("aaa", "bbb");
        writing.Write(new EntryBody.ComponentPlaced { Component = panel, Of = circuit }, "bbb");
        Assert.Null(At(panel)!.Of);
        Assert.Null(At(circuit)!.Of);

        writing.Meet("aaa", "bbb");
        writing.Write(new EntryBody.ComponentPlaced { Component = panel });
        Assert.Equal(panel, At(circuit)!.Of);
        writing.Write(new EntryBody.EntryWithdrawn { Entry = panel });
        Assert.Null(At(circuit)!.Of);
    }

    [Fact]
    public void A_place_is_taken_back_with_what_it_holds_and_nothing_else()
    {
        var writing = Writing.Opened(out _);
        var kept = writing.Write(new EntryBody.PlaceAdded { Kind = PlaceKind.Room, Name = "Kept" });
        var keptLook = writing.Write(new EntryBody.ObservationMade { Place = kept, Words = "stain", Outcome = Outcome.Seen });
        var room = writing.Write(new EntryBody.PlaceAdded { Kind = PlaceKind.Room, Name = "Room" });
        var closet = writing.Write(new EntryBody.PlaceAdded { Kind = PlaceKind.Room, Name = "Closet", Parent = room });
        var panel = writing.Write(new EntryBody.ComponentAdded { Kind = "panelboard", Place = closet });
        var circuit = writing.Write(new EntryBody.ComponentAdded { Kind = "circuit", Of = panel });
        var look = writing.Write(new EntryBody.ObservationMade { Place = closet, Component = panel, Words = "hot", Outcome = Outcome.Seen });
        var note = writing.Write(new EntryBody.NoteWritten { About = circuit, Part = "n1", Text = "labeled attic" });
        var absence = writing.Write(new EntryBody.ComponentAbsent { Kind = "window", Place = room });
        var held = Holdings.Of(writing.State, room);
        Assert.Equal([note, look, absence, circuit, panel, closet, room], held);
        foreach (var name in held) writing.Write(new EntryBody.EntryWithdrawn { Entry = name });
        Assert.Equal([kept], writing.State.Places.Select(place => place.Id));
        Assert.Equal([keptLook], writing.State.Observations.Select(one => one.Id));
        Assert.Empty(writing.State.Unsettled);
        Assert.Empty(writing.State.Notes);
        Assert.Empty(writing.State.Absences);
        Assert.Equal("house", Assert.Single(writing.State.Components).Kind);
    }
}
