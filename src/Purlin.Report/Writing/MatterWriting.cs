using Purlin.Book;
using Purlin.Judgement;

namespace Purlin.Report.Writing;

internal static class MatterWriting
{
    public const string Where = "Where";
    public const string What = "Part of the house";
    public const string Seen = "What was seen";
    public const string Why = "Why it matters";
    public const string Do = "What to do";
    public const string Whom = "By whom";

    public static IReadOnlyList<Matter> All(Record record, PictureNumbers pictures) =>
        [.. record.Judged.Findings.Where(finding => !finding.LeftOut).Select((finding, index) => Of(record, pictures, finding, index + 1))];

    private static Matter Of(Record record, PictureNumbers pictures, Finding finding, int number)
    {
        int[] before = [.. finding.Photos.Where(pictures.IsShown).Select(pictures.NumberOf)];
        return new Matter
        {
            Number = number,
            Finding = finding.Id,
            Title = finding.Title,
            Weight = finding.Weight,
            System = finding.System,
            Parts =
            [
                new Part(Where, Phrase.End(Phrase.Sentence(finding.Where))), new Part(What, Phrase.End(Phrase.Sentence(finding.ComponentKind.Length > 0 ? finding.ComponentKind : finding.System))), new Part(Seen, Observed(finding)),
                new Part(Why, Phrase.End(finding.Matters)), new Part(Do, Phrase.End(finding.Do)), new Part(Whom, Phrase.End(Phrase.Sentence(finding.Trade))),
            ],
            Pictures = pictures.Show(finding.Photos, finding.Title),
            SeeAlso = before,
            Trail = [.. Readings.Trail(record, finding.Evidence)],
            ThenAndNow = finding.ThenAndNow?.Words ?? "",
            Why = [.. Steps(finding.Why), .. finding.Overruled.Select(Changed)],
            Cautions = finding.Cautions,
            Workings = [.. finding.Workings.Select(index => index + 1)],
            Sources = [.. finding.Sources.Concat(finding.ThenAndNow?.Sources ?? []).Distinct()],
        };
    }

    // The weight is named where it is first reached and where it changes.
    private static IEnumerable<string> Steps(IReadOnlyList<Contribution> why)
    {
        Weight? before = null;
        foreach (var step in why)
        {
            yield return step.Weight == before ? Phrase.End(step.Words) : $"{Phrase.End(step.Words)} {Phrase.Sentence(step.Weight.Word())}.";
            before = step.Weight;
        }
    }

    // The heading stands right above: said again as the first sentence it would only tire the reader.
    private static string Observed(Finding finding)
    {
        var observed = finding.Observed.Trim();
        foreach (var head in (string[])[$"{finding.Title}. ", $"{finding.Title}: "])
            if (observed.StartsWith(head, StringComparison.OrdinalIgnoreCase)) observed = observed[head.Length..];
        return Phrase.End(Phrase.Sentence(observed));
    }

    private static string Changed(Overruling change) => change.From.Length == 0 || change.Part is "text" or "recommendation"
        ? $"The inspector put the {change.Part} in other words. Reason: {Phrase.End(change.Reason)}"
        : $"The inspector changed the {change.Part} from {change.From} to {change.To}. Reason: {Phrase.End(change.Reason)}";
}
