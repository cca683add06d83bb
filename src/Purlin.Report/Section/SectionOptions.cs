using Purlin.Book;
using Purlin.Journal;
using Purlin.Judgement;

namespace Purlin.Report.Section;

/// <summary>How the section is to be drawn.</summary>
public sealed record SectionOptions
{
    /// <summary>For a phone held upright: 360 wide, every place at least 44 by 44.</summary>
    public static SectionOptions Portrait { get; } = new();

    /// <summary>For a printed page or a wide screen: 700 wide, balloons in the margins with leader lines.</summary>
    public static SectionOptions Landscape { get; } = new() { Wide = true };

    /// <summary>Wide rather than upright.</summary>
    public bool Wide { get; init; }

    /// <summary>Whether findings are pinned.</summary>
    public bool Pins { get; init; } = true;

    /// <summary>The lightest weight that is pinned; numbers stay those of the whole list.</summary>
    public Weight Least { get; init; } = Weight.KnowAbout;

    /// <summary>One balloon a place, the heaviest; a second edge behind it says that there are more.</summary>
    public bool OnePin { get; init; }

    /// <summary>Small, for the first page of a report: low stories, nothing that is tapped.</summary>
    public bool Front { get; init; }

    /// <summary>Whether open loose ends are drawn as knots; a sealed report has none open.</summary>
    public bool Knots { get; init; } = true;

    /// <summary>The language of its words.</summary>
    public Tongue Words { get; init; } = Tongue.BuiltIn(Tongue.Standard);

    /// <summary>The place where the inspector is, marked by corner ticks; none when not wanted.</summary>
    public EntryName? Here { get; init; }
}
