using System.Collections.Frozen;
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
    private static readonly JsonSerializerOptions Options = new(BodyContext.Default.Options)
    {
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        TypeInfoResolver = BodyContext.Default.WithAddedModifier(Spare),
    };

    private static readonly FrozenDictionary<string, JsonTypeInfo> ByType = new Dictionary<string, JsonTypeInfo>
    {
        ["inspection.opened"] = Info<EntryBody.InspectionOpened>(),
        ["place.added"] = Info<EntryBody.PlaceAdded>(),
        ["component.added"] = Info<EntryBody.ComponentAdded>(),
        ["reading.taken"] = Info<EntryBody.ReadingTaken>(),
        ["observation.made"] = Info<EntryBody.ObservationMade>(),
        ["photo.taken"] = Info<EntryBody.PhotoTaken>(),
        ["sound.taken"] = Info<EntryBody.SoundTaken>(),
        ["limitation.recorded"] = Info<EntryBody.LimitationRecorded>(),
        ["device.joined"] = Info<EntryBody.DeviceJoined>(),
        ["clock.checked"] = Info<EntryBody.ClockChecked>(),
        ["edition.sealed"] = Info<EntryBody.EditionSealed>(),
        ["fact.stated"] = Info<EntryBody.FactStated>(),
        ["place.named"] = Info<EntryBody.PlaceNamed>(),
        ["place.placed"] = Info<EntryBody.PlacePlaced>(),
        ["photo.placed"] = Info<EntryBody.PhotoPlaced>(),
        ["note.written"] = Info<EntryBody.NoteWritten>(),
        ["loose-end.tied"] = Info<EntryBody.LooseEndTied>(),
        ["judgement.overruled"] = Info<EntryBody.JudgementOverruled>(),
        ["duty.met"] = Info<EntryBody.DutyMet>(),
        ["wording.said"] = Info<EntryBody.WordingSaid>(),
        ["condition.written"] = Info<EntryBody.ConditionWritten>(),
        ["entry.withdrawn"] = Info<EntryBody.EntryWithdrawn>(),
        ["entry.restored"] = Info<EntryBody.EntryRestored>(),
    }.ToFrozenDictionary();

    /// <summary>Every type this program knows.</summary>
    public static IReadOnlyCollection<string> Types => ByType.Keys;

    /// <summary>The body as one line of JSON.</summary>
    public static string Write(EntryBody body)
    {
        ArgumentNullException.ThrowIfNull(body);
        return body is EntryBody.Unknown unknown ? unknown.Body.GetRawText() : JsonSerializer.Serialize(body, ByType[body.Type]);
    }

    /// <summary>Reads a body of this type, with every limit and every closed list of words checked.</summary>
    public static Checked<EntryBody> Read(string type, JsonElement body)
    {
        ArgumentNullException.ThrowIfNull(type);
        if (body.ValueKind != JsonValueKind.Object) return new Refusal("body", body.ValueKind.ToString().ToLowerInvariant(), "an object");
        if (!ByType.TryGetValue(type, out var info)) return new EntryBody.Unknown(type, body.Clone());
        try
        {
            if (BodyCheck.Values(body) is { } odd) return odd;
            var read = (EntryBody)body.Deserialize(info)!;
            var refusals = BodyCheck.Words(read);
            return refusals.Count == 0 ? read : Checked<EntryBody>.Refused(refusals);
        }
        catch (JsonException wrong)
        {
            return new Refusal($"body of {type}", Short(wrong.Path ?? "$"), "members as docs/schema/entry.schema.json has them");
        }
        catch (InvalidOperationException)
        {
            return new Refusal($"body of {type}", "text with half a surrogate pair", "well-formed Unicode");
        }
    }

    private static JsonTypeInfo Info<TBody>()
        where TBody : EntryBody => Options.GetTypeInfo(typeof(TBody));

    /// <summary>The type stands in the envelope, so not in the body again; an empty list says no more than its absence.</summary>
    private static void Spare(JsonTypeInfo info)
    {
        for (var at = info.Properties.Count - 1; at >= 0; at--)
        {
            var property = info.Properties[at];
            if (property.Name == "type" && property.PropertyType == typeof(string) && property.Set is null) info.Properties.RemoveAt(at);
            else if (property.PropertyType == typeof(IReadOnlyList<EntryName>)) property.ShouldSerialize = (_, value) => value is IReadOnlyList<EntryName> { Count: > 0 };
        }
    }

    /// <summary>At most 80 characters of what was given, for a refusal.</summary>
    internal static string Short(string given) => given.Length <= 80 ? given : given[..77] + "...";
}
