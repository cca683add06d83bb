using System.Security.Cryptography;
using System.Text;
using Microsoft.AspNetCore.Components;
using Purlin.Book;
using Purlin.Report.Drawing;
using Purlin.Report.Fonts;
using Purlin.Report.Photos;

namespace Purlin.Report.Page;

/// <summary>What the page's parts ask for: pictures as data, drawings as markup, the style and the policy that admits it alone.</summary>
public sealed class PageContent
{
    private readonly Func<string, byte[]?> photoBySha;

    internal PageContent(ReportModel model, Func<string, byte[]?> photoBySha)
    {
        this.photoBySha = photoBySha;
        Title = $"Inspection report: {Typesetting.Clean(model.Cover.Address)}";
        var style = PageStyle.Sheet();
        var hash = Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(style)));
        Style = new MarkupString($"<style>{style}</style>");
        // No script, no request: pictures and fonts come as data, and only this very style is taken.
        Policy = $"default-src 'none'; img-src data:; font-src data:; style-src 'sha256-{hash}'; base-uri 'none'; form-action 'none'";
    }

    /// <summary>Title of the page.</summary>
    public string Title { get; }

    /// <summary>The style element.</summary>
    public MarkupString Style { get; }

    /// <summary>The content policy.</summary>
    public string Policy { get; }

    /// <summary>A drawing; its balloons lead to their matters.</summary>
    public static MarkupString Drawing(Sheet sheet) => new(SvgWriter.Write(sheet, Theme.Day, number => $"#matter-{number}"));

    /// <summary>The balloon of a matter, large, to hang beside its heading.</summary>
    public static MarkupString Balloon(Matter matter)
    {
        ArgumentNullException.ThrowIfNull(matter);
        var balloon = Callout.Balloon(matter.Number, (int)matter.Weight, new Spot(16, 16), "", 14);
        return new MarkupString(SvgWriter.Write(new Sheet { Width = 32, Height = 32, Title = $"Matter {matter.Number}", Marks = balloon.Marks }, Theme.Day, _ => "#"));
    }

    /// <summary>A photograph without what travels with it; none when it is not at hand or no picture we know.</summary>
    public PageImage? Image(Picture picture)
    {
        ArgumentNullException.ThrowIfNull(picture);
        if (PhotoBytes.Read(photoBySha(picture.Sha)) is not { } photo) return null;
        var source = $"data:{photo.MediaType};base64,{Convert.ToBase64String(photo.Bytes.Span)}";
        return photo.Turned ? new PageImage(source, photo.Height, photo.Width) : new PageImage(source, photo.Width, photo.Height);
    }
}
