using System.Text.Json;
using System.Text.Json.Serialization;
using Purlin.Book.Looking;
using Purlin.Book.Naming;

namespace Purlin.Book;

/// <summary>What every file may say of itself.</summary>
internal abstract record BookFileForm
{
    /// <summary>The schema by which an editor checks and completes the file; it means nothing to the book.</summary>
    [JsonPropertyName(BookLines.Schema)]
    public string? Schema { get; init; }
}

/// <summary>A file of conditions: one kind of component.</summary>
internal sealed record ConditionFile : BookFileForm
{
    public required string Component { get; init; }

    public required string System { get; init; }

    public required IReadOnlyList<JsonElement> Conditions { get; init; }
}

/// <summary>A file of reading kinds, feeds, facts, fact sheets and aliases.</summary>
internal sealed record ReadingFile : BookFileForm
{
    public IReadOnlyList<JsonElement> Kinds { get => field ?? []; init; }

    public IReadOnlyList<JsonElement> Feeds { get => field ?? []; init; }

    public IReadOnlyList<JsonElement> Facts { get => field ?? []; init; }

    public IReadOnlyList<JsonElement> Sheets { get => field ?? []; init; }

    /// <summary>Maps of words by name: what an inspector writes, and the word by which a reckoning knows it.</summary>
    public IReadOnlyDictionary<string, Dictionary<string, string>> Words { get => field ?? new Dictionary<string, Dictionary<string, string>>(); init; }

    public IReadOnlyDictionary<string, ReadingAlias> Aliases { get => field ?? new Dictionary<string, ReadingAlias>(); init; }
}

/// <summary>A file of causes and escalations.</summary>
internal sealed record CauseFile : BookFileForm
{
    public IReadOnlyList<JsonElement> Causes { get => field ?? []; init; }

    public IReadOnlyList<JsonElement> Escalations { get => field ?? []; init; }
}

/// <summary>The file of the common core.</summary>
internal sealed record CoreFile : BookFileForm
{
    public required IReadOnlyList<JsonElement> Core { get; init; }
}

/// <summary>The file of the duties around the visit.</summary>
internal sealed record VisitFile : BookFileForm
{
    public required IReadOnlyList<JsonElement> Visit { get; init; }
}

/// <summary>The file of the settings that standards may have.</summary>
internal sealed record SettingFile : BookFileForm
{
    public required IReadOnlyList<JsonElement> Settings { get; init; }
}

/// <summary>The reading code of the rule book, made at build time so that it survives trimming. A member nobody knows is refused: it is a slip of the pen.
/// Reading sets every <c>init</c> member, so what a member is when the file leaves it out stands in its getter.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    RespectNullableAnnotations = true,
    RespectRequiredConstructorParameters = true,
    AllowOutOfOrderMetadataProperties = true,
    ReadCommentHandling = JsonCommentHandling.Skip,
    AllowTrailingCommas = true)]
[JsonSerializable(typeof(BookEdition))]
[JsonSerializable(typeof(string))]
[JsonSerializable(typeof(ConditionFile))]
[JsonSerializable(typeof(Condition))]
[JsonSerializable(typeof(LimitationRule))]
[JsonSerializable(typeof(Profile))]
[JsonSerializable(typeof(ByWhenRule))]
[JsonSerializable(typeof(SourceLine))]
[JsonSerializable(typeof(CoreFile))]
[JsonSerializable(typeof(CoreDuty))]
[JsonSerializable(typeof(VisitFile))]
[JsonSerializable(typeof(VisitRule))]
[JsonSerializable(typeof(SettingFile))]
[JsonSerializable(typeof(SettingRule))]
[JsonSerializable(typeof(Standard))]
[JsonSerializable(typeof(CauseFile))]
[JsonSerializable(typeof(CauseRule))]
[JsonSerializable(typeof(Escalation))]
[JsonSerializable(typeof(ReadingFile))]
[JsonSerializable(typeof(ReadingKind))]
[JsonSerializable(typeof(Feed))]
[JsonSerializable(typeof(FactRule))]
[JsonSerializable(typeof(FactSheet))]
[JsonSerializable(typeof(LookingFile))]
[JsonSerializable(typeof(Synonym))]
[JsonSerializable(typeof(Dictionary<string, JsonElement>))]
[JsonSerializable(typeof(Dictionary<string, string>))]
[JsonSerializable(typeof(Dictionary<string, string[]>))]
[JsonSerializable(typeof(JsonElement[]))]
[JsonSerializable(typeof(string[]))]
internal sealed partial class BookJson : JsonSerializerContext;
