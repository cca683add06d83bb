namespace Purlin.Report.Pdf;

/// <summary>Atoms one under the other, so far from the left edge of the text.</summary>
internal sealed record Track(double X, IReadOnlyList<Atom> Atoms)
{
    /// <summary>Said at the head of the next page when the track goes on there; none where its atoms say it themselves.</summary>
    public Atom? Continued { get; init; }
}

/// <summary>A piece of the flow: tracks that run down side by side from the same height.</summary>
/// <param name="Tracks">From left to right.</param>
internal sealed record Piece(params IReadOnlyList<Track> Tracks)
{
    /// <summary>Whether it begins a page.</summary>
    public bool NewPage { get; init; }

    /// <summary>With less room than this it does not begin; with more it is parted only where the page would stay too empty without
    /// it.</summary>
    public double? Least { get; init; }

    /// <summary>Space above it; falls away at the head of a page.</summary>
    public double Before { get; init; }

    public static Piece Of(IReadOnlyList<Atom> atoms) => new(new Track(0, atoms));
}

/// <summary>An atom and where it stands.</summary>
internal sealed record Placed(int Page, double X, double Y, Atom Atom, bool Repeated = false);

/// <summary>Fills pages, one column or two: keeps headings with their text, says the head of a table again, parts a matter only where a
/// page would stay empty.</summary>
internal sealed class Flow(double top, double bottom, double firstTop)
{
    /// <summary>A page this full may end before what does not fit on it whole.</summary>
    public const double FullEnough = 0.72;

    private readonly List<Placed> placed = [];
    private Cursor at = new(1, 0, firstTop);
    private bool two;
    private (int Page, double Y) region = (1, firstTop);

    public IReadOnlyList<Placed> Placed => placed;

    public int LastPage => placed.Count == 0 ? 1 : placed.Max(atom => atom.Page);

    /// <summary>Room left in the column one stands in.</summary>
    public double Room => bottom - at.Y;

    public void Add(Piece piece)
    {
        if (piece.NewPage) NewPage();
        if (piece.Least is { } least && !IsAtTop(at))
        {
            var whole = piece.Before + piece.Tracks.Max(track => Atom.HeightOf(track.Atoms));
            var full = (at.Y - top) / (bottom - top) >= FullEnough;
            if (Room < least + piece.Before || whole > Room && full) NewPage();
        }
        var start = IsAtTop(at) ? at : at with { Y = at.Y + piece.Before };
        if (start.Y >= bottom) start = Next(start);
        var ends = piece.Tracks.Select(track => Place(track, start)).ToArray();
        at = ends.OrderByDescending(end => end.Page).ThenByDescending(end => end.Column).ThenByDescending(end => end.Y).First();
    }

    public void NewPage()
    {
        if (!IsAtTop(at) || at.Column > 0) at = new Cursor(at.Page + 1, 0, top);
        if (two) region = (at.Page, at.Y);
    }

    /// <summary>From here on in two columns, beginning below what stands on this page.</summary>
    public void TwoColumns(double before)
    {
        if (two) return;
        if (!IsAtTop(at)) at = at with { Y = at.Y + before };
        if (bottom - at.Y < 120) NewPage();
        (two, region) = (true, (at.Page, at.Y));
    }

    /// <summary>From here on across the page again, which is a new one where two columns were begun.</summary>
    public void OneColumn()
    {
        if (!two) return;
        NewPage();
        two = false;
    }

    private Cursor Place(Track track, Cursor stand)
    {
        var atoms = track.Atoms;
        for (var index = 0; index < atoms.Count;)
        {
            var end = index + 1;
            while (end < atoms.Count && atoms[end - 1].Keep) end++;
            if (!IsAtTop(stand) && stand.Y + Height(atoms, index, end) > bottom + 0.5) stand = Head(atoms[index], track, Next(stand));
            for (; index < end; index++)
            {
                var before = IsAtTop(stand) ? 0 : atoms[index].Before;
                if (!IsAtTop(stand) && stand.Y + before + atoms[index].Height > bottom + 0.5) (stand, before) = (Head(atoms[index], track,
                    Next(stand)), 0);
                placed.Add(new Placed(stand.Page, Left(stand) + track.X, stand.Y + before, atoms[index]));
                stand = stand with { Y = stand.Y + before + atoms[index].Height };
            }
        }
        return stand;
    }

    private Cursor Head(Atom next, Track track, Cursor stand)
    {
        if ((next.Head ?? track.Continued) is not { } head) return stand;
        placed.Add(new Placed(stand.Page, Left(stand) + track.X, stand.Y, head, Repeated: true));
        return stand with { Y = stand.Y + head.Height };
    }

    private Cursor Next(Cursor stand) => two && stand.Column == 0 ? new Cursor(stand.Page, 1, TopOf(stand.Page))
        : new Cursor(stand.Page + 1, 0, top);

    private double TopOf(int page) => page == region.Page ? region.Y : page == 1 ? firstTop : top;

    private bool IsAtTop(Cursor cursor) => cursor.Y <= (two ? TopOf(cursor.Page) : cursor.Page == 1 ? firstTop : top);

    private static double Left(Cursor cursor) => cursor.Column * (Measures.Half + Measures.Gap);

    private static double Height(IReadOnlyList<Atom> atoms, int from, int to)
    {
        var height = 0.0;
        for (var index = from; index < to; index++) height += atoms[index].Height + atoms[index].Before;
        return height;
    }

    private readonly record struct Cursor(int Page, int Column, double Y);
}
