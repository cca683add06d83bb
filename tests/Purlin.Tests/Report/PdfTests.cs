using System.Text;
using System.Text.RegularExpressions;
using CsCheck;
using Purlin.Demo;
using Purlin.Journal.Fold;
using Purlin.Judgement;
using Purlin.Book;
using Purlin.Report;
using Purlin.Report.Pdf;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Outline;
using UglyToad.PdfPig.Tokens;

namespace Purlin.Tests.Report;

public sealed partial class PdfTests
{
    internal static readonly Lazy<(DemoInspection Demo, Paper Model, byte[] Pdf)> demo = new(() =>
    {
        var written = DemoInspection.Write();
        var model = Work.Of(written.Entries, RuleBook.BuiltIn, 2026).Paper(PaperKind.Report, SampleReport.Sealed);
        return (written, model, Print(model, sha => written.Pictures.GetValueOrDefault(sha)));
    });

    [Fact]
    public void Every_finding_of_the_demo_stands_in_the_text_with_what_to_do()
    {
        using var pdf = PdfDocument.Open(demo.Value.Pdf);
        var text = Squeezed(string.Concat(pdf.GetPages().Select(page => page.Text)));
        Assert.NotEmpty(demo.Value.Model.Matters);
        foreach (var matter in demo.Value.Model.Matters)
        {
            Assert.Contains(Squeezed($"{matter.Number}. {matter.Title}"), text);
            foreach (var part in matter.Parts.Where(part => part.Kind is not (MatterPart.What or MatterPart.Whom or MatterPart.Seen))) Assert.True(IsThere(Squeezed(part.Text), text), $"{matter.Number} {part.Label}: {part.Text}");
        }
    }

    [Fact]
    public void Every_page_says_which_it_is_of_how_many_and_that_the_data_is_invented()
    {
        using var pdf = PdfDocument.Open(demo.Value.Pdf);
        Assert.True(pdf.NumberOfPages > 10);
        for (var page = 1; page <= pdf.NumberOfPages; page++)
        {
            var text = Squeezed(pdf.GetPage(page).Text);
            Assert.Contains($"Page{page}of{pdf.NumberOfPages}", text);
            Assert.Contains("Inventeddata", text);
        }
    }

    [Fact]
    public void Photographs_go_in_byte_for_byte()
    {
        using var pdf = PdfDocument.Open(demo.Value.Pdf);
        var printed = pdf.GetPages().SelectMany(page => page.GetImages()).Select(image => Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(image.RawMemory.Span))).ToHashSet();
        var shown = demo.Value.Model.Pictures;
        Assert.True(shown.Count >= 30);
        // The demo's pictures carry no metadata, so what is printed has the very hash by which the journal knows them.
        Assert.All(shown, picture => Assert.Contains(picture.Sha, printed));
    }

    [Fact]
    public void The_file_is_tagged_and_says_its_language_and_title()
    {
        using var pdf = PdfDocument.Open(demo.Value.Pdf);
        var catalog = pdf.Structure.Catalog.CatalogDictionary;
        Assert.Equal("en-US", Text(catalog.Data["Lang"]));
        Assert.True(((BooleanToken)Dictionary(pdf, catalog.Data["MarkInfo"]).Data["Marked"]).Data);
        Assert.True(((BooleanToken)Dictionary(pdf, catalog.Data["ViewerPreferences"]).Data["DisplayDocTitle"]).Data);
        Assert.StartsWith("Inspection report: ", pdf.Information.Title!, StringComparison.Ordinal);
    }

    [Fact]
    public void Figures_have_words_heads_of_tables_have_a_scope_and_headings_skip_no_level()
    {
        using var pdf = PdfDocument.Open(demo.Value.Pdf);
        List<DictionaryToken> elements = [];
        Collect(pdf, Dictionary(pdf, pdf.Structure.Catalog.CatalogDictionary.Data["StructTreeRoot"]), elements);
        string Kind(DictionaryToken element) => ((NameToken)element.Data["S"]).Data;
        var figures = elements.Where(element => Kind(element) == "Figure").ToArray();
        // Each photograph once, the house on the first page, the map and other drawings, a small house beside each matter that has a place in it.
        var drawings = demo.Value.Model.Chapters.SelectMany(chapter => chapter.Blocks).Count(block => block is Block.Figure or Block.Opening) + demo.Value.Model.Matters.Count(matter => matter.Locator is not null);
        Assert.Equal(demo.Value.Model.Pictures.Count + drawings, figures.Length);
        Assert.All(figures, figure => Assert.NotEmpty(Text(figure.Data["Alt"])));
        var heads = elements.Where(element => Kind(element) == "TH").ToArray();
        Assert.NotEmpty(heads);
        Assert.All(heads, head => Assert.Contains(((NameToken)Dictionary(pdf, head.Data["A"]).Data["Scope"]).Data, (string[])["Row", "Column"]));
        var levels = elements.Select(Kind).Where(kind => kind is ['H', >= '1' and <= '6']).Select(kind => kind[1] - '0').ToArray();
        Assert.Equal(1, levels[0]);
        for (var index = 1; index < levels.Length; index++) Assert.True(levels[index] <= levels[index - 1] + 1, $"heading {index}: {levels[index - 1]} then {levels[index]}");
    }

    [Fact]
    public void The_outline_leads_to_every_matter()
    {
        using var pdf = PdfDocument.Open(demo.Value.Pdf);
        Assert.True(pdf.TryGetBookmarks(out var bookmarks));
        var titles = bookmarks.GetNodes().Select(node => node.Title).ToHashSet();
        Assert.All(demo.Value.Model.Matters, matter => Assert.Contains($"{matter.Number}. {matter.Title}", titles));
        Assert.All(demo.Value.Model.Chapters.Where(chapter => chapter.Title.Length > 0), chapter => Assert.Contains(chapter.Title, titles));
        Assert.Contains(bookmarks.Roots, root => root.Children.Any(child => child.Children.Any()));
    }

    [Fact]
    public void The_list_names_the_page_on_which_a_matter_stands()
    {
        using var pdf = PdfDocument.Open(demo.Value.Pdf);
        var list = Squeezed(pdf.GetPage(1).Text + pdf.GetPage(2).Text);
        Assert.True(pdf.TryGetBookmarks(out var bookmarks));
        var nodes = bookmarks.GetNodes().OfType<DocumentBookmarkNode>().ToLookup(node => node.Title);
        foreach (var matter in demo.Value.Model.Matters)
        {
            var node = Assert.Single(nodes[$"{matter.Number}. {matter.Title}"], node => node.Level == 2);
            Assert.Contains(Squeezed(matter.Title)[..Math.Min(20, Squeezed(matter.Title).Length)], list);
            Assert.Matches($"{matter.Number}{System.Text.RegularExpressions.Regex.Escape(Squeezed(matter.Title)[..8])}", list.Replace(Squeezed(Purlin.Book.WordTable.Word(matter.Weight)), "", StringComparison.Ordinal));
            Assert.InRange(node.PageNumber, 2, pdf.NumberOfPages);
        }
    }

    [Fact]
    public void The_same_model_gives_the_same_bytes()
    {
        var model = SampleReport.Paper();
        Assert.Equal(Print(model, SampleReport.Photo), Print(model, SampleReport.Photo));
        Assert.NotEqual(Print(model, SampleReport.Photo), Print(SampleReport.Paper(mark: SampleReport.Sealed), SampleReport.Photo));
    }

    [Fact]
    public void A_name_in_other_letters_is_set_in_the_wide_face()
    {
        // Greek, Cyrillic and Vietnamese are not all in the text family; the wide one has them.
        var pdf = Print(SampleReport.Paper("Ελένη Щукина Nguyễn Thị"), SampleReport.Photo);
        using var opened = PdfDocument.Open(pdf);
        var text = Squeezed(string.Concat(opened.GetPages().Select(page => page.Text)));
        Assert.Contains("ΕλένηЩукина", text);
        Assert.Contains("NguyễnThị", text);
        Assert.Contains(opened.GetPages().SelectMany(page => page.Letters), letter => letter.FontName!.Contains("Noto", StringComparison.Ordinal));
    }

    [Fact]
    public void Any_text_at_all_is_printed_without_throwing() =>
        Gen.String[0, 60].Sample(words => Assert.True(Print(SampleReport.Paper(words), SampleReport.Photo).Length > 10_000), iter: 15, threads: 1);

    [Fact]
    public void The_metadata_packet_stays_well_formed_whatever_the_address_says()
    {
        var pdf = Encoding.UTF8.GetString(Print(SampleReport.Paper("<&> \"]]>' </x:xmpmeta> 😀 \u0001"), SampleReport.Photo));
        var from = pdf.IndexOf("<x:xmpmeta", StringComparison.Ordinal);
        var packet = System.Xml.Linq.XDocument.Parse(pdf[from..(pdf.IndexOf("</x:xmpmeta>", from, StringComparison.Ordinal) + "</x:xmpmeta>".Length)]);
        Assert.Contains(packet.Descendants(), element => element.Name.LocalName == "title" && element.Value.Contains("41 Invented Lane", StringComparison.Ordinal));
    }

    [Fact]
    public void Text_that_fonts_and_writers_stumble_over_is_printed_without_throwing()
    {
        foreach (var words in (string[])["\uD800 half a pair", "\u0000\u0001\u001b[31m", "😀🏚️ \U0001F469\u200D\U0001F527", "\u202Eright to left", "你好 שלום مرحبا", "e\u0301\u0301\u0301", new string('x', 3000), string.Join(' ', Enumerable.Repeat("word", 900)), "\uFFFE\uFFFF", "(\\) <</Type/Catalog>> endobj %%EOF", "a\r\nb\n\n\nc\t"])
            Assert.True(Print(SampleReport.Paper(words), SampleReport.Photo).Length > 10_000);
    }

    [Fact]
    public void A_picture_that_cannot_be_printed_is_said_in_words()
    {
        var model = SampleReport.Paper();
        foreach (var (bytes, said) in ((byte[]?, string)[])[(null, "not in this copy"), ([1, 2, 3], "not in this copy"), (PhotoTests.TinyWebP, "stored as WebP"), ([.. SampleReport.Jpeg.AsSpan(0, 60)], "not in this copy")])
        {
            using var pdf = PdfDocument.Open(Print(model, _ => bytes));
            Assert.Contains(Squeezed(said), Squeezed(string.Concat(pdf.GetPages().Select(page => page.Text))));
        }
    }

    // A matter may be parted once, where its page ends: all but the stretch across that end stands there.
    private static bool IsThere(string words, string text) => text.Contains(words, StringComparison.Ordinal) || words.Chunk(24).Count(stretch => !text.Contains(new string(stretch), StringComparison.Ordinal)) <= 1;

    private static byte[] Print(Paper model, Func<string, byte[]?> photo)
    {
        return PdfWriter.Bytes(model, photo);
    }

    private static void Collect(PdfDocument pdf, DictionaryToken element, List<DictionaryToken> into)
    {
        if (element.Data.ContainsKey("S")) into.Add(element);
        if (!element.Data.TryGetValue("K", out var kids)) return;
        foreach (var kid in Resolve(pdf, kids) is ArrayToken array ? array.Data : [kids])
            if (Resolve(pdf, kid) is DictionaryToken child) Collect(pdf, child, into);
    }

    private static IToken Resolve(PdfDocument pdf, IToken token) => token is IndirectReferenceToken reference ? pdf.Structure.GetObject(reference.Data).Data : token;

    private static DictionaryToken Dictionary(PdfDocument pdf, IToken token) => (DictionaryToken)Resolve(pdf, token);

    private static string Text(IToken token) => token switch { StringToken text => text.Data, HexToken hex => hex.Data, _ => throw new InvalidOperationException($"{token} is no text") };

    // Where a line breaks no space is drawn; text is compared without any.
    private static string Squeezed(string text) => Space().Replace(text.Normalize(NormalizationForm.FormC), "");

    [GeneratedRegex(@"\s+")]
    private static partial Regex Space();
}
