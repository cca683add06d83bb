using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using Purlin.Journal;
using Purlin.Judgement;
using Purlin.Book;
using Purlin.Tests.House;

namespace Purlin.Tests.Judgement;

public sealed class JudgementJsonTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(File.ReadAllText(Path.Combine(Repository.Root, "docs/schema/judgement.schema.json")));

    private static JsonObject Full()
    {
        var house = new SmallHouse { Property = new Property { Address = "1 Invented Lane", YearBuilt = 1968, Foundation = "slab" }, Standards = ["washington", "texas"] };
        var (garage, kitchen, bath) = (house.Place(PlaceKind.Garage), house.Place(PlaceKind.Kitchen), house.Place(PlaceKind.Bathroom));
        var heater = house.Component("water heater", garage);
        house.Fact(heater, "year", FactValue.Of(2008));
        house.Seen("water-heater.relief-pipe-missing", garage, heater, spot: "right side");
        var crust = house.Seen("supply-piping.corroded-joint", kitchen);
        house.Seen("supply-piping.corroded-joint", bath);
        house.Seen("receptacle.no-gfci", bath, sample: new Sample(1, 1, 1));
        house.NotVisible("supply-piping.active-leak", bath, "panel screwed shut");
        house.Read("static water pressure", 92, "psi", garage);
        house.Photograph(crust);
        house.Photograph();
        house.Limit("Attic not entered", null, null);
        house.Overrule("receptacle.no-gfci", "weight", "put right", "One receptacle.");
        var inspection = house.Build();
        return JudgementJson.Write(Judging.Judge(inspection, RuleBook.BuiltIn, 2026), inspection);
    }

    private static EvaluationResults Evaluate(JsonNode node)
    {
        using var document = JsonDocument.Parse(node.ToJsonString());
        return Schema.Evaluate(document.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
    }

    [Fact]
    public void What_is_written_keeps_to_the_published_schema()
    {
        var results = Evaluate(Full());
        Assert.True(results.IsValid, string.Join('\n', (results.Details ?? []).Where(detail => detail.Errors is not null).SelectMany(detail => detail.Errors!.Select(error => $"{detail.InstanceLocation}: {error.Value}")).Take(20)));
    }

    [Theory]
    [InlineData("findings")]
    [InlineData("loose_ends")]
    [InlineData("coverage")]
    [InlineData("limitations")]
    [InlineData("workings")]
    public void Each_part_has_something_to_hold_against_the_schema(string part) => Assert.NotEmpty(Full()[part]!.AsArray());

    [Fact]
    public void The_schema_refuses_what_it_should()
    {
        var wrong = Full();
        wrong["findings"]![0]!["weight"] = "urgent";
        Assert.False(Evaluate(wrong).IsValid);
        wrong = Full();
        wrong.Remove("loose_ends");
        Assert.False(Evaluate(wrong).IsValid);
    }
}
