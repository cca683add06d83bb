using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Purlin.Book;
using Purlin.Book.Takings;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Tests.Judgement;

namespace Purlin.Tests.Book;

/// <summary>Each taking by itself, over evidence written down in the test: what it gives, what it asks for, and what it begins.</summary>
public sealed class TakingTests
{
    private static readonly JsonSerializerOptions Plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private readonly SmallHouse house = new();

    /// <summary>Evidence as it stands in a small house; every component can be worked out to a date on its plate.</summary>
    private sealed class SmallGround(Inspection inspection) : Ground
    {
        public override int YearNow => 2026;

        public override (Property Property, EntryName Entry)? House => (inspection.Opening!.Body.Property, inspection.Opening.Id);

        public override IEnumerable<Component> ComponentsOf(string kind) => inspection.Components.Where(component => component.Kind == kind);

        public override IEnumerable<Reading> ReadingsOf(string kind) => inspection.Readings.Where(reading => reading.Body.Kind == kind);

        public override EntryName? PlaceOf(Reading reading) => reading.Body.Place;

        public override bool IsOfHouse(string readingKind) => readingKind == "outdoor dry bulb";

        public override double? Setting(string name) => name == "cooling outdoor least" ? 60 : null;

        public override IReadOnlyDictionary<string, string> Words(string map) => map == "wire metals" ? new Dictionary<string, string> { ["copper"] = "copper", ["aluminium"] = "aluminum" } : new Dictionary<string, string>();

        public override (JsonObject Result, IReadOnlyList<EntryName> Entries)? Worked(string feed, Component component) => feed != "nameplate" || component.Fact("plate") is null ? null
            : (new JsonObject
            {
                ["date"] = new JsonObject { ["value"] = "2011-04", ["confidence"] = "read" },
                ["guess"] = new JsonObject { ["value"] = "2011-04", ["confidence"] = "inferred" },
                ["fuel_input"] = new JsonObject { ["value"] = 40000, ["unit"] = "Btu/h", ["confidence"] = "read" },
            }, [component.Facts["plate"].Standing[0].By]);
    }

    private SmallGround Ground => new(house.Build());

    private (string? Value, FedInputs Fed) Take(Taking taking, EntryName? of = null, EntryName? place = null)
    {
        var inspection = house.Build();
        var component = inspection.Components.FirstOrDefault(known => known.Id == of);
        var fed = new FedInputs(of);
        var value = taking.Value(new SmallGround(inspection), new FeedGroup(inspection.Readings, component, place ?? component?.Place), fed);
        return (value?.ToJsonString(Plain), fed);
    }

    private IReadOnlyList<Lack> Lacks(Taking taking, EntryName? of = null) =>
        [.. taking.Lacks(Ground, new FeedGroup([], house.Build().Components.FirstOrDefault(known => known.Id == of), null))];

    [Fact]
    public void A_fact_goes_in_with_its_unit_as_written_and_begins_the_working_of_its_component()
    {
        var circuit = house.Component("circuit");
        var breaker = house.Fact(circuit, "breaker", FactValue.Of(20), "A");
        var (value, fed) = Take(new Taking.Fact("breaker"), circuit);
        Assert.Equal("\"20 A\"", value);
        Assert.True(fed.IsBegun);
        Assert.Equal([breaker], fed.Entries);
        Assert.Equal("20", Take(new Taking.Fact("breaker") { Bare = true }, circuit).Value);
    }

    [Fact]
    public void A_fact_of_another_component_is_taken_when_it_is_told_which_one_and_begins_nothing()
    {
        var grounding = house.Component("grounding");
        house.Fact(house.Component("service", house.Place("garage")), "rating", FactValue.Of(200), "A");
        var (value, fed) = Take(new Taking.Fact("service/rating"), grounding);
        Assert.Equal("\"200 A\"", value);
        Assert.False(fed.IsBegun);
        house.Fact(house.Component("service", house.Place("basement")), "rating", FactValue.Of(100), "A");
        Assert.Null(Take(new Taking.Fact("service/rating"), grounding).Value);
    }

    [Fact]
    public void What_stands_in_words_that_nobody_knows_is_not_presumed_to_be_the_usual()
    {
        var metal = new Taking.Presumed(new Taking.Mapped(new Taking.Fact("conductor material"), "wire metals")) { Text = "copper" };
        var circuit = house.Component("circuit");
        Assert.Equal("\"copper\"", Take(metal, circuit).Value);
        house.Fact(circuit, "conductor material", FactValue.Of("iron"));
        Assert.Null(Take(metal, circuit).Value);
        var lack = Assert.Single(Lacks(metal, circuit));
        Assert.Equal(("conductor material", "iron"), (lack.Fact, lack.Given));
        Assert.Equal(["copper", "aluminium"], lack.Known);
        house.Fact(circuit, "conductor material", FactValue.Of("aluminium"));
        Assert.Equal("\"aluminum\"", Take(metal, circuit).Value);
    }

    [Theory]
    [InlineData(Reach.Group, null)]
    [InlineData(Reach.Place, "\"68 °F\"")]
    [InlineData(Reach.House, "\"71 °F\"")]
    public void A_reading_is_taken_from_as_far_as_the_taking_says(Reach from, string? expected)
    {
        var (attic, kitchen) = (house.Place("attic"), house.Place("kitchen"));
        house.Read("air dry bulb", 68, "°F", attic);
        house.Read("air dry bulb", 71, "°F", kitchen);
        var fed = new FedInputs(null);
        Assert.Equal(expected, new Taking.Reading("air dry bulb") { From = from }.Value(Ground, new FeedGroup([], null, attic), fed)?.ToJsonString(Plain));
        Assert.False(fed.IsBegun);
    }

    [Fact]
    public void Of_several_ways_the_first_on_record_counts()
    {
        var heater = house.Component("water heater");
        var year = new Taking.First([new Taking.Fact("year") { Bare = true }, new Taking.Worked("nameplate", "date") { Year = true }]);
        Assert.Equal("year", Assert.Single(Lacks(year, heater)).Fact);
        house.Fact(heater, "plate", FactValue.Of("MFG DATE 04/2011"));
        Assert.Equal("2011", Take(year, heater).Value);
        house.Fact(heater, "year", FactValue.Of(2012));
        Assert.Equal("2012", Take(year, heater).Value);
        Assert.Null(Take(new Taking.Worked("nameplate", "guess") { Year = true }, heater).Value);
    }

    [Theory]
    [InlineData(2012, "before 2013")]
    [InlineData(2013, "from 2013")]
    public void A_number_falls_into_the_first_band_that_it_does_not_pass(int year, string word)
    {
        house.Property = house.Property with { YearBuilt = year };
        Assert.Equal($"\"{word}\"", Take(new Taking.Banded(new Taking.Property("yearBuilt"), [new Band("before 2013", 2012), new Band("from 2013")])).Value);
    }

    [Fact]
    public void An_object_that_lacks_something_is_left_out_with_its_evidence()
    {
        var drain = house.Component("surface drain");
        house.Fact(drain, "lawn area", FactValue.Of(900), "ft²");
        var lawn = new Taking.Group(new Dictionary<string, Taking> { ["area"] = new Taking.Fact("lawn area"), ["cover"] = new Taking.Fact("lawn") });
        var (value, fed) = Take(lawn, drain);
        Assert.Null(value);
        Assert.Empty(fed.Entries);
        Assert.Equal("lawn", Assert.Single(Lacks(lawn, drain)).Fact);
    }

    [Fact]
    public void A_sum_means_nothing_while_a_known_part_is_missing()
    {
        house.Fact(house.Component("range"), "fuel", FactValue.Of("electric"));
        var ranges = new Taking.Each(["range"], new Taking.Fact("rating")) { Where = new Dictionary<string, IReadOnlyList<string>> { ["fuel"] = ["electric"] }, All = true };
        Assert.True(Take(ranges).Fed.LacksKnownPart);
        Assert.Equal("rating", Assert.Single(Lacks(ranges)).Fact);
        Assert.False(Take(ranges with { All = false }).Fed.LacksKnownPart);
    }

    [Fact]
    public void A_level_goes_in_with_its_distance_from_the_wall_the_nearest_first()
    {
        house.Read("ground level", 3, "in", point: new PlanPoint(10, 0, "ft"));
        house.Read("ground level", 0, "in", point: new PlanPoint(0, 0, "ft"));
        house.Read("ground level", 9, "in");
        Assert.Equal("""[{"distance":"0 ft","level":"0 in"},{"distance":"10 ft","level":"3 in"}]""", Take(new Taking.LevelsFromWall("ground level")).Value);
        Assert.Equal(Pointing.Distance, new Taking.LevelsFromWall("ground level").PointingOf("ground level"));
    }

    [Fact]
    public void A_point_of_a_survey_goes_in_with_its_covering()
    {
        house.Read("floor level", 0.5, "in", point: new PlanPoint(3, 4, "ft"));
        Assert.Equal("""[{"x":"3 ft","y":"4 ft","reading":"0.5 in","covering":"0 in"}]""", Take(new Taking.SurveyPoints("floor level")).Value);
        Assert.Equal(Pointing.Plan, new Taking.SurveyPoints("floor level").PointingOf("floor level"));
    }

    [Fact]
    public void A_room_measured_in_feet_and_inches_has_one_volume()
    {
        house.Read("room length", 10, "ft");
        house.Read("room width", 60, "in");
        Assert.Null(Take(new Taking.RoomVolume()).Value);
        house.Read("room height", 8, "ft");
        Assert.Equal("\"400 ft³\"", Take(new Taking.RoomVolume()).Value);
    }

    [Fact]
    public void A_plate_is_put_together_from_its_parts()
    {
        var unit = house.Component("outdoor unit");
        Assert.Null(Take(new Taking.PlateText(), unit).Value);
        house.Fact(unit, "serial", FactValue.Of("0411X"));
        house.Fact(unit, "model", FactValue.Of("AB36"));
        Assert.Equal("MODEL NO. AB36\nSERIAL NO. 0411X", JsonNode.Parse(Take(new Taking.PlateText(), unit).Value!)!.GetValue<string>());
    }

    [Fact]
    public void Gas_burners_are_summed_only_when_each_says_what_it_burns_and_how_much()
    {
        var heater = house.Component("water heater");
        Assert.Equal("fuel", Assert.Single(Lacks(new Taking.GasBurners())).Fact);
        house.Fact(heater, "fuel", FactValue.Of("natural gas"));
        Assert.Equal("input", Assert.Single(Lacks(new Taking.GasBurners())).Fact);
        Assert.True(Take(new Taking.GasBurners()).Fed.LacksKnownPart);
        house.Fact(heater, "plate", FactValue.Of("INPUT 40000"));
        Assert.Equal("""["40000 Btu/h"]""", Take(new Taking.GasBurners()).Value);
        house.Fact(heater, "input", FactValue.Of(38000), "Btu/h");
        Assert.Equal("""["38000 Btu/h"]""", Take(new Taking.GasBurners()).Value);
        house.Fact(house.Component("dryer"), "fuel", FactValue.Of("electric"));
        Assert.False(Take(new Taking.GasBurners()).Fed.LacksKnownPart);
    }

    [Theory]
    [InlineData("fan-assisted", BurnerDraft.Natural, 1)]
    [InlineData("fan-assisted", BurnerDraft.FanAssisted, 1)]
    [InlineData("sealed", BurnerDraft.Natural, 1)]
    [InlineData("sealed", BurnerDraft.FanAssisted, 0)]
    [InlineData("natural", BurnerDraft.Natural, 2)]
    public void Gas_burners_are_told_apart_by_their_draft(string draft, BurnerDraft asked, int expected)
    {
        foreach (var its in (string[])["natural", draft])
        {
            var furnace = house.Component("furnace");
            house.Fact(furnace, "fuel", FactValue.Of("propane"));
            house.Fact(furnace, "input", FactValue.Of(60000), "Btu/h");
            house.Fact(furnace, "draft", FactValue.Of(its));
        }
        Assert.Equal(expected, (JsonNode.Parse(Take(new Taking.GasBurners { Draft = asked }).Value ?? "[]") as JsonArray)!.Count);
    }

    [Fact]
    public void Gas_burners_of_another_room_take_no_air_here()
    {
        var (garage, attic) = (house.Place("garage"), house.Place("attic"));
        foreach (var place in (EntryName[])[garage, attic])
        {
            var furnace = house.Component("furnace", place);
            house.Fact(furnace, "fuel", FactValue.Of("gas"));
            house.Fact(furnace, "input", FactValue.Of(place == garage ? 1 : 2), "Btu/h");
        }
        Assert.Equal("""["1 Btu/h"]""", Take(new Taking.GasBurners { Here = true }, place: garage).Value);
    }

    [Fact]
    public void The_longest_of_all_gas_runs_counts_whatever_its_unit()
    {
        house.Fact(house.Component("gas piping"), "longest run", FactValue.Of(40), "ft");
        house.Fact(house.Component("gas piping"), "longest run", FactValue.Of(15), "m");
        Assert.Equal("\"15 m\"", Take(new Taking.LongestGasRun()).Value);
    }

    [Fact]
    public void A_tank_of_hot_water_is_there_or_not_told()
    {
        Assert.Null(Take(new Taking.StoredHotWater()).Value);
        house.Component("water heater");
        Assert.Equal("true", Take(new Taking.StoredHotWater()).Value);
    }
}
