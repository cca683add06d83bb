using System.Diagnostics;
using System.Globalization;
using Microsoft.JSInterop;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Judgement;
using Purlin.Book;

namespace Purlin.Bench.Browser;

/// <summary>
/// One more act of the thumb on a full inspection, inside the browser: from the line as the device kept it to the judgement.
/// </summary>
public static class Acts
{
    private const int Runs = 15;

    /// <summary>Rows of kind of act, least, median and most milliseconds; the first two are folding and judging everything anew.</summary>
    [JSInvokable]
    public static string[] Measure(int length)
    {
        var book = RuleBook.BuiltIn;
        var visit = LivedIn.Of(length, book);
        JudgingMemory memory = new();
        List<string> rows = [];
        void Row(string name, Action before, Action work)
        {
            var times = new double[Runs];
            for (var run = 0; run < Runs; run++)
            {
                before();
                var clock = Stopwatch.StartNew();
                work();
                times[run] = clock.Elapsed.TotalMilliseconds;
            }
            Array.Sort(times);
            rows.Add(string.Create(CultureInfo.InvariantCulture, $"{name}|{times[0]:0.00}|{times[Runs / 2]:0.00}|{times[^1]:0.00}"));
        }
        GrowingFold fold = new();
        fold.Add(visit.Entries);
        Judging.Judge(fold.Inspection, book, 2026, memory);
        Row("fold everything anew", () => { }, () => Folding.Fold(visit.Entries));
        Row("judge everything anew", () => { }, () => Judging.Judge(fold.Inspection, book, 2026));
        foreach (var (name, body) in Kinds(visit, book))
        {
            Row("fold: " + name, () => visit.Write(body(visit.Entries.Count)), () => fold.Add([visit.Entries[^1]]));
            Judging.Judge(fold.Inspection, book, 2026, memory);
            Row("judge: " + name, () => { visit.Write(body(visit.Entries.Count)); fold.Add([visit.Entries[^1]]); },
                () => Judging.Judge(fold.Inspection, book, 2026, memory));
        }
        return [.. rows];
    }

    private static IEnumerable<(string Name, Func<int, EntryBody> Body)> Kinds(LivedIn visit, RuleBook book)
    {
        var conditions = book.Conditions.Keys.Order(StringComparer.Ordinal).ToList();
        var readings = book.ReadingKinds.Keys.Order(StringComparer.Ordinal).ToList();
        HashSet<EntryName> undone = [];
        EntryName Place(int at) => visit.Places[at % visit.Places.Count].Name;
        yield return ("a look that saw something",
            at => new EntryBody.ObservationMade { Place = Place(at), Condition = conditions[at * 7 % conditions.Count],
            Outcome = Outcome.Seen });
        yield return ("a clear look",
            at => new EntryBody.ObservationMade { Place = Place(at), Condition = conditions[at * 11 % conditions.Count],
            Outcome = Outcome.Clear });
        yield return ("a reading",
            at => new EntryBody.ReadingTaken { Kind = readings[at % readings.Count],
            Amount = new Amount(book.ReadingKinds[readings[at % readings.Count]].Least,
            book.ReadingKinds[readings[at % readings.Count]].Unit), Place = Place(at) });
        yield return ("a fact",
            at => new EntryBody.FactStated { Component = visit.Components[at % visit.Components.Count].Name, Fact = at % 3 == 0
            ? "year" : "material", Value = at % 3 == 0 ? FactValue.Of(1950 + at % 70) : FactValue.Of("cast iron"), Basis = Basis.Seen });
        yield return ("a photograph",
            at => new EntryBody.PhotoTaken { Sha = $"{at:x64}", Size = 1, MediaType = "image/jpeg", Place = Place(at) });
        yield return ("a limitation",
            at => new EntryBody.LimitationRecorded { What = $"Behind the boxes {at}", Cause = "stored goods", Next = "Have it looked at.",
            Place = Place(at) });
        yield return ("a place",
            at => new EntryBody.PlaceAdded { Kind = PlaceKind.Room, Name = $"Room {at}", Parent = visit.Places[0].Name });
        yield return ("a component", at => new EntryBody.ComponentAdded { Kind = "window", Place = Place(at) });
        yield return ("an undo",
            at => new EntryBody.EntryWithdrawn { Entry = visit.Entries.Last(entry => entry.Body is EntryBody.ObservationMade
            && !undone.Contains(entry.Name) && undone.Add(entry.Name)).Name });
    }
}
