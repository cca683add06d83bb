using Purlin.Report.Drawing;

namespace Purlin.Report;

/// <summary>A piece of a chapter; the page and the PDF each set it in their own way.</summary>
public abstract record Block
{
    private Block() { }

    /// <summary>A paragraph.</summary>
    /// <param name="Text">Its words.</param>
    public sealed record Paragraph(Prose Text) : Block
    {
        /// <summary>A smaller paragraph: a source, a remark.</summary>
        public bool Aside { get; init; }

        /// <summary>Address, to link to; none when nothing points there.</summary>
        public string? Anchor { get; init; }
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
    public sealed record Items(IReadOnlyList<Prose> Lines) : Block
    {
        /// <summary>Whether the order counts and is numbered.</summary>
        public bool Numbered { get; init; }

        /// <summary>Set small: for looking up, not for reading through.</summary>
        public bool Fine { get; init; }

        /// <summary>What stands before the number, where lines are pointed to: <c>S</c> for sources. The address is that and the number.</summary>
        public string Mark { get; init; } = "";
    }

    /// <summary>A table. The first cell of a row heads it.</summary>
    /// <param name="Caption">What it shows.</param>
    /// <param name="Columns">Headings.</param>
    /// <param name="Rows">As many cells as there are columns; a line break in a cell is a line break.</param>
    public sealed record Table(string Caption, IReadOnlyList<string> Columns, IReadOnlyList<IReadOnlyList<Prose>> Rows) : Block
    {
        /// <summary>Share of the width of each column; equal when empty.</summary>
        public IReadOnlyList<double> Shares { get; init; } = [];

        /// <summary>Set small: for looking up, not for reading through.</summary>
        public bool Fine { get; init; }
    }

    /// <summary>Photographs.</summary>
    /// <param name="Shown">In the order to be shown.</param>
    public sealed record Pictures(IReadOnlyList<Picture> Shown) : Block;

    /// <summary>A drawing.</summary>
    /// <param name="Wide">For paper and wide screens.</param>
    /// <param name="Caption">What to look at.</param>
    public sealed record Figure(Sheet Wide, string Caption) : Block
    {
        /// <summary>For a phone held upright; none when the wide one serves there too.</summary>
        public Sheet? Upright { get; init; }
    }

    /// <summary>The first page: whose house, three answers, the house cut through.</summary>
    /// <param name="Answers">To the questions a buyer has.</param>
    /// <param name="House">The drawing, one balloon a place.</param>
    public sealed record Opening(IReadOnlyList<Answer> Answers, Sheet House) : Block
    {
        /// <summary>The same for a phone held upright.</summary>
        public required Sheet Upright { get; init; }
    }

    /// <summary>Every matter in one line, by when it wants doing.</summary>
    /// <param name="Matters">In the order to be listed.</param>
    public sealed record MatterList(IReadOnlyList<Matter> Matters) : Block;

    /// <summary>A matter whole.</summary>
    /// <param name="Matter">Which.</param>
    public sealed record Card(Matter Matter) : Block;

    /// <summary>What a weight asks, with the cautions of its matters, at the head of them.</summary>
    /// <param name="Title">The weight in words.</param>
    /// <param name="Meaning">What it asks.</param>
    public sealed record Weighing(string Title, string Meaning) : Block
    {
        /// <summary>Address.</summary>
        public required string Anchor { get; init; }
    }

    /// <summary>Work to be priced and done, line by line, with room for price and date.</summary>
    /// <param name="Lines">In the order of pressing.</param>
    public sealed record Jobs(IReadOnlyList<Job> Lines) : Block;

    /// <summary>What stands whole in the page, folded, and short on paper.</summary>
    /// <param name="Title">What one unfolds.</param>
    /// <param name="Whole">For the page.</param>
    /// <param name="Short">For paper; may be nothing.</param>
    public sealed record Folded(string Title, IReadOnlyList<Block> Whole, IReadOnlyList<Block> Short) : Block;
}

/// <summary>A question and the answer the record gives.</summary>
/// <param name="Question">As a buyer asks it.</param>
/// <param name="Reply">One line; proposed, never a promise.</param>
/// <param name="Words">A sentence or two more.</param>
public sealed record Answer(string Question, Prose Reply, Prose Words);

/// <summary>One piece of work for a trade.</summary>
public sealed record Job
{
    /// <summary>The matter it settles.</summary>
    public required Matter Matter { get; init; }

    /// <summary>What is asked.</summary>
    public required string Asked { get; init; }

    /// <summary>A picture of it; none when there is none.</summary>
    public Picture? Picture { get; init; }
}
