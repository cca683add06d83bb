using Purlin.Book;
using Purlin.Hearing.Figures;
using Purlin.Hearing.Matters;
using Purlin.Hearing.Talk;

namespace Purlin.Hearing.Proposing;

/// <summary>A figure that was said with no condition to it: a reading or a fact by itself.</summary>
/// <param name="Component">Kind of component.</param>
/// <param name="Place">Kind of place.</param>
/// <param name="Stretches">The words of the figures.</param>
/// <param name="Amounts">What they measure.</param>
internal sealed record BareFigures(string Component, string? Place, List<PieceRange> Stretches, List<HeardAmount> Amounts);

/// <summary>Gives each figure to the matter that it was said with, or makes a statement of its own of it.</summary>
internal sealed class Figuring(RuleBook book, string[] names, Repertoire repertoire)
{
    // Figures of one thing that follow within so many words are one statement.
    private const int Together = 16;

    // A meter is held to what was seen so many words before.
    private const int MeterReach = 22;

    private readonly Attribution attribution = new(book);

    public (List<HeardAmount>[] OfMatters, List<BareFigures> Bare) Of(Surveyed ground, List<HeardMatter> matters, List<PieceRange> reach)
    {
        var given = matters.Select(_ => new List<HeardAmount>()).ToArray();
        List<BareFigures> bare = [];
        foreach (var figure in FigureReader.In(ground.Texts))
        {
            var index = reach.FindIndex(stretch => stretch.Covers(figure.Start));
            if (index < 0 && figure.Unit == SpokenUnits.Percent) index = matters.FindLastIndex(matter => matter.End <= figure.Start
                && figure.Start - matter.End < MeterReach);
            if (index >= 0 && Amount(ground, figure, matters[index]) is { } amount) Give(matters[index], given[index], figure, amount);
            else Stand(ground, figure, bare);
        }
        return (given, bare);
    }

    private HeardAmount? Amount(Surveyed ground, Figure figure, HeardMatter matter) =>
        attribution.Of(figure, ground.Texts, names[matter.Component],
            matter.Condition < 0 ? null : repertoire.Conditions[matter.Condition].Id, matter.Place);

    private static void Give(HeardMatter matter, List<HeardAmount> given, Figure figure, HeardAmount amount)
    {
        if (given.Contains(amount)) return;
        given.Add(amount);
        if (figure.End > matter.End) matter.Stretches.Add(new PieceRange(figure.Start, figure.End));
    }

    private void Stand(Surveyed ground, Figure figure, List<BareFigures> bare)
    {
        var place = ground.Place[figure.Start];
        foreach (var component in Spoken(ground, figure))
        {
            if (attribution.Of(figure, ground.Texts, names[component], null, place) is not { } amount) continue;
            if (names[component] == "house" && amount.Kind is Kinds.SurfaceMoisture or Kinds.WaterPressure) return;
            var of = Whose(amount, names[component], place);
            if (bare.Count > 0 && bare[^1] is var last && last.Component == of && figure.Start - last.Stretches[^1].End <= Together)
            {
                if (!last.Amounts.Contains(amount)) last.Amounts.Add(amount);
                last.Stretches.Add(new PieceRange(figure.Start, figure.End));
            }
            else bare.Add(new BareFigures(of, place, [new PieceRange(figure.Start, figure.End)], [amount]));
            return;
        }
    }

    /// <summary>Components that a figure may be of: what is named around it, and what was named before.</summary>
    private IEnumerable<int> Spoken(Surveyed ground, Figure figure)
    {
        var around = ground.Things.Where(thing => !thing.IsSpot && thing.Start >= figure.Start - 8 && thing.Start <= figure.End + 2)
            .OrderBy(thing => Math.Abs(thing.Start - figure.Start)).SelectMany(thing => thing.Components).ToList();
        var before = ground.Before[figure.Start] is >= 0 and var last ? ground.Things[last].Components : [];
        return before.Intersect(around).Concat(before).Concat(around).Append(Array.IndexOf(names, "house")).Distinct();
    }

    private string Whose(HeardAmount amount, string spoken, string? place)
    {
        if (!book.ReadingKinds.TryGetValue(amount.Kind, out var kind)) return spoken;
        if (string.IsNullOrEmpty(kind.Component)) return kind.Kind == Kinds.AtticAir ? "attic" : place is not null
            && book.ComponentKinds().Contains(place) ? place : "house";
        return spoken == Kinds.HeatPump && kind.Kind.StartsWith("heating", StringComparison.Ordinal) ? spoken : kind.Component;
    }
}
