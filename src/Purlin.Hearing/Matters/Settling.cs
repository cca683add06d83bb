using Purlin.Hearing.Talk;

namespace Purlin.Hearing.Matters;

/// <summary>
/// Settles what was said twice: a repeat joins what it repeats, a correction takes the place of what it corrects, and a list of the big ones at
/// the end brings nothing new.
/// </summary>
internal sealed class Settling(Turns turns, Weighing weighing)
{
    public List<Matter> Of(Ground ground, List<Telling> tellings)
    {
        List<Matter> settled = [];
        var recaps = turns.All("recap", ground.Texts);
        foreach (var telling in tellings)
        {
            var same = settled.FindLastIndex(matter => matter.Condition == telling.Condition && matter.Component == telling.Component);
            if (recaps.Exists(recap => IsWithin(recap, telling, weighing.RecapWhole)) || (same >= 0 && IsRecap(recaps, telling, settled[same]))) continue;
            if (same >= 0 && Joins(ground, telling, settled[same])) Join(ground, telling, settled[same]);
            else settled.Add(new Matter(telling, ground.Place[telling.Span.End - 1]));
        }
        return settled;
    }

    private bool IsRecap(List<Stretch> recaps, Telling telling, Matter before) =>
        recaps.Exists(recap => recap.Start > before.Start && IsWithin(recap, telling, weighing.RecapReach));

    private static bool IsWithin(Stretch recap, Telling telling, int reach) => recap.Start <= telling.Span.Start && telling.Span.Start - recap.Start < reach;

    private bool Joins(Ground ground, Telling telling, Matter before)
    {
        var apart = telling.Span.Start - before.End;
        if (telling.Outcome != before.Outcome) return apart <= weighing.Contradicts;
        return apart <= weighing.Repeats && (before.Place ?? "") == (ground.Place[telling.Span.End - 1] ?? "");
    }

    private void Join(Ground ground, Telling telling, Matter before)
    {
        if (telling.Outcome != before.Outcome && (telling.Score > before.Score || IsCorrected(ground, before.End, telling.Span.End))) before.Outcome = telling.Outcome;
        before.Join(telling);
    }

    private bool IsCorrected(Ground ground, int from, int to)
    {
        for (var at = from; at < to; at++)
            if (turns.At("repair", ground.Texts, at) > 0) return true;
        return false;
    }
}
