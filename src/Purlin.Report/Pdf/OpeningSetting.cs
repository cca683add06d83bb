using Purlin.Report.Drawing;
using Purlin.Report.Fonts;

namespace Purlin.Report.Pdf;

/// <summary>Sets the first page: whose house it is, three answers, the house beside them.</summary>
internal static class OpeningSetting
{
    private const double Left = 262;
    private const double Right = Left + 10;
    private const double Tallest = 236;

    private static readonly Style reply = new(13.5, 16.2, Cut.Bold);
    private static readonly Style question = new(9.6, 12.6, Cut.Regular, Ink.Quiet);

    /// <summary>Whose house: stands above every paper, not of the report alone.</summary>
    public static Piece Head(Paper paper, IReadOnlyList<Group> groups)
    {
        var cover = paper.Cover;
        var name = Lines.Of(cover.Address, Style.Name, Measures.Text).Count > 2 ? new Style(15, 18, Cut.Bold) : Style.Name;
        List<Atom> atoms =
        [
            .. TextSetting.Paragraph($"{paper.Title}, {Lower(paper.Words.Issue(paper.Mark))}", new Style(10.5, 14), Measures.Text, groups, before: 0, keep: true),
            .. TextSetting.Heading(cover.Address, "H1", name, 1, "top", groups, Measures.Text, before: 0),
        ];
        foreach (var line in Beneath(cover)) atoms.AddRange(TextSetting.Paragraph(line, new Style(9.4, 12, Cut.Regular, Ink.Quiet), Measures.Text, groups, before: 1, keep: true));
        if (cover.Marks.Count > 0) atoms.AddRange(TextSetting.Paragraph(string.Join(". ", cover.Marks) + ".", new Style(9.4, 12, Cut.Bold), Measures.Text, groups, before: 1, keep: true));
        Leaf rule = new("Artifact");
        atoms.Add(new Atom { Height = 10, Keep = true, Groups = groups, Strokes = [new Stroke(rule, (canvas, x, y) => canvas.Rule(x, y + 6, x + Measures.Text, y + 6, 2.2))] });
        return Piece.Of(atoms);
    }

    public static Piece Of(Block.Opening opening, IReadOnlyList<Group> groups)
    {
        List<Atom> answers = [];
        foreach (var answer in opening.Answers)
        {
            var last = answer == opening.Answers[^1];
            answers.AddRange(TextSetting.Heading(answer.Question, "H2", question, 2, "", groups, Left, before: answers.Count == 0 ? 4 : 9).Select(Unlisted));
            answers.AddRange(TextSetting.Paragraph(answer.Reply, reply, Left, groups, before: 0, keep: true));
            if (answer.Words.Count > 0) answers.AddRange(TextSetting.Paragraph(answer.Words, new Style(9.8, 12.6), Left, groups, before: 1, keep: true));
            if (!last) answers.Add(Rule(groups));
        }
        return new Piece(new Track(0, answers), new Track(Right, [PictureSetting.Drawing(opening.House, "", Measures.Text - Right, groups, Style.Small, Tallest)]));
    }

    private static Atom Unlisted(Atom line) => new() { Height = line.Height, Before = line.Before, Groups = line.Groups, Run = line.Run, Keep = true, Strokes = line.Strokes };

    private static Atom Rule(IReadOnlyList<Group> groups) => new() { Height = 6, Keep = true, Groups = groups, Strokes = [new Stroke(new Leaf("Artifact"), (canvas, x, y) => canvas.Rule(x, y + 5, x + Left, y + 5, 0.5, Ink.Faint))] };

    private static IEnumerable<string> Beneath(Cover cover)
    {
        if (cover.House.Length > 0) yield return cover.House + ".";
        string[] people = [.. new[] { Named(CellKind.Client), Named(CellKind.Inspector), cover.Say(CellKind.Day) }.Where(part => part.Length > 0)];
        if (people.Length > 0) yield return string.Join(". ", people) + ".";
        string Named(CellKind kind) => cover.Cells.FirstOrDefault(cell => cell.Kind == kind) is { } cell ? $"{cell.Label} {cell.Text}" : "";
    }

    private static string Lower(string text) => text.Length == 0 ? text : char.ToLowerInvariant(text[0]) + text[1..];
}
