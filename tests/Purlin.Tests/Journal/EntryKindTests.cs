using System.Collections;
using System.Text.Json;
using Json.Schema;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Tests.House;
using Purlin.Tests.Journal.Fold;

namespace Purlin.Tests.Journal;

/// <summary>What a kind of entry must have, each tried on a sample of it (docs/adding-an-entry.md).</summary>
public sealed class EntryKindTests
{
    private static readonly DateTimeOffset Noon = new(2026, 11, 25, 12, 0, 0, TimeSpan.Zero);
    private static readonly Called Called = new(place => place is null ? "the house" : "the closet", id => null);

    /// <summary>Members of which only one of two may be filled.</summary>
    private static readonly Dictionary<(string, string), bool> Filled = new() { [("note.fated", "Sound")] = false };

    public static TheoryData<string> Types => [.. BodyJson.Types.Order(StringComparer.Ordinal)];

    [Fact]
    public void Every_kind_has_one_sample_that_fills_every_member()
    {
        Assert.Equal(BodyJson.Types.Order(StringComparer.Ordinal), EntrySamples.All.Select(body => body.Type).Order(StringComparer.Ordinal));
        var empty = EntrySamples.All.SelectMany(body => body.GetType().GetProperties()
            .Where(member => member.Name is not ("Replaces" or "Origin") && Filled.GetValueOrDefault((body.Type, member.Name), true))
            .Where(member => member.GetValue(body) is null or ICollection { Count: 0 })
            .Select(member => $"{body.Type}: {member.Name}"));
        Assert.Empty(empty);
    }

    [Theory]
    [MemberData(nameof(Types))]
    public void Every_name_in_it_is_found_and_can_be_mapped(string type)
    {
        var body = Replacing(Sample(type));
        Assert.Equal(Naming.In(body).Order(), body.Names().Distinct().Order());
        var marked = body.Mapped(name => name with { Device = name.Device + "~2" });
        Assert.Equal(body.Names().Select(name => name with { Device = name.Device + "~2" }), marked.Names());
        Assert.Equal(body.GetType(), marked.GetType());
    }

    [Theory]
    [MemberData(nameof(Types))]
    public void It_can_be_told_in_words(string type)
    {
        var body = Sample(type);
        Assert.NotEqual("", body.Said.Trim());
        Assert.NotEqual("", body.Told(Called).Trim());
        if (body is EntryBody.Stating stating) Assert.NotEqual("", stating.Question.Trim());
        // A person reads these: never the name of a record or of a member of it.
        Assert.DoesNotContain("{ ", body.Told(Called), StringComparison.Ordinal);
        Assert.DoesNotContain(body.GetType().Name, body.Said + body.Told(Called), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Types))]
    public void It_is_written_as_the_schema_has_it_and_read_back_the_same(string type)
    {
        var body = Replacing(Sample(type));
        var entry = Written(EntrySamples.Visit).Write(body, Noon.AddHours(1));
        using var document = JsonDocument.Parse(entry.Line);
        var result = Archive.ArchiveTests.Lines.Evaluate(document.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
        Assert.True(result.IsValid, $"{type}: {string.Join("; ", (result.Details ?? []).SelectMany(detail => detail.Errors ?? new Dictionary<string, string>()))}");
        Assert.Equal(Dump.Of(body), Dump.Of(entry.Body));
        Assert.Equal(BodyJson.Write(body), BodyJson.Write(entry.Body));
    }

    [Theory]
    [MemberData(nameof(Types))]
    public void Folded_as_it_comes_it_gives_what_folding_everything_gives(string type)
    {
        List<Entry> entries = [];
        GrowingFold growing = new();
        var pen = new Pen("samples", "aaa");
        foreach (var body in EntrySamples.Visit) Take(body);
        Take(growing.Inspection.Replacing(Sample(type)));
        var name = entries[^1].Name;
        Take(new EntryBody.EntryWithdrawn { Entry = name });
        Take(new EntryBody.EntryRestored { Entry = name });

        void Take(EntryBody body)
        {
            entries.Add(pen.Write(body, Noon.AddMinutes(entries.Count)));
            growing.Add([entries[^1]]);
            Assert.Equal(Dump.Of(Folding.Fold(entries)), Dump.Of(growing.Inspection));
        }
    }

    [Theory]
    [MemberData(nameof(Types))]
    public void What_is_said_again_in_its_slot_replaces_what_stood_there(string type)
    {
        if (Sample(type) is not EntryBody.Stating stating) return;
        var pen = Written(EntrySamples.Visit, out var entries);
        entries.Add(pen.Write(Folding.Fold(entries).Replacing(stating), Noon.AddHours(1)));
        var state = Folding.Fold(entries);
        var again = state.Replacing(stating with { Replaces = [] });
        Assert.Contains(entries[^1].Name, again.Replaces);
        entries.Add(pen.Write(again, Noon.AddHours(2)));
        Assert.Empty(Folding.Fold(entries).Unsettled);
        Assert.Equal(entries[^1].Name, Assert.Single(Folding.Fold(entries).Slots!.At(stating.Slot)).Name);
    }

    /// <summary>All that differs from kind to kind stands on the case. A list of kinds elsewhere would silently leave out the next one.</summary>
    [Fact]
    public void No_switch_lists_kinds_of_entries()
    {
        var lists = Repository.Sources("src").SelectMany(source => source.Tree.DescendantNodes()
            .Where(node => node is SwitchExpressionSyntax or SwitchStatementSyntax)
            .Select(node => (source.File, Kinds: node.DescendantNodes().OfType<QualifiedNameSyntax>().Select(name => name.ToString())
                .Concat(node.DescendantNodes().OfType<MemberAccessExpressionSyntax>().Select(name => name.ToString()))
                .Where(name => name.StartsWith("EntryBody.", StringComparison.Ordinal)).Distinct().Count()))
            .Where(list => list.Kinds > 4));
        Assert.Empty(lists);
    }

    private static EntryBody Sample(string type) => EntrySamples.All.Single(body => body.Type == type);

    /// <summary>With everything that the base has filled too.</summary>
    private static EntryBody Replacing(EntryBody body)
    {
        if (body is EntryBody.Stating stating) body = stating with { Replaces = [new EntryName("aaa", 9)] };
        return body.OfKind.CanBeProposed ? body with { Origin = new EntryName("aaa", 12) } : body;
    }

    private static Pen Written(IEnumerable<EntryBody> bodies) => Written(bodies, out _);

    private static Pen Written(IEnumerable<EntryBody> bodies, out List<Entry> entries)
    {
        var pen = new Pen("samples", "aaa");
        entries = [.. bodies.Select((body, at) => pen.Write(body, Noon.AddMinutes(at)))];
        return pen;
    }
}
