using Purlin.Journal;

namespace Purlin.Hearing.Matters;

/// <summary>
/// Weighs a stretch of talk, as it grows, against everything that the book can be told in. What a new word does not touch is not
/// weighed again.
/// </summary>
internal sealed class Scoring(Repertoire repertoire, HearingScale weighing)
{
    // What says less of a phrase than this never fits it.
    private const double LeastPart = 0.3, Whole = 0.97;

    private readonly double[] same = new double[repertoire.Phrases.Length];
    private readonly double[] against = new double[repertoire.Phrases.Length];
    private readonly double[] things = new double[repertoire.Phrases.Length];
    private readonly ulong[] needs = new ulong[repertoire.Phrases.Length];
    private readonly int[] stamp = new int[repertoire.Phrases.Length];
    private readonly List<int> touched = [];
    private readonly List<int> fresh = [];
    private readonly HashSet<int> told = [];
    private readonly HashSet<int> named = [];
    private readonly HashSet<int> spots = [];
    private int[] inHand = [];
    private Found best;
    private bool isThere, again;
    private int round;
    private double said;

    /// <summary>Forgets what was said: a new stretch begins.</summary>
    /// <param name="before">Components that were named before.</param>
    public void Begin(int[] before)
    {
        round++;
        (said, best, isThere, again, inHand) = (0, Found.Nothing, false, false, before);
        touched.Clear();
        fresh.Clear();
        told.Clear();
        named.Clear();
        spots.Clear();
    }

    /// <summary>Something more was said.</summary>
    public void Say(Sense mark)
    {
        if (mark.Concept >= repertoire.Standing.Length || !told.Add(mark.Concept)) return;
        said += repertoire.WeightOf(mark.Concept) * mark.Share;
        foreach (var (phrase, index) in repertoire.Standing[mark.Concept])
        {
            if (stamp[phrase] != round)
            {
                stamp[phrase] = round;
                (same[phrase], against[phrase], things[phrase], needs[phrase]) = (0, 0, 0, 0);
                touched.Add(phrase);
            }
            var need = repertoire.Phrases[phrase].Needs[index];
            if (need.Sign == 0) things[phrase] += need.Weight;
            else if (need.Sign == mark.Sign) same[phrase] += need.Weight;
            else against[phrase] += need.Weight;
            if (index < 64) needs[phrase] |= 1UL << index;
            fresh.Add(phrase);
            again |= phrase == best.Saying;
        }
    }

    /// <summary>A thing was named.</summary>
    public void Name(Thing thing)
    {
        foreach (var component in thing.Components) again |= (thing.IsSpot ? spots : named).Add(component);
    }

    /// <summary>Something is said to be there.</summary>
    public void Exists()
    {
        again |= !isThere;
        isThere = true;
    }

    /// <summary>What fits best to all that was said since <see cref="Begin"/>.</summary>
    /// <param name="isHere">Whether a condition is looked for in the place one stands in.</param>
    public (int Condition, string Outcome, double Score) Best(Func<int, bool?> isHere)
    {
        if (again) best = Found.Nothing;
        var score = best.Saying < 0 ? 0 : Value(best);
        foreach (var index in again ? touched : fresh)
        {
            if (Weigh(index, isHere) is not { } found || Value(found) is var value && value <= score) continue;
            (best, score) = (found, value);
        }
        fresh.Clear();
        again = false;
        if (best.Saying < 0) return (-1, Outcome.Seen, 0);
        var phrase = repertoire.Phrases[best.Saying];
        return (phrase.Condition, against[best.Saying] > same[best.Saying] == phrase.IsClear ? Outcome.Seen : Outcome.Clear, score);
    }

    private double Value(Found found) => (found.Fit - (weighing.Unsaid * Math.Max(0, said - found.Met))) * found.Here;

    private Found? Weigh(int index, Func<int, bool?> isHere)
    {
        var weight = Math.Max(same[index], against[index]);
        if (weight == 0) return null;
        var phrase = repertoire.Phrases[index];
        if (weight + things[index] < LeastPart * phrase.Mass || (phrase.Denied != 0 && (needs[index] & phrase.Denied) == 0)) return null;
        if (phrase.IsAbsence && !isThere && against[index] >= same[index]) return null;
        var here = isHere(phrase.Condition) switch { true => weighing.Here, false => weighing.Elsewhere, null => 1 };
        return new Found(index, Fit(index, phrase, weight + things[index]), weight + things[index], here);
    }

    private double Fit(int index, Saying phrase, double met)
    {
        var component = repertoire.ComponentOf[phrase.Condition];
        var isNamed = named.Contains(component);
        var isInHand = named.Count == 0 && Array.IndexOf(inHand, component) >= 0;
        if (isNamed || isInHand) met += weighing.Carried * Missing(index, phrase);
        var fit = weighing.Scale * Math.Pow(met, weighing.Bulk) * Math.Pow(Math.Min(1, met / phrase.Mass),
            weighing.Wholeness) * phrase.Counts * repertoire.Prior[phrase.Condition];
        if ((isNamed || isInHand) && phrase.Needs.Length > 1 && met >= Whole * phrase.Mass) fit += weighing.Whole;
        if (isNamed) return fit * weighing.Named;
        if (isInHand) return fit * weighing.InHand;
        return fit * (spots.Contains(component) ? weighing.NamedAsSpot : named.Count > 0 ? weighing.OtherNamed : weighing.Unnamed);
    }

    /// <summary>The weight of the names of the thing that were not said because the thing is known.</summary>
    private double Missing(int index, Saying phrase)
    {
        if (phrase.IsAbsence) return 0;
        var missing = 0.0;
        for (var at = 0; at < phrase.Needs.Length && at < 64; at++)
            if (phrase.Needs[at] is { IsThing: true } need && (needs[index] & (1UL << at)) == 0) missing += need.Weight;
        return missing;
    }

    private readonly record struct Found(int Saying, double Fit, double Met, double Here)
    {
        public static Found Nothing { get; } = new(-1, 0, 0, 0);
    }
}
