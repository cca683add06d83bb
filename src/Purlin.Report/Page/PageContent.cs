using System.Security.Cryptography;
using System.Text;
using System.Text.Encodings.Web;
using Microsoft.AspNetCore.Components;
using Purlin.Book;
using Purlin.Report.Drawing;
using Purlin.Report.Fonts;
using Purlin.Report.Photos;
using Purlin.Report.Writing;

namespace Purlin.Report.Page;

/// <summary>What the page's parts ask for: pictures as data, drawings as markup, choices, the style and the policy that admits it alone.</summary>
public sealed class PageContent
{
    private readonly Func<string, byte[]?> photoBySha;
    private readonly Dictionary<int, string> classes;

    internal PageContent(Paper paper, Func<string, byte[]?> photoBySha)
    {
        this.photoBySha = photoBySha;
        Title = $"{paper.Title}: {Typesetting.Clean(paper.Cover.Address)}";
        Words = paper.Words;
        Filters = Filter.Of(paper.Matters, Words);
        classes = paper.Matters.ToDictionary(matter => matter.Number, matter => Filter.Classes(matter, paper.Matters));
        var style = PageStyle.Sheet() + string.Concat(Filters.SelectMany(filter => filter.Choices).Select(choice => $"body:has(#only-{choice.Class}:checked) .m:not(.{choice.Class}){{display:none}}"));
        var hash = Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(style)));
        Style = new MarkupString($"<style>{style}</style>");
        // No script, no request: pictures and fonts come as data, and only this very style is taken.
        Policy = $"default-src 'none'; img-src data:; font-src data:; style-src 'sha256-{hash}'; base-uri 'none'; form-action 'none'";
    }

    /// <summary>Turns of phrase in the language of the paper.</summary>
    internal Phrase Words { get; }

    /// <summary>Title of the page.</summary>
    public string Title { get; }

    /// <summary>The style element.</summary>
    public MarkupString Style { get; }

    /// <summary>The content policy.</summary>
    public string Policy { get; }

    /// <summary>Choices of which matters to see, by what they choose by.</summary>
    public IReadOnlyList<(string Title, IReadOnlyList<Filter> Choices)> Filters { get; }

    /// <summary>Classes by which a matter is chosen.</summary>
    public string Classes(Matter matter)
    {
        ArgumentNullException.ThrowIfNull(matter);
        return classes.GetValueOrDefault(matter.Number, "");
    }

    /// <summary>A drawing; its balloons lead to their matters.</summary>
    public static MarkupString Drawing(Sheet sheet) => new(SvgWriter.Write(sheet, Theme.Day, number => $"#matter-{number}"));

    /// <summary>The balloon of a matter, large, to stand beside its heading.</summary>
    public MarkupString Balloon(Matter matter)
    {
        ArgumentNullException.ThrowIfNull(matter);
        var balloon = Callout.Balloon(matter.Number, (int)matter.Weight, new Spot(16, 16), "", 14);
        return new MarkupString(SvgWriter.Write(new Sheet { Width = 32, Height = 32, Title = Words.Say("report.matter", ("number", matter.Number)), Marks = balloon.Marks }, Theme.Day, _ => "#"));
    }

    /// <summary>The weight of a matter as bars.</summary>
    public static string Bars(Matter matter)
    {
        ArgumentNullException.ThrowIfNull(matter);
        return new string('|', (int)matter.Weight);
    }

    /// <summary>A photograph without what travels with it; none when it is not at hand or no picture we know.</summary>
    public MarkupString? Image(Picture picture)
    {
        ArgumentNullException.ThrowIfNull(picture);
        if (PhotoBytes.Read(photoBySha(picture.Sha)) is not { } photo) return null;
        var (width, height) = photo.Turned ? (photo.Height, photo.Width) : (photo.Width, photo.Height);
        // Written by hand: the renderer would write each plus sign of the data as six characters.
        return new MarkupString($"<img src=\"data:{photo.MediaType};base64,{Convert.ToBase64String(photo.Bytes.Span)}\" width=\"{width}\" height=\"{height}\" loading=\"lazy\" alt=\"{HtmlEncoder.Default.Encode(Typesetting.Clean(picture.Alt))}\">");
    }
}
