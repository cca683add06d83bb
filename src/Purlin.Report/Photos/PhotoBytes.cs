namespace Purlin.Report.Photos;

/// <summary>Formats of photographs.</summary>
public enum PhotoFormat
{
    /// <summary>JPEG.</summary>
    Jpeg,

    /// <summary>PNG.</summary>
    Png,

    /// <summary>WebP; shown on a screen, not printed.</summary>
    WebP,
}

/// <summary>
/// A photograph that may be shown to others: the same picture without what travels with it. Place, camera and owner are cut out; not one
/// sample of the picture is touched, so a photograph that carries nothing keeps its very bytes.
/// </summary>
public sealed record PhotoBytes
{
    /// <summary>What the bytes are, whatever anybody called them.</summary>
    public required PhotoFormat Format { get; init; }

    /// <summary>Pixels across, as stored.</summary>
    public required int Width { get; init; }

    /// <summary>Pixels down, as stored.</summary>
    public required int Height { get; init; }

    /// <summary>How it is to be turned, 1 to 8 (Exif 2.32, section 4.6.4, tag 274); 1 when it stands upright.</summary>
    public int Orientation { get; init; } = 1;

    /// <summary>The bytes to show.</summary>
    public required ReadOnlyMemory<byte> Bytes { get; init; }

    /// <summary>Type for a data address.</summary>
    public string MediaType => Format switch { PhotoFormat.Jpeg => "image/jpeg", PhotoFormat.Png => "image/png", _ => "image/webp" };

    /// <summary>Whether a quarter turn swaps its sides.</summary>
    public bool Turned => Orientation >= 5;

    /// <summary>Reads a photograph and cuts out what travels with it; nothing for bytes that are no picture we know.</summary>
    public static PhotoBytes? Read(byte[]? bytes)
    {
        if (bytes is null || bytes.Length < 16) return null;
        try
        {
            return bytes switch
            {
                [0xFF, 0xD8, ..] => Jpeg.Read(bytes),
                [0x89, (byte)'P', (byte)'N', (byte)'G', ..] => Png.Read(bytes),
                [(byte)'R', (byte)'I', (byte)'F', (byte)'F', _, _, _, _, (byte)'W', (byte)'E', (byte)'B', (byte)'P', ..] => WebP.Read(bytes),
                _ => null,
            };
        }
        catch (Exception broken) when (broken is ArgumentException or IndexOutOfRangeException or OverflowException)
        {
            // A length that points outside the file: not a picture we can show.
            return null;
        }
    }
}
