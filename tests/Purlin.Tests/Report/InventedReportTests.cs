using System.Net;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Purlin.Book;
using Purlin.Demo;
using Purlin.Journal;
using Purlin.Report;
using Purlin.Report.Page;
using Purlin.Report.Pdf;
using UglyToad.PdfPig;

namespace Purlin.Tests.Report;

/// <summary>An invented language laid over the papers of the demo: no sentence of the program stays in plain English, on the page or on
/// paper.</summary>
public sealed partial class InventedReportTests
{
    private static readonly Lazy<(Work Work, ReportModel Model, DemoInspection Demo)> made = new(() =>
    {
        var demo = DemoInspection.Write();
        var work = Work.Of(demo.Entries, InventedTongue.Book, 2026);
        return (work, work.Report(work.Copy), demo);
    });

    [Theory]
    [InlineData(PaperKind.Report)]
    [InlineData(PaperKind.Summary)]
    [InlineData(PaperKind.Trades)]
    [InlineData(PaperKind.Talk)]
    [InlineData(PaperKind.Walk)]
    public async Task No_sentence_of_a_page_is_plain(PaperKind kind)
    {
        var page = await PageWriter.WriteAsync(made.Value.Model.Paper(kind), sha => made.Value.Demo.Pictures.GetValueOrDefault(sha));
        Assert.Contains("<html lang=\"x-invented\">", page);
        var body = page[page.IndexOf("<body>", StringComparison.Ordinal)..];
        var labels = Label().Matches(body).Select(match => match.Groups["words"].Value);
        var lines = Tag().Replace(Inline().Replace(body, ""), "\n").Split('\n').Concat(labels).Select(line => WebUtility.HtmlDecode(line)
            .Trim()).Where(line => line.Length > 0).Distinct();
        Nothing(lines);
    }

    [Fact]
    public void No_sentence_on_paper_is_plain()
    {
        using var pdf = PdfDocument.Open(PdfWriter.Bytes(made.Value.Model.Paper(PaperKind.Report), _ => null));
        var text = Squeezed(string.Concat(pdf.GetPages().Select(page => page.Text)));
        Assert.True(text.Length > 50_000, "the paper was hardly read");
        var standing = Tongue.BuiltIn(Tongue.Standard).Sentences.Where(line =>
            line.Key.Split('.')[0] is "report" or "paper" or "drawing" or "answer").Select(line => line.Value)
            .Where(sentence => !sentence.Contains('{', StringComparison.Ordinal) && TwoWords().IsMatch(sentence)).Select(Squeezed)
                .Where(sentence => sentence.Length > 12);
        Assert.DoesNotContain(standing, sentence => text.Contains(sentence, StringComparison.Ordinal));
    }

    private static string Squeezed(string text) => new([.. text.Where(letter => !char.IsWhiteSpace(letter))]);

    private static void Nothing(IEnumerable<string> lines)
    {
        string[] known = [.. Known().Where(text => text.Length > 3).Distinct(StringComparer.OrdinalIgnoreCase).OrderByDescending(text =>
            text.Length)];
        List<string> plain = [];
        foreach (var line in lines)
        {
            var left = InventedTongue.Plain(line);
            if (!TwoWords().IsMatch(left)) continue;
            foreach (var text in known) left = left.Replace(text, "…", StringComparison.OrdinalIgnoreCase);
            if (TwoWords().IsMatch(left)) plain.Add($"{left}   <<   {line}");
        }
        Assert.True(plain.Count == 0, $"{plain.Count}:\n{string.Join('\n', plain.Take(60))}");
    }

    /// <summary>What was entered on site, words of closed lists that a language may name but need not, and documents that are
    /// cited.</summary>
    private static IEnumerable<string> Known()
    {
        var (work, _, demo) = made.Value;
        foreach (var entry in demo.Entries)
            foreach (var text in Texts(JsonNode.Parse(entry.Line.Span))) yield return text.TrimEnd('.');
        var book = work.Book;
        foreach (var text in (IEnumerable<string>)[.. book.ComponentKinds(), .. book.Conditions.Values.SelectMany(condition =>
            (string[])[condition.Trade, condition.System, .. condition.Look.Select(look => look.Trade ?? "")]),
            .. book.Causes.Select(cause => cause.Trade ?? "")])
        {
            yield return text;
            if (text.StartsWith("licensed ", StringComparison.Ordinal)) yield return text["licensed ".Length..];
        }
        yield return "(from memory)";
        foreach (var word in WeightWords.HeaviestFirst.Select(weight => weight.Word()).Concat(ByWhenWords.SoonestFirst.Select(by =>
            by.Word()))) yield return word;
        foreach (var standard in book.Standards.Values)
        {
            yield return standard.Title;
            yield return standard.Edition;
        }
        foreach (var source in work.Judged.Findings.SelectMany(finding => finding.Sources.Concat(finding.ThenAndNow?.Sources ?? []))
            .Concat(work.Judged.Workings.SelectMany(done => done.Working.Sources))) yield return source.Replace(" (from memory)", "",
            StringComparison.Ordinal).Replace(", from memory", "", StringComparison.Ordinal).Trim().TrimEnd('.');
        foreach (var wanted in work.Judged.Wanted) yield return wanted.Value;
        foreach (var coverage in work.Judged.Coverage)
            foreach (var duty in coverage.Duties) yield return duty.Section;
        foreach (var working in work.Judged.Workings)
            foreach (var text in Names(working.Working.Inputs)) yield return text.Replace('_', ' ');
    }

    private static IEnumerable<string> Texts(JsonNode? node) => node switch
    {
        JsonObject group => group.SelectMany(one => Texts(one.Value).Append(one.Key)),
        JsonArray list => list.SelectMany(Texts),
        JsonValue value when value.TryGetValue<string>(out var text) => text.Split('\n').Append(text),
        _ => [],
    };

    private static IEnumerable<string> Names(JsonNode? node) => Texts(node);

    [GeneratedRegex("</?(a|bdi|strong|span|br)( [^>]*)?>", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 20_000)]
    private static partial Regex Inline();

    [GeneratedRegex("<[^>]+>", RegexOptions.None, matchTimeoutMilliseconds: 20_000)]
    private static partial Regex Tag();

    [GeneratedRegex("(aria-label|alt|data-label)=\"(?<words>[^\"]+)\"", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 20_000)]
    private static partial Regex Label();

    [GeneratedRegex("[A-Za-z]{2,}[,;:]? [A-Za-z]{2,}", RegexOptions.None, matchTimeoutMilliseconds: 20_000)]
    private static partial Regex TwoWords();
}
