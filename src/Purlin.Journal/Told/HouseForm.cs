namespace Purlin.Journal.Told;

/// <summary>How the floors of a main house lie to one another, in the words of the trade.</summary>
public static class HouseForm
{
    /// <summary>All on one floor.</summary>
    public const string OneFloor = "one floor";

    /// <summary>A floor, and rooms under the roof.</summary>
    public const string HalfFloor = "one and a half";

    /// <summary>Two full floors.</summary>
    public const string TwoFloors = "two floors";

    /// <summary>Three full floors.</summary>
    public const string ThreeFloors = "three floors";

    /// <summary>A living level between a lower level and a bedroom level, half a storey apart.</summary>
    public const string SplitLevel = "split level";

    /// <summary>The door half way between a lower level and the living level.</summary>
    public const string SplitEntry = "split entry";

    /// <summary>Built in a factory and brought on wheels.</summary>
    public const string Manufactured = "manufactured home";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<string> All { get; } = [OneFloor, HalfFloor, TwoFloors, ThreeFloors, SplitLevel, SplitEntry, Manufactured];

    /// <summary>Its levels over the ground, the lowest first.</summary>
    public static IReadOnlyList<Level> Levels(string form) => form switch
    {
        HalfFloor => [new(0, LevelForm.Full), new(1, LevelForm.Half)],
        TwoFloors => [new(0, LevelForm.Full), new(1, LevelForm.Full)],
        ThreeFloors => [new(0, LevelForm.Full), new(1, LevelForm.Full), new(2, LevelForm.Full)],
        SplitLevel => [new(-0.5, LevelForm.Lower), new(0, LevelForm.Full), new(0.5, LevelForm.Full)],
        SplitEntry => [new(-0.5, LevelForm.Lower), new(0.5, LevelForm.Full)],
        _ => [new(0, LevelForm.Full)],
    };

    /// <summary>
    /// Storeys above ground as a property counts them: a half storey counts up, and so does a lower level that is lived in.
    /// </summary>
    public static int Storeys(string form) => form is SplitLevel or SplitEntry ? 2 : Levels(form).Count;
}
