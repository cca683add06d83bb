using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Judgement;
using Purlin.Report.Section;

namespace Purlin.Report.Writing;

/// <summary>Writes findings as matters, heaviest first.</summary>
internal sealed class MatterWriting(Record record, PictureNumbers pictures, Numbering cautions, Numbering sources)
{
    public IReadOnlyList<Matter> All() => [.. record.Matters.Select((finding, index) => Of(finding, index + 1))];

    private Matter Of(Finding finding, int number)
    {
        int[] before = [.. finding.Photos.Where(pictures.IsShown).Select(pictures.NumberOf)];
        var seen = SeenWriting.Lines(finding);
        return new Matter
        {
            Number = number,
            Finding = finding.Id.ToString(),
            Title = finding.Title,
            Weight = finding.Weight,
            Due = finding.Due ?? new Due(Book.ByWhen.WhenNextWorkedOn, ""),
            System = finding.System,
            Places = [.. finding.Places.Select(place => record.PlaceName(place)).Where(name => name.Length > 0)],
            Trade = finding.Trade,
            Quantity = Quantity(finding),
            Seen = seen,
            Clear = SeenWriting.Clear(finding),
            Parts = Parts(finding, seen),
            Questions = [.. record.HandedOn(finding).Select(end => new Question(Phrase.End(end.Referral), end.Trade)).Distinct()],
            Pictures = pictures.Show(finding.Photos, finding.Title),
            SeeAlso = before,
            Trail = [.. Readings.Trail(record, finding.Evidence)],
            Years = finding.ThenAndNow is { } years ? YearWriting.Of(years) : "",
            ThenAndNow = finding.ThenAndNow?.Words ?? "",
            Why = [.. Steps(finding.Why), .. finding.Overruled.Select(Changed)],
            Cautions = [.. finding.Cautions.Select(words => Letter(cautions.Of(words)))],
            Workings = [.. finding.Workings.Select(index => index + 1)],
            Sources = [.. finding.Sources.Concat(finding.ThenAndNow?.Sources ?? []).Select(Phrase.Cited).Distinct(StringComparer.Ordinal).Select(sources.Of)],
            Locator = Locator.Draw(record.Inspection, finding.Places),
        };
    }

    /// <summary>a, b, ... z, aa: the sign of a caution.</summary>
    public static string Letter(int number) => number <= 26 ? $"{(char)('a' + number - 1)}" : $"{(char)('a' + number / 26 - 1)}{(char)('a' + number % 26)}";

    private static IReadOnlyList<Part> Parts(Finding finding, IReadOnlyList<Prose> seen) =>
    [
        Part(MatterPart.Where, Phrase.End(Phrase.Sentence(finding.Where))),
        Part(MatterPart.What, Phrase.End(Phrase.Sentence(finding.ComponentKind.Length > 0 ? finding.ComponentKind : finding.System))),
        Part(MatterPart.Seen, string.Join(' ', seen.Select(line => line.ToString()))),
        Part(MatterPart.Why, Phrase.End(finding.Matters)),
        Part(MatterPart.Do, Phrase.End(finding.Do)),
        Part(MatterPart.Whom, Phrase.End(Phrase.Sentence(finding.Trade))),
    ];

    private static Part Part(MatterPart kind, string text) => new(kind, Phrase.Label(kind), text);

    private string Quantity(Finding finding)
    {
        Sample[] samples = [.. finding.Evidence.Select(record.Observation).Select(observation => observation?.Body.Sample).OfType<Sample>()];
        if (samples.Sum(sample => sample.Failed) is > 0 and var failed) return $"{failed} of {samples.Sum(sample => sample.Tried)}";
        return finding.Places.Count > 1 ? $"{finding.Places.Count} places" : finding.Components.Count > 1 ? $"{finding.Components.Count}" : "1";
    }

    // The weight is named where it is first reached and where it changes; a step that changes nothing is not worth a line.
    private static IEnumerable<string> Steps(IReadOnlyList<Contribution> why)
    {
        Book.Weight? before = null;
        foreach (var step in why)
        {
            if (step.Weight == before && step.What == Speaks.Spread) continue;
            yield return step.Weight == before ? Phrase.End(step.Words) : $"{Phrase.End(step.Words)} {Phrase.Sentence(Book.WordTable.Word(step.Weight))}.";
            before = step.Weight;
        }
    }

    private static string Changed(Overruling change) => change.From.Length == 0 || change.Part is FindingPart.Text or FindingPart.Recommendation
        ? $"The inspector put the {Book.WordTable.Word(change.Part)} in other words. Reason: {Phrase.End(change.Reason)}"
        : $"The inspector changed the {Book.WordTable.Word(change.Part)} from {change.From} to {change.To}. Reason: {Phrase.End(change.Reason)}";
}
