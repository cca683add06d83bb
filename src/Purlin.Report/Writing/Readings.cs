using System.Globalization;
using System.Text.RegularExpressions;
using Purlin.Journal;
using Purlin.Journal.Fold;

namespace Purlin.Report.Writing;

/// <summary>Many readings of one kind said as one: how many, from where to where.</summary>
internal static partial class Readings
{
    private const int Many = 4;

    /// <summary>The trail of evidence, line by line; a survey is one line.</summary>
    public static IEnumerable<TrailLine> Trail(Record record, IReadOnlyList<EntryName> evidence)
    {
        var surveys = record.Inspection.Readings.Where(reading => evidence.Contains(reading.Id)).GroupBy(reading => (reading.Body.Kind, reading.Body.Set, reading.Body.Amount.Unit)).Where(group => group.Count() >= Many).ToArray();
        var gathered = surveys.SelectMany(group => group).Select(reading => reading.Id).ToHashSet();
        foreach (var entry in evidence)
            if (!gathered.Contains(entry) && record.Say(entry) is { Length: > 0 } line) yield return new TrailLine(entry.ToString(), line) { At = record.At(entry) is { } at ? Phrase.Moment(at) : "" };
        foreach (var survey in surveys)
            yield return new TrailLine($"{survey.First().Id} to {survey.Last().Id}", Said(record, survey.Key.Kind, survey.Key.Unit, [.. survey])) { At = Phrase.Moment(survey.First().At) };
    }

    /// <summary>The same sentences, with runs of readings of one kind drawn together.</summary>
    public static string Gathered(string text)
    {
        var found = Sentence().Matches(text).GroupBy(match => (Kind: match.Groups["kind"].Value, Unit: match.Groups["unit"].Value)).Where(group => group.Count() >= Many).ToArray();
        foreach (var group in found)
        {
            var values = group.Select(match => double.Parse(match.Groups["value"].ValueSpan, CultureInfo.InvariantCulture)).ToArray();
            foreach (var match in group.Select(match => match.Value).Distinct()) text = text.Replace(match, "", StringComparison.Ordinal);
            text = Spaces().Replace(text, " ").Trim();
            text = $"{text} Measured {group.Key.Kind}: {values.Length} readings from {Phrase.Number(values.Min())} to {Phrase.Number(values.Max())} {group.Key.Unit}".Trim() + ".";
        }
        return text;
    }

    private static string Said(Record record, string kind, string unit, IReadOnlyList<Reading> survey)
    {
        var places = survey.Select(reading => record.PlaceName(reading.Body.Place)).Where(place => place.Length > 0).Distinct().ToArray();
        return $"Measured: {kind}, {survey.Count} readings from {Phrase.Number(survey.Min(reading => reading.Body.Amount.Value))} to {Phrase.Number(survey.Max(reading => reading.Body.Amount.Value))} {unit}".TrimEnd() + (places.Length > 0 ? $", {Phrase.List(places)}." : ".");
    }

    [GeneratedRegex(@"Measured (?<kind>[^:.]+): (?<value>-?[0-9]+(\.[0-9]+)?) ?(?<unit>[^.0-9 ]*)\.( |$)", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Sentence();

    [GeneratedRegex("  +", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Spaces();
}
