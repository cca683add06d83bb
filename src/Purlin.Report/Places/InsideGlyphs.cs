namespace Purlin.Report.Places;

/// <summary>What is in rooms: fixtures in plan, things of the walls in elevation.</summary>
internal static class InsideGlyphs
{
    public static IReadOnlyDictionary<string, Glyph> All { get; } = new Dictionary<string, Glyph>(StringComparer.Ordinal)
    {
        ["tub and shower"] = Glyph.Of(174, 78, "M 1 3 C 1 2 2 1 3 1 H 171 C 172 1 173 2 173 3 V 75 C 173 76 172 77 171 77 H 3 C 2 77 1 76 1 75 Z",
            "M 30 11 H 144 C 170 11 170 67 144 67 H 30 C 4 67 4 11 30 11 Z O 26 39 4 M 4 39 H 13"),
        ["toilet"] = Glyph.Of(60, 50, "M 44 2 H 58 V 48 H 44 Z M 44 6 C 12 2 2 14 2 25 C 2 36 12 48 44 44 Z", "M 38 14 C 20 12 12 18 12 25 C 12 32 20 38 38 36 Z"),
        ["sink"] = Glyph.Of(46, 72, "M 1 1 H 45 V 71 H 1 Z", "M 24 14 C 38 14 38 58 24 58 C 10 58 10 14 24 14 Z O 24 36 2 M 38 36 H 45"),
        ["cabinet and counter"] = Glyph.Of(46, 250, "M 1 1 H 45 V 249 H 1 Z", "M 38 1 V 249"),
        ["range"] = Glyph.Of(46, 60, "M 1 1 H 45 V 59 H 1 Z", "O 14 16 8 O 32 16 6 O 14 42 6 O 32 42 8"),
        ["range hood"] = Glyph.Of(60, 36, "M 2 34 L 18 6 H 42 L 58 34 Z", "M 24 6 V 0 M 36 6 V 0 M 10 27 H 50"),
        ["dishwasher"] = Glyph.Of(46, 50, "M 1 1 H 45 V 49 H 1 Z", "M 36 1 V 49 M 41 14 V 36 O 18 25 9"),
        ["disposer"] = Glyph.Of(26, 34, "M 4 4 H 22 V 26 C 22 34 4 34 4 26 Z", "M 2 4 H 24 M 4 14 H 22"),
        ["microwave"] = Glyph.Of(56, 30, "M 1 1 H 55 V 29 H 1 Z", "M 6 6 H 40 V 24 H 6 Z M 46 8 H 50 M 46 14 H 50 M 46 20 H 50"),
        ["window"] = Glyph.Of(60, 54, "M 1 1 H 59 V 50 H 1 Z", "M 6 6 H 54 V 46 H 6 Z M 30 6 V 46 M 6 26 H 54 M -3 53 H 63"),
        ["exterior door"] = Glyph.Of(44, 84, "M 1 1 H 43 V 84 H 1 Z", "M 6 6 H 38 V 84 M 6 84 V 6 M 12 12 H 32 V 40 H 12 Z M 12 48 H 32 V 76 H 12 Z O 35 46 1.6"),
        ["interior door"] = Glyph.Of(44, 84, "M 1 1 H 43 V 84 H 1 Z", "M 6 6 H 38 V 84 M 6 84 V 6 M 12 14 H 32 V 38 H 12 Z M 12 50 H 32 V 74 H 12 Z O 35 46 1.6"),
        ["receptacle"] = Glyph.Of(26, 20, "M 1 1 H 25 V 19 H 1 Z", "M 7 6 V 11 M 11 6 V 11 M 15 6 V 11 M 19 6 V 11 M 9 14 H 9.6 M 17 14 H 17.6"),
        ["switch"] = Glyph.Of(16, 24, "M 1 1 H 15 V 23 H 1 Z", "M 8 6 V 14"),
        ["luminaire"] = Glyph.Of(36, 30, "M 10 2 H 26 L 34 24 H 2 Z", "M 18 2 V 0 M 12 24 C 12 31 24 31 24 24"),
        ["ceiling fan"] = Glyph.Of(60, 60, "O 30 30 7", "M 24 26 C 4 16 8 6 26 22 M 36 34 C 56 44 52 54 34 38 M 34 24 C 44 4 54 8 38 26 M 26 36 C 16 56 6 52 22 34"),
        ["bath fan"] = Glyph.Of(46, 46, "M 1 1 H 45 V 45 H 1 Z", "O 23 23 13 M 23 10 C 16 20 30 26 23 36 M 10 23 C 20 16 26 30 36 23"),
        ["smoke alarm"] = Glyph.Of(34, 34, "O 17 17 15", "O 17 17 5 M 17 5 V 9 M 17 25 V 29 M 5 17 H 9 M 25 17 H 29"),
        ["carbon monoxide alarm"] = Glyph.Of(34, 34, "M 3 3 H 31 V 31 H 3 Z", "O 17 17 5 M 8 25 H 14 M 20 25 H 26"),
        ["thermostat"] = Glyph.Of(24, 24, "M 1 1 H 23 V 23 H 1 Z", "O 12 12 6 M 12 12 L 16 8"),
        ["room heater"] = Glyph.Of(60, 20, "M 1 1 H 59 V 19 H 1 Z", "M 9 1 V 19 M 17 1 V 19 M 25 1 V 19 M 33 1 V 19 M 41 1 V 19 M 49 1 V 19"),
        ["attic"] = Glyph.Of(44, 32, "M 1 1 H 43 V 31 H 1 Z", "M 1 1 L 43 31 M 16 31 H 28"),
        ["skylight"] = Glyph.Of(40, 40, "M 1 1 H 39 V 39 H 1 Z", "M 6 6 H 34 V 34 H 6 Z M 6 6 L 34 34 M 34 6 L 6 34"),
        ["handrail"] = Glyph.Of(190, 150, "M 4 142 L 180 8 L 186 14 L 8 150 Z", "M 30 126 V 150 M 160 26 V 60"),
        ["guard"] = Glyph.Of(120, 54, "M 0 0 H 120 V 6 H 0 Z", "M 2 6 V 54 M 118 6 V 54 M 12 6 V 50 M 22 6 V 50 M 32 6 V 50 M 42 6 V 50 M 52 6 V 50 M 62 6 V 50 M 72 6 V 50 M 82 6 V 50 M 92 6 V 50 M 102 6 V 50 M 110 6 V 50 M 2 50 H 118"),
        ["pests"] = Glyph.Of(40, 24, "M 4 18 C 4 6 24 2 32 14 L 38 18 Z", "O 30 14 1 M 4 18 C -4 18 -2 8 4 10"),
        ["wood-destroying insects"] = Glyph.Of(30, 44, "M 10 44 C 4 30 14 24 10 12 L 16 0 C 20 14 14 24 20 32 L 18 44 Z", "M 13 10 L 17 14 M 11 26 L 16 28"),
        ["branch wiring"] = Glyph.Of(44, 30, "M 12 6 H 32 V 26 H 12 Z", "M 0 12 C 4 8 8 16 12 14 M 32 14 C 36 16 40 8 44 12 M 16 10 H 28 M 16 16 H 28 M 16 22 H 28"),
        ["moisture"] = Glyph.Of(26, 36, "M 13 1 C 24 16 25 22 25 25 C 25 31 19 35 13 35 C 7 35 1 31 1 25 C 1 22 2 16 13 1 Z", "M 7 25 C 7 28 9 30 12 30"),
    };
}
