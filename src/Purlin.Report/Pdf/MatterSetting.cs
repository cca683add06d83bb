using Purlin.Book;
using Purlin.Report.Drawing;
using Purlin.Report.Fonts;
using Purlin.Report.Writing;

namespace Purlin.Report.Pdf;

/// <summary>Sets a matter: balloon, by when, whom and where hang left; the picture stands beside the words, never under them.</summary>
internal sealed class MatterSetting(PictureSetting pictures, string title)
{
    private const double Across = Measures.Text - Measures.First;
    private static readonly Style rail = new(8.8, 11.2);
    private static readonly Style part = new(10.5, 14, Cut.Bold);

    /// <summary>The matter as a piece: it may be parted under its first picture, and is not where the page can end before it.</summary>
    public IEnumerable<Piece> Of(Matter matter, IReadOnlyList<Group> outer)
    {
        IReadOnlyList<Group> groups = [.. outer, new Group("Art")];
        var head = Title(matter, groups);
        var space = Atom.HeightOf(head) + head[^1].Before;
        var first = pictures.Of([.. matter.Pictures.Take(1)], 1, Measures.Picture, groups, Style.Small, 190);
        var (left, right) = Best(matter, groups, first);
        var more = matter.Pictures.Skip(1).ToList();
        // A second picture goes under the first where the words beside are long enough.
        while (more.Count > 0 && pictures.Of([more[0]], 1, Measures.Picture, groups, Style.Small, 160) is var under
            && Atom.HeightOf(left) + Atom.HeightOf(under) + 8 <= Atom.HeightOf(right) + 30)
        {
            left.InsertRange(first.Count + matter.Pictures.Count - 1 - more.Count, under);
            more.RemoveAt(0);
        }
        var beside = Rail(matter, groups);
        var whole = Math.Max(space + Math.Max(Atom.HeightOf(left), Atom.HeightOf(right)), Atom.HeightOf(beside));
        var least = Math.Min(whole, Math.Max(space + (first.Count > 0 ? Atom.HeightOf(first) : 60), 130));
        yield return new Piece(new Track(0, beside), new Track(Measures.First, [.. head,
            .. left])
        { Continued = Continued($"{matter.Number}. {matter.Title}", Measures.Picture) }, new Track(Measures.Second,
            [Atom.Space(Atom.HeightOf(head)), .. right])
        { Continued = Continued($"{matter.Number}", Measures.Column) })
        {
            Least = least,
            Before = 14
        };
        if (more.Count > 0) yield return new Piece(new Track(Measures.First, pictures.Of(more, Math.Clamp(more.Count, 2, 3), Across,
            groups, Style.Small, 128)));
        foreach (var atom in beside.Concat(head).Concat(left).Concat(right)) atom.Section = title;
    }

    // Whose words these are is said again where they go on; readers aloud heard it before.
    private Atom Continued(string what, double width)
    {
        var words = Typesetting.Fit(pictures.Words.Say("paper.continued", ("what", what)), Style.Small.Size, Cut.Bold, width);
        return new Atom
        {
            Height = 15,
            Strokes = [new Stroke(new Leaf("Artifact"), (canvas, x, y) => canvas.Text(words + " ", x, y + 9, Style.Small.Size, Cut.Bold,
                Ink.Quiet))],
        };
    }

    // What was seen goes under the picture when that makes the whole lower; so do the references.
    private (List<Atom> Left, List<Atom> Right) Best(Matter matter, IReadOnlyList<Group> groups, IReadOnlyList<Atom> picture)
    {
        (List<Atom>, List<Atom>)? best = null;
        var least = double.PositiveInfinity;
        foreach (var (seenLeft, notesLeft) in ((bool, bool)[])[(false, true), (true, false), (true, true), (false, false)])
        {
            List<Atom> left = [.. picture], right = [];
            (seenLeft ? left : right).AddRange(Seen(matter, groups, seenLeft ? Measures.Picture : Measures.Column));
            right.AddRange(Words(matter, groups));
            (notesLeft ? left : right).AddRange(Notes(matter, groups, notesLeft ? Measures.Picture : Measures.Column));
            var height = Math.Max(Atom.HeightOf(left), Atom.HeightOf(right));
            if (height >= least - 10) continue;
            (best, least) = ((left, right), height);
        }
        return best!.Value;
    }

    private static List<Atom> Title(Matter matter, IReadOnlyList<Group> groups)
    {
        var lines = TextSetting.Heading($"{matter.Number}. {matter.Title}", "H3", Style.Heading, 3, matter.Anchor, groups, Across,
            before: 0);
        return [.. lines.Select((line, index) => index > 0 ? line : new Atom
        {
            Height = line.Height,
            Groups = groups,
            Run = line.Run,
            Keep = true,
            Entry = line.Entry,
            Strokes = [new Stroke(line.Strokes[0].Leaf, (canvas, x, y) =>
            {
                canvas.Rule(x - Measures.First, y - 7, x + Across, y - 7, matter.Weight >= Weight.ActNow ? 1.6 : 0.8);
                line.Strokes[0].Draw(canvas, x, y);
            })],
        })];
    }

    private List<Atom> Seen(Matter matter, IReadOnlyList<Group> groups, double width)
    {
        List<Atom> atoms = [.. Label(MatterPart.Seen, width, groups)];
        foreach (var line in matter.Seen) atoms.AddRange(TextSetting.Paragraph(line, Style.Body, width, groups, before: 2));
        return atoms;
    }

    private List<Atom> Words(Matter matter, IReadOnlyList<Group> groups)
    {
        List<Atom> atoms = [];
        foreach (var kind in (MatterPart[])[MatterPart.Why, MatterPart.Do])
        {
            atoms.AddRange(Label(kind, Measures.Column, groups));
            atoms.AddRange(TextSetting.Paragraph(matter.Say(kind), Style.Body, Measures.Column, groups, before: 1));
        }
        foreach (var question in matter.Questions) atoms.AddRange(TextSetting.Paragraph(new Prose(new Run($"{pictures.Words.Asking(question.Trade)}: ", Strong: true), new Run(question.Ask)), Style.Body, Measures.Column, groups, before: 3));
        return atoms;
    }

    private IReadOnlyList<Atom> Label(MatterPart kind, double width, IReadOnlyList<Group> groups) =>
        TextSetting.Heading(pictures.Words.Label(kind), "H4", part, 4, "", groups, width, before: 6).Select(line =>
        new Atom { Height = part.Leading, Before = 5, Groups = groups, Run = line.Run, Keep = true, Strokes = line.Strokes }).ToArray();

    private List<Atom> Notes(Matter matter, IReadOnlyList<Group> groups, double width)
    {
        List<Atom> atoms = [];
        void Say(Prose words) => atoms.AddRange(TextSetting.Paragraph(words, Style.Small, width, groups, before: atoms.Count == 0 ? 7 : 3));
        if (matter.Untranslated.Length > 0) Say(matter.Untranslated);
        if (matter.Clear.Length > 0) Say(matter.Clear);
        if (matter.Years.Length > 0) Say(matter.Years);
        List<Prose> refer = [];
        if (matter.SeeAlso.Count > 0) refer.Add(pictures.Words.Linked("report.photographs.also", "numbers", Prose.Join(", ",
            matter.SeeAlso.Select(number => Prose.Link($"{number}", $"photograph-{number}"))), ("count", matter.SeeAlso.Count)));
        if (matter.Workings.Count > 0) refer.Add(Prose.Join(", ", matter.Workings.Select(number => Prose.Link($"W{number}",
            $"working-{number}"))));
        refer.Add(Prose.Link(pictures.Words.Say("report.evidence"), matter.EvidenceAnchor));
        refer.Add(Prose.Link(pictures.Words.Say("paper.list"), "list"));
        Say(Prose.Join(" · ", refer));
        return atoms;
    }

    private IReadOnlyList<Atom> Rail(Matter matter, IReadOnlyList<Group> groups)
    {
        var balloon = Callout.Balloon(matter.Number, (int)matter.Weight, new Spot(0, 0), "");
        List<Stroke> head = [new Stroke(new Leaf("Artifact"), (canvas, x, y) => SheetOnPaper.Put(canvas, balloon, x + 16, y + 16.5, 1.28))];
        List<Atom> atoms = [new Atom { Height = 36, Groups = groups, Keep = true, Strokes = head }];
        if (matter.Locator is { } locator)
        {
            var scale = Math.Min(44 / locator.Width, 36 / locator.Height);
            Leaf figure = new("Figure") { Alt = Typesetting.Clean($"{locator.Title}: {locator.Description}"), Width = 44, Height = 36 };
            atoms.Add(new Atom
            {
                Height = 0,
                Before = -36,
                Groups = groups,
                Keep = true,
                Strokes = [new Stroke(figure, (canvas, x, y) =>
                SheetOnPaper.Draw(canvas, locator, x + 38, y + 36 - locator.Height * scale, scale))]
            });
            atoms.Add(Atom.Space(36));
        }
        void Say(string words, Style style, double before) => atoms.AddRange(TextSetting.Paragraph(words, style, Measures.Rail, groups,
            before: before, keep: true));
        Say(pictures.Words.Word(matter.Weight), rail with
        {
            Size = 10.5,
            Leading = 13,
            Cut = Cut.Bold,
            Ink = matter.Weight == Weight.MakeSafe ? Ink.Accent : Ink.Text
        }, 1);
        Say(pictures.Words.Say("paper.by-when"), Style.Small with { Leading = 10 }, 3);
        Say(pictures.Words.Word(matter.Due.By), rail with { Cut = Cut.Bold }, 0);
        Say(pictures.Words.Say("paper.whom"), Style.Small with { Leading = 10 }, 3);
        Say(pictures.Words.Trade(matter.Trade), rail with { Cut = Cut.Bold }, 0);
        Say(matter.Say(MatterPart.Where), rail, 3);
        if (matter.Cautions.Count > 0) atoms.AddRange(TextSetting.Paragraph(pictures.Words.Linked("paper.caution", "letters",
            new Prose(new Run(string.Join(", ", matter.Cautions), "cautions", Strong: true))), rail, Measures.Rail, groups, before: 3,
            keep: true));
        atoms[^1].Keep = false;
        return atoms;
    }
}
