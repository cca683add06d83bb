using System.Text;
using System.Text.Json.Nodes;
using CsCheck;
using Purlin.Journal;

namespace Purlin.Tests.Journal;

/// <summary>A line that is not quite as the schema has it is taken as it is plainly meant; what is left out of it is told.</summary>
public sealed class BodyMendingTests
{
    [Theory]
    [InlineData("reading.taken", """{"kind":"static water pressure","amount":"105 psi"}""")]
    [InlineData("reading.taken", """{"kind":"static water pressure","amount":{"value":"105","unit":"psi"}}""")]
    [InlineData("reading.taken", """{"Kind":"static water pressure","amount":{"value":105,"unit":"psi"},"place":null}""")]
    [InlineData("reading.taken", """{"kind":"static water pressure","amount":{"value":105,"unit":"psi"},"component":"the one outside","point":7}""")]
    public void The_reading_is_kept_whatever_stands_beside_it(string type, string body)
    {
        var taken = Assert.IsType<EntryBody.ReadingTaken>(Read(type, body).OrThrow().Body);
        Assert.Equal(("static water pressure", new Amount(105, "psi")), (taken.Kind, taken.Amount));
    }

    [Fact]
    public void What_is_left_out_is_told_with_what_stood_there()
    {
        var entry = Read("reading.taken",
            """{"kind":"x","amount":{"value":1,"unit":"psi"},"component":"the one outside","weather":"dry"}""").OrThrow();
        Assert.Equal([("component", "\"the one outside\"", null), ("weather", "\"dry\"", null)], entry.Misread.Select(one =>
            (one.Member, one.Given, one.Taken)).Order());
    }

    [Fact]
    public void The_house_is_opened_though_a_fact_of_it_cannot_be_read()
    {
        var entry = Read("inspection.opened",
            """{"property":{"address":"1 Invented Lane","yearBuilt":"1984","storeys":"two","chimney":"yes"},"date":"5/4/2026","standards":"washington"}""").OrThrow();
        var opened = Assert.IsType<EntryBody.InspectionOpened>(entry.Body);
        Assert.Equal((1984, null, true, new DateOnly(2026, 5, 4)), (opened.Property.YearBuilt, opened.Property.Storeys,
            opened.Property.Chimney, opened.Date));
        Assert.Equal(["washington"], opened.Standards);
        Assert.Contains(entry.Misread, one => one.Member == "property.storeys");
    }

    [Theory]
    [InlineData("Seen")]
    [InlineData("not_visible")]
    public void A_word_of_a_closed_list_may_be_written_otherwise(string outcome) =>
        Assert.True(Read("observation.made", $$"""{"place":"a.1","outcome":"{{outcome}}"}""").IsAccepted);

    [Theory]
    [InlineData("observation.made", """{"place":"a.1","outcome":"maybe"}""", "outcome")]
    [InlineData("observation.made", """{"outcome":"seen"}""", "place")]
    [InlineData("reading.taken", """{"kind":"x","amount":"high"}""", "amount")]
    [InlineData("fact.stated", """{"component":"a.1","fact":"year","value":null,"basis":"seen"}""", "value")]
    public void What_must_be_there_is_asked_for_by_name(string type, string body, string member) =>
        Assert.Contains(Read(type, body).Refusals, refusal => refusal.Input == member);

    /// <summary>A member whose name has a slip in it is taken for the one that was meant, or told.</summary>
    [Fact]
    public void No_misspelt_member_is_lost_without_a_word() => Gen.Select(Gen.Int[0, EntrySamples.Visit.Count - 1], Gen.Int[0, 20],
        Gen.Int[0, 20]).Sample(one =>
    {
        var sample = EntrySamples.Visit[one.Item1];
        var body = JsonNode.Parse(BodyJson.Write(sample))!.AsObject();
        if (body.Count == 0) return true;
        var (name, value) = body.ElementAt(one.Item2 % body.Count);
        var given = name.Insert(one.Item3 % name.Length, "q");
        body.Remove(name);
        body[given] = value?.DeepClone();
        var read = Read(sample.Type, body.ToJsonString());
        return !read.IsAccepted || read.OrThrow().Misread.Any(odd => odd.Member == given);
    }, iter: 300);

    private static Checked<Entry> Read(string type, string body) =>
        EntryLine.Read(Encoding.UTF8.GetBytes($$"""{"v":1,"insp":"x","dev":"a","seq":1,"hlc":"0190aaaaaaaa-0000","type":"{{type}}","body":{{body}}}"""));
}
