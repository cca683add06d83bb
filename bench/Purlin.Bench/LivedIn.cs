using Purlin.Journal;
using Purlin.Book;

namespace Purlin.Bench;

/// <summary>
/// An invented visit as a thorough inspector leaves it: every place looked through by the rule book's own list for it, one look in eight
/// finding something, with photographs, readings, facts, second thoughts. Written by the journal's own pen, the same each time.
/// </summary>
internal sealed class LivedIn
{
    private readonly Pen pen = new("bench", "benchphone");
    private readonly RuleBook book;
    private readonly List<Entry> entries = [];
    private readonly List<(EntryName Name, string Kind)> places = [];
    private readonly List<(EntryName Name, string Kind)> components = [];
    private DateTimeOffset now = new(2026, 10, 14, 9, 0, 0, TimeSpan.Zero);
    private uint chance = 20261014;

    private LivedIn(RuleBook book) => this.book = book;

    public IReadOnlyList<Entry> Entries => entries;

    public IReadOnlyList<(EntryName Name, string Kind)> Places => places;

    public IReadOnlyList<(EntryName Name, string Kind)> Components => components;

    public static LivedIn Of(int length, RuleBook book)
    {
        LivedIn visit = new(book);
        visit.Open();
        visit.Walk(length);
        return visit;
    }

    public Entry Write(EntryBody body)
    {
        now += TimeSpan.FromSeconds(5);
        var entry = pen.Write(body, now);
        entries.Add(entry);
        return entry;
    }

    /// <summary>The invented house of the benches.</summary>
    public static Property House { get; } = new()
    {
        Address = "1 Bench Street (invented)",
        YearBuilt = 1968,
        Storeys = 2,
        Foundation = "crawl space",
        RoofForm = "gable",
        Garage = "attached",
        Bedrooms = 4,
        Bathrooms = 2,
    };

    private void Open()
    {
        Write(new EntryBody.InspectionOpened { Property = House, Date = new DateOnly(2026, 10, 14), Standards = ["washington"] });
        foreach (var place in StartingPlaces.For(House)) places.Add((Write(place).Name, place.Kind));
        foreach (var kind in book.ComponentKinds().Where((_, index) => index % 2 == 0))
            components.Add((Write(new EntryBody.ComponentAdded { Kind = kind, Place = Pick(places).Name }).Name, kind));
        foreach (var (component, _) in components)
        {
            Write(new EntryBody.FactStated
            {
                Component = component,
                Fact = "year",
                Value = FactValue.Of(1968 + Next(50)),
                Basis = Basis.Seen
            });
            if (Next(2) == 0) Write(new EntryBody.FactStated
            {
                Component = component,
                Fact = "material",
                Value = FactValue.Of("copper"),
                Basis = Basis.Seen
            });
        }
    }

    private void Walk(int length)
    {
        var kinds = book.ReadingKinds.Values.OrderBy(kind => kind.Kind, StringComparer.Ordinal).ToList();
        while (entries.Count < length)
            foreach (var (place, kind) in places)
            {
                var step = 0;
                foreach (var condition in book.ConditionsIn(kind))
                {
                    if (entries.Count >= length) return;
                    if (Next(4) == 0) Look(place, condition);
                    if (++step % 9 == 0)
                    {
                        var reading = Pick(kinds);
                        Write(new EntryBody.ReadingTaken
                        {
                            Kind = reading.Kind,
                            Amount = new Amount(Math.Round(reading.Least + (reading.Most - reading.Least) * (0.2 + 0.05 * Next(6)), 1),
                            reading.Unit),
                            Place = place
                        });
                    }
                }
            }
    }

    private void Look(EntryName place, Condition condition)
    {
        var draw = Next(24);
        var outcome = draw < 3 ? Outcome.Seen : draw < 22 ? Outcome.Clear : Outcome.NotVisible;
        var component = components.Find(one => one.Kind == condition.Component);
        var look = Write(new EntryBody.ObservationMade
        {
            Place = place,
            Condition = condition.Id,
            Outcome = outcome,
            Reason = outcome == Outcome.NotVisible ? "stored goods" : null,
            Component = component.Kind is null ? null : component.Name,
            Spot = outcome == Outcome.Seen ? "by the door" : null,
        });
        if (outcome == Outcome.Seen || Next(6) == 0)
            Write(new EntryBody.PhotoTaken
            {
                Sha = $"{entries.Count:x64}",
                Size = 100_000,
                Width = 4000,
                Height = 3000,
                MediaType = "image/jpeg",
                Place = place,
                For = look.Name
            });
        if (Next(40) == 0) Write(new EntryBody.EntryWithdrawn { Entry = look.Name });
    }

    private T Pick<T>(IReadOnlyList<T> from) => from[Next(from.Count)];

    // A plain multiplicative generator: the same visit every time, everywhere.
    private int Next(int below)
    {
        chance = unchecked(chance * 1664525 + 1013904223);
        return (int)((chance >> 8) % (uint)below);
    }
}
