namespace Purlin.Report.Fonts;

/// <summary>The four faces the report carries: one legible family for text, and one of wide coverage so that no name prints as boxes.</summary>
public static class Faces
{
    private static readonly Lazy<FontFace> regular = new(() => FontFace.Embedded("text-regular"));
    private static readonly Lazy<FontFace> bold = new(() => FontFace.Embedded("text-bold"));
    private static readonly Lazy<FontFace> italic = new(() => FontFace.Embedded("text-italic"));
    private static readonly Lazy<FontFace> wide = new(() => FontFace.Embedded("wide-regular"));

    /// <summary>Text.</summary>
    public static FontFace Regular => regular.Value;

    /// <summary>Headings and numbers that count.</summary>
    public static FontFace Bold => bold.Value;

    /// <summary>Captions and asides.</summary>
    public static FontFace Italic => italic.Value;

    /// <summary>Characters the text family lacks.</summary>
    public static FontFace Wide => wide.Value;

    /// <summary>The face for a cut.</summary>
    public static FontFace Of(Cut cut) => cut switch { Cut.Bold => Bold, Cut.Italic => Italic, _ => Regular };
}

/// <summary>The three cuts of the text family.</summary>
public enum Cut
{
    /// <summary>Upright.</summary>
    Regular,

    /// <summary>Heavy.</summary>
    Bold,

    /// <summary>Slanted.</summary>
    Italic,
}
