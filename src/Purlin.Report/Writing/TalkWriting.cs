using Purlin.Book;

namespace Purlin.Report.Writing;

/// <summary>What to say in the call to the client, in the order in which it helps to hear it.</summary>
internal static class TalkWriting
{
    public static IEnumerable<Chapter> Of(ReportModel model)
    {
        List<Block> blocks = [];
        foreach (var answer in new AnswerWriting(model).All())
        {
            blocks.Add(new Block.Heading(answer.Question));
            blocks.Add(new Block.Paragraph(answer.Reply.Then(" ").Then(answer.Words)));
        }
        yield return new Chapter("call", "The call", "Say the three answers first, then one sentence a matter. Stop and ask whether it is clear.", blocks);
        foreach (var by in ByWhenWords.SoonestFirst)
        {
            Matter[] matters = [.. model.Matters.Where(matter => matter.Due.By == by)];
            if (matters.Length == 0) continue;
            yield return new Chapter($"call-{(int)by}", Phrase.Sentence(by.Word()), "", [by <= ByWhen.BeforeBound ? Told(matters) : Named(matters)]);
        }
        foreach (var chapter in LimitationWriting.Of(model, withPictures: false)) yield return chapter;
        yield return Next(model);
    }

    private static Block Told(IReadOnlyList<Matter> matters) => new Block.Table($"{Phrase.Many(matters.Count, "matter", "matters")}.", ["Matter", "What we saw, and what to do", "Who"],
        [.. matters.Select(matter => (IReadOnlyList<Prose>)[$"{matter.Number}. {matter.Title}", $"{First(matter.Say(MatterPart.Seen))} {First(matter.Say(MatterPart.Do))}", Phrase.Trade(matter.Trade)])])
    { Shares = [0.28, 0.54, 0.18], Fine = true };

    // What presses less is named, and told when asked for.
    private static Block Named(IReadOnlyList<Matter> matters) => new Block.Paragraph(string.Join("; ", matters.Select(matter => $"{matter.Number}. {matter.Title} ({Phrase.Trade(matter.Trade)})")) + ".");

    private static Chapter Next(ReportModel model)
    {
        List<Prose> lines = [.. model.Record.Judged.Visit.Where(duty => duty.Day is not null).OrderBy(duty => duty.Day).Select(duty => new Prose(new Run(Phrase.Day(duty.Day!.Value), Strong: true), new Run($": {duty.Name}.")))];
        lines.Add("Ask what worries them most, and whether they have been in the house since.");
        lines.Add("Say what comes next: the trade sheets go to the trades; a second visit after repairs can be agreed.");
        return new Chapter("call-next", "Before hanging up", "", [new Block.Items(lines)]);
    }

    // The first sentence says it; the rest is in the report.
    private static string First(string words)
    {
        var end = words.IndexOf(". ", StringComparison.Ordinal);
        return end < 0 ? words : words[..(end + 1)];
    }
}
