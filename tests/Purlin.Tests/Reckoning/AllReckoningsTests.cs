using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Purlin.Reckoning;
using Purlin.Reckoning.Quantities;

namespace Purlin.Tests.Reckoning;

/// <summary>What must hold of every reckoning, whoever adds it.</summary>
public sealed class AllReckoningsTests
{
    public static TheoryData<string> Names() => [.. Reckonings.All.Select(reckoning => reckoning.Name)];

    private static Calculation Find(string name) => Reckonings.Find(name).OrThrow();

    [Fact]
    public void Names_differ() => Assert.Equal(Reckonings.All.Length, Reckonings.All.Select(reckoning => reckoning.Name).Distinct().Count());

    [Theory]
    [MemberData(nameof(Names))]
    public void Says_what_it_is_and_what_it_rests_on(string name)
    {
        var reckoning = Find(name);
        Assert.Matches("^[a-z]+(-[a-z]+)*$", reckoning.Name);
        Assert.InRange(InWords.Of(reckoning.Title).Length, 5, 60);
        Assert.InRange(InWords.Of(reckoning.Purpose).Length, 20, 200);
        Assert.EndsWith(".", InWords.Of(reckoning.Purpose), StringComparison.Ordinal);
        Assert.NotEmpty(reckoning.Sources);
        Assert.All(reckoning.Sources, source => Assert.InRange(source.Length, 8, 400));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_input_has_a_name_a_meaning_and_a_unit_we_know(string name) => CheckInputs(Find(name).Inputs, nested: false);

    private static void CheckInputs(ImmutableArray<Input> inputs, bool nested)
    {
        Assert.NotEmpty(inputs);
        Assert.Equal(inputs.Length, inputs.Select(input => input.Name).Distinct().Count());
        foreach (var input in inputs)
        {
            if (!(nested && inputs.Length == 1 && input.Name.Length == 0)) Assert.Matches("^[A-Za-z]+(_[a-z0-9]+)*$", input.Name);
            Assert.InRange(InWords.Of(input.Meaning).Length, 3, 160);
            Assert.NotEmpty(InWords.Of(input.Allowed));
            if (input is Input.Quantity quantity)
            {
                Assert.True(Units.Compatible(quantity.Unit, quantity.Unit), $"{input.Name}: unit '{quantity.Unit}' is not known");
                Assert.True(quantity.Least < quantity.Most, input.Name);
            }
            if (input is Input.List list) CheckInputs(list.Of, nested: true);
            if (input is Input.Group group) CheckInputs(group.Of, nested: false);
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void An_empty_object_is_refused_where_something_is_required(string name)
    {
        var reckoning = Find(name);
        var tried = reckoning.Reckon([]);
        foreach (var required in reckoning.Inputs.Where(input => input.Required))
            Assert.Contains(tried.Refusals, refusal => refusal.Input == required.Name && refusal.Given.Key == "refused.missing" && refusal.Allowed == required.Allowed);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void An_unknown_input_is_refused_by_name(string name) =>
        Assert.Contains(Find(name).Reckon(new JsonObject { ["no_such_input"] = 1 }).Refusals, refusal => refusal.Input == "no_such_input");

    // Every quantity, wherever it stands at the top level: NaN, infinities and text without a number.
    [Theory]
    [MemberData(nameof(Names))]
    public void A_quantity_that_is_no_number_is_refused(string name)
    {
        foreach (var input in Find(name).Inputs.OfType<Input.Quantity>())
            foreach (var bad in new JsonNode[] { "NaN", "Infinity", "-Infinity", "1e999", "", "a lot", double.NaN, double.PositiveInfinity, true, new JsonArray(1) })
                Assert.Contains(Find(name).Reckon(new JsonObject { [input.Name] = bad.DeepClone() }).Refusals, refusal => refusal.Input == input.Name && refusal.Given.Key != "refused.missing");
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_list_beyond_its_limit_is_refused_without_reading_it(string name)
    {
        foreach (var list in Find(name).Inputs.OfType<Input.List>())
        {
            var huge = new JsonArray([.. Enumerable.Repeat(0, list.Most + 1).Select(_ => (JsonNode?)null)]);
            Assert.Contains(Find(name).Reckon(new JsonObject { [list.Name] = huge }).Refusals, refusal => refusal.Input == list.Name && InWords.Of(refusal.Given) == $"a list of {list.Most + 1}");
        }
    }

    [Fact]
    public void A_million_unknown_names_make_no_million_sentences()
    {
        var input = new JsonObject();
        for (var index = 0; index < 100_000; index++) input[$"x{index}"] = 1;
        Assert.InRange(Reckonings.Reckon("air-state", input).Refusals.Length, 1, 30);
    }

    [Theory]
    [InlineData("[]")]
    [InlineData("null")]
    [InlineData("{\"a\": 1, \"a\": 2}")]
    [InlineData("{")]
    [InlineData("")]
    [InlineData("{\"a\": NaN}")]
    public void Text_that_is_no_object_is_refused(string json) => Assert.False(Reckonings.ReadInput(json).IsAccepted);

    [Fact]
    public void An_unknown_reckoning_is_refused_with_the_list() =>
        Assert.Contains("air-state", InWords.Of(Assert.Single(Reckonings.Find("weather").Refusals).Allowed), StringComparison.Ordinal);
}
