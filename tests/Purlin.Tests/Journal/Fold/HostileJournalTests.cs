using System.Text;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Journal.Merge;

namespace Purlin.Tests.Journal.Fold;

/// <summary>Journals that nobody writes by hand cost no more than honest ones of their size: what grows faster than their length is bounded.</summary>
public sealed class HostileJournalTests
{
    private const string Visit = "hostile";
    private static readonly DateTimeOffset Start = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);

    private static string Line(string device, int seq, string type, string body, string? prev = null, string? seen = null) =>
        $$"""{"v":1,"insp":"{{Visit}}","dev":"{{device}}","seq":{{seq}},"hlc":"01994f3a2c10-{{seq % 65536:x4}}"{{(prev is null ? "" : $",\"prev\":\"{prev}\"")}}{{(seen is null ? "" : $",\"seen\":{{{seen}}}")}},"type":"{{type}}","body":{{body}}}""";

    private static Entry Read(string line) => EntryLine.Read(Encoding.UTF8.GetBytes(line)).OrThrow();

    private static string Names(int count) => string.Join(',', Enumerable.Range(1, count).Select(seq => $"\"aaa.{seq}\""));

    [Fact]
    public void A_line_that_replaces_thousands_is_refused_and_one_that_replaces_many_is_not()
    {
        Checked<Entry> Replacing(int count) => EntryLine.Read(Encoding.UTF8.GetBytes(Line("aaa", 5_000, "note.written", $$"""{"text":"x","replaces":[{{Names(count)}}]}""")));
        Assert.True(Replacing(Limits.NamesInList).IsAccepted);
        Assert.Contains("replaces", Assert.Single(Replacing(3_000).Refusals).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_line_that_rests_on_thousands_is_refused() =>
        Assert.Contains("evidence", EntryLine.Read(Encoding.UTF8.GetBytes(Line("aaa", 5_000, "loose-end.tied", $$"""{"looseEnd":"x","how":"evidence","evidence":[{{Names(3_000)}}]}"""))).Refusals.Single().ToString(), StringComparison.Ordinal);

    [Fact]
    public void Rooms_inside_rooms_end_at_a_depth_that_no_house_has_and_it_is_said()
    {
        const int Rooms = 3_000;
        var pen = new Pen(Visit, "aaa");
        List<Entry> entries = [];
        for (var room = 0; room < Rooms; room++)
            entries.Add(pen.Write(new EntryBody.PlaceAdded { Kind = PlaceKind.Room, Name = $"room {room}", Parent = room == 0 ? null : entries[^1].Name }, Start.AddSeconds(room)));
        var state = Folding.Fold(entries);
        var parents = state.Places.ToDictionary(place => place.Id, place => place.Parent);
        Assert.Equal(Rooms, parents.Count);
        int Depth(EntryName place)
        {
            var depth = 0;
            for (var at = parents[place]; at is { } above && depth <= Rooms; at = parents[above]) depth++;
            return depth;
        }

        Assert.Equal(Limits.PlaceDepth, state.Places.Max(place => Depth(place.Id)));
        Assert.Contains(state.Unsettled, one => one.Words.Contains("places deep", StringComparison.Ordinal));
        Assert.True(state.Unsettled.Count <= Limits.NamesInList);
    }

    [Fact]
    public void Rooms_as_deep_as_a_house_goes_stay_where_they_were_put()
    {
        var pen = new Pen(Visit, "aaa");
        List<Entry> entries = [];
        for (var room = 0; room <= Limits.PlaceDepth; room++)
            entries.Add(pen.Write(new EntryBody.PlaceAdded { Kind = PlaceKind.Room, Name = $"room {room}", Parent = room == 0 ? null : entries[^1].Name }, Start.AddSeconds(room)));
        var state = Folding.Fold(entries);
        Assert.Empty(state.Unsettled);
        Assert.Equal(1, state.Places.Count(place => place.Parent is null));
    }

    [Fact]
    public void Devices_that_wrote_nothing_here_weigh_nothing()
    {
        // Each line claims to have seen sixty devices more: kept for each line, they would be some seventy million.
        const int Count = 1_500;
        List<Entry> entries = [];
        string? prev = null;
        for (var seq = 1; seq <= Count; seq++)
        {
            var seen = string.Join(',', Enumerable.Range(0, 60).Select(other => $"\"s{seq}x{other}\":1"));
            entries.Add(Read(Line("aaa", seq, "note.written", $$"""{"part":"n{{seq}}","text":"x"}""", prev, seen)));
            prev = entries[^1].Hash;
        }

        var before = GC.GetAllocatedBytesForCurrentThread();
        Assert.Equal(Count, Folding.Fold(entries).Notes.Count);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 100_000_000);
    }

    /// <summary>Every line of the second copy says something else under the same name and follows the first copy's line: each splits off.</summary>
    private static List<Entry> Forks(int count)
    {
        List<Entry> entries = [];
        string? prev = null;
        for (var seq = 1; seq <= count; seq++)
        {
            entries.Add(Read(Line("aaa", seq, "note.written", """{"part":"one","text":"a"}""", prev)));
            entries.Add(Read(Line("aaa", seq, "note.written", """{"part":"two","text":"b"}""", prev)));
            prev = entries[^2].Hash;
        }

        return entries;
    }

    [Fact]
    public void A_device_copied_a_thousand_times_is_held_beyond_what_the_fold_is_bound_to()
    {
        var admitted = Admission.Of(new EntrySet(Visit), new LineBlock { Entries = Forks(1_000), Held = [] });
        Assert.InRange(EntrySet.Of(Visit, admitted.Taken).Branches, 2, Limits.Branches);
        Assert.Equal(2_000, admitted.Taken.Count + admitted.Held.Count);
        Assert.Contains(admitted.Held, line => line.Why.Any(why => why.Input == "branches"));
    }

    [Fact]
    public void A_device_copied_once_is_taken_whole_in_whatever_pieces_it_comes()
    {
        var (one, other) = (Notes("first", 150), Notes("copy", 150));
        var here = new EntrySet(Visit);
        foreach (var piece in one.Concat(other).Chunk(7))
        {
            var admitted = Admission.Of(here, new LineBlock { Entries = piece, Held = [] });
            Assert.Empty(admitted.Held);
            foreach (var entry in admitted.Taken) here.Add(entry);
        }

        Assert.Equal((300, 2), (here.Count, here.Branches));
    }

    private static List<Entry> Notes(string text, int count)
    {
        var pen = new Pen(Visit, "aaa");
        return [.. Enumerable.Range(1, count).Select(seq => pen.Write(new EntryBody.NoteWritten { Part = $"n{seq}", Text = text }, Start.AddSeconds(seq)))];
    }

    [Fact]
    public void Lines_that_cannot_be_read_are_kept_up_to_a_number_and_size_and_then_turned_away()
    {
        static HeldLine Junk(int number, int length) => HeldLine.Of(Encoding.ASCII.GetBytes($"{number} ".PadRight(length, 'x')), Visit, [new Refusal("line", "junk", "an entry")]);
        var many = Admission.Of(new EntrySet(Visit), new LineBlock { Entries = [], Held = [.. Enumerable.Range(0, 5_000).Select(number => Junk(number, 20))] });
        Assert.Equal((Limits.HeldLines, 3_000), (many.Held.Count, many.Turned.Count));
        var large = Admission.Of(new EntrySet(Visit), new LineBlock { Entries = [], Held = [.. Enumerable.Range(0, 400).Select(number => Junk(number, Limits.LineBytes))] });
        Assert.Equal(Limits.HeldBytes / Limits.LineBytes, large.Held.Count);
        var beyond = Admission.Of(new EntrySet(Visit), new LineBlock { Entries = [], Held = [Junk(1, Limits.LineBytes + 1)] });
        Assert.Equal((0, 1), (beyond.Held.Count, beyond.Turned.Count));
    }

    [Fact]
    public void More_lines_than_an_inspection_can_have_are_not_even_parsed()
    {
        var junk = Encoding.ASCII.GetBytes(string.Concat(Enumerable.Repeat("x\n", 2_000_000)));
        Assert.Contains("2000000 lines", LineLimits.TooMany("file", junk)!.ToString(), StringComparison.Ordinal);
        Assert.Null(LineLimits.TooMany("file", junk.AsSpan(0, 40_000)));
    }

    [Fact]
    public void A_full_journal_still_has_room_for_the_office_and_no_more()
    {
        LineBlock Of(int count) => new() { Entries = Notes("x", count), Held = [] };
        Assert.Null(LineLimits.Refuse("file", Of(Limits.Entries + Limits.OfficeEntries)));
        Assert.NotNull(LineLimits.Refuse("file", Of(Limits.Entries + Limits.OfficeEntries + 1)));
    }
}
