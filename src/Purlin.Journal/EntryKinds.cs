using System.Collections.Frozen;
using System.Text.Json;
using System.Text.Json.Serialization;
using Purlin.Journal.Fold;

namespace Purlin.Journal;

/// <summary>
/// Every kind of entry that this program knows; a case of <see cref="EntryBody"/> that is not here cannot be read, which a house test
/// tells.
/// </summary>
internal static class EntryKinds
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<EntryKind> All { get; } =
    [
        EntryBody.InspectionOpened.ItsKind,
        EntryBody.DeviceJoined.ItsKind,
        EntryBody.ClockChecked.ItsKind,
        EntryBody.EditionSealed.ItsKind,
        EntryBody.PlaceAdded.ItsKind,
        EntryBody.PlaceNamed.ItsKind,
        EntryBody.PlacePlaced.ItsKind,
        EntryBody.ComponentAdded.ItsKind,
        EntryBody.FactStated.ItsKind,
        EntryBody.ReadingTaken.ItsKind,
        EntryBody.ObservationMade.ItsKind,
        EntryBody.PhotoTaken.ItsKind,
        EntryBody.PhotoPlaced.ItsKind,
        EntryBody.NoteWritten.ItsKind,
        EntryBody.SoundTaken.ItsKind,
        EntryBody.LimitationRecorded.ItsKind,
        EntryBody.LooseEndTied.ItsKind,
        EntryBody.JudgementOverruled.ItsKind,
        EntryBody.DutyMet.ItsKind,
        EntryBody.WordingSaid.ItsKind,
        EntryBody.ConditionWritten.ItsKind,
        EntryBody.PartAdded.ItsKind,
        EntryBody.PartLeveled.ItsKind,
        EntryBody.PartClad.ItsKind,
        EntryBody.PlanDrawn.ItsKind,
        EntryBody.ComponentPlaced.ItsKind,
        EntryBody.ComponentAbsent.ItsKind,
        EntryBody.PhotoMarked.ItsKind,
        EntryBody.LimitationCompleted.ItsKind,
        EntryBody.NoteFated.ItsKind,
        EntryBody.ProposalMade.ItsKind,
        EntryBody.ProposalDropped.ItsKind,
        EntryBody.EntryWithdrawn.ItsKind,
        EntryBody.EntryRestored.ItsKind,
    ];

    /// <summary>By the type in the envelope.</summary>
    public static FrozenDictionary<string, EntryKind> ByType { get; } = All.ToFrozenDictionary(kind => kind.Type);

    /// <summary>Every list of the inspection that some kind has a part in.</summary>
    public static IReadOnlyList<Gathered> Lists { get; } = [.. All.SelectMany(kind => kind.Touches).Distinct()];
}

/// <summary>
/// Source-generated JSON of every body, so that nothing is reflected on in the trimmed app. The generator wants all cases named on one
/// class, so this list stands beside the other one.
/// </summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    RespectNullableAnnotations = true,
    RespectRequiredConstructorParameters = true,
    MaxDepth = Limits.JsonDepth)]
[JsonSerializable(typeof(EntryBody.InspectionOpened))]
[JsonSerializable(typeof(EntryBody.DeviceJoined))]
[JsonSerializable(typeof(EntryBody.ClockChecked))]
[JsonSerializable(typeof(EntryBody.EditionSealed))]
[JsonSerializable(typeof(EntryBody.PlaceAdded))]
[JsonSerializable(typeof(EntryBody.PlaceNamed))]
[JsonSerializable(typeof(EntryBody.PlacePlaced))]
[JsonSerializable(typeof(EntryBody.ComponentAdded))]
[JsonSerializable(typeof(EntryBody.FactStated))]
[JsonSerializable(typeof(EntryBody.ReadingTaken))]
[JsonSerializable(typeof(EntryBody.ObservationMade))]
[JsonSerializable(typeof(EntryBody.PhotoTaken))]
[JsonSerializable(typeof(EntryBody.PhotoPlaced))]
[JsonSerializable(typeof(EntryBody.NoteWritten))]
[JsonSerializable(typeof(EntryBody.SoundTaken))]
[JsonSerializable(typeof(EntryBody.LimitationRecorded))]
[JsonSerializable(typeof(EntryBody.LooseEndTied))]
[JsonSerializable(typeof(EntryBody.JudgementOverruled))]
[JsonSerializable(typeof(EntryBody.DutyMet))]
[JsonSerializable(typeof(EntryBody.WordingSaid))]
[JsonSerializable(typeof(EntryBody.ConditionWritten))]
[JsonSerializable(typeof(EntryBody.PartAdded))]
[JsonSerializable(typeof(EntryBody.PartLeveled))]
[JsonSerializable(typeof(EntryBody.PartClad))]
[JsonSerializable(typeof(EntryBody.PlanDrawn))]
[JsonSerializable(typeof(EntryBody.ComponentPlaced))]
[JsonSerializable(typeof(EntryBody.ComponentAbsent))]
[JsonSerializable(typeof(EntryBody.PhotoMarked))]
[JsonSerializable(typeof(EntryBody.LimitationCompleted))]
[JsonSerializable(typeof(EntryBody.NoteFated))]
[JsonSerializable(typeof(EntryBody.ProposalMade))]
[JsonSerializable(typeof(EntryBody.ProposalDropped))]
[JsonSerializable(typeof(EntryBody.EntryWithdrawn))]
[JsonSerializable(typeof(EntryBody.EntryRestored))]
internal sealed partial class BodyContext : JsonSerializerContext;
