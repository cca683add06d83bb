namespace Purlin.Report.Pdf;

/// <summary>A piece of the flow: atoms one under the other, perhaps with others beside them in the margin.</summary>
/// <param name="Main">In the column.</param>
/// <param name="Margin">Beside them.</param>
/// <param name="NewPage">Whether it begins a page.</param>
internal sealed record Piece(IReadOnlyList<Atom> Main, IReadOnlyList<Atom> Margin, bool NewPage = false);

/// <summary>An atom and where it stands.</summary>
internal sealed record Placed(int Page, double Y, Atom Atom, bool Repeated = false);

/// <summary>Fills pages: keeps headings with their text, moves a picture that does not fit, says the head of a table again.</summary>
internal sealed class Flow
{
    private readonly double top;
    private readonly double bottom;
    private readonly List<Placed> placed = [];
    private int page;
    private double y;

    public Flow(double top, double bottom, int firstPage) => (this.top, this.bottom, page, y) = (top, bottom, firstPage, top);

    public IReadOnlyList<Placed> Placed => placed;

    public int LastPage => placed.Count == 0 ? page : placed.Max(atom => atom.Page);

    /// <summary>Adds a piece that can be made for the room there is; for a whole page when it says that the rest of this one is too small.</summary>
    public void Add(Func<double, Piece?> made)
    {
        var here = made(bottom - y);
        if (here is null) NewPage();
        Add(here ?? made(double.PositiveInfinity)!);
    }

    public void NewPage()
    {
        if (y > top) (page, y) = (page + 1, top);
    }

    public void Add(Piece piece)
    {
        if (piece.NewPage) NewPage();
        var start = placed.Count;
        var main = Place(piece.Main, page, y);
        var beside = piece.Margin.Count == 0 ? main : placed.Count > start ? Place(piece.Margin, placed[start].Page, placed[start].Y) : Place(piece.Margin, page, y);
        (page, y) = main.Page > beside.Page || main.Page == beside.Page && main.Y >= beside.Y ? main : beside;
    }

    private (int Page, double Y) Place(IReadOnlyList<Atom> atoms, int page, double y)
    {
        for (var at = 0; at < atoms.Count;)
        {
            var end = at + 1;
            while (end < atoms.Count && atoms[end - 1].Keep) end++;
            var head = atoms[at].Head;
            var needed = Height(atoms, at, end, y <= top);
            if (y > top && y + needed > bottom)
            {
                (page, y) = (page + 1, top);
                if (head is not null) y = Repeat(head, page, y);
            }
            for (; at < end; at++)
            {
                var before = y <= top ? 0 : atoms[at].Before;
                if (y > top && y + before + atoms[at].Height > bottom + 0.5)
                {
                    (page, y, before) = (page + 1, top, 0);
                    if (atoms[at].Head is { } again) y = Repeat(again, page, y);
                }
                placed.Add(new Placed(page, y + before, atoms[at]));
                y += before + atoms[at].Height;
            }
        }
        return (page, y);
    }

    private double Repeat(Atom head, int page, double y)
    {
        placed.Add(new Placed(page, y, head, Repeated: true));
        return y + head.Height;
    }

    private static double Height(IReadOnlyList<Atom> atoms, int from, int to, bool atTop)
    {
        var height = 0.0;
        for (var index = from; index < to; index++) height += atoms[index].Height + (index == from && atTop ? 0 : atoms[index].Before);
        return height;
    }
}
