using Purlin.Book.Naming;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Reckoning.Quantities;

namespace Purlin.Judgement.Understanding;

/// <summary>What was told of the house before the visit, in the words of the book.</summary>
internal sealed class PropertyNames(KnownNames names, Telling telling)
{
    private const string House = "house";
    private const string AreaUnit = "ft²";
    private const string AreaName = "floor area";
    private const int OldestYear = 1600;

    public Opening Opening(Opening opening, List<LookAgain> again)
    {
        var told = opening.Body.Property;
        var read = told with
        {
            Foundation = Word("foundation", told.Foundation),
            RoofForm = Word(Part.RoofFormFact, told.RoofForm),
            Garage = Word("garage", told.Garage),
            Attic = Word("attic", told.Attic),
            FloorArea = Area(told.FloorArea),
        };
        if (told.YearBuilt is { } year && (year < OldestYear || year > opening.Body.Date.Year + 1))
            again.Add(Telling.Odd(opening.Id, "yearBuilt", $"{year}", telling.Say("again.year", ("given", $"{year}")), bars: false));
        return read == told ? opening : opening with { Body = opening.Body with { Property = read } };

        string? Word(string fact, string? given)
        {
            if (given is null) return null;
            var meant = names.Value(House, fact, given);
            if (telling.Name(opening.Id, fact, telling.Say("again.what.value", ("fact", fact)), given, meant,
                bars: true) is { } again1) again.Add(again1);
            return meant.Name;
        }

        Amount? Area(Amount? given)
        {
            if (given is not { } area) return null;
            if (area.Unit.Length == 0) return area with { Unit = AreaUnit };
            var unit = names.Unit(area.Unit);
            if (unit.IsUnderstood && Units.Compatible(unit.Name, AreaUnit)) return area with { Unit = unit.Name };
            again.Add(Telling.Odd(opening.Id, "floorArea", area.ToString(), telling.Say("again.unit", ("what", AreaName), ("given",
                area.ToString()), ("unit", AreaUnit)), bars: false));
            return area;
        }
    }
}
