using System.Runtime.CompilerServices;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Purlin.Journal;
using Purlin.Tests.House;

namespace Purlin.Tests.Journal;

/// <summary>Every case of the closed hierarchy can be read and written, and nothing of a line is lost on the way.</summary>
public sealed class BodyJsonTests
{
    private static readonly DateTimeOffset Noon = new(2026, 11, 25, 12, 0, 0, TimeSpan.Zero);

    private static List<Type> Cases => [.. typeof(EntryBody).GetNestedTypes().Where(type => type.IsSubclassOf(typeof(EntryBody)) && !type.IsAbstract && type != typeof(EntryBody.Unknown))];

    [Fact]
    public void Every_case_is_known_to_the_json_code_under_its_type()
    {
        var types = Cases.Select(type => ((EntryBody)RuntimeHelpers.GetUninitializedObject(type)).Type);
        Assert.Equal(types.Order(), BodyJson.Types.Order());
    }

    [Fact]
    public void Every_type_stands_in_the_schema_with_every_member()
    {
        var schema = JsonNode.Parse(File.ReadAllText(Path.Combine(Repository.Root, "docs", "schema", "entry.schema.json")))!;
        foreach (var type in Cases)
        {
            var name = ((EntryBody)RuntimeHelpers.GetUninitializedObject(type)).Type;
            var members = schema["$defs"]![$"body {name}"]!["properties"]!.AsObject().Select(member => member.Key);
            var expected = type.GetProperties().Where(property => property.Name is not ("Type" or "EqualityContract")).Select(property => JsonNamingPolicy.CamelCase.ConvertName(property.Name));
            Assert.Equal((name, string.Join(' ', expected.Order())), (name, string.Join(' ', members.Order())));
        }
    }

    public static TheoryData<EntryBody> Samples => new()
    {
        new EntryBody.InspectionOpened { Property = new Property { Address = "1 Invented Way", FloorArea = new Amount(1200.5, "sq ft"), Chimney = true }, Date = new DateOnly(2026, 11, 25), Standards = ["washington"], Demo = true },
        new EntryBody.ReadingTaken { Kind = "floor level", Amount = new Amount(-0.125, "in"), Point = new PlanPoint(3.5, 12, "ft", 0.5), Set = "survey" },
        new EntryBody.ObservationMade { Place = EntryName.Parse("aaa.2"), Outcome = Outcome.NotVisible, Reason = "stored goods", Sample = new Sample(18, 23, 2) },
        new EntryBody.FactStated { Component = EntryName.Parse("aaa.3"), Fact = "year", Value = FactValue.Of(1994), Basis = Basis.Nameplate, Replaces = [EntryName.Parse("bbb.7"), EntryName.Parse("ccc~2.1")] },
        new EntryBody.FactStated { Component = EntryName.Parse("aaa.3"), Fact = "vented", Value = FactValue.Of(true), Basis = Basis.Seen },
        new EntryBody.ClockChecked { Office = Noon, AheadMilliseconds = -5 },
        new EntryBody.EditionSealed { Number = 2, Heads = new Dictionary<string, int> { ["aaa"] = 9 }, EntriesRoot = new string('a', 64), Page = new string('b', 64), Pdf = new string('c', 64), RuleBook = "1", RuleBookHash = new string('f', 64), PreviousEdition = new string('d', 64), At = Noon, Photos = [new string('e', 64)] },
        new EntryBody.JudgementOverruled { Finding = "x", Part = "weight", Value = "keep up", Reason = "dry for years" },
        new EntryBody.WordingSaid { Key = "water-heater.too-hot/do", Was = "Turn it down.", Now = "Set it to 120 °F.", Replaces = [EntryName.Parse("aaa.4")] },
        new EntryBody.ConditionWritten { Id = "own.bats", Condition = JsonElement.Parse("""{"id":"own.bats","places":["attic"]}""") },
        new EntryBody.ConditionWritten { Id = "own.bats", Replaces = [EntryName.Parse("aaa.4")] },
        new EntryBody.EntryWithdrawn { Entry = EntryName.Parse("aaa.4") },
    };

    [Theory]
    [MemberData(nameof(Samples))]
    public void There_and_back_says_the_same(EntryBody body)
    {
        var written = BodyJson.Write(body);
        using var document = JsonDocument.Parse(written);
        var read = BodyJson.Read(body.Type, document.RootElement).OrThrow();
        Assert.Equal(written, BodyJson.Write(read));
        Assert.Equal(Fold.Dump.Of(body), Fold.Dump.Of(read));
    }

    [Fact]
    public void What_is_absent_or_empty_is_not_written_and_reads_as_empty()
    {
        var written = BodyJson.Write(new EntryBody.NoteWritten { Text = "dry" });
        Assert.Equal("""{"text":"dry"}""", written);
        using var document = JsonDocument.Parse(written);
        var note = Assert.IsType<EntryBody.NoteWritten>(BodyJson.Read("note.written", document.RootElement).OrThrow());
        Assert.Empty(note.Replaces);
        Assert.Null(note.About);
    }

    [Fact]
    public void Members_nobody_here_knows_survive_in_the_line()
    {
        var line = Encoding.UTF8.GetBytes("""{"v":1,"insp":"x","dev":"aaa","seq":1,"hlc":"01994f3a2c10-0000","sig":"later","type":"note.written","body":{"text":"dry","mood":"good"}}""");
        var entry = EntryLine.Read(line).OrThrow();
        Assert.Equal("dry", Assert.IsType<EntryBody.NoteWritten>(entry.Body).Text);
        Assert.Equal(line, entry.Line.ToArray());
    }

    [Fact]
    public void A_pen_refuses_what_could_not_be_read_again_and_goes_on()
    {
        var pen = new Pen("x", "aaa");
        Assert.Throws<InvalidOperationException>(() => pen.Write(new EntryBody.NoteWritten { Text = new string('x', Limits.NoteCharacters + 1) }, Noon));
        Assert.Equal(1, pen.Write(new EntryBody.NoteWritten { Text = "short" }, Noon).Name.Seq);
    }

    [Theory]
    [InlineData("wording.said", """{"key":"noslash","now":"x"}""")]
    [InlineData("wording.said", """{"key":"","now":"x"}""")]
    [InlineData("wording.said", """{"now":"x"}""")]
    [InlineData("condition.written", """{"id":"bats","condition":{}}""")]
    [InlineData("condition.written", """{"id":"own.Bats","condition":{}}""")]
    [InlineData("condition.written", """{"id":"own.","condition":{}}""")]
    [InlineData("condition.written", """{"id":"own.bats","condition":[]}""")]
    [InlineData("condition.written", """{"id":"own.bats","condition":{"n":[null]}}""")]
    public void Own_wording_without_a_key_or_shape_is_refused(string type, string body)
    {
        using var document = JsonDocument.Parse(body);
        Assert.False(BodyJson.Read(type, document.RootElement).IsAccepted);
    }

    [Fact]
    public void An_own_sentence_or_condition_beyond_its_length_is_refused()
    {
        var pen = new Pen("x", "aaa");
        Assert.Throws<InvalidOperationException>(() => pen.Write(new EntryBody.WordingSaid { Key = "a/b", Now = new string('x', Limits.SentenceCharacters + 1) }, Noon));
        var tooLong = JsonElement.Parse($$"""{"means":"{{new string('x', Limits.ConditionCharacters)}}"}""");
        Assert.Throws<InvalidOperationException>(() => pen.Write(new EntryBody.ConditionWritten { Id = "own.bats", Condition = tooLong }, Noon));
    }
}
