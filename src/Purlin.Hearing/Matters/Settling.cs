using Purlin.Hearing.Talk;

namespace Purlin.Hearing.Matters;

/// <summary>
/// Settles what was said twice: a repeat joins what it repeats, a correction takes the place of what it corrects, and a list of the big
/// ones at
/// the end brings nothing new.
/// </summary>
internal sealed class Settling(Turns turns, HearingScale weighing)
{
    public List<HeardMatter> Of(Surveyed ground, List<Statement> tellings)
    {
        List<HeardMatter> settled = [];
        var recaps = turns.All("recap", ground.Texts);
        foreach (var telling in tellings)
        {
            var same = settled.FindLastIndex(matter => matter.Condition == telling.Condition && matter.Component == telling.Component);
            if (recaps.Exists(recap => IsWithin(recap, telling, weighing.RecapWhole))
                || (same >= 0 && IsRecap(recaps, telling, settled[same]))) continue;
            if (same >= 0 && Joins(ground, telling, settled[same])) Join(ground, telling, settled[same]);
            else settled.Add(new HeardMatter(telling, ground.Place[telling.Span.End - 1]));
        }
        return settled;
    }

    private bool IsRecap(List<PieceRange> recaps, Statement telling, HeardMatter before) =>
        recaps.Exists(recap => recap.Start > before.Start && IsWithin(recap, telling, weighing.RecapReach));

    private static bool IsWithin(PieceRange recap, Statement telling, int reach) => recap.Start <= telling.Span.Start
        && telling.Span.Start - recap.Start < reach;

    private bool Joins(Surveyed ground, Statement telling, HeardMatter before)
    {
        var apart = telling.Span.Start - before.End;
        if (telling.Outcome != before.Outcome) return apart <= weighing.Contradicts;
        return apart <= weighing.Repeats && (before.Place ?? "") == (ground.Place[telling.Span.End - 1] ?? "");
    }

    private void Join(Surveyed ground, Statement telling, HeardMatter before)
    {
        if (telling.Outcome != before.Outcome
            && (telling.Score > before.Score || IsCorrected(ground, before.End, telling.Span.End))) before.Outcome = telling.Outcome;
        before.Join(telling);
    }

    private bool IsCorrected(Surveyed ground, int from, int to)
    {
        for (var at = from; at < to; at++)
            if (turns.At("repair", ground.Texts, at) > 0) return true;
        return false;
    }
}
