using Purlin.Hearing.Matters;
using Purlin.Hearing.Talk;

namespace Purlin.Hearing.Proposing;

/// <summary>
/// How far the words of each matter reach: to the next matter, the next thing or so many words on, whichever comes first.
/// </summary>
internal static class Reaching
{
    private const int After = 14;

    /// <summary>For each matter the stretch in which what is said is said of it.</summary>
    public static List<PieceRange> Of(Surveyed ground, List<HeardMatter> matters)
    {
        List<PieceRange> reach = [];
        for (var index = 0; index < matters.Count; index++)
        {
            var next = matters.Skip(index + 1).SelectMany(matter => matter.Stretches).Select(stretch => stretch.Start)
                .Where(start => start >= matters[index].End).DefaultIfEmpty(ground.Texts.Count).Min();
            var other = ground.Things.Where(thing => !thing.IsSpot && thing.Start >= matters[index].End
                && !thing.Components.Contains(matters[index].Component)).Select(thing => thing.Start).DefaultIfEmpty(next).First();
            next = Math.Min(next, other);
            reach.Add(new PieceRange(matters[index].Start, Math.Min(next, Math.Min(ground.Texts.Count, matters[index].End + After))));
        }
        return reach;
    }
}
