using Purlin.Journal;
using Purlin.Judgement;

namespace Purlin.Report.Writing;

/// <summary>Symptoms that were followed: those handed to a trade, those settled on the day.</summary>
internal static class FollowUpWriting
{
    public static IEnumerable<Chapter> Of(Record record)
    {
        var ends = record.Judged.LooseEnds;
        if (ends.Count == 0) yield break;
        List<Block> blocks = [];
        var handed = ends.Where(end => end.Tied is null || end.Tied.How == Tie.Referral).ToArray();
        if (handed.Length > 0)
        {
            blocks.Add(new Block.Heading("Questions handed on"));
            blocks.Add(new Block.Table("What we noticed and could not settle on the day. Put each question to the trade named.", ["Noticed", "Ask for", "Of whom"],
                [.. handed.Select(end => (IReadOnlyList<string>)[Phrase.End(end.Because), Phrase.End(end.Referral), Phrase.Sentence(end.Trade)])]) { Shares = [0.36, 0.42, 0.22] });
        }
        var settled = ends.Where(end => end.Tied is { How: not Tie.Referral }).ToArray();
        if (settled.Length > 0)
        {
            blocks.Add(new Block.Heading("Questions followed to their end"));
            blocks.Add(new Block.Table("What we noticed, what we then looked for, and what came of it.", ["Noticed", "Looked for", "Came of it"],
                [.. settled.Select(end => (IReadOnlyList<string>)[Phrase.End(end.Because), Phrase.End(end.Question), Phrase.End(Phrase.Sentence(end.Tied!.Words))])]) { Shares = [0.32, 0.32, 0.36] });
        }
        yield return new Chapter("follow-up", "Symptoms that were followed", "A symptom seen in one place is a question in others. This is where each question led.", blocks);
    }
}
