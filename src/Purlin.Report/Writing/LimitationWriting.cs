using Purlin.Journal;
using Purlin.Judgement;

namespace Purlin.Report.Writing;

/// <summary>What could not be looked at or tested, as one table: what, why, what to do about it.</summary>
internal static class LimitationWriting
{
    public const string Id = "limitations";

    public static IEnumerable<Chapter> Of(ReportModel model, bool withPictures = true)
    {
        var (record, words) = (model.Record, model.Words);
        List<IReadOnlyList<Prose>> rows = [.. record.Judged.Limitations.Select(limitation => Row(record, limitation)), .. ByHand(record)];
        var other = record.Judged.LooseEnds.Where(end => Record.IsHandedOn(end) && record.MatterOf(end) is null).ToArray();
        if (rows.Count + other.Length == 0) yield break;
        List<Block> blocks = [];
        if (rows.Count > 0) blocks.Add(new Block.Table(words.Say("report.limits.table"), [words.Say("report.column.not-seen"), words.Say("report.column.why"), words.Say("report.column.do")], rows) { Shares = [0.32, 0.32, 0.36], Fine = true });
        if (withPictures && model.InTheWay.Count > 0) blocks.Add(new Block.Pictures(model.InTheWay));
        if (other.Length > 0)
            blocks.Add(new Block.Table(words.Say("report.limits.questions"), [words.Say("report.column.noticed"), words.Say("report.column.ask-for"), words.Say("report.column.of-whom")], [.. other.Select(end => (IReadOnlyList<Prose>)[Phrase.End(end.Because), Phrase.End(end.Referral), Phrase.Sentence(words.TradeWhole(end.Trade))])]) { Shares = [0.36, 0.42, 0.22], Fine = true });
        yield return new Chapter(Id, words.Say("report.limits.title"), "", blocks);
    }

    private static IReadOnlyList<Prose> Row(Record record, JudgedLimitation limitation)
    {
        var place = record.PlaceName(limitation.Place);
        var what = Phrase.Sentence(limitation.What);
        if (place.Length > 0 && !what.Contains(place, StringComparison.OrdinalIgnoreCase)) what = $"{Phrase.End(what)} {place}.";
        return [what, limitation.Cause is { Length: > 0 } cause ? Phrase.End(Phrase.Sentence(cause)) : record.Words.Say("report.limits.no-cause"), limitation.Next is { Length: > 0 } next ? Phrase.End(Phrase.Sentence(next)) : record.Words.Say("report.limits.no-step")];
    }

    /// <summary>Duties closed by hand as not inspected: no limitation was recorded for them, and their reason belongs here too.</summary>
    private static IEnumerable<IReadOnlyList<Prose>> ByHand(Record record)
    {
        var hands = record.Inspection.DutiesMet.Values.Where(slot => slot.Value.How == DutyClose.NotInspected).Select(slot => slot.Standing[0].By).ToHashSet();
        return record.Judged.Coverage.SelectMany(coverage => coverage.Duties).Where(duty => duty.State == DutyStanding.Limited && duty.Evidence.Any(hands.Contains))
            .DistinctBy(duty => duty.Text).Select(duty => (IReadOnlyList<Prose>)[Phrase.End(duty.Text), Phrase.End(Phrase.Sentence(duty.Words)), record.Words.Say("report.limits.by-hand")]);
    }
}
