using PdfSharp.Drawing;
using PdfSharp.Fonts;
using Purlin.Report.Fonts;

namespace Purlin.Report.Pdf;

/// <summary>Hands our own faces to the PDF library, which embeds the characters that are used.</summary>
internal sealed class PaperFonts : IFontResolver
{
    private static readonly Lock gate = new();
    private readonly Dictionary<(string, double), XFont> fonts = [];

    private PaperFonts() { }

    /// <summary>Makes our faces known; the library keeps one resolver for the whole program.</summary>
    public static PaperFonts Ready()
    {
        lock (gate)
        {
            GlobalFontSettings.FontResolver ??= new PaperFonts();
            return new PaperFonts();
        }
    }

    /// <summary>A face at a size.</summary>
    public XFont Of(FontFace face, double size)
    {
        if (fonts.TryGetValue((face.Name, size), out var font)) return font;
        return fonts[(face.Name, size)] = new XFont(face.Name, size, XFontStyleEx.Regular, new XPdfFontOptions(PdfSharp.Pdf.PdfFontEncoding.Unicode));
    }

    /// <inheritdoc/>
    public byte[]? GetFont(string faceName) => Named(faceName)?.File.ToArray();

    /// <inheritdoc/>
    public FontResolverInfo? ResolveTypeface(string familyName, bool bold, bool italic) => Named(familyName) is { } face ? new FontResolverInfo(face.Name) : null;

    private static FontFace? Named(string name) => ((FontFace[])[Faces.Regular, Faces.Bold, Faces.Italic, Faces.Wide]).FirstOrDefault(face => face.Name == name);
}
