using System.Buffers;
using System.Security.Cryptography;

namespace Purlin.Journal;

/// <summary>SHA-256 as we write it everywhere: 64 lower-case hexadecimal digits.</summary>
public static class Sha
{
    private static readonly SearchValues<char> Digits = SearchValues.Create("0123456789abcdef");

    /// <summary>Digits of a hash.</summary>
    public const int Length = 64;

    /// <summary>The hash of these bytes.</summary>
    public static string Of(ReadOnlySpan<byte> bytes)
    {
        Span<byte> hash = stackalloc byte[SHA256.HashSizeInBytes];
        SHA256.HashData(bytes, hash);
        return Convert.ToHexStringLower(hash);
    }

    /// <summary>The hash of everything left in this stream.</summary>
    public static string Of(Stream bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    /// <summary>Whether the text is a hash as we write it. Only such a text ever becomes part of a file's name.</summary>
    public static bool Is(string? text) =>
        text is { Length: Length } && !text.AsSpan().ContainsAnyExcept(Digits);
}
