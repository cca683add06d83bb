using Purlin.Journal;

namespace Purlin.Bench;

/// <summary>Invented journals of any length: a visit of many places, readings and second thoughts.</summary>
internal static class Histories
{
    public static IReadOnlyList<Entry> Of(int length)
    {
        Pen pen = new("bench", "benchphone");
        List<Entry> entries = [];
        var now = new DateTimeOffset(2026, 10, 14, 9, 0, 0, TimeSpan.Zero);
        EntryName Write(EntryBody body)
        {
            now += TimeSpan.FromSeconds(7);
            var entry = pen.Write(body, now);
            entries.Add(entry);
            return entry.Name;
        }
        Write(new EntryBody.InspectionOpened { Property = LivedIn.House, Date = new DateOnly(2026, 10, 14), Standards = ["washington"] });
        var places = StartingPlaces.For(LivedIn.House).Select(Write).ToList();
        var heater = Write(new EntryBody.ComponentAdded { Kind = "water heater", Place = places[^2] });
        string[] conditions = ["supply-piping.corroded-joint", "receptacle.open-ground", "window.seal-failed", "framing.wood-wet"];
        EntryName? fact = null;
        for (var step = 0; entries.Count < length; step++)
        {
            var place = places[step % places.Count];
            if (step % 5 == 0) Write(new EntryBody.ReadingTaken
            {
                Kind = "wood moisture",
                Amount = new Amount(9 + step % 14, "%"),
                Place = place,
            });
            else if (step % 11 == 0)
                fact = Write(new EntryBody.FactStated
                {
                    Component = heater,
                    Fact = "year",
                    Value = FactValue.Of(1990 + step % 30),
                    Basis = Basis.Seen,
                    Replaces = fact is { } old ? [old] : [],
                });
            else if (step % 17 == 0) Write(new EntryBody.EntryWithdrawn { Entry = entries[^1].Name });
            else Write(new EntryBody.ObservationMade
            {
                Place = place,
                Condition = conditions[step % conditions.Length],
                Outcome = step % 3 == 0 ? Outcome.Seen : Outcome.Clear,
            });
        }
        return entries;
    }
}
