using Purlin.Book;
using Purlin.Judgement;
using Purlin.Report.Drawing;

namespace Purlin.Report;

/// <summary>A finding as the papers state it.</summary>
public sealed record Matter
{
    /// <summary>Its number: on the drawing, in the list, in what people say of it.</summary>
    public required int Number { get; init; }

    /// <summary>Id of the finding.</summary>
    public required string Finding { get; init; }

    /// <summary>Short heading.</summary>
    public required string Title { get; init; }

    /// <summary>How much it matters.</summary>
    public required Weight Weight { get; init; }

    /// <summary>By when it wants doing, and why then.</summary>
    public required Due Due { get; init; }

    /// <summary>Building system.</summary>
    public required string System { get; init; }

    /// <summary>Names of its places, without the spots in them.</summary>
    public required IReadOnlyList<string> Places { get; init; }

    /// <summary>Who deals with it.</summary>
    public required string Trade { get; init; }

    /// <summary>How many, where they were counted: 3 of 9; else in how many places.</summary>
    public required string Quantity { get; init; }

    /// <summary>The six parts that every way of reporting asks for.</summary>
    public required IReadOnlyList<MatterText> Parts { get; init; }

    /// <summary>What was seen, a line a condition and place; the same as the part, to be set line by line.</summary>
    public required IReadOnlyList<Prose> Seen { get; init; }

    /// <summary>Where the same was looked for and not seen; empty when nowhere.</summary>
    public string Clear { get; init; } = "";

    /// <summary>What we could not settle and hand on, with whom to ask.</summary>
    public IReadOnlyList<Question> Questions { get; init; } = [];

    /// <summary>Says that its text is not in the language of the paper yet; empty when it is.</summary>
    public string Untranslated { get; init; } = "";

    /// <summary>Its photographs.</summary>
    public IReadOnlyList<Picture> Pictures { get; init; } = [];

    /// <summary>Numbers of photographs shown with an earlier matter.</summary>
    public IReadOnlyList<int> SeeAlso { get; init; } = [];

    /// <summary>What it rests on, line by line.</summary>
    public required IReadOnlyList<TrailLine> Trail { get; init; }

    /// <summary>Was it required then, is it advised now, in one line; empty when years decide nothing.</summary>
    public string Years { get; init; } = "";

    /// <summary>The same whole, with the rule it is about.</summary>
    public string ThenAndNow { get; init; } = "";

    /// <summary>Why it has this weight, step by step, with what the inspector changed.</summary>
    public required IReadOnlyList<string> Why { get; init; }

    /// <summary>Letters of the cautions that go with it; the words stand once at the head of the matters.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>Numbers of the workings it rests on.</summary>
    public IReadOnlyList<int> Workings { get; init; } = [];

    /// <summary>Numbers in the list of sources.</summary>
    public IReadOnlyList<int> Sources { get; init; } = [];

    /// <summary>The house small, with its places filled.</summary>
    public Sheet? Locator { get; init; }

    /// <summary>Address inside the paper.</summary>
    public string Anchor => $"matter-{Number}";

    /// <summary>Address of its evidence in the annex.</summary>
    public string EvidenceAnchor => $"evidence-{Number}";

    /// <summary>The words of that part, or nothing.</summary>
    public string Say(MatterPart kind) => Parts.FirstOrDefault(part => part.Kind == kind)?.Text ?? "";
}

/// <summary>Which of the six parts.</summary>
public enum MatterPart
{
    /// <summary>Place and spot.</summary>
    Where,

    /// <summary>Part of the house.</summary>
    What,

    /// <summary>What was seen or measured.</summary>
    Seen,

    /// <summary>Why it matters.</summary>
    Why,

    /// <summary>What to do.</summary>
    Do,

    /// <summary>By whom.</summary>
    Whom,
}

/// <summary>One of the six parts.</summary>
/// <param name="Kind">Which.</param>
/// <param name="Label">The same in words.</param>
/// <param name="Text">What is said.</param>
public sealed record MatterText(MatterPart Kind, string Label, string Text);

/// <summary>A question that could not be settled on the day.</summary>
/// <param name="Ask">What to ask for.</param>
/// <param name="Trade">Of whom.</param>
public sealed record Question(string Ask, string Trade);

/// <summary>One line of the trail of evidence.</summary>
/// <param name="Entry">The journal entry it can be checked against.</param>
/// <param name="Text">What it says.</param>
public sealed record TrailLine(string Entry, string Text)
{
    /// <summary>When it was written, as the device believed; empty where not known.</summary>
    public string At { get; init; } = "";
}
