using System.Collections.Frozen;

namespace Purlin.Report.Places;

/// <summary>The signs of all things that are drawn, by kind of component. What has none stands in the list alone.</summary>
internal static class Glyphs
{
    private static readonly FrozenDictionary<string, Glyph> All =
        new[] { OutsideGlyphs.All, InsideGlyphs.All, EquipmentGlyphs.All }.SelectMany(set => set).ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The sign of a kind of thing in a kind of place (a window from outside, in plan, ...); none when it has none.</summary>
    public static Glyph? Of(string component) => All.GetValueOrDefault(component);
}
