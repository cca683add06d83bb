using System.Collections.Immutable;
using Purlin.Book;
using Purlin.Report.Fonts;

namespace Purlin.Report.Drawing;

/// <summary>One thing drawn on a sheet.</summary>
public abstract record Mark
{
    private Mark() { }

    /// <summary>A line.</summary>
    /// <param name="Trace">Its path.</param>
    /// <param name="Line">How it is drawn.</param>
    /// <param name="Ink">With what.</param>
    public sealed record Stroke(Trace Trace, LineClass Line, Ink Ink) : Mark;

    /// <summary>A filled area.</summary>
    /// <param name="Trace">Its outline.</param>
    /// <param name="Ink">With what.</param>
    public sealed record Area(Trace Trace, Ink Ink) : Mark;

    /// <summary>Words.</summary>
    /// <param name="Text">One line.</param>
    /// <param name="At">Where the line of writing stands: its start, middle or end.</param>
    /// <param name="Size">Size of the letters in the sheet's unit.</param>
    public sealed record Lettering(string Text, Spot At, double Size) : Mark
    {
        /// <summary>Cut of the family.</summary>
        public Cut Cut { get; init; }

        /// <summary>With what.</summary>
        public Ink Ink { get; init; } = Ink.Text;

        /// <summary>Which part of the line stands at the spot.</summary>
        public Anchor Anchor { get; init; } = Anchor.Middle;

        /// <summary>Whether paper shows around the letters where they cross a hatch.</summary>
        public bool Halo { get; init; }

        /// <summary>Quarter turn to the left, to be read from the right edge of the sheet.</summary>
        public bool Upright { get; init; }
    }

    /// <summary>A numbered balloon with its bars; writers may make it a link to its matter.</summary>
    /// <param name="Number">The number of the matter.</param>
    /// <param name="At">Its middle.</param>
    /// <param name="Words">Weight and title, for those who do not see it.</param>
    /// <param name="Marks">What is drawn.</param>
    public sealed record Balloon(int Number, Spot At, string Words, ImmutableArray<Mark> Marks) : Mark;
}

/// <summary>How a line is drawn, by the conventions of a section drawing.</summary>
public enum LineClass
{
    /// <summary>What the cut goes through: thick.</summary>
    Cut,

    /// <summary>What is seen beyond the cut: thin.</summary>
    Beyond,

    /// <summary>Furnishings, hatches, dimension lines: finest.</summary>
    Fine,

    /// <summary>What is hidden: dashed.</summary>
    Hidden,

    /// <summary>Where the plane of the cut shifts: dash and dot.</summary>
    Shift,

    /// <summary>The ground line: thickest.</summary>
    Heavy,

    /// <summary>Paper laid around a line that crosses others.</summary>
    Halo,
}

/// <summary>What a mark is drawn with. A theme gives each its colour; no meaning rests on it alone.</summary>
public enum Ink
{
    /// <summary>Full ink: looked at.</summary>
    Line,

    /// <summary>Faint line: not yet looked at.</summary>
    Faint,

    /// <summary>Hatches and furnishings of what was looked at.</summary>
    Hatch,

    /// <summary>The ground of the sheet.</summary>
    Paper,

    /// <summary>A breath of tone, for solid material and shade.</summary>
    Wash,

    /// <summary>Letters.</summary>
    Text,

    /// <summary>Letters that stand back.</summary>
    Quiet,

    /// <summary>Someone can be hurt.</summary>
    Accent,
}

/// <summary>Which part of a line of writing stands at its spot.</summary>
public enum Anchor
{
    /// <summary>Its start.</summary>
    Start,

    /// <summary>Its middle.</summary>
    Middle,

    /// <summary>Its end.</summary>
    End,
}
