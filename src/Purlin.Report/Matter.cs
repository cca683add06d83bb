using Purlin.Book;
using Purlin.Judgement;

namespace Purlin.Report;

/// <summary>A finding as the report states it.</summary>
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

    /// <summary>Building system.</summary>
    public required string System { get; init; }

    /// <summary>The six parts that every way of reporting asks for: where, what, what was seen, why it matters, what to do, by whom.</summary>
    public required IReadOnlyList<Part> Parts { get; init; }

    /// <summary>Its photographs.</summary>
    public IReadOnlyList<Picture> Pictures { get; init; } = [];

    /// <summary>Numbers of photographs shown with an earlier matter.</summary>
    public IReadOnlyList<int> SeeAlso { get; init; } = [];

    /// <summary>What it rests on, line by line.</summary>
    public required IReadOnlyList<TrailLine> Trail { get; init; }

    /// <summary>Was it required then, is it advised now; empty when years decide nothing.</summary>
    public string ThenAndNow { get; init; } = "";

    /// <summary>Why it has this weight, step by step, with what the inspector changed.</summary>
    public required IReadOnlyList<string> Why { get; init; }

    /// <summary>What can hurt the one who does the work or stands by.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>Numbers of the workings it rests on.</summary>
    public IReadOnlyList<int> Workings { get; init; } = [];

    /// <summary>Document, section, edition.</summary>
    public IReadOnlyList<string> Sources { get; init; } = [];

    /// <summary>Address inside the report.</summary>
    public string Anchor => $"matter-{Number}";

    /// <summary>The part of that name, or nothing.</summary>
    public string Say(string label) => Parts.FirstOrDefault(part => part.Label == label)?.Text ?? "";
}

/// <summary>One of the six parts.</summary>
/// <param name="Label">Which.</param>
/// <param name="Text">What is said.</param>
public sealed record Part(string Label, string Text);

/// <summary>One line of the trail of evidence.</summary>
/// <param name="Entry">The journal entry it can be checked against.</param>
/// <param name="Text">What it says.</param>
public sealed record TrailLine(string Entry, string Text);
