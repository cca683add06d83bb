namespace Purlin.Report.Places;

/// <summary>What is outside: on walls in elevation, on the roof and the ground in plan.</summary>
internal static class OutsideGlyphs
{
    public static IReadOnlyDictionary<string, Glyph> All { get; } = new Dictionary<string, Glyph>(StringComparer.Ordinal)
    {
        ["outdoor unit"] = Glyph.Of(64, 60, "M 2 6 H 62 V 52 H 2 Z M -2 52 H 66 V 60 H -2 Z", "M 2 12 H 62 M 10 16 V 50 M 18 16 V 50 M 26 16 V 50 M 34 16 V 50 M 42 16 V 50 M 50 16 V 50 M 56 16 V 50"),
        ["heat pump"] = Glyph.Of(64, 60, "M 2 6 H 62 V 52 H 2 Z M -2 52 H 66 V 60 H -2 Z", "O 32 30 18 O 32 30 5 M 2 12 H 62"),
        ["hose faucet"] = Glyph.Of(30, 26, "M 2 10 H 16 V 4 H 24 V 18 H 20 V 26 H 12 V 16 H 2 Z", "M 14 0 H 26"),
        ["exterior steps"] = Glyph.Of(84, 40, "M 2 2 H 50 V 14 H 66 V 27 H 82 V 40 H 2 Z", "M 2 14 H 50 M 2 27 H 66"),
        ["porch"] = Glyph.Of(110, 120, "M 0 0 H 110 V 12 H 0 Z M 8 12 H 16 V 106 H 8 Z M 94 12 H 102 V 106 H 94 Z M 0 106 H 110 V 120 H 0 Z", "M 16 70 H 94"),
        ["deck"] = Glyph.Of(110, 70, "M 0 22 H 110 V 32 H 0 Z M 8 32 H 16 V 70 H 8 Z M 94 32 H 102 V 70 H 94 Z", "M 4 0 H 106 M 4 0 V 22 M 106 0 V 22 M 16 0 V 22 M 28 0 V 22 M 40 0 V 22 M 52 0 V 22 M 64 0 V 22 M 76 0 V 22 M 88 0 V 22"),
        ["balcony"] = Glyph.Of(90, 36, "M 0 26 H 90 V 34 H 0 Z", "M 3 0 H 87 M 3 0 V 26 M 87 0 V 26 M 17 0 V 26 M 31 0 V 26 M 45 0 V 26 M 59 0 V 26 M 73 0 V 26"),
        ["chimney"] = Glyph.Of(34, 84, "M 4 10 H 30 V 84 H 4 Z M 0 2 H 34 V 10 H 0 Z", "M 4 24 H 30 M 4 38 H 30 M 4 52 H 30 M 4 66 H 30 M 17 10 V 24 M 17 38 V 52 M 17 66 V 84 M 10 24 V 38 M 24 24 V 38"),
        ["downspout"] = Glyph.Of(16, 200, "M 2 0 H 11 V 186 L 4 198 L -6 192 L 2 182 Z", "M 2 60 H 11 M 2 120 H 11 M 2 176 H 11"),
        ["gutter"] = Glyph.Of(320, 12, "M 0 0 H 320 V 12 H 0 Z", "M 0 4 H 320"),
        ["eave"] = Glyph.Of(320, 8, "M 0 0 H 320 V 8 H 0 Z", ""),
        ["vegetation"] = Glyph.Of(50, 44, "M 25 2 C 38 0 42 8 40 12 C 50 14 50 28 42 30 C 42 40 28 44 25 38 C 20 44 8 40 8 30 C 0 28 0 14 10 12 C 8 6 16 0 25 2 Z", "M 25 38 V 16 M 25 26 L 17 20 M 25 24 L 33 18"),
        ["window well"] = Glyph.Of(44, 26, "M 2 2 C 2 26 42 26 42 2 Z", "M 8 4 H 36"),
        ["attic ventilation"] = Glyph.Of(40, 26, "M 2 24 L 20 2 L 38 24 Z", "M 12 14 H 28 M 8 19 H 32 M 16 9 H 24"),
        ["driveway"] = Glyph.Of(80, 110, "M 4 0 H 76 L 80 110 H 0 Z", "M 2 36 H 78 M 1 74 H 79"),
        ["walk"] = Glyph.Of(26, 90, "M 2 0 H 24 V 90 H 2 Z", "M 2 18 H 24 M 2 36 H 24 M 2 54 H 24 M 2 72 H 24"),
        ["patio"] = Glyph.Of(110, 56, "M 2 2 H 108 V 54 H 2 Z", "M 28 2 V 54 M 55 2 V 54 M 82 2 V 54 M 2 28 H 108"),
        ["retaining wall"] = Glyph.Of(110, 16, "M 2 2 H 108 V 14 H 2 Z", "M 20 2 V 14 M 40 2 V 14 M 60 2 V 14 M 80 2 V 14 M 2 8 H 108"),
        ["fence"] = Glyph.Of(140, 10, "M 0 3 H 140 V 6 H 0 Z", "M 4 0 V 10 M 26 0 V 10 M 48 0 V 10 M 70 0 V 10 M 92 0 V 10 M 114 0 V 10 M 136 0 V 10"),
        ["pool"] = Glyph.Of(100, 56, "M 24 2 H 76 C 106 2 106 54 76 54 H 24 C -6 54 -6 2 24 2 Z", "M 24 24 C 32 18 40 30 48 24 C 56 18 64 30 72 24 M 24 36 C 32 30 40 42 48 36 C 56 30 64 42 72 36"),
        ["septic system"] = Glyph.Of(70, 40, "M 2 2 H 68 V 38 H 2 Z", "M 35 2 V 38 O 18 20 7 O 52 20 7"),
        ["surface drain"] = Glyph.Of(28, 28, "M 1 1 H 27 V 27 H 1 Z", "M 6 4 V 24 M 11 4 V 24 M 16 4 V 24 M 21 4 V 24"),
        ["irrigation"] = Glyph.Of(34, 30, "M 12 20 H 22 V 30 H 12 Z", "M 17 20 V 12 M 17 12 C 10 4 4 8 2 12 M 17 12 C 24 4 30 8 32 12 M 17 12 V 2"),
        ["outbuilding"] = Glyph.Of(50, 44, "M 2 2 H 48 V 42 H 2 Z", "M 2 2 L 25 22 L 48 2 M 25 22 V 42"),
        ["garage door"] = Glyph.Of(150, 110, "M 2 2 H 148 V 110 H 2 Z", "M 2 29 H 148 M 2 56 H 148 M 2 83 H 148 M 38 2 V 110 M 75 2 V 110 M 112 2 V 110"),
        ["house number"] = Glyph.Of(30, 20, "M 1 1 H 29 V 19 H 1 Z", "M 7 6 V 14 M 13 6 H 17 V 10 H 13 V 14 H 17 M 21 6 H 25 V 14"),
        ["dryer vent"] = Glyph.Of(24, 20, "M 1 1 H 23 V 19 H 1 Z", "M 3 6 H 21 M 3 11 H 21 M 3 16 H 21"),
        ["post"] = Glyph.Of(12, 150, "M 2 0 H 10 V 150 H 2 Z", "M 0 0 H 12"),
        ["pier"] = Glyph.Of(40, 120, "M 8 0 H 32 V 104 H 8 Z M 0 104 H 40 V 120 H 0 Z", "M 8 26 H 32 M 8 52 H 32 M 8 78 H 32"),
    };
}
