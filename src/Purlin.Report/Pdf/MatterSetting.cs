using Purlin.Book;
using Purlin.Judgement;
using Purlin.Report.Drawing;
using Purlin.Report.Fonts;
using Purlin.Report.Writing;

namespace Purlin.Report.Pdf;

/// <summary>Sets a matter: its balloon hangs left, its text stands in the column, weight, trail and sources in the margin.</summary>
internal sealed class MatterSetting(PictureSetting pictures)
{
    private const double Label = 76;
    private const double Further = 112;

    /// <summary>The matter for the room left on a page: its first photograph is made smaller, down to a bound, rather than parted from the text.</summary>
    /// <returns>Nothing when it wants a page of its own to begin on.</returns>
    public Piece? Of(Matter matter, IReadOnlyList<Group> outer, double room, IReadOnlyList<Atom>? above = null)
    {
        IReadOnlyList<Group> groups = [.. outer, new Group("Art")];
        var text = Text(matter, groups);
        var tallest = Tallest(matter, [.. above ?? [], .. text], double.IsPositiveInfinity(room) ? Measures.Bottom - Measures.Top : room);
        if (tallest < Smallest(matter) && !double.IsPositiveInfinity(room)) return null;
        text.AddRange(pictures.Of([.. matter.Pictures.Take(1)], 1, Measures.Column, groups, Measures.Gutter, Math.Max(tallest, Smallest(matter))));
        text.AddRange(pictures.Of([.. matter.Pictures.Skip(1)], 2, Measures.Column, groups, Measures.Gutter, Further));
        return new Piece(text, [.. Margin(matter, [.. groups, new Group("Div")])]);
    }

    private static List<Atom> Text(Matter matter, IReadOnlyList<Group> groups)
    {
        List<Atom> main = [.. Title(matter, groups)];
        foreach (var part in matter.Parts) main.AddRange(Part(part, groups));
        main[^1].Keep = false;
        foreach (var caution in matter.Cautions) main.AddRange(TextSetting.Paragraph($"Caution. {caution}", Style.Strong, Measures.Column - Label, groups, Measures.Gutter + Label));
        if (matter.ThenAndNow.Length > 0) main.AddRange(TextSetting.Paragraph($"Then and now. {matter.ThenAndNow}", Style.Body, Measures.Column - Label, groups, Measures.Gutter + Label));
        return main;
    }

    // The first photograph is as large as its weight deserves and as the page leaves room for, so that text and pictures stand together.
    private static double Tallest(Matter matter, IEnumerable<Atom> text, double room)
    {
        var left = room - text.Sum(atom => atom.Height + atom.Before);
        if (matter.Pictures.Count == 0) return left;
        var wanted = matter.Weight switch { >= Weight.ActNow => 172, Weight.PutRight => 136, _ => 112 };
        return Math.Min(left - matter.Pictures.Count / 2 * (Further + 38) - 48, wanted);
    }

    private static double Smallest(Matter matter) => matter.Pictures.Count == 0 ? 0 : matter.Weight switch { >= Weight.ActNow => 92, Weight.PutRight => 88, _ => 80 };

    private static IEnumerable<Atom> Title(Matter matter, IReadOnlyList<Group> groups)
    {
        var title = TextSetting.Heading($"{matter.Number}. {matter.Title}", "H3", Style.Heading, 3, matter.Anchor, groups, Measures.Column, Measures.Gutter, before: 26);
        Leaf heading = title[0].Strokes[0].Leaf;
        var balloon = Callout.Balloon(matter.Number, (int)matter.Weight, new Spot(0, 0), "");
        yield return new Atom
        {
            Height = title[0].Height,
            Before = title[0].Before,
            Left = 0,
            Groups = groups,
            Run = title[0].Run,
            Keep = true,
            Entry = title[0].Entry,
            Strokes =
            [
                new Stroke(heading, (canvas, x, y) =>
                {
                    canvas.Rule(x, y - 10, x + Measures.Text, y - 10, 0.7);
                    SheetOnPaper.Put(canvas, balloon, x + 14, y + 11, 1.05);
                    title[0].Strokes[0].Draw(canvas, x + Measures.Gutter, y);
                }),
            ],
        };
        foreach (var line in title.Skip(1)) yield return line;
    }

    private static IEnumerable<Atom> Part(Part part, IReadOnlyList<Group> groups)
    {
        var style = part.Label == MatterWriting.Do ? Style.Strong : Style.Body;
        var lines = Typesetting.Lines(part.Text, style.Size, style.Cut, Measures.Column - Label);
        var leaf = Leaf.Paragraph();
        var marked = part.Label == MatterWriting.Do;
        return lines.Select((line, index) => new Atom
        {
            Height = style.Leading,
            Before = index == 0 ? 5 : 0,
            Left = Measures.Gutter,
            Groups = groups,
            Run = leaf,
            Keep = true,
            Strokes =
            [
                new Stroke(leaf, (canvas, x, y) =>
                {
                    if (marked) canvas.Fill(new Box(x + Label - 9, y, 2.6, style.Leading + 0.3), Ink.Line);
                    if (index == 0) canvas.Text(part.Label, x, y + style.Leading * 0.76, Style.Label.Size, Cut.Regular, Ink.Quiet);
                    canvas.Text(line, x + Label, y + style.Leading * 0.76, style.Size, style.Cut, style.Ink);
                }),
            ],
        });
    }

    private static IEnumerable<Atom> Margin(Matter matter, IReadOnlyList<Group> groups)
    {
        var first = true;
        IEnumerable<Atom> Note(string heading, IEnumerable<string> lines)
        {
            var atoms = TextSetting.Paragraph(heading, Style.SmallStrong, Measures.MarginWidth, groups, Measures.MarginLeft, first ? 26 : 8, keep: true).ToList();
            first = false;
            foreach (var line in lines) atoms.AddRange(TextSetting.Paragraph(line, Style.Small, Measures.MarginWidth, groups, Measures.MarginLeft, 2));
            return atoms;
        }
        List<Atom> margin = [.. Note("Why this weight", matter.Why)];
        if (matter.Trail.Count > 0) margin.AddRange(Note("Trail of evidence", matter.Trail.Select(line => $"{line.Text} [{line.Entry}]")));
        if (matter.SeeAlso.Count > 0) margin.AddRange(Note("See also", [$"Photograph {Phrase.List([.. matter.SeeAlso.Select(number => $"{number}")])}."]));
        if (matter.Workings.Count > 0) margin.AddRange(Note("Reckoned in", [$"Working {Phrase.List([.. matter.Workings.Select(number => $"{number}")])}."]));
        if (matter.Sources.Count > 0) margin.AddRange(Note("Sources", matter.Sources.Select(source => Phrase.End(Phrase.Sentence(source)))));
        return margin;
    }
}
