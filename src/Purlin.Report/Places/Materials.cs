using Purlin.Report.Drawing;

namespace Purlin.Report.Places;

/// <summary>The hatch of a surface's material. An unknown one is blank.</summary>
internal static class Materials
{
    private static readonly (string Word, Func<Box, Trace> Hatch)[] All =
    [
        ("brick", box => Hatching.Masonry(box, 9, 22)),
        ("stone", box => Hatching.Masonry(box, 15, 30)),
        ("block", box => Hatching.Masonry(box, 14, 30)),
        ("stucco", Speckled), ("eifs", Speckled),
        ("panel", box => Upright(box, 22)), ("t1-11", box => Upright(box, 22)), ("plywood", box => Upright(box, 22)),
        ("shake", box => Hatching.Masonry(box, 13, 15)),
        ("shingle", box => Hatching.Masonry(box, 12, 20)), ("asphalt", box => Hatching.Masonry(box, 12, 20)),
        ("tile", box => Hatching.Masonry(box, 13, 13)), ("slate", box => Hatching.Masonry(box, 12, 16)),
        ("metal", box => Upright(box, 16)), ("steel", box => Upright(box, 16)),
        ("vinyl", Lapped), ("wood", Lapped), ("fiber", Lapped), ("fibre", Lapped), ("hardboard", Lapped), ("alumin", Lapped), ("lap", Lapped), ("composite", Lapped),
    ];

    /// <summary>The hatch of a material in a box; none when the material is unknown.</summary>
    public static Trace? Hatch(string? material, Box box)
    {
        if (material is null) return null;
        foreach (var (word, hatch) in All)
            if (material.Contains(word, StringComparison.OrdinalIgnoreCase)) return hatch(box);
        return null;
    }

    private static Trace Lapped(Box box) => Trace.Join(Enumerable.Range(1, Math.Max(0, (int)(box.Height / 12) - 1)).Select(row => Trace.Between(box.X, box.Y + (row * 12), box.Right, box.Y + (row * 12))));

    private static Trace Upright(Box box, double pitch) => Trace.Join(Enumerable.Range(1, Math.Max(0, (int)(box.Width / pitch) - 1)).Select(column => Trace.Between(box.X + (column * pitch), box.Y, box.X + (column * pitch), box.Bottom)));

    private static Trace Speckled(Box box) => Hatching.Concrete(box.Corners);
}
