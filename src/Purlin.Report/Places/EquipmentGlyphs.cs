namespace Purlin.Report.Places;

/// <summary>Equipment, as it stands on a floor or hangs on a wall.</summary>
internal static class EquipmentGlyphs
{
    public static IReadOnlyDictionary<string, Glyph> All { get; } = new Dictionary<string, Glyph>(StringComparer.Ordinal)
    {
        ["water heater"] = Glyph.Of(60, 150, "M 6 146 V 18 C 6 6 54 6 54 18 V 146 C 46 150 14 150 6 146 Z",
            "M 6 24 C 16 16 44 16 54 24 M 16 52 H 44 V 80 H 16 Z M 21 60 H 39 M 21 66 H 39 M 21 72 H 32 M 20 112 H 40 V 134 H 20 Z O 30 123 6 M 20 10 V 0 M 40 10 V 0"),
        ["tankless water heater"] = Glyph.Of(50, 70, "M 2 2 H 48 V 60 H 2 Z", "M 10 12 H 40 V 40 H 10 Z O 25 26 7 M 14 60 V 70 M 25 60 V 70 M 36 60 V 70"),
        ["furnace"] = Glyph.Of(60, 150, "M 2 2 H 58 V 150 H 2 Z",
            "M 2 70 H 58 M 8 8 H 52 V 64 H 8 Z O 30 22 6 M 14 40 H 46 M 14 46 H 46 M 14 52 H 46 M 8 76 H 52 V 144 H 8 Z O 30 110 20 O 30 110 6"),
        ["air handler"] = Glyph.Of(60, 150, "M 2 2 H 58 V 150 H 2 Z", "M 2 56 H 58 M 10 46 L 30 16 L 50 46 M 16 46 L 30 26 L 44 46 M 8 62 H 52 V 144 H 8 Z O 30 104 20 O 30 104 6"),
        ["boiler"] = Glyph.Of(70, 100, "M 4 12 H 66 V 100 H 4 Z", "M 14 30 H 56 V 60 H 14 Z O 26 45 8 M 40 40 H 52 M 40 48 H 52 M 14 74 H 56 M 14 82 H 56 M 18 12 V 0 M 52 12 V 0"),
        ["indoor coil"] = Glyph.Of(64, 46, "M 2 2 H 62 V 44 H 2 Z", "M 10 40 L 32 8 L 54 40 M 18 40 L 32 20 L 46 40 M 8 41 H 56"),
        ["air filter"] = Glyph.Of(12, 40, "M 1 1 H 11 V 39 H 1 Z", "M 2 5 L 10 9 L 2 13 L 10 17 L 2 21 L 10 25 L 2 29 L 10 33 L 2 37"),
        ["vent"] = Glyph.Of(110, 90, "M 6 90 V 44 L 98 18 V 32 L 20 54 V 90 Z", "M 6 66 H 20 M 44 33 L 48 46 M 74 25 L 77 38"),
        ["combustion air"] = Glyph.Of(44, 34, "M 2 2 H 42 V 32 H 2 Z", "M 7 9 H 37 M 7 15 H 37 M 7 21 H 37 M 7 27 H 37"),
        ["gas piping"] = Glyph.Of(50, 150, "M 30 0 H 36 V 92 H 36 V 150 H 30 V 98 H 4 V 92 H 30 Z", "M 26 40 L 40 54 M 40 40 L 26 54 M 26 40 H 40 M 26 54 H 40 M 26 148 H 40"),
        ["supply piping"] = Glyph.Of(40, 120, "M 6 0 H 11 V 120 H 6 Z M 27 0 H 32 V 120 H 27 Z", "M 2 50 L 15 64 V 50 L 2 64 Z M 6 20 H 11 M 27 30 H 32 M 6 94 H 11 M 27 94 H 32"),
        ["drain"] = Glyph.Of(44, 60, "M 14 0 H 22 V 24 C 22 40 36 40 36 26 H 43 C 43 52 14 52 14 26 Z", "M 12 12 H 24 M 34 26 H 44"),
        ["condensate drain"] = Glyph.Of(34, 90, "M 4 0 H 9 V 58 C 9 70 21 70 21 60 V 40 H 26 V 60 C 26 78 4 78 4 60 Z", "M 12 88 H 34 M 17 84 H 29"),
        ["panelboard"] = Glyph.Of(54, 80, "M 2 2 H 52 V 78 H 2 Z", "M 8 8 H 46 V 72 H 8 Z M 27 14 V 68 M 12 18 H 24 M 30 18 H 42 M 12 27 H 24 M 30 27 H 42 M 12 36 H 24 M 30 36 H 42 M 12 45 H 24 M 30 45 H 42 M 12 54 H 24 M 30 54 H 42 M 12 63 H 24 M 30 63 H 42"),
        ["service"] = Glyph.Of(44, 160, "M 18 0 H 26 V 92 H 42 V 158 H 2 V 92 H 18 Z", "O 22 116 13 M 22 108 V 124 M 14 116 H 30 M 10 138 H 34 V 150 H 10 Z"),
        ["grounding"] = Glyph.Of(34, 40, "M 15 0 H 19 V 22 H 15 Z", "M 4 22 H 30 M 9 29 H 25 M 14 36 H 20"),
        ["humidifier"] = Glyph.Of(34, 44, "M 2 2 H 32 V 42 H 2 Z", "M 8 10 H 26 M 8 16 H 26 M 17 26 C 10 36 24 36 17 26"),
        ["sump pump"] = Glyph.Of(44, 60, "M 4 28 H 40 V 60 H 4 Z", "M 16 60 V 42 H 28 V 60 M 22 42 V 4 H 44 M 34 34 C 34 40 38 40 38 34 M 8 34 H 14"),
        ["sewage ejector"] = Glyph.Of(44, 50, "M 4 14 H 40 V 50 H 4 Z", "M 2 14 H 42 M 14 14 V 0 M 30 14 V 0 M 14 34 H 30"),
        ["duct"] = Glyph.Of(130, 34, "M 2 4 H 128 V 30 H 2 Z", "M 34 4 V 30 M 66 4 V 30 M 98 4 V 30 M 2 4 L 34 30"),
        ["laundry hookup"] = Glyph.Of(58, 66, "M 2 2 H 56 V 66 H 2 Z", "M 2 14 H 56 O 29 40 17 O 29 40 11 M 8 8 H 20"),
        ["dryer duct"] = Glyph.Of(58, 76, "M 2 12 H 56 V 76 H 2 Z", "M 2 24 H 56 O 29 50 16 M 29 12 V 0 H 58 M 22 18 H 36"),
        ["fuel tank"] = Glyph.Of(90, 60, "M 14 4 H 76 C 92 4 92 50 76 50 H 14 C -2 50 -2 4 14 4 Z", "M 20 50 V 60 M 70 50 V 60 M 30 4 V 0 M 60 4 V 0"),
        ["fireplace"] = Glyph.Of(96, 100, "M 2 100 V 22 H -2 V 12 H 98 V 22 H 94 V 100 Z", "M 22 100 V 48 C 22 40 74 40 74 48 V 100 M 40 96 C 34 82 48 78 46 66 C 60 78 58 88 54 96"),
        ["wood stove"] = Glyph.Of(70, 110, "M 6 48 H 64 V 100 H 6 Z M 30 0 H 40 V 48 H 30 Z", "M 16 58 H 54 V 86 H 16 Z M 12 100 V 110 M 58 100 V 110 M 24 82 C 22 74 32 72 32 64 C 42 72 44 76 40 82"),
        ["radon"] = Glyph.Of(26, 90, "M 8 0 H 18 V 34 H 24 V 58 H 18 V 90 H 8 V 58 H 2 V 34 H 8 Z", "M 2 46 H 24"),
        ["refrigerator"] = Glyph.Of(56, 56, "M 2 2 H 54 V 54 H 2 Z", "M 2 46 H 54 M 10 50 H 22"),
        ["well"] = Glyph.Of(34, 34, "O 17 17 15", "O 17 17 7 M 17 2 V 10"),
    };
}
