using System.Globalization;

namespace Purlin.Journal;

/// <summary>
/// A hybrid logical clock reading: 48-bit milliseconds since 1970 and a counter, written <c>01994f3a2c10-0003</c>.
/// For display and as the last tie-break only: order comes from what a device had seen.
/// </summary>
/// <param name="Milliseconds">Milliseconds since 1970-01-01 UTC, below 2^48.</param>
/// <param name="Counter">Tells entries of one millisecond apart.</param>
public readonly record struct Hlc(long Milliseconds, int Counter) : IComparable<Hlc>
{
    /// <summary>The moment as the writing device believed it.</summary>
    public DateTimeOffset At => DateTimeOffset.FromUnixTimeMilliseconds(Math.Min(Milliseconds, 253_402_300_799_999));

    /// <summary>Reads twelve hexadecimal digits, a hyphen and four more.</summary>
    public static bool TryParse(string? text, out Hlc hlc)
    {
        hlc = default;
        if (text is not { Length: 17 } || text[12] != '-') return false;
        if (!long.TryParse(text.AsSpan(0, 12), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out var milliseconds))
            return false;
        if (!int.TryParse(text.AsSpan(13), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out var counter)) return false;
        hlc = new Hlc(milliseconds, counter);
        return true;
    }

    /// <summary>
    /// The reading to write next when the wall says <paramref name="now"/>: later than this one, unless this one is more than five minutes
    /// ahead of the wall. Then the clock was put right, and the wall is believed: order comes from sequence, not from time.
    /// </summary>
    /// <param name="now">Milliseconds since 1970; taken into 0 to 2^48 - 1.</param>
    public Hlc Next(long now)
    {
        var wall = Math.Clamp(now, 0, (1L << 48) - 1);
        if (wall > Milliseconds || Milliseconds > wall + Limits.AdoptAheadMilliseconds) return new Hlc(wall, 0);
        return Counter < 0xffff ? this with { Counter = Counter + 1 } : new Hlc(Milliseconds + 1, 0);
    }

    /// <inheritdoc/>
    public int CompareTo(Hlc other) =>
        Milliseconds != other.Milliseconds ? Milliseconds.CompareTo(other.Milliseconds) : Counter.CompareTo(other.Counter);

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Milliseconds:x12}-{Counter:x4}");

    /// <summary>Orders by time, then by counter.</summary>
    public static bool operator <(Hlc left, Hlc right) => left.CompareTo(right) < 0;

    /// <inheritdoc cref="op_LessThan"/>
    public static bool operator >(Hlc left, Hlc right) => left.CompareTo(right) > 0;

    /// <inheritdoc cref="op_LessThan"/>
    public static bool operator <=(Hlc left, Hlc right) => left.CompareTo(right) <= 0;

    /// <inheritdoc cref="op_LessThan"/>
    public static bool operator >=(Hlc left, Hlc right) => left.CompareTo(right) >= 0;
}
