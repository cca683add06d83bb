using Purlin.Journal;
using Purlin.Judgement;
using Purlin.Reckoning;

namespace Purlin.Report.Writing;

/// <summary>Every reckoning with its steps, so that anyone can follow it with a pencil.</summary>
internal static class WorkingWriting
{
    public static IEnumerable<Chapter> Of(Record record)
    {
        if (record.Judged.Workings.Count == 0) yield break;
        List<Block> blocks = [];
        for (var index = 0; index < record.Judged.Workings.Count; index++) blocks.AddRange(One(record, record.Judged.Workings[index], index + 1));
        yield return new Chapter("workings", "Workings", "Each number that was reckoned, with its steps and its source.", blocks);
    }

    private static IEnumerable<Block> One(Record record, JudgedWorking done, int number)
    {
        var (working, words) = (done.Working, record.Book.Words);
        yield return new Block.Heading($"Working {number}. {words.Say(working.Title)}") { Anchor = $"working-{number}" };
        var of = string.Join(", ", new[] { Phrase.Sentence(record.ComponentName(done.Component)), record.PlaceName(done.Place) }.Where(part => part.Length > 0));
        var verdict = working.Verdict switch { Verdict.Within => "Within what the source expects", Verdict.Outside => "Outside what the source expects", _ => "Cannot be said" };
        yield return new Block.Paragraph($"{(of.Length > 0 ? of + ". " : "")}{verdict}. {Phrase.End(words.Say(working.Verdict.Because))}");
        yield return new Block.Items([.. working.Steps.Select(step => Say(step, words))]) { Numbered = true, Fine = true };
        if (working.Cautions.Length > 0) yield return new Block.Paragraph(string.Join(' ', working.Cautions.Select(caution => Phrase.End(words.Say(caution)))));
        if (working.Sources.Length > 0) yield return new Block.Paragraph($"Source: {Phrase.End(string.Join("; ", working.Sources))}") { Aside = true };
    }

    private static string Say(Step step, Tongue words) => step.Value is { } value ? $"{words.Say(step.Text).TrimEnd('.', ':')}: {Phrase.Number(value)}{(step.Unit.Length > 0 ? " " + step.Unit : "")}" : Phrase.End(words.Say(step.Text));
}
