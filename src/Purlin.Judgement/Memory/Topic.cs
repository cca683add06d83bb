using Purlin.Journal;

namespace Purlin.Judgement.Memory;

/// <summary>What of the evidence can be asked for.</summary>
internal enum Subject
{
    /// <summary>One place.</summary>
    Place,

    /// <summary>Places of a kind.</summary>
    PlacesOf,

    /// <summary>One component with its facts.</summary>
    Component,

    /// <summary>Components of a kind with their facts.</summary>
    ComponentsOf,

    /// <summary>Readings of a kind.</summary>
    ReadingsOf,

    /// <summary>Photographs taken for one entry.</summary>
    PhotosFor,

    /// <summary>Whether one entry is withdrawn.</summary>
    Withdrawn,

    /// <summary>A loose end tied by hand.</summary>
    Tie,

    /// <summary>A duty closed by hand.</summary>
    Duty,

    /// <summary>Whether one kind of component was said not to be there.</summary>
    Absent,

    /// <summary>Parts of the house with what is known of them.</summary>
    Parts,

    /// <summary>Recorded limitations.</summary>
    Limitations,

    /// <summary>Looks for one condition.</summary>
    Looks,

    /// <summary>Looks at one kind of component.</summary>
    LooksAt,

    /// <summary>Whether anything was looked at in one place.</summary>
    LookedIn,

    /// <summary>Looks at what could not be seen.</summary>
    Hidden,

    /// <summary>Workings that answer to a name.</summary>
    Answer,
}

/// <summary>One thing that can be asked of the evidence (a dependency key).</summary>
/// <param name="Subject">What kind of thing.</param>
/// <param name="Name">Which one, where it has a name.</param>
/// <param name="Entry">Which one, where it is an entry.</param>
internal readonly record struct Topic(Subject Subject, string Name, EntryName Entry)
{
    public static Topic Of(Subject subject, string name = "") => new(subject, name, default);

    public static Topic Of(Subject subject, EntryName entry) => new(subject, "", entry);

    public override int GetHashCode() => ((int)Subject * 31) + Entry.Seq + (Name.Length == 0 ? 0 : Name.GetHashCode(StringComparison.Ordinal));

    public bool Equals(Topic other) => Subject == other.Subject && Entry == other.Entry && Name == other.Name;
}
