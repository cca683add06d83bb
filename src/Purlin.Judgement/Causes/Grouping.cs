using Purlin.Book;
using Purlin.Judgement.Findings;
using Purlin.Judgement.Memory;

namespace Purlin.Judgement.Causes;

/// <summary>
/// Groups findings under the cause that explains them. A group weighs what its heaviest member weighs, so grouping never makes anything
/// smaller; what the inspector left out stays out of groups, so that leaving one out never hides another.
/// </summary>
internal sealed class Grouping(BookIndex book, IReadOnlyList<Concern> matters, FindingWriting writing, Recall recall)
{
    private readonly Dictionary<FindingId, Concern> matterOf = matters.ToDictionary(matter => matter.Id);
    private readonly SortedDictionary<int, List<Finding>> waiting = [];
    private readonly HashSet<Finding> taken = new(ReferenceEqualityComparer.Instance);
    private readonly List<Finding> made = [];

    public List<Finding> Apply(IReadOnlyList<Finding> findings)
    {
        foreach (var finding in findings)
            if (!finding.LeftOut) Wait(finding, -1);
        while (waiting.Count > 0)
        {
            var (order, members) = waiting.First();
            waiting.Remove(order);
            var cause = book.Book.Causes[order];
            members.RemoveAll(taken.Contains);
            if (members.Count < cause.AtLeast) continue;
            foreach (var group in members.GroupBy(finding => finding.Id.Of))
            {
                var clusters = Clusters(cause, [.. group.OrderBy(finding => Rank(cause, finding.Condition))]);
                for (var at = 0; at < clusters.Count; at++) Take(order, cause, $"{new FindingId(cause.Id, group.Key)}#{at}", clusters[at]);
            }
        }
        return [.. findings.Concat(made).Where(finding => !taken.Contains(finding))];
    }

    private void Take(int order, CauseRule cause, string name, Finding[] together)
    {
        if (together.Select(finding => finding.Condition).Distinct(StringComparer.Ordinal).Count() < cause.AtLeast) return;
        if (cause.Needs.Count > 0 && !together.Any(finding => cause.Needs.Contains(finding.Condition))) return;
        taken.UnionWith(together);
        var merged = recall.Once("group", name, together, () => Merge(cause, together));
        made.Add(merged);
        // What a cause made goes by its leading condition, and a later cause may explain that.
        Wait(merged, order);
    }

    /// <summary>
    /// What belongs to the cause wherever it was seen is one cluster; what belongs to it only in the same place joins what it shares a place
    /// with. More evidence can only join clusters, never part them.
    /// </summary>
    private static List<Finding[]> Clusters(CauseRule cause, List<Finding> ranked)
    {
        if (cause.SamePlace.Count == 0) return [[.. ranked]];
        List<HashSet<Finding>> clusters = [];
        if (ranked.Where(finding => !cause.SamePlace.Contains(finding.Condition)).ToHashSet<Finding>(ReferenceEqualityComparer.Instance) is { Count: > 0 } free) clusters.Add(free);
        foreach (var finding in ranked.Where(finding => cause.SamePlace.Contains(finding.Condition)))
        {
            var touching = clusters.FindAll(cluster => cluster.SelectMany(other => other.Places).Intersect(finding.Places).Any());
            clusters.RemoveAll(touching.Contains);
            clusters.Add(new HashSet<Finding>([finding, .. touching.SelectMany(cluster => cluster)], ReferenceEqualityComparer.Instance));
        }
        return [.. clusters.Select(cluster => ranked.Where(cluster.Contains).ToArray())];
    }

    private void Wait(Finding finding, int after)
    {
        foreach (var order in book.Causes[finding.Condition])
        {
            if (order <= after) continue;
            if (!waiting.TryGetValue(order, out var members)) waiting[order] = members = [];
            members.Add(finding);
        }
    }

    private Finding Merge(CauseRule cause, Finding[] together)
    {
        var lead = together[0];
        var heaviest = together.MaxBy(finding => finding.Weight)!;
        return lead with
        {
            Grouped = [.. together.Skip(1).Select(finding => finding.Condition)],
            Title = cause.Title,
            Weight = heaviest.Weight,
            Why = [.. heaviest.Why, new Contribution(Speaks.Together, book.Book.Words.Say("weight.together", ("what", heaviest.Title)), heaviest.Weight)],
            Spread = together.Max(finding => finding.Spread),
            Places = [.. together.SelectMany(finding => finding.Places).Distinct()],
            Components = [.. together.SelectMany(finding => finding.Components).Distinct()],
            Evidence = [.. together.SelectMany(finding => finding.Evidence).Distinct()],
            Photos = [.. together.SelectMany(finding => finding.Photos).Distinct()],
            ThenAndNow = YearsOf(together, heaviest.Weight),
            Where = writing.Where(together.SelectMany(finding => matterOf[finding.Id].Seen)),
            Observed = string.Join(' ', together.Select(finding => finding.Observed)),
            Sightings = [.. together.SelectMany(finding => finding.Sightings)],
            // The cause explains the rest; only what the heaviest leads to is said besides, or the reader meets the same warning five times.
            Matters = FindingWriting.Join(cause.Means, heaviest.Matters),
            Do = cause.Do ?? string.Join(' ', together.Select(finding => finding.Do).Distinct(StringComparer.Ordinal)),
            Trade = cause.Trade ?? heaviest.Trade,
            Cautions = [.. together.SelectMany(finding => finding.Cautions).Distinct(StringComparer.Ordinal)],
            Workings = [.. together.SelectMany(finding => finding.Workings).Distinct()],
            Sources = [.. together.SelectMany(finding => finding.Sources).Concat(cause.Sources.Select(book.Book.SourceInWords)).Distinct(StringComparer.Ordinal)],
            Overruled = [.. together.Skip(1).SelectMany(finding => finding.Overruled)],
        };
    }

    /// <summary>The years of the weightiest member; those of a lighter one say what they are about, for they say nothing of the matter as a whole.</summary>
    private static ThenAndNowSentence? YearsOf(Finding[] together, Weight weight)
    {
        var known = together.Where(finding => finding.ThenAndNow is not null).OrderByDescending(finding => finding.Weight == weight).FirstOrDefault();
        return known is null || known.Weight == weight ? known?.ThenAndNow : known.ThenAndNow! with { Words = $"{known.Title}: {known.ThenAndNow.Words}" };
    }

    private static int Rank(CauseRule cause, string condition)
    {
        for (var index = 0; index < cause.Conditions.Count; index++)
            if (cause.Conditions[index] == condition) return index;
        return cause.Conditions.Count;
    }
}
