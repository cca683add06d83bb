namespace Purlin.Book;

/// <summary>
/// A duty around the visit that several standards ask for in their own ways: agreement, disclosures, what the report carries, delivery,
/// retention, conduct.
/// </summary>
public sealed record VisitRule
{
    /// <summary>Its id, <c>V-01</c>; closed by hand as <c>core:V-01</c>.</summary>
    public required string Id { get; init; }

    /// <summary>What it is about.</summary>
    public required string Name { get; init; }

    /// <summary>What is asked, in our words.</summary>
    public required string Text { get; init; }

    /// <summary>What closes it.</summary>
    public required VisitClose Close { get; init; }

    /// <summary>What to do while it is open.</summary>
    public string Open { get => field ?? ""; init; }

    /// <summary>Where in the report it is done.</summary>
    public string Where { get => field ?? ""; init; }

    /// <summary>What it is judged by, where the report closes it.</summary>
    public VisitProof? Proof { get; init; }

    /// <summary>Asked only when this is so: <c>limited</c>, something was not inspected. Empty for always.</summary>
    public string When { get => field ?? ""; init; }

    /// <summary>Facts of the house that close it, all of them together.</summary>
    public IReadOnlyList<VisitFact> Facts { get => field ?? []; init; }

    /// <summary>How its day is counted; none when it has none.</summary>
    public VisitDay? Date { get; init; }
}

/// <summary>A fact about the visit, kept as a fact of the house.</summary>
public sealed record VisitFact
{
    /// <summary>Its name: <c>agreement signed</c>.</summary>
    public required string Name { get; init; }

    /// <summary>How it is answered; a day is written as <c>2026-11-25</c>.</summary>
    public required AnswerKind Kind { get; init; }

    /// <summary>The question to the inspector.</summary>
    public required string Ask { get; init; }

    /// <summary>Answers to choose from.</summary>
    public IReadOnlyList<string> Choices { get => field ?? []; init; }

    /// <summary>Whether words of one's own are an answer beside the choices.</summary>
    public bool Free { get; init; }

    /// <summary>A day must not be after this: <c>visit</c>.</summary>
    public string NotAfter { get => field ?? ""; init; }

    /// <summary>The setting that limits the time since <see cref="Since"/>.</summary>
    public string Within { get => field ?? ""; init; }

    /// <summary>The fact from which the time is counted.</summary>
    public string Since { get => field ?? ""; init; }

    /// <summary>
    /// The member of the opening that says the same (<c>client</c>, <c>inspector</c>, <c>licence</c>, <c>weather</c>); the fact is asked
    /// for only when that is empty.
    /// </summary>
    public string Fills { get => field ?? ""; init; }
}

/// <summary>How the day of a duty is counted.</summary>
public sealed record VisitDay
{
    /// <summary>The setting of the standard that says how long.</summary>
    public required string Setting { get; init; }

    /// <summary>The fact that holds a day agreed in its stead; empty for none.</summary>
    public string Agreed { get => field ?? ""; init; }

    /// <summary>What to do, with the day in braces.</summary>
    public required string Words { get; init; }

    /// <summary>Which day counts when several standards set one.</summary>
    public required DayPick Pick { get; init; }

    /// <summary><c>edition</c> when a sealed edition fulfils it; empty when only time does.</summary>
    public string Done { get => field ?? ""; init; }
}

/// <summary>A setting that standards may have, and where it matters.</summary>
public sealed record SettingRule
{
    /// <summary>Its id, as standards name it.</summary>
    public required string Id { get; init; }

    /// <summary>What it sets, in words, before the value.</summary>
    public required string Name { get; init; }

    /// <summary>What it is for.</summary>
    public required SettingUse Use { get; init; }

    /// <summary>Which of several limits asks the most.</summary>
    public Strictest Strictest { get; init; }

    /// <summary>Kinds of place where it is shown.</summary>
    public IReadOnlyList<string> Places { get => field ?? []; init; }

    /// <summary>Kinds of component on which it is shown.</summary>
    public IReadOnlyList<string> Components { get => field ?? []; init; }
}
