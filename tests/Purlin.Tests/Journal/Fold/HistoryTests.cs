using CsCheck;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Journal.Merge;

namespace Purlin.Tests.Journal.Fold;

/// <summary>
/// Random histories of three devices: wild clocks, withdrawals, restores, places put inside one another, pulls, copied profiles. The promises are
/// those of docs/SYNC.md, section 1.
/// </summary>
public sealed class HistoryTests
{
    private const int Histories = 1_000;

    [Fact]
    public void Any_order_and_repetition_of_delivery_gives_the_same_state() =>
        Gen.Select(History.Steps, Gen.Int[0, int.MaxValue], Gen.Bool).Sample(
            (steps, seed, copies) =>
            {
                var entries = History.Of(steps, copies: copies).Entries;
                var chance = new Random(seed);
                var shuffled = History.Delivered(entries, chance);
                Assert.Equal(Dump.Of(Folding.Fold(entries)), Dump.Of(Folding.Fold(shuffled)));
            },
            iter: Histories);

    [Fact]
    public void Any_splitting_of_delivery_arrives_whole_and_nothing_once_there_is_gone() =>
        Gen.Select(History.Steps, Gen.Int[0, int.MaxValue], Gen.Bool).Sample(
            (steps, seed, copies) =>
            {
                var entries = History.Of(steps, copies: copies).Entries;
                var chance = new Random(seed);
                var set = new EntrySet(History.Id);
                for (var round = 0; set.Count < entries.Count; round++)
                {
                    // Random parts, then all: what waited behind a gap comes with what was missing.
                    Entry[] part = round < 6 ? [.. entries.Where(_ => chance.Next(2) == 0)] : [.. entries];
                    chance.Shuffle(part);
                    HashSet<string> before = [.. set.Entries.Select(entry => entry.Hash)];
                    foreach (var entry in Admission.Of(set, new LineBlock { Entries = part, Held = [] }).Taken) set.Add(entry);
                    Assert.Superset(before, set.Entries.Select(entry => entry.Hash).ToHashSet());
                    Assert.True(round < 20, "delivery must end");
                }

                Assert.Equal(Dump.Of(Folding.Fold(entries)), Dump.Of(Folding.Fold(set.Entries)));
            },
            iter: Histories / 2);

    [Fact]
    public void Pulling_by_heads_brings_two_replicas_together() =>
        Gen.Select(History.Steps, Gen.Int[0, int.MaxValue], Gen.Bool).Sample(
            (steps, seed, copies) =>
            {
                var entries = History.Of(steps, copies: copies).Entries;
                var chance = new Random(seed);
                var full = EntrySet.Of(History.Id, entries);
                var behind = new EntrySet(History.Id);
                for (var more = true; more;)
                {
                    var page = full.Page(behind.Heads(), 1 + chance.Next(10));
                    more = page.More;
                    Assert.True(!more || page.Lines.Any(entry => !behind.Has(entry.Hash)), "every page but the last brings something new");
                    foreach (var entry in page.Lines) behind.Add(entry);
                }

                Assert.Equal(full.Count, behind.Count);
                Assert.Equal(full.Heads(), behind.Heads());
            },
            iter: Histories / 2);

    [Fact]
    public void Nothing_is_hidden_but_by_someone_who_had_it_in_hand() =>
        History.Steps.Sample(steps => HidesOnlyTheSeen(History.Of(steps), View.OfFold), iter: Histories);

    [Fact]
    public void The_same_check_catches_last_write_wins() =>
        Assert.Throws<CsCheckException>(() => History.Steps.Sample(steps => HidesOnlyTheSeen(History.Of(steps), View.OfLastWrite), iter: Histories));

    [Fact]
    public void Wrong_clocks_hide_and_show_nothing() => History.Steps.Sample(ClocksChangeNothing, iter: Histories);

    // Histories that failed once.
    [Theory]
    [InlineData("boXVbrYWGMa5")]
    public void Nor_did_they_ever(string seed) => History.Steps.Sample(ClocksChangeNothing, seed: seed, iter: 1);

    private static void ClocksChangeNothing(Step[] steps)
    {
        var wild = View.OfFold(History.Of(steps).Entries);
        var right = View.OfFold(History.Of(steps, wildClocks: false).Entries);
        Assert.Equal(right.Withdrawn.Order(), wild.Withdrawn.Order());
        Assert.Equal(right.Standing.Order(), wild.Standing.Order());
    }

    [Fact]
    public void Every_history_exercises_what_it_is_for()
    {
        int divergent = 0, withdrawn = 0, cycles = 0, kept = 0, forks = 0, clocks = 0;
        Gen.Select(History.Steps, Gen.Bool).Sample(
            (steps, copies) =>
            {
                var state = Folding.Fold(History.Of(steps, copies: copies).Entries);
                foreach (var kind in state.Unsettled.Select(one => one.Kind).Distinct())
                {
                    _ = kind switch
                    {
                        UnsettledKind.Divergence => Interlocked.Increment(ref divergent),
                        UnsettledKind.ParentCycle => Interlocked.Increment(ref cycles),
                        UnsettledKind.KeepWins => Interlocked.Increment(ref kept),
                        UnsettledKind.Fork => Interlocked.Increment(ref forks),
                        UnsettledKind.FarClock => Interlocked.Increment(ref clocks),
                        _ => 0,
                    };
                }

                if (state.Withdrawn.Count > 0) Interlocked.Increment(ref withdrawn);
            },
            iter: Histories);
        int[] counts = [divergent, withdrawn, cycles, kept, forks, clocks];
        Assert.All(counts, count => Assert.True(count > 10, $"divergent {divergent}, withdrawn {withdrawn}, cycles {cycles}, kept {kept}, forks {forks}, clocks {clocks}"));
    }

    [Fact]
    public void Undo_of_undo_is_as_before() =>
        Gen.Select(History.Steps, Gen.Int[0, 999], Gen.Bool).Sample(
            (steps, choice, byRestore) =>
            {
                var entries = History.Of(steps).Entries;
                var state = Folding.Fold(entries);
                var now = new DateTimeOffset(2026, 11, 26, 9, 0, 0, TimeSpan.Zero);
                var pen = Pen.After(History.Id, "ddd", entries, now);
                HashSet<EntryName> gone = [.. state.Withdrawn];
                Entry[] there = [.. entries.Where(entry => !gone.Contains(entry.Name))];
                var target = there[choice % there.Length].Name;
                var undo = pen.Write(new EntryBody.EntryWithdrawn { Entry = target }, now);
                Assert.Contains(target, Folding.Fold([.. entries, undo]).Withdrawn);
                var redo = pen.Write(byRestore ? new EntryBody.EntryRestored { Entry = target } : new EntryBody.EntryWithdrawn { Entry = undo.Name }, now);
                var after = Folding.Fold([.. entries, undo, redo]);
                Assert.DoesNotContain(target, after.Withdrawn);
                Assert.Equal(Dump.Of(Plain(state)), Dump.Of(Plain(after)));
            },
            iter: Histories);

    [Fact]
    public void No_place_is_ever_inside_itself() =>
        History.Steps.Sample(
            steps =>
            {
                var places = Folding.Fold(History.Of(steps).Entries).Places.ToDictionary(place => place.Id);
                foreach (var place in places.Values)
                {
                    var depth = 0;
                    for (var parent = place.Parent; parent is { } name; parent = places[name].Parent) Assert.True(++depth <= places.Count);
                }
            },
            iter: Histories);

    /// <summary>The state without what the two new lines add by their mere presence, and what was settled by them.</summary>
    private static Inspection Plain(Inspection state) => state with
    {
        Heads = new Dictionary<string, int>(),
        Entries = 0,
        Devices = [],
        Withdrawn = [.. state.Withdrawn.Where(name => name.Device != "ddd")],
        Unsettled = [.. state.Unsettled.Where(one => one.Kind is UnsettledKind.Divergence or UnsettledKind.ParentCycle)],
    };

    private static void HidesOnlyTheSeen(History history, Func<IReadOnlyList<Entry>, View> fold)
    {
        var view = fold(history.Entries);
        var byName = history.Entries.ToDictionary(entry => entry.Name);
        bool Had(Entry writer, Entry line) => history.HadInHand[writer.Hash].Contains(line.Hash);
        bool Stands(Entry entry) => !view.Withdrawn.Contains(entry.Name);
        foreach (var line in history.Entries)
        {
            if (!Stands(line))
            {
                var builders = history.Entries.Where(entry => Stands(entry) && entry.Body is not EntryBody.EntryWithdrawn && Naming.In(entry.Body).Contains(line.Name));
                var withdrawals = history.Entries.Where(entry => Stands(entry) && entry.Body is EntryBody.EntryWithdrawn withdrawn && withdrawn.Entry == line.Name);
                Assert.Contains(withdrawals, withdrawal => Had(withdrawal, line) && builders.All(builder => Had(withdrawal, builder)));
            }
            else if (line.Body is EntryBody.NoteWritten || (line.Body is EntryBody.FactStated stated && Stands(byName[stated.Component])))
            {
                if (view.Standing.Contains(line.Name)) continue;
                var replacers = history.Entries.Where(entry => Stands(entry) && entry.Body is EntryBody.Stating state && state.Replaces.Contains(line.Name));
                Assert.Contains(replacers, replacer => Had(replacer, line));
            }
        }
    }
}
