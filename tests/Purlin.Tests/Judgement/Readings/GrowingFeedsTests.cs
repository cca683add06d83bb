using System.Collections.Concurrent;
using CsCheck;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Judgement;
using Purlin.Book;

namespace Purlin.Tests.Judgement.Readings;

/// <summary>
/// A visit of nothing but facts and readings that feeds take, entry by entry: what is remembered from the last judgement must never differ from
/// what is judged anew, though one fact of a water heater reaches the gas pipe, the room's air, its age and the house's load.
/// </summary>
public sealed class GrowingFeedsTests
{
    private static readonly RuleBook Book = RuleBook.BuiltIn;
    private static readonly FactSheet[] Sheets = [.. Book.Sheets.Values.Where(sheet => sheet.Component != "house").OrderBy(sheet => sheet.Component, StringComparer.Ordinal)];
    private static readonly string[] Related = ["gas piping", "water heater", "furnace", "combustion air", "service", "grounding", "circuit", "outdoor unit", "indoor coil", "deck", "framing", "gutter", "roof covering", "supply piping"];
    private static readonly string[] Placed = ["mechanical", "garage", "crawl space", "site"];

    private static Gen<(int Kind, int First, int Second, int Third)[]> Acts { get; } =
        Gen.Select(Gen.Int[0, 99], Gen.Int[0, 999], Gen.Int[0, 999], Gen.Int[0, 999]).Array[10, 70];

    /// <summary>Walks in which every place is withdrawn, and things are added all the same.</summary>
    [Theory]
    [InlineData("egghDoi58G55")]
    [InlineData("4aC-uyzza2o2")]
    public void A_visit_that_loses_all_its_places_is_remembered_too(string seed) => Acts.Sample(acts => Same(acts, []), seed: seed, iter: 1);

    [Fact]
    public void Remembering_changes_nothing_of_what_feeds_give()
    {
        ConcurrentDictionary<string, bool> reached = new(StringComparer.Ordinal);
        Acts.Sample(acts => Same(acts, reached), iter: 40);
        // The walk is worth something only where it reckons, asks and refuses.
        Assert.True(reached.Count >= 8, string.Join(", ", reached.Keys));
        Assert.Contains("asked", reached.Keys);
        Assert.Contains("refused", reached.Keys);
    }

    private static bool Same((int Kind, int First, int Second, int Third)[] acts, ConcurrentDictionary<string, bool> reached)
    {
        Pen pen = new("visit", "phone");
        GrowingFold fold = new();
        JudgingMemory memory = new();
        var now = new DateTimeOffset(2026, 10, 14, 9, 0, 0, TimeSpan.Zero);
        void Write(EntryBody body) => fold.Add([pen.Write(body, now += TimeSpan.FromSeconds(9))]);
        Write(new EntryBody.InspectionOpened { Property = new() { Address = "1 Invented Lane", YearBuilt = 1968, FloorArea = new Amount(1800, "ft²"), Storeys = 2, Bedrooms = 3, Bathrooms = 2, RoofPitch = 6 }, Date = new DateOnly(2026, 10, 14), Standards = ["washington"] });
        foreach (var place in Placed) Write(new EntryBody.PlaceAdded { Kind = place, Name = place });
        foreach (var (kind, first, second, third) in acts)
        {
            if (Body(fold, kind, first, second, third) is { } body) Write(body);
            var judged = Judging.Judge(fold.Inspection, Book, 2026, memory);
            foreach (var working in judged.Workings) reached[working.Working.Name] = true;
            if (judged.Asks.Count > 0) reached["asked"] = true;
            if (judged.Refused.Count > 0) reached["refused"] = true;
            var remembered = JudgementJson.Write(judged, fold.Inspection).ToJsonString();
            if (remembered != JudgementJson.Write(Judging.Judge(fold.Inspection, Book, 2026), fold.Inspection).ToJsonString()) return false;
        }
        return true;
    }

    private static EntryBody? Body(GrowingFold fold, int kind, int first, int second, int third)
    {
        var inspection = fold.Inspection;
        var component = Some(inspection.Components, first);
        return kind switch
        {
            < 22 when inspection.Places.Count == 0 => null,
            < 22 => new EntryBody.ComponentAdded { Kind = third % 4 == 0 ? Some(Sheets, second).Component : Some(Related, second), Place = Some(inspection.Places, first).Id },
            < 74 when Book.Sheets.TryGetValue(component.Kind, out var sheet) => Stated(component, Some(sheet.Facts, second), third),
            < 88 when Book.ReadingsOn(component.Kind) is { Length: > 0 } kinds => Taken(component, Book.ReadingKinds[Some(kinds, second)], third),
            < 96 => new EntryBody.EntryWithdrawn { Entry = Some(fold.Entries, 1 + first % (fold.Entries.Count - 1)).Name },
            _ when inspection.Withdrawn.Count > 0 => new EntryBody.EntryRestored { Entry = Some(inspection.Withdrawn, second) },
            _ => null,
        };
    }

    private static EntryBody.FactStated Stated(Component component, FactKind kind, int chance) => new()
    {
        Component = component.Id,
        Fact = kind.Fact,
        Value = kind.Choices.Count > 0 ? FactValue.Of(Some(kind.Choices, chance)) : kind.Number ? FactValue.Of(kind.Fact == "year" ? 1960 + chance % 66 : 1 + chance % 240) : FactValue.Of(Plates[chance % Plates.Length]),
        Unit = kind.Number && kind.Choices.Count == 0 && kind.Unit.Length > 0 ? kind.Unit : null,
        Basis = kind.Basis,
        Replaces = component.Facts.TryGetValue(kind.Fact, out var slot) ? [.. slot.Standing.Select(stated => stated.By)] : [],
    };

    private static readonly string[] Plates = ["MODEL NO. QX036\nR-22 CHARGE 6 LBS\nMFD 05 2004", "06/2019", "0832A12345", "asphalt composition shingle", "iron"];

    private static EntryBody.ReadingTaken Taken(Component component, ReadingKind kind, int chance) => new()
    {
        Kind = kind.Kind,
        Amount = new Amount(Math.Round(kind.Least + (kind.Most - kind.Least) * (chance % 20) / 20.0, 1), kind.Unit),
        Place = component.Place,
        Component = component.Id,
        Set = chance % 4 == 0 ? "one" : null,
        Point = Book.PointingOf(kind.Kind) == Pointing.None ? null : new PlanPoint(chance % 11, chance % 7, "ft"),
    };

    private static T Some<T>(IReadOnlyList<T> from, int chance) => from[chance % from.Count];
}
