using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Purlin.Journal;

/// <summary>
/// The name of an entry: the device that wrote it and its place in that device's sequence, written <c>dev.seq</c>.
/// Unique in its inspection without a server; a thing is named by the entry that created it.
/// A fork's second branch carries a device name ending in <c>~2</c>, <c>~3</c>, ...
/// </summary>
/// <param name="Device">Lower-case letters and digits, at most 20, with an optional fork mark.</param>
/// <param name="Seq">Counts from 1 without gaps.</param>
[JsonConverter(typeof(EntryNameConverter))]
public readonly record struct EntryName(string Device, int Seq) : IComparable<EntryName>
{
    /// <summary>Reads <c>dev.seq</c>; false when the text is not such a name.</summary>
    public static bool TryParse([NotNullWhen(true)] string? text, out EntryName name)
    {
        name = default;
        if (text is null || text.Length > 40) return false;
        var dot = text.LastIndexOf('.');
        if (dot <= 0) return false;
        var device = text[..dot];
        if (!IsDevice(device)) return false;
        if (!int.TryParse(text.AsSpan(dot + 1), NumberStyles.None, CultureInfo.InvariantCulture, out var seq) || seq < 1) return false;
        name = new EntryName(device, seq);
        return true;
    }

    /// <summary>Reads <c>dev.seq</c>.</summary>
    /// <exception cref="FormatException">The text is not such a name.</exception>
    public static EntryName Parse(string text) =>
        TryParse(text, out var name) ? name : throw new FormatException($"'{text}' is not an entry name like k3f9a2x07q.96");

    /// <summary>Whether the text may name a device: 1 to 20 of a-z and 0-9, then perhaps a fork mark.</summary>
    public static bool IsDevice([NotNullWhen(true)] string? text)
    {
        if (string.IsNullOrEmpty(text)) return false;
        var mark = text.IndexOf('~', StringComparison.Ordinal);
        var stem = mark < 0 ? text : text[..mark];
        if (stem.Length is 0 or > 20 || stem.Any(c => c is not ((>= 'a' and <= 'z') or (>= '0' and <= '9')))) return false;
        return mark < 0 || (int.TryParse(text.AsSpan(mark + 1), NumberStyles.None, CultureInfo.InvariantCulture, out var branch)
            && branch is >= 2 and <= 99);
    }

    /// <summary>From the sequence alone: an inspection has a handful of devices, and names are looked up by the thousand.</summary>
    public override int GetHashCode() => Seq;

    /// <inheritdoc/>
    public bool Equals(EntryName other) => Seq == other.Seq && Device == other.Device;

    /// <inheritdoc/>
    public int CompareTo(EntryName other)
    {
        var byDevice = string.CompareOrdinal(Device, other.Device);
        return byDevice != 0 ? byDevice : Seq.CompareTo(other.Seq);
    }

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Device}.{Seq}");

    /// <summary>Orders by device, then by sequence.</summary>
    public static bool operator <(EntryName left, EntryName right) => left.CompareTo(right) < 0;

    /// <inheritdoc cref="op_LessThan"/>
    public static bool operator >(EntryName left, EntryName right) => left.CompareTo(right) > 0;

    /// <inheritdoc cref="op_LessThan"/>
    public static bool operator <=(EntryName left, EntryName right) => left.CompareTo(right) <= 0;

    /// <inheritdoc cref="op_LessThan"/>
    public static bool operator >=(EntryName left, EntryName right) => left.CompareTo(right) >= 0;
}

/// <summary>Writes an <see cref="EntryName"/> as the text <c>dev.seq</c>.</summary>
public sealed class EntryNameConverter : JsonConverter<EntryName>
{
    /// <inheritdoc/>
    public override EntryName Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        reader.TokenType == JsonTokenType.String && EntryName.TryParse(reader.GetString(), out var name)
            ? name
            : throw new JsonException("an entry name like k3f9a2x07q.96 is expected");

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, EntryName value, JsonSerializerOptions options) =>
        writer.WriteStringValue(value.ToString());
}
