using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;

namespace Purlin.Journal;

/// <summary>
/// Bodies as JSON: members in camel case, members that are not recorded left out. A member that this program does not know is passed over
/// and survives in the raw line; a type that it does not know becomes <see cref="EntryBody.Unknown"/>.
/// </summary>
public static class BodyJson
{
    internal static readonly JsonSerializerOptions Options = new(BodyContext.Default.Options)
    {
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        TypeInfoResolver = BodyContext.Default.WithAddedModifier(Spare),
    };

    /// <summary>Every type this program knows.</summary>
    public static IReadOnlyCollection<string> Types => EntryKinds.ByType.Keys;

    /// <summary>The body as one line of JSON.</summary>
    public static string Write(EntryBody body)
    {
        ArgumentNullException.ThrowIfNull(body);
        return body is EntryBody.Unknown unknown ? unknown.Body.GetRawText() : JsonSerializer.Serialize(body, body.OfKind.Json);
    }

    /// <summary>Reads a body of this type, with every limit and every closed list of words checked.</summary>
    public static Checked<EntryBody> Read(string type, JsonElement body)
    {
        ArgumentNullException.ThrowIfNull(type);
        if (body.ValueKind != JsonValueKind.Object)
            return new Refusal("body", body.ValueKind.ToString().ToLowerInvariant(), "journal.wanted.object");
        if (!EntryKinds.ByType.TryGetValue(type, out var kind)) return new EntryBody.Unknown(type, body.Clone());
        try
        {
            if (BodyCheck.Values(body) is { } odd) return odd;
            var read = (EntryBody)body.Deserialize(kind.Json)!;
            var check = new BodyCheck();
            if (read is EntryBody.Stating stating) check.List("replaces", stating.Replaces);
            check.Must(read.Origin is null
                || kind.CanBeProposed, "origin", "journal.given.on-entry-no-reader-may", "journal.wanted.no-origin-inspectors-own-act");
            read.Check(check);
            return check.Refusals.Count == 0 ? read : Checked<EntryBody>.Refused(check.Refusals);
        }
        catch (JsonException wrong)
        {
            return new Refusal($"body of {type}", Said.Verbatim(Short(wrong.Path ?? "$")),
                "journal.wanted.members-docs-schema-entry-schema");
        }
        catch (InvalidOperationException)
        {
            return new Refusal($"body of {type}", "journal.given.text-with-half-surrogate-pair", "journal.wanted.well-formed-unicode");
        }
    }

    /// <summary>The type stands in the envelope, so not in the body again; an empty list says no more than its absence.</summary>
    private static void Spare(JsonTypeInfo info)
    {
        for (var at = info.Properties.Count - 1; at >= 0; at--)
        {
            var property = info.Properties[at];
            if (property.Name == "type" && property.PropertyType == typeof(string) && property.Set is null) info.Properties.RemoveAt(at);
            else if (property.PropertyType == typeof(IReadOnlyList<EntryName>))
                property.ShouldSerialize = (_, value) => value is IReadOnlyList<EntryName> { Count: > 0 };
        }
    }

    /// <summary>At most 80 characters of what was given, for a refusal.</summary>
    internal static string Short(string given) => given.Length <= 80 ? given : given[..77] + "...";
}
