using System.Text.Json.Serialization;

namespace Purlin.Book;

/// <summary>A standard of practice or state rule, in our own words.</summary>
public sealed record Standard
{
    /// <summary>Its id: <c>washington</c>, <c>new-york</c>.</summary>
    public required string Id { get; init; }

    /// <summary>Its title.</summary>
    public required string Title { get; init; }

    /// <summary>Its name in a word or two: <c>New York</c>.</summary>
    public string Short { get => field ?? Id; init; }

    /// <summary>Who publishes it.</summary>
    public string Publisher { get => field ?? ""; init; }

    /// <summary>Its edition.</summary>
    public string Edition { get => field ?? ""; init; }

    /// <summary>Page where it was seen; empty when the address would name a firm.</summary>
    public string Seen { get => field ?? ""; init; }

    /// <summary>What has been read and what is from memory.</summary>
    public string Note { get => field ?? ""; init; }

    /// <summary>What differs from standard to standard: <c>cooling outdoor least</c>, <c>delivery</c>, <c>retention</c>.</summary>
    public IReadOnlyDictionary<string, Setting> Settings { get => field ?? new Dictionary<string, Setting>(); init; }

    /// <summary>The notice that the law wants printed on a summary page; none where it wants none.</summary>
    public StateSummary? Summary { get; init; }

    /// <summary>What the standard calls matters that it wants reported, with the weights that answer to it.</summary>
    public IReadOnlyList<StateTerm> Terms { get => field ?? []; init; }

    /// <summary>Every duty and exclusion.</summary>
    public required IReadOnlyList<Duty> Duties { get; init; }

    /// <summary>The schema by which an editor checks and completes the file; it means nothing to the book.</summary>
    [JsonPropertyName(BookLines.Schema)]
    public string? Schema { get; init; }

    /// <summary>The id that a journal means: <c>new-york</c>, also where it says <c>new_york</c> or <c>New York</c>.</summary>
    public static string IdOf(string chosen) => chosen.Trim().ToLowerInvariant().Replace('_', '-').Replace(' ', '-');
}

/// <summary>A notice whose words the law sets. They are the law's own and are printed letter by letter, in no other language.</summary>
public sealed record StateSummary
{
    /// <summary>The notice, as the law has it.</summary>
    public required string Notice { get; init; }

    /// <summary>Where it stands.</summary>
    public required string Source { get; init; }
}

/// <summary>A word of a standard and the weights that answer to it.</summary>
public sealed record StateTerm
{
    /// <summary>As the standard says it.</summary>
    public required string Says { get; init; }

    /// <summary>Matters of these weights are meant.</summary>
    public required IReadOnlyList<Weight> Weights { get; init; }

    /// <summary>The section that uses the word.</summary>
    public required string Section { get; init; }
}

/// <summary>A value that a standard sets.</summary>
public sealed record Setting
{
    /// <summary>As words or a number.</summary>
    public required string Value { get; init; }

    /// <summary>Unit of a number.</summary>
    public string Unit { get => field ?? ""; init; }

    /// <summary><c>from memory</c> when nobody has confirmed it.</summary>
    public string Mark { get => field ?? ""; init; }

    /// <summary>
    /// What a time is counted from: <c>visit</c>, <c>visit or payment</c> (the later), <c>booking</c>, <c>issue</c> (the last sealed
    /// edition, else the visit).
    /// </summary>
    public string From { get => field ?? ""; init; }

    /// <summary>
    /// Several numbers of one setting, by name: <c>headroom</c>, <c>opening longer side</c>, in inches; counts for <c>room</c> and
    /// <c>side</c>.
    /// </summary>
    public IReadOnlyDictionary<string, double> Sizes { get => field ?? new Dictionary<string, double>(); init; }
}

/// <summary>Something a standard obliges the inspector to look at, describe or state.</summary>
public sealed record Duty
{
    /// <summary>Section number as the standard has it.</summary>
    public required string Id { get; init; }

    /// <summary>Building system, or <c>general</c>.</summary>
    public required string System { get; init; }

    /// <summary>What it is about.</summary>
    public required string Name { get; init; }

    /// <summary>What is asked to be done.</summary>
    public required Verb Verb { get; init; }

    /// <summary>The duty in our words.</summary>
    public required string Text { get; init; }

    /// <summary>When it counts.</summary>
    public required DutyCounts Coverage { get; init; }

    /// <summary>Page where it was seen.</summary>
    public string Seen { get => field ?? ""; init; }

    /// <summary><c>from memory</c> when nobody has confirmed it.</summary>
    public string Mark { get => field ?? ""; init; }

    /// <summary>
    /// Ids of the common core that close it together: things of the walk, or of the visit (<c>V-01</c>) for a report rule.
    /// </summary>
    public IReadOnlyList<string> Core { get => field ?? []; init; }

    /// <summary>Measures that the standard names.</summary>
    public IReadOnlyList<Threshold> Thresholds { get => field ?? []; init; }
}

/// <summary>One thing that several standards ask for in their own ways, and the evidence of an ordinary walk that closes it.</summary>
public sealed record CoreDuty
{
    /// <summary>Its id, <c>S-01</c>; closed by hand as <c>core:S-01</c>.</summary>
    public required string Id { get; init; }

    /// <summary>Building system.</summary>
    public required string System { get; init; }

    /// <summary>What it is about.</summary>
    public required string Name { get; init; }

    /// <summary>What to look for.</summary>
    public required string Text { get; init; }

    /// <summary>What is done there.</summary>
    public IReadOnlyList<Verb> Verbs { get => field ?? []; init; }

    /// <summary>Kinds of place where a look counts; empty for anywhere.</summary>
    public IReadOnlyList<string> Places { get => field ?? []; init; }

    /// <summary>Kinds of component on which a look counts.</summary>
    public IReadOnlyList<string> Components { get => field ?? []; init; }

    /// <summary>Conditions of which a look counts, with <c>*</c> for any letters; empty for all of those components.</summary>
    public IReadOnlyList<string> Conditions { get => field ?? []; init; }

    /// <summary>Kinds of reading that count as a look.</summary>
    public IReadOnlyList<string> Readings { get => field ?? []; init; }

    /// <summary>Facts that describe it.</summary>
    public IReadOnlyList<string> Facts { get => field ?? []; init; }

    /// <summary>Facts of the property with which it is not there: <c>foundation=slab</c>.</summary>
    public IReadOnlyList<string> Absent { get => field ?? []; init; }

    /// <summary>
    /// Kinds of place in each of which it is to be looked at, where the house has several; empty where one look anywhere will do.
    /// </summary>
    public IReadOnlyList<string> Each { get => field ?? []; init; }

    /// <summary>Facts of the property that describe it too.</summary>
    public IReadOnlyList<string> Told { get => field ?? []; init; }

    /// <summary>Whether it concerns many like things, so that counts are told.</summary>
    public bool Sample { get; init; }
}
