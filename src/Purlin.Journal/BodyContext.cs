using System.Text.Json;
using System.Text.Json.Serialization;

namespace Purlin.Journal;

/// <summary>
/// Source-generated JSON of every body, so that nothing is reflected on in the trimmed app. A case of <see cref="EntryBody"/> that is not
/// listed here cannot be read; a house test compares the two lists.
/// </summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    RespectNullableAnnotations = true,
    RespectRequiredConstructorParameters = true,
    MaxDepth = Limits.JsonDepth)]
[JsonSerializable(typeof(EntryBody.InspectionOpened))]
[JsonSerializable(typeof(EntryBody.PlaceAdded))]
[JsonSerializable(typeof(EntryBody.ComponentAdded))]
[JsonSerializable(typeof(EntryBody.ReadingTaken))]
[JsonSerializable(typeof(EntryBody.ObservationMade))]
[JsonSerializable(typeof(EntryBody.PhotoTaken))]
[JsonSerializable(typeof(EntryBody.SoundTaken))]
[JsonSerializable(typeof(EntryBody.LimitationRecorded))]
[JsonSerializable(typeof(EntryBody.DeviceJoined))]
[JsonSerializable(typeof(EntryBody.ClockChecked))]
[JsonSerializable(typeof(EntryBody.EditionSealed))]
[JsonSerializable(typeof(EntryBody.FactStated))]
[JsonSerializable(typeof(EntryBody.PlaceNamed))]
[JsonSerializable(typeof(EntryBody.PlacePlaced))]
[JsonSerializable(typeof(EntryBody.PhotoPlaced))]
[JsonSerializable(typeof(EntryBody.NoteWritten))]
[JsonSerializable(typeof(EntryBody.LooseEndTied))]
[JsonSerializable(typeof(EntryBody.JudgementOverruled))]
[JsonSerializable(typeof(EntryBody.DutyMet))]
[JsonSerializable(typeof(EntryBody.WordingSaid))]
[JsonSerializable(typeof(EntryBody.ConditionWritten))]
[JsonSerializable(typeof(EntryBody.EntryWithdrawn))]
[JsonSerializable(typeof(EntryBody.EntryRestored))]
internal sealed partial class BodyContext : JsonSerializerContext;
