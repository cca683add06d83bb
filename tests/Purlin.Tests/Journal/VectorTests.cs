using System.Text;
using System.Text.Json.Nodes;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Journal.Merge;
using Purlin.Tests.House;

namespace Purlin.Tests.Journal;

/// <summary>The vectors that the device module runs too. Expected values were worked out by a third program (tests/vectors/README.md).</summary>
public sealed class VectorTests
{
    private static JsonObject Vectors(string file) =>
        JsonNode.Parse(File.ReadAllText(Path.Combine(Repository.Root, "tests", "vectors", file)))!.AsObject();

    private static List<JsonObject> Cases(string file, string list = "cases") => [.. Vectors(file)[list]!.AsArray().Select(one => one!.AsObject())];

    private static byte[] Bytes(JsonObject one) =>
        one["base64"] is { } encoded ? Convert.FromBase64String((string)encoded!) : Encoding.UTF8.GetBytes((string)one["line"]!);

    private static Entry Read(string line) => EntryLine.Read(Encoding.UTF8.GetBytes(line)).OrThrow();

    private static Entry Note(string device, string hlc) =>
        Read("{\"v\":1,\"insp\":\"vec1\",\"dev\":\"" + device + "\",\"seq\":1,\"hlc\":\"" + hlc + "\",\"type\":\"note.written\",\"body\":{\"text\":\"x\"}}");

    private static List<Entry> ReadAll(JsonNode? lines) => [.. lines!.AsArray().Select(line => Read((string)line!))];

    private static List<string?> Texts(JsonNode? list) => [.. list!.AsArray().Select(item => (string?)item)];

    private static Dictionary<string, int> Heads(JsonNode? heads) => heads!.AsObject().ToDictionary(head => head.Key, head => (int)head.Value!);

    [Fact]
    public void Lines_are_accepted_with_this_envelope_and_hash()
    {
        var accepted = Cases("lines.json").FindAll(one => (bool)one["accepted"]!);
        Assert.True(accepted.Count >= 15);
        foreach (var one in accepted)
        {
            var bytes = Bytes(one);
            var read = EntryLine.Read(bytes);
            Assert.True(read.IsAccepted, $"{one["name"]}: {string.Join("; ", read.Refusals)}");
            var entry = read.OrThrow();
            Assert.Equal((string?)one["hash"], entry.Hash);
            Assert.Equal((string?)one["insp"], entry.Inspection);
            Assert.Equal($"{one["dev"]}.{one["seq"]}", entry.Name.ToString());
            Assert.Equal((string?)one["hlc"], entry.Hlc.ToString());
            Assert.Equal((string?)one["prev"], entry.Previous);
            Assert.Equal(Heads(one["seen"]), entry.Seen.ToDictionary());
            Assert.Equal((string?)one["type"], entry.Body.Type);
            Assert.Equal((bool)one["known"]!, entry.Body is not EntryBody.Unknown);
            Assert.Equal(bytes, entry.Line.ToArray());
        }
    }

    [Fact]
    public void Lines_are_refused_for_this_input_and_keep_their_name_where_it_can_be_read()
    {
        var refused = Cases("lines.json").FindAll(one => !(bool)one["accepted"]!);
        Assert.True(refused.Count >= 30);
        foreach (var one in refused)
        {
            var read = EntryLine.Read(Bytes(one));
            Assert.False(read.IsAccepted, (string?)one["name"]);
            Assert.Contains((string)one["refuses"]!, read.Refusals.Select(refusal => refusal.Input));
            Assert.All(read.Refusals, refusal => Assert.True(InWords.Of(refusal.Given).Length <= 80 && InWords.Of(refusal.Allowed).Length > 0, refusal.ToString()));
            var named = EntryLine.TryName(Bytes(one), out _, out var name);
            Assert.Equal((string?)one["named"], named ? name.ToString() : null);
        }
    }

    [Fact]
    public void Chains_are_followed_and_breaks_shown()
    {
        var vectors = Vectors("chain.json");
        var entries = ReadAll(vectors["lines"]);
        Assert.Equal(vectors["hashes"]!.AsObject().ToDictionary(hash => hash.Key, hash => (string)hash.Value!), entries.ToDictionary(entry => entry.Name.ToString(), entry => entry.Hash));
        var state = Folding.Fold(entries);
        var broken = state.Unsettled.Where(doubt => doubt.Kind == UnsettledKind.BrokenChain).Select(doubt => doubt.Entries[^1].ToString());
        Assert.Equal(Texts(vectors["broken"]).Order(), broken.Order());
        Assert.Equal(Texts(vectors["missing"]), state.Missing.Select(name => name.ToString()));
        Assert.Equal(entries.Count, state.Entries);
    }

    [Fact]
    public void Hybrid_clock_goes_on_as_written()
    {
        foreach (var one in Cases("hlc.json", "next"))
        {
            Assert.True(Hlc.TryParse((string?)one["clock"], out var clock));
            Assert.Equal($"{one["name"]}: {one["next"]}", $"{one["name"]}: {clock.Next((long)one["now"]!)}");
        }

        foreach (var pair in Vectors("hlc.json")["ordered"]!.AsArray())
        {
            Assert.True(Hlc.TryParse((string?)pair![0], out var smaller) && Hlc.TryParse((string?)pair[1], out var larger) && smaller < larger);
        }
    }

    [Fact]
    public void Others_time_is_adopted_as_written()
    {
        foreach (var one in Cases("hlc.json", "adopt"))
        {
            Assert.True(Hlc.TryParse((string?)one["clock"], out var clock));
            var now = DateTimeOffset.FromUnixTimeMilliseconds((long)one["now"]!);
            var own = Note("own", clock.ToString());
            var other = Note("other", (string)one["other"]!);
            var pen = Pen.After("vec1", "own", [own], now);
            pen.Saw(other, now);
            Assert.Equal($"{one["name"]}: {one["after"]}", $"{one["name"]}: {pen.Clock}");
        }
    }

    [Fact]
    public void Pen_says_what_it_has_newly_seen_and_chains_its_lines()
    {
        var vectors = Vectors("seen.json");
        var pen = new Pen((string)vectors["insp"]!, (string)vectors["device"]!);
        string? previous = null;
        foreach (var step in vectors["steps"]!.AsArray().Select(step => step!.AsObject()))
        {
            if (step["saw"] is JsonObject saw)
            {
                foreach (var (device, seq) in saw) pen.Saw(device, (int)seq!);
                continue;
            }

            var body = new EntryBody.NoteWritten { Text = (string)step["write"]!["body"]!["text"]! };
            var entry = pen.Write(body, DateTimeOffset.FromUnixTimeMilliseconds((long)step["write"]!["now"]!));
            var expect = step["expect"]!;
            Assert.Equal((int)expect["seq"]!, entry.Name.Seq);
            Assert.Equal((string?)expect["hlc"], entry.Hlc.ToString());
            Assert.Equal(Heads(expect["seen"]).OrderBy(head => head.Key, StringComparer.Ordinal), entry.Seen);
            Assert.Equal(previous, entry.Previous);
            previous = entry.Hash;
        }

        Assert.Equal(5, pen.Seq);
    }

    [Fact]
    public void Forks_are_told_apart_and_both_kept_in_any_order()
    {
        foreach (var one in Cases("forks.json"))
        {
            var entries = ReadAll(one["lines"]);
            foreach (var delivery in (IEnumerable<Entry>[])[entries, Enumerable.Reverse(entries)])
            {
                var set = EntrySet.Of("vec1", delivery);
                var names = set.InOrder().ToDictionary(line => line.Entry.Hash, line => line.Name.ToString());
                Assert.Equal(one["names"]!.AsArray().ToDictionary(name => (string)name!["hash"]!, name => (string)name!["name"]!), names);
                Assert.Equal(Heads(one["heads"]), set.Heads().ToDictionary());
                Assert.Equal((int)one["forks"]!, Folding.Fold(delivery).Unsettled.Count(doubt => doubt.Kind == UnsettledKind.Fork));
            }
        }
    }

    [Fact]
    public void Names_in_a_branch_mean_its_own_lines()
    {
        var state = Folding.Fold(ReadAll(Cases("forks.json")[0]["lines"]));
        Assert.Contains(state.Notes, note => note.Text.Value == "names its own" && note.About == EntryName.Parse("kkk~2.3"));
    }

    [Fact]
    public void Causal_order_is_this_one()
    {
        var vectors = Vectors("causal.json");
        var order = CausalOrder.Of(Enumerable.Reverse(ReadAll(vectors["lines"])));
        Assert.Equal(Texts(vectors["order"]), order.Select(entry => entry.Name.ToString()));
    }

    [Fact]
    public void Deliveries_are_taken_as_written()
    {
        foreach (var one in Cases("delivery.json"))
        {
            var here = EntrySet.Of("vec1", ReadAll(one["here"]));
            var block = LineBlock.Read(Convert.FromBase64String((string)one["ndjson"]!), "vec1");
            var admitted = Admission.Of(here, block);
            var name = (string?)one["name"];
            Assert.Equal((name, string.Join(' ', Texts(one["taken"]))), (name, string.Join(' ', admitted.Taken.Select(entry => entry.Name.ToString()))));
            Assert.Equal(Texts(one["held"]), admitted.Held.Select(line => line.Name?.ToString()));
            Assert.Equal((name, string.Join(' ', Texts(one["waiting"]))), (name, string.Join(' ', admitted.Waiting.Select(waiting => waiting.ToString()))));
            Assert.Equal((name, (bool)one["torn"]!), (name, block.Torn is not null));
            Assert.Equal((name, (bool)one["torn"]!), (name, block.TornWords is not null));
            foreach (var entry in admitted.Taken) here.Add(entry);
            foreach (var line in admitted.Held) here.Hold(line);
            Assert.Equal(Heads(one["heads"]), here.Heads().ToDictionary());
        }
    }

    [Fact]
    public void What_the_other_side_lacks_goes_out_in_this_order()
    {
        foreach (var one in Cases("delivery.json", "lacking"))
        {
            var lacking = EntrySet.Of("vec1", ReadAll(one["here"])).Lacking(Heads(one["have"]));
            Assert.Equal(($"{one["name"]}", string.Join(' ', Texts(one["names"]))), ($"{one["name"]}", string.Join(' ', lacking.Select(line => line.Name.ToString()))));
        }
    }

    [Fact]
    public void Roots_are_these()
    {
        foreach (var one in Cases("root.json")) Assert.Equal((string?)one["root"], Merkle.Root(one["hashes"]!.AsArray().Select(hash => (string)hash!)));
    }
}
