using Purlin.Book;
using Purlin.Journal;
using Purlin.Judgement.Evidence;

namespace Purlin.Judgement.Findings;

/// <summary>Writes a matter as a finding: place, component, condition, why it matters, what to do, by whom.</summary>
internal sealed class FindingWriting(EvidenceIndex evidence)
{
    public Written Write(Concern matter, ThenAndNowSentence? thenAndNow)
    {
        var condition = matter.Condition;
        var book = evidence.Book;
        var spread = matter.Spread;
        var seen = Seen(matter);
        var why = Weighing.Contributions(Weighing.Here(condition.Weight, evidence), spread, book.Words);
        Finding finding = new()
        {
            Id = matter.Id,
            Condition = condition.Id,
            System = condition.System,
            Title = Sentence(condition.Name, stop: false),
            Weight = why[^1].Weight,
            Why = why,
            Spread = spread,
            Places = matter.Places,
            Components = [.. matter.Seen.Where(look => look.Component is not null).Select(look => look.Component!.Value).Distinct()],
            ComponentKind = condition.Component,
            Evidence = matter.Entries,
            Photos = [.. matter.Entries.SelectMany(evidence.PhotosFor).Distinct()],
            Where = Where(matter.Seen),
            Observed = Observed(seen),
            Sightings = [seen],
            Matters = Join(condition.Means, condition.Leads),
            Do = condition.Do,
            Trade = condition.Trade,
            Cautions = [.. condition.Cautions.Select(caution => book.Cautions.GetValueOrDefault(caution, caution))],
            Sources = [.. condition.Sources.Select(book.SourceInWords)],
            ThenAndNow = thenAndNow,
        };
        return new Written(finding, [.. matter.Seen.Select(look => look.Working).OfType<JudgedWorking>().Distinct<JudgedWorking>(ReferenceEqualityComparer.Instance)]);
    }

    /// <summary>Places in the order of the walk, each with the spots in it.</summary>
    public string Where(IEnumerable<Sighting> seen)
    {
        var words = evidence.Book.Words;
        List<string> parts = [];
        foreach (var place in seen.GroupBy(look => look.Place).OrderBy(group => evidence.Walk(group.Key)))
        {
            var name = place.Key is null ? words.Say("where.house") : evidence.NameOf(place.Key);
            List<string> spots = [.. place.Where(look => !string.IsNullOrWhiteSpace(look.Spot)).Select(look => look.Spot!.Trim()).Distinct(StringComparer.Ordinal)];
            parts.Add(spots.Count == 0 ? name : $"{name} ({string.Join("; ", spots)})");
        }
        return string.Join(", ", parts);
    }

    private string Observed(SeenLine seen)
    {
        List<string> sentences = [Sentence(seen.Name, stop: true), .. seen.Said];
        if (seen.Clear.Count > 0) sentences.Add(evidence.Book.Words.Say("observed.clear", ("places", string.Join(", ", seen.Clear))));
        return string.Join(' ', sentences);
    }

    private SeenLine Seen(Concern matter)
    {
        var said = matter.Seen.Select(look => look.Words).Where(words => !string.IsNullOrWhiteSpace(words)).Distinct(StringComparer.Ordinal)
            .Where(words => words != matter.Condition.Name).Select(words => Sentence(words!, stop: true)).ToList();
        var samples = matter.Looks.Where(look => look.Looked && look.Sample is not null).Select(look => look.Sample!).ToList();
        if (samples.Count > 0)
        {
            said.Add(evidence.Book.Words.Say("observed.sample", ("tried", $"{samples.Sum(sample => sample.Tried)}"),
                ("of", $"{samples.Sum(sample => sample.Of)}"), ("failed", $"{samples.Sum(sample => sample.Failed)}")));
        }
        var clear = matter.Looks.Where(look => look.Looked && !look.IsSeen && look.Place is { } place && !matter.Places.Contains(place))
            .Select(look => look.Place).Distinct().OrderBy(evidence.Walk).Select(evidence.NameOf).ToList();
        return new SeenLine(matter.Condition.Id, matter.Condition.Name, Where(matter.Seen), said, clear);
    }

    public static string Join(string first, string second) => second.Length == 0 ? first : first.Length == 0 ? second : $"{first.TrimEnd()} {second.TrimStart()}";

    /// <summary>First letter upper case, and a full stop at the end where wanted.</summary>
    public static string Sentence(string text, bool stop)
    {
        var trimmed = text.Trim();
        if (trimmed.Length == 0) return trimmed;
        var upper = char.ToUpperInvariant(trimmed[0]) + trimmed[1..];
        return stop && upper[^1] is not ('.' or '!' or '?' or ':') ? upper + "." : upper;
    }
}
