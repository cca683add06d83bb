using Purlin.Judgement;

namespace Purlin.Report.Writing;

internal static class LimitationWriting
{
    public static IEnumerable<Chapter> Of(Record record, PictureNumbers pictures)
    {
        if (record.Judged.Limitations.Count == 0) yield break;
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
        yield return new Chapter("limitations", "What could not be looked at or tested", "Where we could not look we cannot say how things are. Each line gives the reason and the next step.", blocks);
    }
}
