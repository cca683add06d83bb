using System.Globalization;
using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.Pdf.Annotations;
using PdfSharp.UniversalAccessibility;
using Purlin.Report.Drawing;
using Purlin.Report.Fonts;
using Purlin.Report.Writing;

namespace Purlin.Report.Pdf;

/// <summary>The page being drawn on: letters in our faces, rules, pictures, drawings.</summary>
internal sealed class Canvas(PdfDocument document, PaperFonts fonts) : IDisposable
{
    private static readonly Theme theme = Theme.Print;
    private readonly Dictionary<Ink, XSolidBrush> brushes = [];

    public PdfDocument Document { get; } = document;

    public StructureBuilder Tags { get; } = UAManager.ForDocument(document).StructureBuilder;

    public XGraphics Graphics { get; private set; } = null!;

    public PdfPage Page { get; private set; } = null!;

    /// <summary>Turns of phrase in the language of the paper.</summary>
    public required Phrase Words { get; init; }

    /// <summary>Where each address stands: page from 1, and the height on it from its top.</summary>
    public required IReadOnlyDictionary<string, (int Page, double Y)> Places { get; init; }

    /// <summary>Begins a page. The structure of the document takes pages in their order only; links find later ones when the file is
    /// saved.</summary>
    public void NewPage(double width, double height)
    {
        Graphics?.Dispose();
        Page = Document.AddPage();
        (Page.Width, Page.Height) = (XUnit.FromPoint(width), XUnit.FromPoint(height));
        // Links are tabbed through in the order of the structure (ISO 14289-1, section 7.18.3).
        Page.Elements.SetName("/Tabs", "/S");
        Graphics = XGraphics.FromPdfPage(Page);
    }

    /// <summary>A line of text from its left end; y is the line it stands on. Changes face where a character needs it.</summary>
    public void Text(string text, double x, double y, double size, Cut cut = Cut.Regular, Ink ink = Ink.Text)
    {
        foreach (var stretch in Typesetting.Stretches(text, cut))
        {
            Graphics.DrawString(stretch.Text, fonts.Of(stretch.Face, size), Brush(ink), new XPoint(x, y));
            x += Typesetting.Width(stretch.Text, size, cut);
        }
    }

    /// <summary>A line of words, those with an address as links: an area to follow, and a link to readers aloud.</summary>
    public void Bits(IReadOnlyList<Bit> line, double x, double y, Style style)
    {
        foreach (var bit in line)
        {
            var width = Typesetting.Width(bit.Text, style.Size, bit.Cut);
            if (bit.To is { } to && Places.TryGetValue(to, out var place)) Link(place, new Box(x, y - style.Size, width, style.Size * 1.3),
                bit.Text, () => Text(bit.Text, x, y, style.Size, bit.Cut, style.Ink));
            else Text(bit.Text, x, y, style.Size, bit.Cut, style.Ink);
            x += width;
        }
    }

    /// <summary>What is drawn inside leads there.</summary>
    public void Link(string to, Box area, string words, Action draw)
    {
        if (Places.TryGetValue(to, out var place)) Link(place, area, words, draw);
        else draw();
    }

    private void Link((int Page, double Y) place, Box area, string words, Action draw)
    {
        PdfRectangle region = new(Graphics.Transformer.WorldToDefaultPage(new XRect(area.X, area.Y, Math.Max(1, area.Width), Math.Max(1,
            area.Height))));
        Tags.BeginElement(PdfLinkAnnotation.CreateDocumentLink(region, place.Page, new XPoint(0, Measures.Height - Math.Max(0,
            place.Y - 12))), Words.Say("paper.link", ("words", words.Trim()), ("page", place.Page)));
        draw();
        Tags.End();
    }

    public void TextRight(string text, double right, double y, double size, Cut cut = Cut.Regular, Ink ink = Ink.Text) => Text(text,
        right - Typesetting.Width(text, size, cut), y, size, cut, ink);

    public void TextMiddle(string text, double middle, double y, double size, Cut cut = Cut.Regular, Ink ink = Ink.Text) => Text(text,
        middle - Typesetting.Width(text, size, cut) / 2, y, size, cut, ink);

    /// <summary>Words for readers aloud alone, where a drawing says the same: so small and in the tone of the paper that nobody sees
    /// them.</summary>
    public void Hidden(string text, double x, double y, double size) => Text(text, x, y, size, Cut.Regular, Ink.Paper);

    public void Rule(double x1, double y1, double x2, double y2, double width, Ink ink = Ink.Line) =>
        Graphics.DrawLine(new XPen(Colour(ink), width), x1, y1, x2, y2);

    public void Fill(Box box, Ink ink) => Graphics.DrawRectangle(Brush(ink), box.X, box.Y, box.Width, box.Height);

    public void Frame(Box box, double width, Ink ink = Ink.Line) => Graphics.DrawRectangle(new XPen(Colour(ink), width), box.X, box.Y,
        box.Width, box.Height);

    public XSolidBrush Brush(Ink ink) => brushes.TryGetValue(ink, out var brush) ? brush : brushes[ink] = new XSolidBrush(Colour(ink));

    public static XColor Colour(Ink ink)
    {
        var colour = int.Parse(theme.Colour(ink).AsSpan(1), NumberStyles.HexNumber, CultureInfo.InvariantCulture);
        return XColor.FromArgb(colour >> 16, colour >> 8 & 0xFF, colour & 0xFF);
    }

    public static double Width(LineClass line, Ink ink) => theme.Width(line, ink);

    public void Dispose() => Graphics?.Dispose();
}
