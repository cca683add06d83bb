using Purlin.Journal;
using Purlin.Journal.Fold;

namespace Purlin.Report.Section;

/// <summary>
/// The house as stacks, from left to right as one stands before the front door: one for each part, two for a split level.
/// </summary>
internal static class Stacks
{
    private const double LowestLevel = -0.5;

    public static IReadOnlyList<Stack> Of(Inspection inspection, PlacesInCut sorted)
    {
        var parts = inspection.Parts.Where(IsStanding).ToList();
        if (parts.Count == 0) return InHalves(inspection, null, sorted, sorted.Rooms, sorted.Below, sorted.Roofs, sorted.Attics);
        var owners = inspection.Parts.ToDictionary(part => part.Id, part => OwnerOf(inspection, part));
        var main = parts[0].Id;
        bool Owns(Journal.Fold.Part part, Place place) => (place.Part is { } name && owners.TryGetValue(name, out var owner) ? owner
            : main) == part.Id;
        List<Stack> left = [], right = [];
        foreach (var part in parts)
        {
            var stacks = InHalves(inspection, part, sorted,
                [.. sorted.Rooms.Where(place => Owns(part, place))], [.. sorted.Below.Where(place => Owns(part, place))],
                [.. sorted.Roofs.Where(place => Owns(part, place))], [.. sorted.Attics.Where(place => Owns(part, place))]);
            if (part.Side == "left") left.InsertRange(0, stacks);
            else right.AddRange(stacks);
        }
        return Sharing([.. left, .. right]);
    }

    /// <summary>
    /// Whether a part stands beside the others; one above or below another is drawn with it, one apart from the house in the plan.
    /// </summary>
    private static bool IsStanding(Journal.Fold.Part part) => part.Kind != PartKind.AttachedGarage
        && part.Side is not ("above" or "below" or "apart");

    private static EntryName OwnerOf(Inspection inspection, Journal.Fold.Part part)
    {
        for (var depth = 0; depth < 8 && !IsStanding(part); depth++)
            part = inspection.Parts.FirstOrDefault(one => one.Id == part.Joins) ?? inspection.Parts[0];
        return part.Id;
    }

    private static IReadOnlyList<Stack> InHalves(Inspection inspection, Journal.Fold.Part? part, PlacesInCut sorted,
        IReadOnlyList<Place> rooms, IReadOnlyList<Place> below, IReadOnlyList<Place> roofs, IReadOnlyList<Place> attics)
    {
        var shape = HouseShape.Of(inspection, part, below);
        var levels = LevelsOf(part, shape, sorted, rooms);
        var whole = new Stack { Part = part, Shape = shape, Levels = levels, Below = below, Roofs = roofs, Attics = attics };
        var halves = levels.Where(level => IsHalf(level.At)).ToList();
        if (halves.Count == 0 || halves.Count == levels.Count) return [whole];
        // The lower half stands on a slab of its own, with the attic over its upper floor; the living level keeps what is below it.
        return
        [
            whole with { Levels = [.. levels.Except(halves)], Shape = shape with { Chimney = false }, Attics = attics.Count > 1
                ? [attics[0]] : [], Roofs = roofs.Count > 1 ? [roofs[0]] : [] },
            whole with { Levels = halves, Below = [], Shape = shape with { Foundation = "slab" }, Attics = attics.Count > 1
                ? [.. attics.Skip(1)] : attics, Roofs = roofs.Count > 1 ? [.. roofs.Skip(1)] : roofs },
        ];
    }

    private static List<StackLevel> LevelsOf(Journal.Fold.Part? part, HouseShape shape, PlacesInCut sorted, IReadOnlyList<Place> rooms)
    {
        Dictionary<double, bool> told = [];
        foreach (var level in part?.Levels ?? []) if (level.At >= LowestLevel) told[level.At] = level.Form == LevelForm.Half;
        if (told.Count == 0 && part is null or { Kind: PartKind.Main }) for (var at = 0; at < shape.Storeys; at++) told[at] = false;
        var found = rooms.ToDictionary(room => room.Id, room => Snapped(sorted.LevelOf(room), told));
        foreach (var at in found.Values) told.TryAdd(at, false);
        if (told.Count == 0) told[0] = false;
        // Between the lowest and the highest floor none is left out, or a floor would hang in the air.
        for (var at = told.Keys.Min() + 1; at < told.Keys.Max(); at++) told.TryAdd(at, false);
        return [.. told.OrderBy(level => level.Key).Select(level =>
            new StackLevel(level.Key, level.Value, [.. rooms.Where(room => found[room.Id] == level.Key)]))];
    }

    // A house whose floors all lie at halves has no room between them: what was only said to be on a floor is on the next one up.
    private static double Snapped(double at, Dictionary<double, bool> told) =>
        told.Count > 0 && !told.ContainsKey(at) && told.Keys.All(IsHalf) && !IsHalf(at)
            ? told.Keys.Where(level => level > at).DefaultIfEmpty(told.Keys.Max()).Min() : at;

    private static bool IsHalf(double at) => at != Math.Floor(at);

    private static IReadOnlyList<Stack> Sharing(IReadOnlyList<Stack> stacks)
    {
        List<Stack> all = [];
        foreach (var stack in stacks)
            all.Add(stack with
            {
                SharesRoof = all.Count > 0 && all[^1].Highest == stack.Highest
                && (stack.Part?.Kind == PartKind.SecondUnit || all[^1].Part?.Kind == PartKind.SecondUnit)
            });
        return all;
    }
}
