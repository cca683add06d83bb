using Purlin.Report.Drawing;

namespace Purlin.Report;

/// <summary>A piece of a chapter; the page and the paper each set it in their own way.</summary>
public abstract record Block
{
    private Block() { }

    /// <summary>A paragraph.</summary>
    /// <param name="Text">Plain words.</param>
    public sealed record Paragraph(string Text) : Block
    {
        /// <summary>A smaller paragraph: a source, a remark.</summary>
        public bool Aside { get; init; }
    }

    /// <summary>A heading inside a chapter.</summary>
    /// <param name="Text">Plain words.</param>
    public sealed record Heading(string Text) : Block
    {
        /// <summary>Address of the heading, to link to; none when nothing points there.</summary>
        public string? Anchor { get; init; }
    }

    /// <summary>A list.</summary>
    /// <param name="Lines">Each one sentence or two.</param>
    public sealed record Items(IReadOnlyList<string> Lines) : Block
    {
        /// <summary>Whether the order counts and is numbered.</summary>
        public bool Numbered { get; init; }

        /// <summary>Set small: for looking up, not for reading through.</summary>
        public bool Fine { get; init; }
    }

    /// <summary>A table. The first cell of a row heads it.</summary>
    /// <param name="Caption">What it shows.</param>
    /// <param name="Columns">Headings.</param>
    /// <param name="Rows">As many cells as there are columns; a line break in a cell is a line break.</param>
    public sealed record Table(string Caption, IReadOnlyList<string> Columns, IReadOnlyList<IReadOnlyList<string>> Rows) : Block
    {
        /// <summary>Share of the width of each column; equal when empty.</summary>
        public IReadOnlyList<double> Shares { get; init; } = [];

        /// <summary>Set small: for looking up, not for reading through.</summary>
        public bool Fine { get; init; }
    }

    /// <summary>Photographs.</summary>
    /// <param name="Shown">In the order to be shown.</param>
    public sealed record Pictures(IReadOnlyList<Picture> Shown) : Block
    {
        /// <summary>Small, two or three beside one another.</summary>
        public bool Small { get; init; }
    }

    /// <summary>A drawing.</summary>
    /// <param name="Wide">For paper and wide screens.</param>
    /// <param name="Caption">What to look at.</param>
    public sealed record Figure(Sheet Wide, string Caption) : Block
    {
        /// <summary>For a phone held upright; none when the wide one serves there too.</summary>
        public Sheet? Upright { get; init; }
    }
}
