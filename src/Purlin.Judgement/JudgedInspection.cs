using Purlin.Book;
using Purlin.Journal;
using Purlin.Reckoning;

namespace Purlin.Judgement;

/// <summary>The rule book applied to the evidence of one inspection. Deterministic; independent of entry order where the meaning is.</summary>
public sealed record JudgedInspection
{
    /// <summary>Edition of the rule book.</summary>
    public required string RuleBook { get; init; }

    /// <summary>The year by which ages and dated rules were judged: that of the visit.</summary>
    public required int Year { get; init; }

    /// <summary>The language it was judged in, own wording over it.</summary>
    public Tongue Words { get; init; } = Tongue.Empty;

    /// <summary>Judged matters, heaviest first, then by where they stand on the walk.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <summary>Every question that the evidence opened, open ones first.</summary>
    public required IReadOnlyList<LooseEnd> LooseEnds { get; init; }

    /// <summary>One for each standard chosen.</summary>
    public required IReadOnlyList<Coverage> Coverage { get; init; }

    /// <summary>Duties around the visit, apart from those of the walk: agreement, what the report carries, days to keep.</summary>
    public IReadOnlyList<VisitDuty> Visit { get; init; } = [];

    /// <summary>What the chosen standards set, to be shown where the inspector decides.</summary>
    public IReadOnlyList<Wanted> Wanted { get; init; } = [];

    /// <summary>What was not looked at or tested: recorded ones, then those that follow from <c>not visible</c>.</summary>
    public required IReadOnlyList<JudgedLimitation> Limitations { get; init; }

    /// <summary>Every reckoning done, with what it was done for.</summary>
    public required IReadOnlyList<JudgedWorking> Workings { get; init; }

    /// <summary>Every note and sound note, and what becomes of it.</summary>
    public IReadOnlyList<SpokenNote> Notes { get; init; } = [];

    /// <summary>Every photograph and how it is spoken for.</summary>
    public required IReadOnlyList<SpokenPhoto> Photos { get; init; }

    /// <summary>What to be alert to in this house, from its facts alone.</summary>
    public required IReadOnlyList<Alert> Alerts { get; init; }

    /// <summary>Limitations the program offers because of a reading or fact, and which nobody has taken up yet.</summary>
    public IReadOnlyList<OfferedLimitation> Offers { get; init; } = [];

    /// <summary>Readings that a reckoning refuses together, to be looked at again on site.</summary>
    public IReadOnlyList<RefusedReckoning> Refused { get; init; } = [];

    /// <summary>Readings and facts of which one alone is missing before something can be reckoned: take it, and it is judged.</summary>
    public IReadOnlyList<AskedEvidence> Asks { get; init; } = [];

    /// <summary>What on record was not understood, or only taken for what was most likely meant.</summary>
    public IReadOnlyList<LookAgain> Again { get; init; } = [];

    /// <summary>Where the rule book has moved on under the inspector's own wording, or cannot take it; what is theirs stands meanwhile.</summary>
    public IReadOnlyList<Book.OverlayConflict> WordingConflicts { get; init; } = [];

    /// <summary>What stands in the way of issue; empty means that an edition can be sealed.</summary>
    public required IReadOnlyList<Obstacle> Obstacles { get; init; }
}

/// <summary>A judged matter.</summary>
public sealed record Finding
{
    /// <summary>Its name, by which entries speak of it.</summary>
    public required FindingId Id { get; init; }

    /// <summary>Id of the leading condition; <c>own</c> for free words of the inspector.</summary>
    public required string Condition { get; init; }

    /// <summary>Ids of conditions grouped under this cause.</summary>
    public IReadOnlyList<string> Grouped { get; init; } = [];

    /// <summary>Building system: site, exterior, roof, attic, structure, plumbing, electrical, heating, cooling, interior.</summary>
    public required string System { get; init; }

    /// <summary>Short heading.</summary>
    public required string Title { get; init; }

    /// <summary>How much it matters, after overruling.</summary>
    public required Weight Weight { get; init; }

    /// <summary>By when it wants doing; every finding of a judgement has it.</summary>
    public Due? Due { get; init; }

    /// <summary>Each contribution to the weight, in order.</summary>
    public required IReadOnlyList<Contribution> Why { get; init; }

    /// <summary>One place, several places, throughout.</summary>
    public required Spread Spread { get; init; }

    /// <summary>Places where it was seen.</summary>
    public required IReadOnlyList<EntryName> Places { get; init; }

    /// <summary>Components it concerns.</summary>
    public IReadOnlyList<EntryName> Components { get; init; } = [];

    /// <summary>Kind of component, in words.</summary>
    public required string ComponentKind { get; init; }

    /// <summary>The entries it rests on: observations, readings, facts; in causal order.</summary>
    public required IReadOnlyList<EntryName> Evidence { get; init; }

    /// <summary>Its photographs.</summary>
    public IReadOnlyList<EntryName> Photos { get; init; } = [];

    /// <summary>For an older house, where a year is known.</summary>
    public ThenAndNowSentence? ThenAndNow { get; init; }

    /// <summary>Where, in words: place, spot, how many.</summary>
    public required string Where { get; init; }

    /// <summary>What was seen or measured, in words.</summary>
    public required string Observed { get; init; }

    /// <summary>The same condition by condition, in the order of the text.</summary>
    public IReadOnlyList<SeenLine> Sightings { get; init; } = [];

    /// <summary>Why it matters.</summary>
    public required string Matters { get; init; }

    /// <summary>What to do.</summary>
    public required string Do { get; init; }

    /// <summary>By whom.</summary>
    public required string Trade { get; init; }

    /// <summary>Usual cautions where the work can hurt someone.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>Indexes into <see cref="JudgedInspection.Workings"/>.</summary>
    public IReadOnlyList<int> Workings { get; init; } = [];

    /// <summary>Sources in words: document, section, edition.</summary>
    public IReadOnlyList<string> Sources { get; init; } = [];

    /// <summary>What the inspector changed, with the reason.</summary>
    public IReadOnlyList<Overruling> Overruled { get; init; } = [];

    /// <summary>Left out of the report by the inspector, with a reason; still kept and listed.</summary>
    public bool LeftOut { get; init; }
}

/// <summary>What was seen of one condition.</summary>
/// <param name="Condition">Its id.</param>
/// <param name="Name">As a person says it.</param>
/// <param name="Where">Places and spots, in words.</param>
/// <param name="Said">What was said, measured and counted, sentence by sentence.</param>
/// <param name="Clear">Names of the places where it was looked for and not seen.</param>
public sealed record SeenLine(string Condition, string Name, string Where, IReadOnlyList<string> Said, IReadOnlyList<string> Clear);

/// <summary>By when a matter wants doing.</summary>
/// <param name="By">When.</param>
/// <param name="Because">Why then, in a sentence.</param>
public sealed record Due(ByWhen By, string Because);

/// <summary>One contribution to a weight.</summary>
/// <param name="What">What speaks.</param>
/// <param name="Words">A plain sentence.</param>
/// <param name="Weight">The weight after it.</param>
public sealed record Contribution(Speaks What, string Words, Weight Weight);

/// <summary>How far a condition spreads, worked out from observations of it in different places.</summary>
public enum Spread
{
    /// <summary>In one place.</summary>
    OnePlace,

    /// <summary>In several places.</summary>
    SeveralPlaces,

    /// <summary>Wherever it was looked for, three places or more.</summary>
    Throughout,
}

/// <summary>Then and now, for one finding.</summary>
/// <param name="Rule">Id of the rule.</param>
/// <param name="Kind">What the years say.</param>
/// <param name="FirstYear">Year of the first edition that asked for it; none when it never was a rule or nobody knows.</param>
/// <param name="Words">The sentence to print: says "first asked for in the YEAR edition", never "violated code".</param>
/// <param name="Sources">Document, section, edition.</param>
public sealed record ThenAndNowSentence(string Rule, YearsKind Kind, int? FirstYear, string Words, IReadOnlyList<string> Sources)
{
    /// <summary>The year it was judged by, and whose year that is.</summary>
    public KnownYear? Year { get; init; }
}

/// <summary>A year and how it is known.</summary>
/// <param name="Year">The year.</param>
/// <param name="Of">Whose it is: the thing itself, the structure it stands on, the house.</param>
/// <param name="Basis">See <see cref="Journal.Basis"/>; empty where nobody recorded it.</param>
public sealed record KnownYear(int Year, YearOf Of, string Basis);

/// <summary>Whose year a sentence speaks of.</summary>
public enum YearOf
{
    /// <summary>The thing itself.</summary>
    Thing,

    /// <summary>The structure that its place is: the deck on which the stairs are.</summary>
    Structure,

    /// <summary>The house.</summary>
    House,
}

/// <summary>What the inspector changed.</summary>
/// <param name="Part">Which part.</param>
/// <param name="From">What the program had.</param>
/// <param name="To">What the inspector put.</param>
/// <param name="Reason">Why.</param>
/// <param name="By">The entry.</param>
public sealed record Overruling(FindingPart Part, string From, string To, string Reason, EntryName By);

/// <summary>A question that evidence opened.</summary>
public sealed record LooseEnd
{
    /// <summary>Its name, by which an entry ties it off.</summary>
    public required LooseEndId Id { get; init; }

    /// <summary>What to find out, as an instruction to the inspector.</summary>
    public required string Question { get; init; }

    /// <summary>Why it is asked: what was noticed, where.</summary>
    public required string Because { get; init; }

    /// <summary>The entries that opened it.</summary>
    public required IReadOnlyList<EntryName> OpenedBy { get; init; }

    /// <summary>Places where an answer can be found.</summary>
    public IReadOnlyList<EntryName> LookIn { get; init; } = [];

    /// <summary>Those of <see cref="LookIn"/> still to be looked at.</summary>
    public IReadOnlyList<EntryName> StillToLook { get; init; } = [];

    /// <summary>Conditions whose outcome (seen or clear) answers it.</summary>
    public IReadOnlyList<string> Answers { get; init; } = [];

    /// <summary>Reading kinds that answer it.</summary>
    public IReadOnlyList<string> Readings { get; init; } = [];

    /// <summary>How it was tied off; none while it is open.</summary>
    public Tied? Tied { get; init; }

    /// <summary>Whether it blocks issue while open; otherwise it is turned into <see cref="Referral"/> at issue.</summary>
    public bool Blocks { get; init; }

    /// <summary>The sentence that hands it to a trade.</summary>
    public required string Referral { get; init; }

    /// <summary>The trade it would be handed to.</summary>
    public required string Trade { get; init; }
}

/// <summary>How a loose end was tied off.</summary>
/// <param name="How">See <see cref="Tie"/>.</param>
/// <param name="By">The entries that tied it.</param>
/// <param name="Words">In words, for the trail of evidence.</param>
public sealed record Tied(string How, IReadOnlyList<EntryName> By, string Words);

/// <summary>The duties of one standard and how each stands.</summary>
/// <param name="Standard">Id, <c>washington</c>.</param>
/// <param name="Title">Its title with edition.</param>
/// <param name="Duties">Every duty that counts.</param>
public sealed record Coverage(string Standard, string Title, IReadOnlyList<DutyState> Duties);

/// <summary>How one duty stands.</summary>
/// <param name="Id">Standard and section, <c>washington:308-408C-080(1)(a)</c>.</param>
/// <param name="Section">Section number as the standard has it.</param>
/// <param name="System">Building system.</param>
/// <param name="Text">The duty in our words.</param>
/// <param name="Verb">What is asked to be done.</param>
/// <param name="State">Met, limited, not present or open.</param>
/// <param name="Evidence">The entries that close it.</param>
/// <param name="Words">What closes it, or what is missing, in words.</param>
/// <param name="Mark"><c>from memory</c> when the duty's wording has not been confirmed; empty otherwise.</param>
public sealed record DutyState(DutyId Id, string Section, string System, string Text, Verb Verb, DutyStanding State, IReadOnlyList<EntryName> Evidence, string Words, string Mark = "")
{
    /// <summary>Places where it can be closed.</summary>
    public IReadOnlyList<EntryName> Places { get; init; } = [];

    /// <summary>Things of the common core that are still open, <c>core:S-01</c>; closing one by hand closes it for every standard.</summary>
    public IReadOnlyList<DutyId> OpenCore { get; init; } = [];

    /// <summary>Rooms or sides in which fewer of many like things were tried than the sample of the standard asks.</summary>
    public IReadOnlyList<string> Fewer { get; init; } = [];
}

/// <summary>How a duty stands.</summary>
public enum DutyStanding
{
    /// <summary>Nothing closes it yet.</summary>
    Open,

    /// <summary>Closed by a result.</summary>
    Met,

    /// <summary>Closed by a limitation: not inspected, with the reason.</summary>
    Limited,

    /// <summary>There is no such thing in this house.</summary>
    NotPresent,
}

/// <summary>A limitation as the report states it.</summary>
/// <param name="Id">The entry it comes from.</param>
/// <param name="What">What was not looked at or tested.</param>
/// <param name="Cause">Why; none while missing.</param>
/// <param name="Next">What the buyer should do; none while missing.</param>
/// <param name="Place">Where.</param>
/// <param name="Component">On what.</param>
/// <param name="Photos">What blocked the view.</param>
public sealed record JudgedLimitation(EntryName Id, string What, string? Cause, string? Next, EntryName? Place, EntryName? Component, IReadOnlyList<EntryName> Photos);

/// <summary>A limitation the program offers.</summary>
/// <param name="Rule">The rule book's id.</param>
/// <param name="What">What could not be looked at or tested.</param>
/// <param name="Cause">Why, from the reading or fact.</param>
/// <param name="Next">What the buyer should do.</param>
/// <param name="Because">The entries that led to it.</param>
public sealed record OfferedLimitation(string Rule, string What, string Cause, string Next, IReadOnlyList<EntryName> Because);

/// <summary>A reckoning with the evidence it used.</summary>
/// <param name="Working">The working.</param>
/// <param name="Evidence">Readings and facts it used.</param>
/// <param name="Component">What it was done for.</param>
/// <param name="Place">Where.</param>
public sealed record JudgedWorking(Working Working, IReadOnlyList<EntryName> Evidence, EntryName? Component, EntryName? Place);

/// <summary>Readings and facts that a reckoning refuses.</summary>
/// <param name="Reckoning">Its name.</param>
/// <param name="Reasons">Why: which input, what was given, what is allowed.</param>
/// <param name="Evidence">The readings and facts.</param>
/// <param name="Place">Where.</param>
public sealed record RefusedReckoning(string Reckoning, IReadOnlyList<string> Reasons, IReadOnlyList<EntryName> Evidence, EntryName? Place);

/// <summary>The one reading or fact that is missing before something can be reckoned.</summary>
/// <param name="Reckoning">Name of the reckoning.</param>
/// <param name="Words">What to take, and what it settles.</param>
/// <param name="Reading">Kind of reading, when it is one.</param>
/// <param name="Fact">Name of the fact, when it is one.</param>
/// <param name="Component">What it is about.</param>
/// <param name="Place">Where.</param>
public sealed record AskedEvidence(string Reckoning, string Words, string? Reading, string? Fact, EntryName? Component, EntryName? Place);

/// <summary>A photograph and how it is spoken for.</summary>
/// <param name="Id">The photograph.</param>
/// <param name="Use">See <see cref="PhotoUse"/>; none while nobody has spoken for it.</param>
/// <param name="Finding">The finding it is part of.</param>
/// <param name="Caption">What to look at.</param>
public sealed record SpokenPhoto(EntryName Id, string? Use, FindingId? Finding, string? Caption);

/// <summary>Something to be alert to in this house.</summary>
/// <param name="Title">What.</param>
/// <param name="Reason">Why in this house: from year, material, foundation.</param>
/// <param name="Look">Where to look.</param>
/// <param name="Sources">Document, section, edition.</param>
/// <param name="Conditions">Conditions to look for.</param>
public sealed record Alert(string Title, string Reason, string Look, IReadOnlyList<string> Sources, IReadOnlyList<string> Conditions);
