using Purlin.Judgement.Book;
using Purlin.Judgement.Findings;

namespace Purlin.Judgement.Causes;

/// <summary>
/// Groups findings under the cause that explains them. A group weighs what its heaviest member weighs, so grouping never makes anything
/// smaller; what the inspector left out stays out of groups, so that leaving one out never hides another.
/// </summary>
internal sealed class Grouping(RuleBook book, IReadOnlyList<Matter> matters, FindingWriting writing)
{
    private readonly Dictionary<string, Matter> matterOf = matters.ToDictionary(matter => matter.Id, StringComparer.Ordinal);

    public List<Finding> Apply(IReadOnlyList<Finding> findings)
    {
        List<Finding> left = [.. findings];
        foreach (var cause in book.Causes)
        {
            var members = left.Where(finding => !finding.LeftOut && cause.Conditions.Contains(finding.Condition)).ToList();
            foreach (var group in members.GroupBy(finding => Apart(finding.Id), StringComparer.Ordinal))
            {
                foreach (var together in Clusters(cause, [.. group.OrderBy(finding => Rank(cause, finding.Condition))]))
                {
                    if (together.Select(finding => finding.Condition).Distinct(StringComparer.Ordinal).Count() < cause.AtLeast) continue;
                    if (cause.Needs.Count > 0 && !together.Exists(finding => cause.Needs.Contains(finding.Condition))) continue;
                    left.RemoveAll(together.Contains);
                    left.Add(Merge(cause, together));
                }
            }
        }
        return left;
    }

    /// <summary>
    /// What belongs to the cause wherever it was seen is one cluster; what belongs to it only in the same place joins what it shares a place
    /// with. More evidence can only join clusters, never part them.
    /// </summary>
    private static List<List<Finding>> Clusters(CauseRule cause, List<Finding> ranked)
    {
        if (cause.SamePlace.Count == 0) return [ranked];
        List<HashSet<Finding>> clusters = [];
        if (ranked.Where(finding => !cause.SamePlace.Contains(finding.Condition)).ToHashSet() is { Count: > 0 } free) clusters.Add(free);
        foreach (var finding in ranked.Where(finding => cause.SamePlace.Contains(finding.Condition)))
        {
            var touching = clusters.FindAll(cluster => cluster.SelectMany(other => other.Places).Intersect(finding.Places).Any());
            clusters.RemoveAll(touching.Contains);
            clusters.Add([finding, .. touching.SelectMany(cluster => cluster)]);
        }
        return [.. clusters.Select(cluster => ranked.FindAll(cluster.Contains))];
    }

    private Finding Merge(CauseRule cause, List<Finding> together)
    {
        var lead = together[0];
        var heaviest = together.MaxBy(finding => finding.Weight)!;
        return lead with
        {
            Grouped = [.. together.Skip(1).Select(finding => finding.Condition)],
            Title = cause.Title,
            Weight = heaviest.Weight,
            Why = [.. heaviest.Why, new Contribution("together", book.Words.Say("weight.together", ("what", heaviest.Title)), heaviest.Weight)],
            Spread = together.Max(finding => finding.Spread),
            Places = [.. together.SelectMany(finding => finding.Places).Distinct()],
            Components = [.. together.SelectMany(finding => finding.Components).Distinct()],
            Evidence = [.. together.SelectMany(finding => finding.Evidence).Distinct()],
            Photos = [.. together.SelectMany(finding => finding.Photos).Distinct()],
            ThenAndNow = YearsOf(together, heaviest.Weight),
            Where = writing.Where(together.SelectMany(finding => matterOf[finding.Id].Seen)),
            Observed = string.Join(' ', together.Select(finding => finding.Observed)),
            // The cause explains the rest; only what the heaviest leads to is said besides, or the reader meets the same warning five times.
            Matters = FindingWriting.Join(cause.Means, heaviest.Matters),
            Do = cause.Do ?? string.Join(' ', together.Select(finding => finding.Do).Distinct(StringComparer.Ordinal)),
            Trade = cause.Trade ?? heaviest.Trade,
            Cautions = [.. together.SelectMany(finding => finding.Cautions).Distinct(StringComparer.Ordinal)],
            Workings = [.. together.SelectMany(finding => finding.Workings).Distinct()],
            Sources = [.. together.SelectMany(finding => finding.Sources).Concat(cause.Sources.Select(book.SourceInWords)).Distinct(StringComparer.Ordinal)],
            Overruled = [.. together.Skip(1).SelectMany(finding => finding.Overruled)],
        };
    }

    /// <summary>The years of the weightiest member; those of a lighter one say what they are about, for they say nothing of the matter as a whole.</summary>
    private static ThenAndNowSentence? YearsOf(List<Finding> together, Weight weight)
    {
        var known = together.Where(finding => finding.ThenAndNow is not null).OrderByDescending(finding => finding.Weight == weight).FirstOrDefault();
        return known is null || known.Weight == weight ? known?.ThenAndNow : known.ThenAndNow! with { Words = $"{known.Title}: {known.ThenAndNow.Words}" };
    }

    private static string Apart(string id)
    {
        var at = id.IndexOf('@', StringComparison.Ordinal);
        return at < 0 ? "" : id[at..];
    }

    private static int Rank(CauseRule cause, string condition)
    {
        for (var index = 0; index < cause.Conditions.Count; index++)
            if (cause.Conditions[index] == condition) return index;
        return cause.Conditions.Count;
    }
}
