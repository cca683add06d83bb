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
            if (!gathered.Contains(entry) && record.Say(entry) is { Length: > 0 } line) yield return new TrailLine(entry.ToString(), line) { At = record.At(entry) is { } at ? record.Words.Moment(at) : "" };
        foreach (var survey in surveys)
            yield return new TrailLine($"{survey.First().Id} {record.Words.Say("report.to")} {survey.Last().Id}", Said(record, survey.Key.Kind, survey.Key.Unit, [.. survey])) { At = record.Words.Moment(survey.First().At) };
    }

    /// <summary>The same sentences, with runs of readings of one kind drawn together.</summary>
    public static string Gathered(Phrase words, string text)
    {
        var found = Sentence().Matches(text).GroupBy(match => (Kind: match.Groups["kind"].Value, Unit: match.Groups["unit"].Value)).Where(group => group.Count() >= Many).ToArray();
        foreach (var group in found)
        {
            var values = group.Select(match => double.Parse(match.Groups["value"].ValueSpan, CultureInfo.InvariantCulture)).ToArray();
            foreach (var match in group.Select(match => match.Value).Distinct()) text = text.Replace(match, "", StringComparison.Ordinal);
            text = Spaces().Replace(text, " ").Trim();
            text = $"{text} {words.Say("report.readings.gathered", ("kind", group.Key.Kind), ("count", values.Length), ("low", words.Number(values.Min())), ("high", words.WithUnit(words.Number(values.Max()), group.Key.Unit)))}".Trim();
        }
        return text;
    }

    private static string Said(Record record, string kind, string unit, IReadOnlyList<Reading> survey)
    {
        var places = survey.Select(reading => record.PlaceName(reading.Body.Place)).Where(place => place.Length > 0).Distinct().ToArray();
        var (words, values) = (record.Words, survey.Select(reading => reading.Body.Amount.Value).ToArray());
        return words.Say("report.readings.survey", ("kind", words.Word(kind)), ("count", survey.Count), ("low", words.Number(values.Min())), ("high", words.WithUnit(words.Number(values.Max()), unit)), ("places", SaidValue.Of(places)));
    }

    [GeneratedRegex(@"Measured (?<kind>[^:.]+): (?<value>-?[0-9]+(\.[0-9]+)?) ?(?<unit>[^.0-9 ]*)\.( |$)", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Sentence();

    [GeneratedRegex("  +", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Spaces();
}
