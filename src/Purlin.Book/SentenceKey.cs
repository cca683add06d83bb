using System.Diagnostics.CodeAnalysis;

namespace Purlin.Book;

/// <summary>
/// The key of a sentence: whose it is, a slash, and which part of it. Written <c>water-heater.too-hot/do</c>; what is neither a condition
/// nor a limitation stands on a shelf, <c>causes/poor-drainage/means</c>.
/// </summary>
/// <param name="Owner">Id of the condition or limitation, or the shelf.</param>
/// <param name="Rest">The part, or on a shelf the id and the part.</param>
public readonly record struct SentenceKey(string Owner, string Rest)
{
    private const char Between = '/';

    /// <summary>
    /// What stands on the shelf, cut behind the id; empty where the rest has no further part. For ids with a slash of their own: kinds of
    /// reading.
    /// </summary>
    public (string Id, string Part) LongId => Rest.LastIndexOf(Between) is > 0 and var at ? (Rest[..at], Rest[(at + 1)..]) : ("", "");

    /// <summary>What stands on the shelf, cut before the part. For parts with a slash of their own: sections of standards.</summary>
    public (string Id, string Part) LongPart =>
        Rest.IndexOf(Between, StringComparison.Ordinal) is > 0 and var at ? (Rest[..at], Rest[(at + 1)..]) : ("", "");

    /// <summary>Reads what <see cref="ToString"/> wrote; false when the text has no slash or nothing before it.</summary>
    public static bool TryParse([NotNullWhen(true)] string? text, out SentenceKey key)
    {
        var at = text?.IndexOf(Between, StringComparison.Ordinal) ?? -1;
        key = at > 0 ? new SentenceKey(text![..at], text[(at + 1)..]) : default;
        return at > 0;
    }

    /// <inheritdoc/>
    public override string ToString() => $"{Owner}{Between}{Rest}";
}
