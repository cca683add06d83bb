using Purlin.Book;
using Purlin.Report.Drawing;
using Purlin.Report.Fonts;
using Purlin.Report.Writing;

namespace Purlin.Report.Pdf;

/// <summary>Sets work to be priced: a small picture, what and where, what is asked, and two empty lines for price and date.</summary>
internal sealed class JobSetting(PictureSetting pictures)
{
    private const double Photo = 116;
    private const double Text = 290;
    private static readonly Style body = new(9.8, 12.4);

    public IEnumerable<Piece> Of(Block.Jobs jobs, IReadOnlyList<Group> groups)
    {
        foreach (var job in jobs.Lines)
        {
            var matter = job.Matter;
            List<Atom> words =
            [
                .. TextSetting.Heading($"{matter.Number}. {matter.Title}", "H3", new Style(11.5, 14.5, Cut.Bold), 3, $"job-{matter.Number}", groups, Text, before: 0).Select(line => new Atom { Height = line.Height, Before = line.Before, Groups = line.Groups, Run = line.Run, Keep = true, Strokes = line.Strokes }),
                .. TextSetting.Paragraph(new Prose(new Run(matter.Say(MatterPart.Where), Strong: true), new Run($" {Quantity(matter)}")), body, Text, groups, before: 1, keep: true),
                .. matter.Seen.SelectMany(line => TextSetting.Paragraph(line, body with { Ink = Ink.Quiet }, Text, groups, before: 2)),
                .. TextSetting.Paragraph(new Prose(new Run(pictures.Words.Say("report.asked") + " ", Strong: true), new Run(job.Asked)), body, Text, groups, before: 3),
            ];
            IReadOnlyList<Atom> picture = job.Picture is { } shown ? pictures.Of([shown], 1, Photo, groups, Style.Small, 100) : [Atom.Space(20)];
            picture[^1].Keep = false;
            yield return new Piece(new Track(0, picture), new Track(Photo + 12, words), new Track(Photo + Text + 26, Blanks(matter, groups))) { Least = 140, Before = 14 };
            yield return Piece.Of([new Atom { Height = 3, Before = 4, Strokes = [new Stroke(new Leaf("Artifact"), (canvas, x, y) => canvas.Rule(x, y + 2, x + Measures.Text, y + 2, 0.5, Ink.Faint))] }]);
        }
    }

    private static string Quantity(Matter matter) => matter.Quantity == "1" ? "" : $"{matter.Quantity}.";

    private IReadOnlyList<Atom> Blanks(Matter matter, IReadOnlyList<Group> groups)
    {
        var width = Measures.Text - Photo - Text - 26;
        List<Atom> atoms = [.. TextSetting.Paragraph(Phrase.Sentence(pictures.Words.Word(matter.Due.By)), body with { Cut = Cut.Bold }, width, groups, before: 0, keep: true)];
        foreach (var label in (string[])[pictures.Words.Say("report.price"), pictures.Words.Say("report.done-on"), pictures.Words.Say("report.done-by")])
            atoms.Add(new Atom
            {
                Height = 26,
                Groups = groups,
                Keep = true,
                Strokes = [new Stroke(Leaf.Paragraph(), (canvas, x, y) =>
            {
                canvas.Text(label + " ", x, y + 12, Style.Small.Size, Cut.Regular, Ink.Quiet);
                canvas.Rule(x + 36, y + 21, x + width, y + 21, 0.6);
            })]
            });
        atoms[^1].Keep = false;
        return atoms;
    }
}
