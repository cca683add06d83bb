using System.Text.Json;
using System.Text.Unicode;

namespace Purlin.Journal;

/// <summary>
/// One line of a journal: hostile bytes in, an entry or the list of refusals out. The bytes are kept as they came; members nobody here
/// knows survive in them.
/// </summary>
public static class EntryLine
{
    /// <summary>
    /// Version of the line format that this program writes. Lines of a later one are kept as <see cref="EntryBody.Unknown"/>.
    /// </summary>
    public const int Version = 1;

    private static readonly JsonDocumentOptions Options = new() { MaxDepth = Limits.JsonDepth, AllowDuplicateProperties = false };

    /// <summary>Whether the text can name an inspection: 1 to 64 letters, digits, - or _.</summary>
    public static bool IsInspection(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Length is > 0 and <= 64 && text.All(letter => char.IsAsciiLetterOrDigit(letter) || letter is '-' or '_');
    }

    /// <summary>Reads one line without its line end.</summary>
    public static Checked<Entry> Read(ReadOnlyMemory<byte> line)
    {
        if (Shape(line.Span) is { } refusal) return refusal;
        try
        {
            using var document = JsonDocument.Parse(line, Options);
            return FromRoot(line, document.RootElement);
        }
        catch (JsonException wrong)
        {
            return new Refusal("line", new Said("journal.given.json-broken-byte", ("count", $"{wrong.BytePositionInLine ?? 0}")),
                new Said("journal.wanted.one-json-object-most-deep", ("most", Limits.JsonDepth)));
        }
        catch (InvalidOperationException)
        {
            return new Refusal("line", "journal.given.text-with-half-surrogate-pair", "journal.wanted.well-formed-unicode");
        }
    }

    private static Refusal? Shape(ReadOnlySpan<byte> line)
    {
        if (line.Length == 0) return new Refusal("line", "journal.given.nothing", "journal.wanted.one-json-object");
        if (line.Length > Limits.LineBytes)
            return new Refusal("line", new Said("journal.given.count-bytes", ("count", line.Length)),
                new Said("journal.wanted.most-most", ("most", Limits.LineBytes)));
        if (line.ContainsAny((byte)'\n', (byte)'\r'))
            return new Refusal("line", "journal.given.line-end-inside", "journal.wanted.one-line");
        return Utf8.IsValid(line) ? null : new Refusal("line", "journal.given.bytes-are-not-utf-8", "journal.wanted.utf-8-text");
    }

    private static Checked<Entry> FromRoot(ReadOnlyMemory<byte> line, JsonElement root)
    {
        var envelope = Envelope.Read(root);
        if (envelope.Refusals.Count > 0) return Checked<Entry>.Refused(envelope.Refusals);
        IReadOnlyList<Misread> misread = [];
        var body = envelope.Version > Version
            ? new EntryBody.Unknown(envelope.Type, envelope.Body.Clone())
            : BodyMending.Read(envelope.Type, envelope.Body, out misread);
        return body.Match(
            read => new Entry
            {
                Line = line,
                Hash = Sha.Of(line.Span),
                Version = envelope.Version,
                Inspection = envelope.Inspection,
                Name = new EntryName(envelope.Device, envelope.Seq),
                Hlc = envelope.Hlc,
                Previous = envelope.Previous,
                Seen = envelope.Seen,
                Body = read,
                Misread = misread,
            },
            refusals => Checked<Entry>.Refused(refusals));
    }

    /// <summary>
    /// Whose line it claims to be, when that much can be read: a line held for its body still counts in its device's sequence.
    /// </summary>
    public static bool TryName(ReadOnlyMemory<byte> line, out string inspection, out EntryName name)
    {
        inspection = "";
        name = default;
        if (Shape(line.Span) is not null) return false;
        try
        {
            using var document = JsonDocument.Parse(line, Options);
            if (document.RootElement.ValueKind != JsonValueKind.Object) return false;
            var envelope = Envelope.Read(document.RootElement);
            if (!envelope.IsNamed) return false;
            inspection = envelope.Inspection;
            name = new EntryName(envelope.Device, envelope.Seq);
            return true;
        }
        catch (Exception wrong) when (wrong is JsonException or InvalidOperationException)
        {
            return false;
        }
    }
}
