namespace Purlin.Report.Places;

/// <summary>How a thing stands in its place. The line says it, never a color.</summary>
public enum ThingState
{
    /// <summary>Usual in such a place and not yet spoken of: dashed, faint.</summary>
    Usual,

    /// <summary>On record here: full line.</summary>
    Here,

    /// <summary>Looked at and sound: full line on a tone.</summary>
    Sound,

    /// <summary>Could not be looked at: crossed from corner to corner, the draftsman's sign for a void.</summary>
    NotSeen,
}

/// <summary>A thing of a place, to be drawn.</summary>
/// <param name="Id">What a touch on it stands for: the name of its entry, or its kind while it is only usual here.</param>
/// <param name="Component">Kind of component.</param>
/// <param name="Name">What people call it.</param>
/// <param name="State">How it stands.</param>
public sealed record PlaceThing(string Id, string Component, string Name, ThingState State)
{
    /// <summary>Its material in words, when on record: it becomes the hatch of what it covers.</summary>
    public string? Material { get; init; }

    /// <summary>Whether it is the one in hand.</summary>
    public bool InHand { get; init; }

    /// <summary>Whether a question about it is open.</summary>
    public bool Asked { get; init; }
}

/// <summary>A matter pinned to a thing.</summary>
/// <param name="Number">Number of the matter.</param>
/// <param name="Bars">Bars of its weight, one to five.</param>
/// <param name="Thing">Id of the thing.</param>
/// <param name="Words">Weight and title, for those who do not see it.</param>
public sealed record PlacePin(int Number, int Bars, string Thing, string Words);

/// <summary>What the frame of a drawing follows from.</summary>
/// <param name="Kind">Kind of place.</param>
/// <param name="Name">Its name.</param>
public sealed record PlaceFrameFacts(string Kind, string Name)
{
    /// <summary>Stories above the ground of the part of the house the place belongs to.</summary>
    public int Stories { get; init; } = 1;

    /// <summary><c>gable</c>, <c>hip</c>, <c>flat</c>, <c>shed</c>, <c>gambrel</c>; none when unknown, then a gable is drawn.</summary>
    public string? RoofForm { get; init; }

    /// <summary><c>slab</c>, <c>crawl space</c>, <c>basement</c>, <c>piers</c>.</summary>
    public string? Foundation { get; init; }
}
