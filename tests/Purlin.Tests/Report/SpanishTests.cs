using Purlin.Book;
using Purlin.Demo;
using Purlin.Journal;
using Purlin.Journal.Tongues;
using Purlin.Report;
using Purlin.Report.Page;
using Purlin.Report.Pdf;
using UglyToad.PdfPig;

namespace Purlin.Tests.Report;

/// <summary>Spanish as files: what it names exists, what it fills is filled, and the papers say which parts are not yet
/// translated.</summary>
public sealed class SpanishTests
{
    private static readonly Tongue Spanish = Tongue.BuiltIn("es-US"), English = Tongue.BuiltIn(Tongue.Standard);
    private static readonly Dictionary<string, string> own = Spanish.Sentences.Where(line => English.Find(line.Key) != line.Value)
        .ToDictionary(line => line.Key, line => line.Value);
    private static readonly Lazy<(Work Work, DemoInspection Demo)> made = new(() =>
    {
        var demo = DemoInspection.Write();
        return (Work.Of(demo.Entries, RuleBook.BuiltIn.In(Spanish), 2026), demo);
    });

    [Fact]
    public void Every_sentence_says_something_that_exists()
    {
        HashSet<string> known = [.. Sentences.In(RuleBook.BuiltIn).Select(sentence => sentence.Key), .. English.Sentences.Select(line =>
            line.Key)];
        Assert.DoesNotContain(own.Keys, key => !known.Contains(key)
            && key.Split('.')[0] is not ("language" or "unit" or "word" or "thing" or "place" or "trade"));
    }

    [Fact]
    public void Every_place_is_one_that_is_filled()
    {
        var wrong = from line in own
                    where English.Find(line.Key) is not null
                    let filled = Template.Read(English.Find(line.Key)!).Places.ToHashSet()
                    from place in Template.Read(line.Value).Places
                    where place != "#" && !filled.Contains(place) && !(line.Key is "report.moment" && place is "day" or "month")
                    select $"{line.Key}: {place}";
        Assert.Empty(wrong);
    }

    [Fact]
    public void The_fixed_sentences_of_the_papers_are_translated()
    {
        // Forms of numbers and mere places read alike in both.
        var missing = English.Sentences.Where(line => line.Key.Split('.')[0] is "report" or "answer" or "page" or "paper" or "drawing")
            .Where(line => line.Value.Any(char.IsLetter) && System.Text.RegularExpressions.Regex.Replace(line.Value, @"\{[^{}]*\}", "",
                System.Text.RegularExpressions.RegexOptions.None, TimeSpan.FromSeconds(1)).Any(char.IsLetter))
            .Where(line => !own.ContainsKey(line.Key) && Spanish.Find(line.Key) == line.Value && line.Key != "report.no").Select(line =>
                line.Key);
        // A sentence that is new in English reads in English until somebody translates it; that must not pile up.
        Assert.InRange(missing.Count(), 0, 15);
    }

    [Fact]
    public async Task The_page_is_Spanish_and_says_that_nobody_confirmed_it()
    {
        var (work, demo) = made.Value;
        var paper = work.Paper(PaperKind.Report, work.Copy);
        var page = System.Net.WebUtility.HtmlDecode(await PageWriter.WriteAsync(paper, sha => demo.Pictures.GetValueOrDefault(sha)));
        Assert.Contains("<html lang=\"es-US\">", page);
        foreach (var said in (string[])["¿Podemos vivir aquí con seguridad?", "14 de octubre de 2026", "hacer seguro",
            "antes de obligarse", "electricista con licencia", "Traducción hecha por el programa", "Baje el calentador a unos 120 °F",
            "1,860 pies²"]) Assert.Contains(said, page);
    }

    [Fact]
    public void Paper_is_Spanish_and_tagged_so()
    {
        var (work, _) = made.Value;
        using var pdf = PdfDocument.Open(PdfWriter.Bytes(work.Paper(PaperKind.Report, work.Copy), _ => null));
        var text = string.Concat(pdf.GetPages().Select(page => page.Text)).Replace(" ", "", StringComparison.Ordinal);
        Assert.Contains("Página1de", text);
        Assert.Contains("¿Quéhayqueresolverantesdeobligarnos?", text);
    }

    [Fact]
    public void What_is_not_translated_says_so()
    {
        var (work, _) = made.Value;
        var matters = work.Report(work.Copy).Matters;
        // All of the demo's own matters are translated; a house with a rarer one says that it is not.
        Assert.All(matters, matter => Assert.Equal("", matter.Untranslated));
        var evidence = SampleReport.Evidence();
        var rare = RuleBook.BuiltIn.Conditions.Values.First(condition => !own.ContainsKey($"{condition.Id}/do") && condition.Do.Length > 0);
        var judged = SampleHouse.Judged([SampleHouse.Finding(rare.Name, Weight.KeepUp, SampleHouse.Place(evidence,
            "Rear")) with { Condition = rare.Id, Do = rare.Do }], []);
        var told = (SampleReport.Worked(evidence, judged) with { Book = RuleBook.BuiltIn.In(Spanish) }).Report(SampleReport.Working)
            .Matters[0];
        Assert.Contains("no está traducido", told.Untranslated);
    }

    [Theory]
    [InlineData("answer.live.some.words", 1, "Un asunto por el que alguien puede resultar herido.")]
    [InlineData("answer.live.some.words", 3, "Tres asuntos por los que alguien puede resultar herido.")]
    [InlineData("answer.settle.some", 1, "Una cosa: 4.")]
    [InlineData("answer.later.some", 2, "Dos cosas, cada una con su fecha.")]
    public void Counts_agree_with_their_words(string key, int count, string said)
    {
        var words = Spanish.Find("language.count-words")!.Split(' ');
        Assert.Equal(said, Spanish.Say(key, ("count", count), ("words", char.ToUpperInvariant(words[count][0]) + words[count][1..]),
            ("matters", "4")));
    }

    [Fact]
    public void Days_read_as_in_Spanish() => Assert.Equal("3 de marzo de 2026", Spanish.Say("report.day", ("day", new DateOnly(2026, 3,
        3))));
}
