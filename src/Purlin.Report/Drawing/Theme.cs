namespace Purlin.Report.Drawing;

/// <summary>Colours and line widths of a sheet. On the screen each colour can be replaced by the custom property of its name.</summary>
public sealed record Theme
{
    /// <summary>Warm white paper, near-black blue ink.</summary>
    public static Theme Day { get; } = new()
    {
        Name = "day",
        Paper = "#fbf8f1",
        Line = "#14213a",
        Faint = "#77808f",
        Hatch = "#4c5a72",
        Wash = "#ece6d8",
        Text = "#14213a",
        Quiet = "#454f60",
        Accent = "#a3210c",
    };

    /// <summary>Deep blue-black paper, chalk lines: for an attic.</summary>
    public static Theme Dark { get; } = new()
    {
        Name = "dark",
        Paper = "#0c1420",
        Line = "#f1ece0",
        Faint = "#79859a",
        Hatch = "#a8b2c3",
        Wash = "#1b2637",
        Text = "#f1ece0",
        Quiet = "#b9c1cf",
        Accent = "#ff8a70",
    };

    /// <summary>Pure black on pure white with thicker lines: for midday.</summary>
    public static Theme Sun { get; } = new()
    {
        Name = "sun",
        Paper = "#ffffff",
        Line = "#000000",
        Faint = "#5e5e5e",
        Hatch = "#2a2a2a",
        Wash = "#e6e6e6",
        Text = "#000000",
        Quiet = "#2e2e2e",
        Accent = "#a31500",
        Thickness = 1.35,
    };

    /// <summary>For paper: white ground, ink of the day.</summary>
    public static Theme Print { get; } = Day with { Name = "print", Paper = "#ffffff", Wash = "#efece5" };

    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>Ground.</summary>
    public required string Paper { get; init; }

    /// <summary>Full ink.</summary>
    public required string Line { get; init; }

    /// <summary>Faint line.</summary>
    public required string Faint { get; init; }

    /// <summary>Hatches.</summary>
    public required string Hatch { get; init; }

    /// <summary>Tone.</summary>
    public required string Wash { get; init; }

    /// <summary>Letters.</summary>
    public required string Text { get; init; }

    /// <summary>Letters that stand back.</summary>
    public required string Quiet { get; init; }

    /// <summary>Someone can be hurt.</summary>
    public required string Accent { get; init; }

    /// <summary>Factor on every line width.</summary>
    public double Thickness { get; init; } = 1;

    /// <summary>Colour of an ink as <c>#rrggbb</c>.</summary>
    public string Colour(Ink ink) => ink switch
    {
        Ink.Line => Line,
        Ink.Faint => Faint,
        Ink.Hatch => Hatch,
        Ink.Paper => Paper,
        Ink.Wash => Wash,
        Ink.Text => Text,
        Ink.Quiet => Quiet,
        Ink.Accent => Accent,
        _ => throw new ArgumentOutOfRangeException(nameof(ink), ink, "one of the inks"),
    };

    /// <summary>Width of a line. A faint line is thinner as well as paler, so that it reads in black and white.</summary>
    public double Width(LineClass line, Ink ink)
    {
        var width = line switch
        {
            LineClass.Heavy => 2.6,
            LineClass.Halo => 6,
            LineClass.Cut => 2,
            LineClass.Beyond => 1.1,
            LineClass.Hidden => 0.9,
            LineClass.Shift => 0.9,
            _ => 0.7,
        };
        return Thickness * (ink == Ink.Faint ? Math.Min(width, 0.8) : width);
    }

    /// <summary>Dashes of a line; none for a full one.</summary>
    public static IReadOnlyList<double> Dashes(LineClass line) => line switch
    {
        LineClass.Hidden => [4, 2.5],
        LineClass.Shift => [9, 2.5, 1.5, 2.5],
        _ => [],
    };
}
