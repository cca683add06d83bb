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
                [.. handed.Select(end => (IReadOnlyList<string>)[Phrase.End(end.Because), Phrase.End(end.Referral), Phrase.Sentence(end.Trade)])])
            { Shares = [0.36, 0.42, 0.22], Fine = true });
        }
        var settled = ends.Where(end => end.Tied is { How: not Tie.Referral }).ToArray();
        if (settled.Length > 0)
        {
            blocks.Add(new Block.Heading("Questions followed to their end"));
            blocks.Add(new Block.Table("What we noticed, what we then looked for, and what came of it.", ["Noticed", "Looked for, and what came of it"],
                [.. settled.GroupBy(end => end.Because).Select(group => (IReadOnlyList<string>)[Phrase.End(group.Key), string.Join('\n', group.Select(Answered))])])
            { Shares = [0.24, 0.76], Fine = true });
        }
        yield return new Chapter("follow-up", "Symptoms that were followed", "A symptom seen in one place is a question in others. This is where each question led.", blocks);
    }

    private static string Answered(LooseEnd end) => $"{Phrase.End(end.Question)} → {Readings.Gathered(Phrase.End(Phrase.Sentence(end.Tied!.Words)))}";
}
