using Purlin.Book;
using Purlin.Journal;

namespace Purlin.Judgement;

/// <summary>A duty around the visit and how it stands: one for each thing that any of the chosen standards asks.</summary>
public sealed record VisitDuty
{
    /// <summary><c>core:V-01</c>; closing it by hand closes it for every standard.</summary>
    public required DutyId Id { get; init; }

    /// <summary>What it is about.</summary>
    public required string Name { get; init; }

    /// <summary>What is asked, in our words.</summary>
    public required string Text { get; init; }

    /// <summary>What closes it.</summary>
    public required VisitClose Close { get; init; }

    /// <summary>How it stands.</summary>
    public VisitStanding State { get; init; }

    /// <summary>What closes it, what day it is to be kept, or what to do.</summary>
    public string Words { get; init; } = "";

    /// <summary>The entries that close it.</summary>
    public IReadOnlyList<EntryName> Evidence { get; init; } = [];

    /// <summary>Which standards ask for it, and where.</summary>
    public required IReadOnlyList<VisitAsked> Asked { get; init; }

    /// <summary>The day to keep; the one that satisfies all of the standards.</summary>
    public DateOnly? Day { get; init; }

    /// <summary>When it was done; none while it is not, or when only time does it.</summary>
    public DateOnly? Done { get; init; }

    /// <summary>Whether sealing an edition is what fulfils it by its day.</summary>
    public bool AwaitsEdition { get; init; }

    /// <summary>What the inspector can be asked, to close it or to count its day.</summary>
    public IReadOnlyList<VisitQuestion> Questions { get; init; } = [];

    /// <summary>Whether it stands in the way of issue while it is open.</summary>
    public bool BarsIssue { get; init; }
}

/// <summary>How a duty around the visit stands.</summary>
public enum VisitStanding
{
    /// <summary>Nothing closes it yet.</summary>
    Open,

    /// <summary>Closed by the report itself, by a fact, or by hand.</summary>
    Closed,

    /// <summary>Not done, as the inspector says, with the reason.</summary>
    NotDone,

    /// <summary>Not asked for here.</summary>
    DoesNotApply,

    /// <summary>A day to keep after the visit.</summary>
    Dated,

    /// <summary>Left to the inspector's word: listed and not asked for.</summary>
    Listed,
}

/// <summary>One standard that asks for a duty around the visit.</summary>
/// <param name="Duty">Standard and section, <c>washington:308-408C-030(1)</c>.</param>
/// <param name="Standard">Its short name.</param>
/// <param name="Section">Section as the standard has it.</param>
/// <param name="Text">What it asks, in our words.</param>
/// <param name="Mark"><c>from memory</c> when nobody has confirmed it.</param>
public sealed record VisitAsked(DutyId Duty, string Standard, string Section, string Text, string Mark)
{
    /// <summary>The day that this standard alone would set.</summary>
    public DateOnly? Day { get; init; }

    /// <summary>Whether it is closed for this standard alone.</summary>
    public bool IsClosed { get; init; }
}

/// <summary>A question to the inspector, answered by a fact of the house.</summary>
/// <param name="Fact">Name of the fact.</param>
/// <param name="Kind">How it is answered.</param>
/// <param name="Ask">The question.</param>
/// <param name="Choices">Answers to choose from.</param>
/// <param name="Free">Whether words of one's own are an answer beside the choices.</param>
/// <param name="UpToVisit">Whether a day must not be after the visit.</param>
public sealed record VisitQuestion(string Fact, AnswerKind Kind, string Ask, IReadOnlyList<string> Choices, bool Free, bool UpToVisit);

/// <summary>What a standard sets for a place or a kind of component, where the inspector decides.</summary>
/// <param name="Setting">Id of the setting.</param>
/// <param name="Name">What it sets.</param>
/// <param name="Standard">Short name of the standard.</param>
/// <param name="Value">What it wants.</param>
/// <param name="Mark"><c>from memory</c> when nobody has confirmed it.</param>
/// <param name="Places">Kinds of place where it applies.</param>
/// <param name="Components">Kinds of component to which it applies.</param>
public sealed record Wanted(string Setting, string Name, string Standard, string Value, string Mark, IReadOnlyList<string> Places, IReadOnlyList<string> Components);
