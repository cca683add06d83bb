using Purlin.Judgement;
using Purlin.Judgement.Looking;

namespace Purlin.Report.Writing;

/// <summary>The walk on paper: place by place what to look at first, with fields to tick, what is still to be measured, and what the
/// standard asks.</summary>
internal static class WalkWriting
{
    // As many as stand before the inspector at a time on the screen.
    private const int Most = 8;
    private const string Field = "[    ]";

    public static IEnumerable<Chapter> Of(ReportModel model)
    {
        var (record, words) = (model.Record, model.Words);
        var places = LookOrder.Of(record.Inspection, record.Judged, record.Book);
        yield return new Chapter("walk", words.Say("report.walk.title"), words.Say("report.walk.lead"), [new Block.Figure(model.Map,
            "") { Upright = model.Upright }]);
        for (var index = 0; index < places.Count; index++)
            if (places[index].Looks.Count > 0) yield return new Chapter($"walk-{index + 1}", words.Place(places[index].Name), "",
                [Looks(record, places[index])]);
        if (record.Judged.Asks.Count > 0)
            yield return new Chapter("walk-asks", words.Say("report.walk.measure"), "", [Lines(record.Judged.Asks.Select(ask =>
                Phrase.End(ask.Words)).Distinct(), words.Say("report.column.reading"), words)]);
        foreach (var coverage in record.Judged.Coverage)
        {
            DutyState[] open = [.. coverage.Duties.Where(duty => duty.State == DutyStanding.Open)];
            if (open.Length > 0) yield return new Chapter($"walk-{coverage.Standard}",
                record.Book.Standards.GetValueOrDefault(coverage.Standard)?.Title ?? coverage.Title, words.Say("report.walk.open"),
                [Lines(open.Select(duty => $"{duty.Section}: {Phrase.End(duty.Text)}"), words.Say("report.column.noted"), words)]);
        }
    }

    private static Block.Table Looks(Record record, PlaceLooks place)
    {
        var words = record.Words;
        return new Block.Table("", [words.Say("report.column.look"), words.Say("report.column.seen"), words.Say("report.column.clear"),
            words.Say("report.column.hidden"), words.Say("report.column.noted")],
            [.. place.Looks.Take(Most).Select(look => (IReadOnlyList<Prose>)[record.ConditionName(look.Condition), Field, Field, Field,
                ""])])
        { Shares = [0.42, 0.09, 0.1, 0.13, 0.26], Fine = true };
    }

    private static Block.Table Lines(IEnumerable<string> lines, string column, Phrase words) => new("", [words.Say("report.column.what"),
        "", column], [.. lines.Select(line => (IReadOnlyList<Prose>)[line, Field, ""])])
    { Shares = [0.62, 0.1, 0.28], Fine = true };
}
