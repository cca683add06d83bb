namespace Purlin.Journal;

/// <summary>How a fact is known.</summary>
public static class Basis
{
    /// <summary>Read off the nameplate.</summary>
    public const string Nameplate = "nameplate";

    /// <summary>Measured on the day.</summary>
    public const string Measured = "measured";

    /// <summary>Seen on the day.</summary>
    public const string Seen = "seen";

    /// <summary>Told by somebody; said so in the report.</summary>
    public const string Told = "told";

    /// <summary>Presumed; stays marked to the last page.</summary>
    public const string Presumed = "presumed";

    /// <summary>All of them, best first.</summary>
    public static IReadOnlyList<string> All { get; } = [Nameplate, Measured, Seen, Told, Presumed];
}

/// <summary>What came of looking for something.</summary>
public static class Outcome
{
    /// <summary>Looked, and it is there.</summary>
    public const string Seen = "seen";

    /// <summary>Looked, and it is not there. Negative evidence is evidence.</summary>
    public const string Clear = "clear";

    /// <summary>Could not look; a reason goes with it.</summary>
    public const string NotVisible = "not visible";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<string> All { get; } = [Seen, Clear, NotVisible];
}

/// <summary>How a photograph is spoken for before issue.</summary>
public static class PhotoUse
{
    /// <summary>It is part of a finding's evidence.</summary>
    public const string Finding = "finding";

    /// <summary>It shows that a thing was looked at and nothing of note seen.</summary>
    public const string Fine = "fine";

    /// <summary>It shows where we are.</summary>
    public const string Context = "context";

    /// <summary>It is kept out of the report; a reason goes with it.</summary>
    public const string HeldBack = "held back";

    /// <summary>A nameplate, to be read now or in the evening.</summary>
    public const string Nameplate = "nameplate";

    /// <summary>It shows a place or a thing as a whole.</summary>
    public const string Overview = "overview";

    /// <summary>It shows why something could not be looked at.</summary>
    public const string Limitation = "limitation";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<string> All { get; } = [Finding, Fine, Context, HeldBack, Nameplate, Overview, Limitation];
}

/// <summary>How a loose end was tied off.</summary>
public static class Tie
{
    /// <summary>By further evidence.</summary>
    public const string Evidence = "evidence";

    /// <summary>By handing it to a licensed trade.</summary>
    public const string Referral = "referral";

    /// <summary>By saying that it could not be settled, and why.</summary>
    public const string Limitation = "limitation";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<string> All { get; } = [Evidence, Referral, Limitation];
}

/// <summary>How the inspector closed a duty by hand.</summary>
public static class DutyClose
{
    /// <summary>A result was recorded.</summary>
    public const string Result = "result";

    /// <summary>Described in words, where a duty asks for a description.</summary>
    public const string Described = "described";

    /// <summary>Not inspected; a reason goes with it.</summary>
    public const string NotInspected = "not inspected";

    /// <summary>There is no such thing in this house.</summary>
    public const string NotPresent = "not present";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<string> All { get; } = [Result, Described, NotInspected, NotPresent];
}
