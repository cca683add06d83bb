using Purlin.Journal;

namespace Purlin.Reckoning.Years;

/// <summary>One row of the table of eras: a rule of the trade, a law, or a material that came or went, and the years it did.</summary>
public sealed class Era
{
    internal Era(TableRow row)
    {
        Id = row["id"];
        Topic = row["topic"];
        Rule = row["rule"];
        What = row["what"];
        WhatSaid = row.Words("what");
        FirstYear = Year(row, "first_year");
        FirstYearLatest = Year(row, "first_year_latest") ?? FirstYear;
        var lag = row["usual_lag"].Split('-');
        UsualLagYears = lag[^1].Length == 0 ? null : int.Parse(lag[^1], System.Globalization.CultureInfo.InvariantCulture);
        RequiredNow = row["required_now"];
        Hazard = row["hazard"].Length == 0 ? null : row["hazard"];
        EarlierOpen = row["earlier"] == "open";
        State = row["state"].Length == 0 ? null : row["state"];
        StandsFor = row["stands_for"].Length == 0 ? null : row["stands_for"];
        HazardSaid = Hazard is null ? null : row.Words("hazard");
        Source = row["sources"] + row["mark"] switch
        {
            "from memory" => " (from memory)",
            "conflict" => " (sources differ)",
            _ => "",
        };
    }

    /// <summary>Its name in the rule book, <c>gfci-bathroom</c>.</summary>
    public string Id { get; }

    /// <summary>The part of the house or trade it belongs to.</summary>
    public string Topic { get; }

    /// <summary>Where the rule stands today: document and section, or <c>market</c> for a material that came or went.</summary>
    public string Rule { get; }

    /// <summary>What is asked for, as words that follow "asks for".</summary>
    public string What { get; }

    internal Said WhatSaid { get; }

    internal Said? HazardSaid { get; }

    /// <summary>The first edition or start; none where nobody has found it.</summary>
    public int? FirstYear { get; }

    /// <summary>The latest year that a source gives for it; the same as the first where sources agree.</summary>
    public int? FirstYearLatest { get; }

    /// <summary>Years that places usually take to adopt an edition; 0 for a federal law, none where not known.</summary>
    public int? UsualLagYears { get; }

    /// <summary>yes, no, permitted, when work is done, no longer used, partly, later, or where adopted.</summary>
    public string RequiredNow { get; }

    /// <summary>What can go wrong whatever the rule; none where the matter is no hazard.</summary>
    public string? Hazard { get; }

    /// <summary>True where editions before the first year were not read: of older things nothing is said.</summary>
    public bool EarlierOpen { get; }

    /// <summary>The state whose law it is; none for a rule of all states.</summary>
    public string? State { get; }

    /// <summary>The row in whose place it stands in that state; none where it stands by itself.</summary>
    public string? StandsFor { get; }

    /// <summary>What the years rest on, with its mark.</summary>
    public string Source { get; }

    private static int? Year(TableRow row, string column) => (int?)row.NumberOrNone(column);
}
