namespace Purlin.Demo.Pictures;

/// <summary>One picture of the demo: its key in the walk, what the strip says, and how it is drawn.</summary>
internal sealed record Scene(string Key, string Label, Action<Sheet> Draw)
{
    public byte[] Picture()
    {
        // The key seeds the chance of the drawing, so that a scene keeps its look when others come and go.
        using var sheet = new Sheet(Key.Aggregate(17, (seed, letter) => unchecked(seed * 31 + letter)));
        Draw(sheet);
        return sheet.Finish(Label);
    }

    public static IReadOnlyList<Scene> All { get; } = [.. OutsideScenes.All, .. RoofScenes.All, .. BelowScenes.All, .. WaterScenes.All,
        .. PowerScenes.All, .. AirScenes.All, .. InsideScenes.All];
}
