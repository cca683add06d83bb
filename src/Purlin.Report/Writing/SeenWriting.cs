using Purlin.Journal;
using Purlin.Judgement;

namespace Purlin.Report.Writing;

/// <summary>What was seen, a line a condition: what, where, how many.</summary>
internal static class SeenWriting
{
    public static IReadOnlyList<Prose> Lines(Finding finding)
    {
        if (finding.Sightings.Count == 0) return [Bare(finding)];
        if (finding.Sightings is [var only]) return [only.Said.Count == 0 ? Phrase.End(only.Name) : string.Join(' ', only.Said.Select(Phrase.End))];
        return [.. finding.Sightings.Select(line => new Prose(new Run(Phrase.End(Phrase.Sentence(line.Name)), Strong: true), new Run($"{Place(line)} {string.Join(' ', line.Said.Select(Phrase.End))}".TrimEnd())))];
    }

    /// <summary>Where the same was looked for and not seen; of several conditions, those places where none was seen.</summary>
    public static string Clear(Finding finding, Phrase words)
    {
        var places = finding.Sightings.SelectMany(line => line.Clear).Distinct(StringComparer.Ordinal).Where(place => !finding.Sightings.Any(line => line.Where.Contains(place, StringComparison.Ordinal))).ToArray();
        return places.Length == 0 ? "" : words.Say("report.clear.places", ("places", SaidValue.Of(places)));
    }

    private static string Place(SeenLine line) => line.Where.Length == 0 ? "" : $" {Phrase.End(Phrase.Sentence(line.Where))}";

    // The heading stands right above: said again as the first sentence it would only tire the reader.
    private static string Bare(Finding finding)
    {
        var observed = finding.Observed.Trim();
        foreach (var head in (string[])[$"{finding.Title}. ", $"{finding.Title}: "])
            if (observed.StartsWith(head, StringComparison.OrdinalIgnoreCase)) observed = observed[head.Length..];
        return Phrase.End(Phrase.Sentence(observed));
    }
}
