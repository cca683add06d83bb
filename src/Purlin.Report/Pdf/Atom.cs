namespace Purlin.Report.Pdf;

/// <summary>A group that holds other elements in the structure of the document: a section, a table, a row. Compared by identity.</summary>
internal sealed class Group(string kind)
{
    public string Kind { get; } = kind;
}

/// <summary>An element that holds what is drawn. Lines of one paragraph share one, so that they are one paragraph to a screen reader. Compared by identity.</summary>
internal sealed class Leaf(string kind)
{
    public string Kind { get; } = kind;

    /// <summary>Words in place of a picture.</summary>
    public string? Alt { get; init; }

    /// <summary>Row or Column, for the head of a table.</summary>
    public string? Scope { get; init; }

    /// <summary>Width of what is drawn, for a picture.</summary>
    public double Width { get; init; }

    /// <summary>Height of what is drawn, for a picture.</summary>
    public double Height { get; init; }

    public static Leaf Paragraph() => new("P");
}

/// <summary>Something drawn for a leaf; the point given is its upper left.</summary>
internal sealed record Stroke(Leaf Leaf, Action<Canvas, double, double> Draw);

/// <summary>A heading as the outline knows it, and where a link may lead.</summary>
/// <param name="Level">Level in the outline, from 1; 0 for a place that links lead to and that is no heading.</param>
/// <param name="Text">Plain words.</param>
/// <param name="Anchor">Address.</param>
internal sealed record Landmark(int Level, string Text, string Anchor);

/// <summary>What is never broken across pages: a line, a picture with its caption, one line of a table's row.</summary>
internal sealed class Atom
{
    public required double Height { get; init; }

    /// <summary>Space above it; falls away at the head of a page.</summary>
    public double Before { get; init; }

    /// <summary>Distance from the left edge of its track.</summary>
    public double Left { get; init; }

    /// <summary>Whether it must not stand last on a page.</summary>
    public bool Keep { get; set; }

    /// <summary>Groups it stands in, outermost first.</summary>
    public IReadOnlyList<Group> Groups { get; init; } = [];

    /// <summary>Lines of one paragraph or one row of a table share this; their leaves are written together.</summary>
    public object? Run { get; init; }

    public required IReadOnlyList<Stroke> Strokes { get; init; }

    /// <summary>Name of the chapter, for the head of the page.</summary>
    public string Section { get; set; } = "";

    public Landmark? Entry { get; init; }

    /// <summary>Head of its table, said again at the top of each page the table goes on to.</summary>
    public Atom? Head { get; init; }

    /// <summary>Space, where a neighboring track begins lower.</summary>
    public static Atom Space(double height, double before = 0) => new() { Height = height, Before = before, Keep = true, Strokes = [] };

    public static double HeightOf(IEnumerable<Atom> atoms) => atoms.Select((atom, index) => atom.Height + (index == 0 ? 0 : atom.Before)).Sum();
}
