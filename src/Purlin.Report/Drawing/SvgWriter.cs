using System.Globalization;
using System.Text;
using System.Xml;
using Purlin.Report.Fonts;

namespace Purlin.Report.Drawing;

/// <summary>
/// Writes a sheet as SVG. Built by an XML writer, never by joining text from data. Colours stand in attributes as custom properties with
/// the theme's colour behind them, so that it needs neither a style element nor a style attribute and passes a strict content policy.
/// </summary>
public static class SvgWriter
{
    private const string Svg = "http://www.w3.org/2000/svg";

    /// <summary>The sheet with its targets as buttons.</summary>
    public static string Write(Sheet sheet, Theme theme) => Write(sheet, theme, null);

    /// <summary>The sheet for a page to read: no buttons; each balloon is a link made from its number.</summary>
    /// <param name="sheet">The drawing.</param>
    /// <param name="theme">Its colours.</param>
    /// <param name="link">Address of a matter; none keeps the targets as buttons.</param>
    public static string Write(Sheet sheet, Theme theme, Func<int, string>? link)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(theme);
        StringBuilder text = new();
        using (var xml = XmlWriter.Create(text, new XmlWriterSettings { OmitXmlDeclaration = true, ConformanceLevel = ConformanceLevel.Fragment }))
        {
            xml.WriteStartElement("svg", Svg);
            xml.WriteAttributeString("viewBox", $"0 0 {Number(sheet.Width)} {Number(sheet.Height)}");
            xml.WriteAttributeString("class", $"sheet sheet-{theme.Name}");
            xml.WriteAttributeString("role", link is null || sheet.Marks.OfType<Mark.Balloon>().Any() ? "group" : "img");
            xml.WriteAttributeString("aria-label", Typesetting.Clean(sheet.Description.Length == 0 ? sheet.Title : $"{sheet.Title}. {sheet.Description}"));
            xml.WriteAttributeString("font-family", "var(--sheet-font, 'Atkinson Hyperlegible Next', sans-serif)");
            xml.WriteAttributeString("stroke-linecap", "round");
            xml.WriteAttributeString("stroke-linejoin", "round");
            xml.WriteAttributeString("fill", "none");
            foreach (var mark in sheet.Marks) Put(xml, mark, theme, link);
            if (link is null) foreach (var target in sheet.Targets) Put(xml, target);
            xml.WriteEndElement();
        }
        return text.ToString();
    }

    private static void Put(XmlWriter xml, Mark mark, Theme theme, Func<int, string>? link)
    {
        switch (mark)
        {
            case Mark.Stroke stroke: Put(xml, stroke, theme); break;
            case Mark.Area area:
                xml.WriteStartElement("path", Svg);
                xml.WriteAttributeString("d", Data(area.Trace));
                xml.WriteAttributeString("fill", Paint(area.Ink, theme));
                xml.WriteEndElement();
                break;
            case Mark.Lettering lettering: Put(xml, lettering, theme); break;
            case Mark.Balloon balloon: Put(xml, balloon, theme, link); break;
        }
    }

    private static void Put(XmlWriter xml, Mark.Stroke stroke, Theme theme)
    {
        xml.WriteStartElement("path", Svg);
        xml.WriteAttributeString("d", Data(stroke.Trace));
        xml.WriteAttributeString("class", stroke.Line.ToString().ToLowerInvariant());
        xml.WriteAttributeString("stroke", Paint(stroke.Ink, theme));
        xml.WriteAttributeString("stroke-width", Number(theme.Width(stroke.Line, stroke.Ink)));
        if (Theme.Dashes(stroke.Line) is { Count: > 0 } dashes) xml.WriteAttributeString("stroke-dasharray", string.Join(' ', dashes.Select(Number)));
        xml.WriteEndElement();
    }

    private static void Put(XmlWriter xml, Mark.Lettering lettering, Theme theme)
    {
        xml.WriteStartElement("text", Svg);
        xml.WriteAttributeString("x", Number(lettering.At.X));
        xml.WriteAttributeString("y", Number(lettering.At.Y));
        xml.WriteAttributeString("font-size", Number(lettering.Size));
        xml.WriteAttributeString("fill", Paint(lettering.Ink, theme));
        if (lettering.Anchor != Anchor.Start) xml.WriteAttributeString("text-anchor", lettering.Anchor == Anchor.Middle ? "middle" : "end");
        if (lettering.Cut == Cut.Bold) xml.WriteAttributeString("font-weight", "700");
        if (lettering.Cut == Cut.Italic) xml.WriteAttributeString("font-style", "italic");
        if (lettering.Upright) xml.WriteAttributeString("transform", $"rotate(-90 {Number(lettering.At.X)} {Number(lettering.At.Y)})");
        if (lettering.Halo)
        {
            xml.WriteAttributeString("stroke", Paint(Ink.Paper, theme));
            xml.WriteAttributeString("stroke-width", Number(lettering.Size * 0.3));
            xml.WriteAttributeString("paint-order", "stroke");
        }
        xml.WriteString(Typesetting.Clean(lettering.Text));
        xml.WriteEndElement();
    }

    private static void Put(XmlWriter xml, Mark.Balloon balloon, Theme theme, Func<int, string>? link)
    {
        xml.WriteStartElement(link is null ? "g" : "a", Svg);
        xml.WriteAttributeString("class", "balloon");
        xml.WriteAttributeString("data-matter", balloon.Number.ToString(CultureInfo.InvariantCulture));
        if (link is null) xml.WriteAttributeString("aria-hidden", "true");
        else
        {
            xml.WriteAttributeString("href", link(balloon.Number));
            xml.WriteAttributeString("aria-label", Typesetting.Clean(balloon.Words));
        }
        foreach (var mark in balloon.Marks) Put(xml, mark, theme, null);
        xml.WriteEndElement();
    }

    private static void Put(XmlWriter xml, Target target)
    {
        xml.WriteStartElement("rect", Svg);
        xml.WriteAttributeString("class", "target");
        xml.WriteAttributeString("data-place", target.Id);
        xml.WriteAttributeString("role", "button");
        xml.WriteAttributeString("tabindex", "0");
        xml.WriteAttributeString("aria-label", Typesetting.Clean(target.Label));
        xml.WriteAttributeString("x", Number(target.Box.X));
        xml.WriteAttributeString("y", Number(target.Box.Y));
        xml.WriteAttributeString("width", Number(target.Box.Width));
        xml.WriteAttributeString("height", Number(target.Box.Height));
        xml.WriteAttributeString("fill", "transparent");
        xml.WriteEndElement();
    }

    private static string Data(Trace trace)
    {
        StringBuilder data = new();
        foreach (var step in trace.Steps)
        {
            switch (step.Kind)
            {
                case TraceKind.Move: data.Append(CultureInfo.InvariantCulture, $"M{Pair(step.To)}"); break;
                case TraceKind.Line: data.Append(CultureInfo.InvariantCulture, $"L{Pair(step.To)}"); break;
                case TraceKind.Curve: data.Append(CultureInfo.InvariantCulture, $"C{Pair(step.First)} {Pair(step.Second)} {Pair(step.To)}"); break;
                default: data.Append('Z'); break;
            }
        }
        return data.ToString();
    }

    private static string Paint(Ink ink, Theme theme) => $"var(--sheet-{ink.ToString().ToLowerInvariant()}, {theme.Colour(ink)})";

    private static string Pair(Spot spot) => $"{Number(spot.X)} {Number(spot.Y)}";

    private static string Number(double value) => Math.Round(value, 2).ToString("0.##", CultureInfo.InvariantCulture);
}
