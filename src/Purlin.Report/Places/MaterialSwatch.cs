using System.Collections.Immutable;
using Purlin.Report.Drawing;

namespace Purlin.Report.Places;

/// <summary>A small field of a material as its hatch shows it on the drawings, to choose it by.</summary>
public static class MaterialSwatch
{
    private static readonly Box Field = new(0, 0, 72, 44);

    /// <summary>The field as SVG; empty for a material that no drawing hatches.</summary>
    public static string Draw(string material)
    {
        ArgumentNullException.ThrowIfNull(material);
        if (Materials.Hatch(material, Field) is not { } hatch) return "";
        ImmutableArray<Mark> marks = [new Mark.Stroke(hatch, LineClass.Beyond, Ink.Line),
            new Mark.Stroke(Trace.Around(Field.Inset(0.5)), LineClass.Beyond, Ink.Line)];
        return SvgWriter.Write(new Sheet { Width = Field.Width, Height = Field.Height, Title = material, Marks = marks }, Theme.Day, _ =>
            "#");
    }
}
