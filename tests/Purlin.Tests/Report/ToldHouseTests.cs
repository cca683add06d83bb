using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Journal.Told;
using Purlin.Report.Drawing;
using Purlin.Report.Section;

namespace Purlin.Tests.Report;

/// <summary>Houses as they are told in a few answers, folded like any journal, and drawn.</summary>
public static class ToldHouseTests
{
    // Invented; how floors lie in a split level and a split entry is common practice.
    private static readonly Property property = new()
    {
        Address = "9 Invented Rise, Ostley",
        YearBuilt = 1962,
        Foundation = "crawl space",
        RoofForm = "gable",
        Attic = "walkable",
        Bedrooms = 3,
        Bathrooms = 2,
        Deck = true,
        Garage = "attached"
    };

    private static readonly ToldPart wing = new()
    {
        Kind = PartKind.Addition,
        Name = "Addition",
        Side = "right",
        Year = 1998,
        Foundation = "crawl space"
    };

    public static TheoryData<string> Forms => [.. HouseForm.All];

    [Theory]
    [MemberData(nameof(Forms))]
    public static void Every_form_with_all_that_can_stand_beside_it_is_drawn_with_every_place_a_thumb_can_hit(string form)
    {
        IReadOnlyList<IReadOnlyList<ToldPart>> several =
        [
            [], [wing], [wing, wing with { Kind = PartKind.EnclosedPorch, Name = "Sun room", Side = "left", Foundation = "slab" }],
            [new ToldPart { Kind = PartKind.SecondUnit, Name = "Unit 2", Side = "right", Floors = HouseForm.Levels(form).Count > 1 ? 2
                : 1 }], [new ToldPart { Kind = PartKind.SecondUnit, Name = "Unit 2", Side = "above" }],
        ];
        foreach (var parts in several)
        {
            var house = Fold(new ToldHouse
            {
                Property = property,
                Form = form,
                Parts = parts,
                Porch = true,
                Pool = true,
                Outbuildings = 2
            });
            Assert.Equal(parts.Count + 1, house.Parts.Count);
            foreach (var options in (SectionOptions[])[SectionOptions.Portrait, SectionOptions.Landscape])
            {
                var sheet = SectionDrawing.Draw(house, null, options);
                Assert.Equal(house.Places.Select(place => place.Id.ToString()).Order(), sheet.Targets.Select(target => target.Id).Order());
                // 44 by 44: WCAG 2.2, success criterion 2.5.5.
                Assert.All(sheet.Targets, target => Assert.True(target.Box.Width >= 43.9 && target.Box.Height >= 43.9,
                    $"{form}, {parts.Count} parts: {target.Label} is {target.Box.Width:0} by {target.Box.Height:0}"));
                Assert.All(sheet.Targets, target => Assert.True(target.Box.X >= 0 && target.Box.Y >= 0 && target.Box.Right <= sheet.Width
                    && target.Box.Bottom <= sheet.Height, $"{form}: {target.Label} lies outside"));
            }
        }
    }

    [Fact]
    public static void The_levels_of_a_split_level_lie_half_a_storey_off_and_its_wing_stands_beside_it()
    {
        var house = Fold(new ToldHouse
        {
            Property = property with { Garage = "none", Deck = null },
            Form = HouseForm.SplitLevel,
            LowerRoom = "Family room",
            Parts = [wing],
            Pool = true
        });
        var sheet = SectionDrawing.Draw(house, null, SectionOptions.Portrait);
        Box At(string name) => sheet.Targets.Single(target => target.Label.StartsWith(name + ".", StringComparison.Ordinal)).Box;
        Box living = At("Kitchen"), lower = At("Family room"), upper = At("Bedroom 2"), addition = At("Room, addition");
        Assert.InRange(living.Bottom, upper.Bottom + 30, lower.Bottom - 30);
        Assert.True(living.Right <= lower.X + 0.01, "the lower level lies under the living level");
        Assert.True(addition.X >= lower.Right - 0.01, "the wing lies in the house");
        Assert.Equal(living.Bottom, addition.Bottom, 6);
        Assert.Contains(sheet.Marks.OfType<Mark.Lettering>(), words => words.Text == "1998");
        // A pool is open to the sky: it does not lie under the earth.
        var pool = At("Pool");
        Assert.True(pool.Y > At("Site").Bottom || pool.X > addition.Right, "the pool lies in or under the house");
    }

    [Fact]
    public static void What_is_told_of_a_part_is_known_of_that_part_alone()
    {
        var house = Fold(new ToldHouse
        {
            Property = property with { Foundation = "basement" },
            Form = HouseForm.TwoFloors,
            Cladding = "vinyl",
            FrontCladding = "brick",
            Parts = [wing with { Foundation = "slab" }],
        });
        var (main, addition) = (house.Parts[0], house.Parts[1]);
        Assert.Equal(("1962", "1998"), (main.Year?.Value.Text, addition.Year?.Value.Text));
        Assert.Equal(("basement", "slab"), (main.Foundation?.Value.Text, addition.Foundation?.Value.Text));
        Assert.Equal([-1, 0, 1], main.Levels.Select(level => level.At));
        Assert.Equal([0], addition.Levels.Select(level => level.At));
        Assert.Equal("brick", Assert.Single(main.Claddings["front"].Value.Claddings).Material);
        Assert.Equal("vinyl", Assert.Single(main.Claddings["left"].Value.Claddings).Material);
        var room = house.Places.Single(place => place.Name == "Room, addition");
        Assert.Equal(addition.Id, house.PartOf(room.Id)?.Id);
        Assert.Equal(main.Id, house.PartOf(house.Places.First(place => place.Kind == PlaceKind.Kitchen).Id)?.Id);
    }

    private static Inspection Fold(ToldHouse told)
    {
        var pen = new Pen("told", "told");
        EntryBody opened = new EntryBody.InspectionOpened { Property = told.Facts, Date = new DateOnly(2026, 11, 20) };
        return Folding.Fold([.. told.Entries(at => new EntryName("told", at), 1).Prepend(opened).Select(body =>
            pen.Write(body, new DateTimeOffset(2026, 11, 20, 9, 0, 0, TimeSpan.Zero)))]);
    }
}
