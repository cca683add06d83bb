using Purlin.Journal;
using Purlin.Judgement;

namespace Purlin.Report.Writing;

internal static class LimitationWriting
{
    public static IEnumerable<Chapter> Of(Record record, PictureNumbers pictures)
    {
        var byHand = ByHand(record);
        if (record.Judged.Limitations.Count == 0 && byHand.Count == 0) yield break;
        List<Block> blocks = [];
        foreach (var limitation in record.Judged.Limitations)
        {
            blocks.Add(new Block.Heading(Phrase.Sentence(limitation.What)));
            List<string> said = [];
            if (record.PlaceName(limitation.Place) is { Length: > 0 } place) said.Add($"{place}.");
            said.Add(limitation.Cause is { Length: > 0 } cause ? Phrase.End(Phrase.Sentence(cause)) : "The reason has not been recorded.");
            blocks.Add(new Block.Paragraph(string.Join(' ', said)));
            blocks.Add(new Block.Paragraph(limitation.Next is { Length: > 0 } next ? $"Next: {Phrase.End(next)}" : "Next: no step has been recorded."));
            if (pictures.Show(limitation.Photos, limitation.What) is { Count: > 0 } shown) blocks.Add(new Block.Pictures(shown) { Small = true });
        }
        if (byHand.Count > 0) blocks.Add(new Block.Table("Also not inspected, as the inspector states.", ["What", "Reason"], byHand) { Shares = [0.5, 0.5] });
        yield return new Chapter("limitations", "What could not be looked at or tested", "Where we could not look we cannot say how things are. Each line gives the reason and the next step.", blocks);
    }

    /// <summary>Duties closed by hand as not inspected: no limitation was recorded for them, and their reason belongs here too.</summary>
    private static List<IReadOnlyList<string>> ByHand(Record record)
    {
        var hands = record.Inspection.DutiesMet.Values.Where(slot => slot.Value.How == DutyClose.NotInspected).Select(slot => slot.Standing[0].By).ToHashSet();
        return [.. record.Judged.Coverage.SelectMany(coverage => coverage.Duties).Where(duty => duty.State == DutyStanding.Limited && duty.Evidence.Any(hands.Contains))
            .DistinctBy(duty => duty.Text).Select(duty => (IReadOnlyList<string>)[Phrase.End(duty.Text), Phrase.End(Phrase.Sentence(duty.Words))])];
    }
}
