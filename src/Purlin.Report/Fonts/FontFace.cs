using System.Buffers.Binary;

namespace Purlin.Report.Fonts;

/// <summary>
/// What has to be known of a TrueType face to set a line: which characters it has and how wide each is. Read here rather than asked of
/// the browser or of the PDF library, so that a line breaks at the same word on every machine.
/// </summary>
public sealed class FontFace
{
    private readonly byte[] bytes;
    private readonly Dictionary<int, ushort> glyphs = [];
    private readonly double[] advances;

    private FontFace(string name, byte[] bytes)
    {
        Name = name;
        this.bytes = bytes;
        var unitsPerEm = U16(Table("head") + 18);
        var horizontal = Table("hhea");
        Ascent = (short)U16(horizontal + 4) / (double)unitsPerEm;
        Descent = -(short)U16(horizontal + 6) / (double)unitsPerEm;
        var widths = U16(horizontal + 34);
        var metrics = Table("hmtx");
        advances = new double[widths];
        for (var index = 0; index < widths; index++) advances[index] = U16(metrics + index * 4) / (double)unitsPerEm;
        ReadCharacters(Table("cmap"));
    }

    /// <summary>The name it goes by in this program, <c>text-regular</c>.</summary>
    public string Name { get; }

    /// <summary>Height above the line, in ems.</summary>
    public double Ascent { get; }

    /// <summary>Depth below the line, in ems.</summary>
    public double Descent { get; }

    /// <summary>The font file.</summary>
    public ReadOnlyMemory<byte> File => bytes;

    /// <summary>Whether the face has the character.</summary>
    public bool Has(int character) => glyphs.ContainsKey(character);

    /// <summary>Width of a character in ems; that of the missing-character box when the face lacks it.</summary>
    public double Advance(int character)
    {
        var glyph = glyphs.GetValueOrDefault(character);
        return glyph < advances.Length ? advances[glyph] : advances[^1];
    }

    internal static FontFace Embedded(string name)
    {
        using var stream = typeof(FontFace).Assembly.GetManifestResourceStream($"fonts/{name}.ttf")
            ?? throw new InvalidOperationException($"the font {name} is not built into the report");
        var file = new byte[stream.Length];
        stream.ReadExactly(file);
        return new FontFace(name, file);
    }

    private void ReadCharacters(int cmap)
    {
        int best = 0, rank = 0;
        for (var index = 0; index < U16(cmap + 2); index++)
        {
            var record = cmap + 4 + index * 8;
            var offset = cmap + (int)U32(record + 4);
            var standing = U16(offset) switch { 12 => 2, 4 when U16(record) is 0 or 3 => 1, _ => 0 };
            if (standing > rank) (best, rank) = (offset, standing);
        }
        if (rank == 2) ReadGroups(best);
        else if (rank == 1) ReadSegments(best);
    }

    private void ReadGroups(int table)
    {
        for (uint index = 0; index < U32(table + 12); index++)
        {
            var group = table + 16 + (int)index * 12;
            uint first = U32(group), last = U32(group + 4), glyph = U32(group + 8);
            for (var character = first; character <= last && character <= 0x10FFFF; character++) glyphs[(int)character] = (ushort)(glyph + character - first);
        }
    }

    private void ReadSegments(int table)
    {
        var count = U16(table + 6) / 2;
        int ends = table + 14, starts = ends + count * 2 + 2, deltas = starts + count * 2, offsets = deltas + count * 2;
        for (var index = 0; index < count; index++)
        {
            int first = U16(starts + index * 2), last = U16(ends + index * 2), range = U16(offsets + index * 2);
            for (var character = first; character <= last && character < 0xFFFF; character++)
            {
                var glyph = range == 0 ? character : U16(offsets + index * 2 + range + (character - first) * 2);
                if (glyph == 0) continue;
                glyphs[character] = (ushort)(glyph + U16(deltas + index * 2));
            }
        }
    }

    private int Table(string tag)
    {
        for (var index = 0; index < U16(4); index++)
        {
            var record = 12 + index * 16;
            if (tag.AsSpan().SequenceEqual([(char)bytes[record], (char)bytes[record + 1], (char)bytes[record + 2], (char)bytes[record + 3]])) return (int)U32(record + 8);
        }
        throw new InvalidOperationException($"the font {Name} has no table {tag}");
    }

    private ushort U16(int at) => BinaryPrimitives.ReadUInt16BigEndian(bytes.AsSpan(at));

    private uint U32(int at) => BinaryPrimitives.ReadUInt32BigEndian(bytes.AsSpan(at));
}
