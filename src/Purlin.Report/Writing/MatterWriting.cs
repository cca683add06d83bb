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
            Untranslated = record.IsTranslated(finding) ? "" : record.Words.Say("report.untranslated"),
            Clear = SeenWriting.Clear(finding, record.Words),
            Parts = Parts(finding, seen),
            Questions = [.. record.HandedOn(finding).Select(end => new Question(Phrase.End(end.Referral), end.Trade)).Distinct()],
            Pictures = pictures.Show(finding.Photos, finding.Title),
            SeeAlso = before,
            Trail = [.. Readings.Trail(record, finding.Evidence)],
            Years = finding.ThenAndNow is { } years ? YearWriting.Of(years, record.Words) : "",
            ThenAndNow = finding.ThenAndNow?.Words ?? "",
            Why = [.. Steps(finding.Why), .. finding.Overruled.Select(Changed)],
            Cautions = [.. finding.Cautions.Select(words => Letter(cautions.Of(words)))],
            Workings = [.. finding.Workings.Select(index => index + 1)],
            Sources = [.. finding.Sources.Concat(finding.ThenAndNow?.Sources ?? []).Select(Phrase.Cited).Distinct(StringComparer.Ordinal).Select(sources.Of)],
            Locator = Locator.Draw(record.Inspection, finding.Places, record.Words.Tongue),
        };
    }

    /// <summary>a, b, ... z, aa: the sign of a caution.</summary>
    public static string Letter(int number) => number <= 26 ? $"{(char)('a' + number - 1)}" : $"{(char)('a' + number / 26 - 1)}{(char)('a' + number % 26)}";

    private IReadOnlyList<MatterText> Parts(Finding finding, IReadOnlyList<Prose> seen) =>
    [
        Part(MatterPart.Where, Phrase.End(Phrase.Sentence(finding.Where))),
        Part(MatterPart.What, Phrase.End(Phrase.Sentence(finding.ComponentKind.Length > 0 ? record.Words.Kind(finding.ComponentKind) : record.Words.Word(finding.System)))),
        Part(MatterPart.Seen, string.Join(' ', seen.Select(line => line.ToString()))),
        Part(MatterPart.Why, Phrase.End(finding.Matters)),
        Part(MatterPart.Do, Phrase.End(finding.Do)),
        Part(MatterPart.Whom, Phrase.End(Phrase.Sentence(record.Words.TradeWhole(finding.Trade)))),
    ];

    private MatterText Part(MatterPart kind, string text) => new(kind, record.Words.Label(kind), text);

    private string Quantity(Finding finding)
    {
        Sample[] samples = [.. finding.Evidence.Select(record.Observation).Select(observation => observation?.Body.Sample).OfType<Sample>()];
        if (samples.Sum(sample => sample.Failed) is > 0 and var failed) return record.Words.Say("report.quantity.of", ("failed", failed), ("tried", samples.Sum(sample => sample.Tried)));
        return finding.Places.Count > 1 ? record.Words.Say("report.quantity.places", ("count", finding.Places.Count)) : finding.Components.Count > 1 ? $"{finding.Components.Count}" : "1";
    }

    // The weight is named where it is first reached and where it changes; a step that changes nothing is not worth a line.
    private IEnumerable<string> Steps(IReadOnlyList<Contribution> why)
    {
        Book.Weight? before = null;
        foreach (var step in why)
        {
            if (step.Weight == before && step.What == Speaks.Spread) continue;
            yield return step.Weight == before ? Phrase.End(step.Words) : $"{Phrase.End(step.Words)} {Phrase.Sentence(record.Words.Word(step.Weight))}.";
            before = step.Weight;
        }
    }

    private string Changed(Overruling change) => change.From.Length == 0 || change.Part is FindingPart.Text or FindingPart.Recommendation
        ? record.Words.Say("report.changed.words", ("part", record.Words.Word(Book.WordTable.Word(change.Part))), ("reason", Phrase.End(change.Reason)))
        : record.Words.Say("report.changed", ("part", record.Words.Word(Book.WordTable.Word(change.Part))), ("from", record.Words.Word(change.From)), ("to", record.Words.Word(change.To)), ("reason", Phrase.End(change.Reason)));
}
