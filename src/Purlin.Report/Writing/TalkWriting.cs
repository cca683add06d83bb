using Purlin.Book;

namespace Purlin.Report.Writing;

/// <summary>What to say in the call to the client, in the order in which it helps to hear it.</summary>
internal static class TalkWriting
{
    public static IEnumerable<Chapter> Of(ReportModel model)
    {
        var words = model.Words;
        List<Block> blocks = [];
        foreach (var answer in new AnswerWriting(model).All())
        {
            blocks.Add(new Block.Heading(answer.Question));
            blocks.Add(new Block.Paragraph(answer.Reply.Then(" ").Then(answer.Words)));
        }
        yield return new Chapter("call", words.Say("report.call.title"), words.Say("report.call.lead"), blocks);
        foreach (var by in ByWhenWords.SoonestFirst)
        {
            Matter[] matters = [.. model.Matters.Where(matter => matter.Due.By == by)];
            if (matters.Length == 0) continue;
            yield return new Chapter($"call-{(int)by}", Phrase.Sentence(words.Word(by)), "", [by <= ByWhen.BeforeBound ? Told(matters, words) : Named(matters, words)]);
        }
        foreach (var chapter in LimitationWriting.Of(model, withPictures: false)) yield return chapter;
        yield return Next(model);
    }

    private static Block Told(IReadOnlyList<Matter> matters, Phrase words) => new Block.Table(words.Say("report.call.matters", ("count", matters.Count)), [words.Say("report.column.matter"), words.Say("report.column.saw-do"), words.Say("report.column.who")],
        [.. matters.Select(matter => (IReadOnlyList<Prose>)[$"{matter.Number}. {matter.Title}", $"{First(matter.Say(MatterPart.Seen))} {First(matter.Say(MatterPart.Do))}", words.Trade(matter.Trade)])])
    { Shares = [0.28, 0.54, 0.18], Fine = true };

    // What presses less is named, and told when asked for.
    private static Block Named(IReadOnlyList<Matter> matters, Phrase words) => new Block.Paragraph(string.Join("; ", matters.Select(matter => $"{matter.Number}. {matter.Title} ({words.Trade(matter.Trade)})")) + ".");

    private static Chapter Next(ReportModel model)
    {
        List<Prose> lines = [.. model.Record.Judged.Visit.Where(duty => duty.Day is not null).OrderBy(duty => duty.Day).Select(duty => new Prose(new Run(model.Words.Day(duty.Day!.Value), Strong: true), new Run($": {duty.Name}.")))];
        lines.Add(model.Words.Say("report.call.ask"));
        lines.Add(model.Words.Say("report.call.next"));
        return new Chapter("call-next", model.Words.Say("report.call.end"), "", [new Block.Items(lines)]);
    }

    // The first sentence says it; the rest is in the report.
    private static string First(string said)
    {
        var end = said.IndexOf(". ", StringComparison.Ordinal);
        return end < 0 ? said : said[..(end + 1)];
    }
}
