namespace Purlin.Journal.Told;

/// <summary>A part beside the main house, as it is told in a few answers.</summary>
public sealed record ToldPart
{
    /// <summary>See <see cref="PartKind"/>.</summary>
    public required string Kind { get; init; }

    /// <summary>On which side of the main house, see <see cref="PartSide"/>.</summary>
    public required string Side { get; init; }

    /// <summary>Year it was built; none while unknown.</summary>
    public int? Year { get; init; }

    /// <summary><c>slab</c>, <c>crawl space</c>, <c>basement</c>, <c>piers</c>; none while unknown.</summary>
    public string? Foundation { get; init; }

    /// <summary>Full floors.</summary>
    public int Floors { get; init; } = 1;

    /// <summary>What people call it.</summary>
    public required string Name { get; init; }

    /// <summary>Whether it stands on the floors of the house instead of beside it.</summary>
    public bool IsAbove => Side == "above";

    internal IReadOnlyList<Level> Levels =>
        [.. Enumerable.Range(IsAbove ? 1 : 0, Math.Clamp(Floors, 1, 3)).Select(at => new Level(at, LevelForm.Full))];

    /// <summary>One sleeps upstairs where there is an upstairs.</summary>
    internal double LevelOf(string kind) => Levels[kind is PlaceKind.Bedroom or PlaceKind.Bathroom ? ^1 : 0].At;

    /// <summary>
    /// The rooms such a part has, each called after its kind and the part; what is outside and below it is told by its foundation.
    /// </summary>
    internal IEnumerable<(string Kind, string Name)> Rooms() => Kind switch
    {
        PartKind.SecondUnit => [Of(PlaceKind.Room), Of(PlaceKind.Kitchen), Of(PlaceKind.Bathroom), Of(PlaceKind.Bedroom)],
        PartKind.AttachedGarage => [(PlaceKind.Garage, Sentence(PlaceKind.Garage))],
        PartKind.EnclosedPorch => [(PlaceKind.Room, Name)],
        _ => [Of(PlaceKind.Room)],
    };

    /// <summary>A place of a kind that belongs to this part.</summary>
    internal (string Kind, string Name) Of(string kind) => (kind, $"{Sentence(kind)}, {char.ToLowerInvariant(Name[0])}{Name[1..]}");

    /// <summary>A kind with its first letter upper case.</summary>
    internal static string Sentence(string kind) => char.ToUpperInvariant(kind[0]) + kind[1..];
}
