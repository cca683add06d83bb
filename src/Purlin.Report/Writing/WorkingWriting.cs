using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Purlin.Journal;
using Purlin.Judgement;
using Purlin.Reckoning;

namespace Purlin.Report.Writing;

/// <summary>
/// Every reckoning: what went in, what came out, by which source. Steps stand in full where a matter rests on them or the result is outside;
/// where nothing was wrong the paper keeps input and result, and the page folds the steps.
/// </summary>
internal sealed class WorkingWriting(ReportModel model)
{
    private readonly Record record = model.Record;

    public static IEnumerable<Chapter> Of(ReportModel model)
    {
        if (model.Record.Judged.Workings.Count == 0) yield break;
        WorkingWriting writing = new(model);
        List<Block> blocks = [];
        for (var index = 0; index < model.Record.Judged.Workings.Count; index++) blocks.AddRange(writing.One(model.Record.Judged.Workings[index], index + 1));
        yield return new Chapter("workings", model.Words.Say("report.workings.title"), model.Words.Say("report.workings.lead"), blocks) { Form = ChapterForm.Reference };
    }

    private IEnumerable<Block> One(JudgedWorking done, int number)
    {
        var (working, words) = (done.Working, record.Words);
        int[] carried = [.. model.Matters.Where(matter => matter.Workings.Contains(number)).Select(matter => matter.Number)];
        var of = string.Join(", ", new[] { Phrase.Sentence(record.ComponentName(done.Component)), record.PlaceName(done.Place) }.Where(part => part.Length > 0));
        yield return new Block.Heading($"W{number}. {words.Say(working.Title)}") { Anchor = $"working-{number}" };
        yield return new Block.Paragraph(new Prose(new Run($"{(of.Length > 0 ? of + ". " : "")}{Verdict(working, words)} {Phrase.End(words.Say(working.Verdict.Because))}")).Then(carried.Length > 0 ? new Prose(new Run(" ")).Then(words.Linked("report.workings.carried", "matters", words.Matters(carried))) : Prose.Empty));
        if (Inputs(working.Inputs) is { Length: > 0 } inputs) yield return new Block.Paragraph(words.Say("report.workings.inputs", ("inputs", inputs))) { Aside = true };
        Block steps = new Block.Items([.. working.Steps.Select(step => (Prose)Say(step, words))]) { Numbered = true, Fine = true };
        var whole = carried.Length > 0 || working.Verdict is not Reckoning.Verdict.Within;
        // On paper the steps run on, each with its number: short lines one under the other would take half as much again.
        Block[] run = whole ? [new Block.Paragraph(string.Join(" ", working.Steps.Select((step, at) => $"({at + 1}) {Phrase.End(Say(step, words))}"))) { Aside = true }] : [];
        if (working.Steps.Length > 0) yield return new Block.Folded(words.Say("report.workings.steps"), [steps], run);
        if (Sources(working) is { Count: > 0 } sources) yield return new Block.Paragraph(sources) { Aside = true };
    }

    private Prose Sources(Working working)
    {
        int[] numbers = [.. working.Sources.Select(source => model.SourceNumbers.Of(Phrase.Cited(source))).Distinct()];
        return numbers.Length == 0 ? Prose.Empty : record.Words.Linked("report.workings.by", "sources", Prose.Join(", ", numbers.Select(number => Prose.Link($"S{number}", $"S{number}"))));
    }

    private static string Verdict(Working working, Phrase words) =>
        words.Say(working.Verdict switch { Reckoning.Verdict.Within => "report.verdict.within", Reckoning.Verdict.Outside => "report.verdict.outside", _ => "report.verdict.cannot-say" });

    private static string Say(Step step, Phrase words) => step.Value is { } value ? $"{words.Say(step.Text).TrimEnd('.', ':')}: {words.WithUnit(words.Number(value), step.Unit)}" : Phrase.End(words.Say(step.Text));

    /// <summary>What went in, name by name; long lists by their count.</summary>
    private string Inputs(JsonObject inputs) => string.Join("; ", inputs.Select(input => Input(input.Key, input.Value)).OfType<string>());

    private string? Input(string name, JsonNode? value)
    {
        var word = record.Words.Word(name.Replace('_', ' '));
        return value switch
        {
            null => null,
            JsonArray many => many.Count == 0 ? null : many.All(one => one is JsonValue) && many.Count <= 6 ? $"{word} {string.Join(", ", many.Select(Plain))}" : $"{word}: {many.Count}",
            JsonObject quantity when quantity["value"] is JsonValue => $"{word} {Plain(quantity["value"])} {Plain(quantity["unit"])}".TrimEnd(),
            JsonObject group => $"{word} ({string.Join(", ", group.Select(one => Input(one.Key, one.Value)).OfType<string>())})",
            _ => $"{word} {Plain(value)}",
        };
    }

    private string Plain(JsonNode? value) => value is null ? "" : value.GetValueKind() switch
    {
        JsonValueKind.String => record.Words.Word(value.GetValue<string>()),
        JsonValueKind.Number => record.Words.Number(double.Parse(value.ToJsonString(), CultureInfo.InvariantCulture)),
        JsonValueKind.True => record.Words.Say("report.yes"),
        JsonValueKind.False => record.Words.Say("report.no"),
        _ => value.ToJsonString(),
    };
}
