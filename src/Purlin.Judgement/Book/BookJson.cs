using System.Text.Json;
using System.Text.Json.Serialization;

namespace Purlin.Judgement.Book;

/// <summary>A file of conditions: one kind of component.</summary>
internal sealed record ConditionFile
{
    public required string Component { get; init; }

    public required string System { get; init; }

    public required IReadOnlyList<JsonElement> Conditions { get; init; }
}

/// <summary>The reading code of the rule book, made at build time so that it survives trimming. A member nobody knows is refused: it is a slip of the pen.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    RespectNullableAnnotations = true,
    RespectRequiredConstructorParameters = true,
    ReadCommentHandling = JsonCommentHandling.Skip,
    AllowTrailingCommas = true)]
[JsonSerializable(typeof(ConditionFile))]
[JsonSerializable(typeof(Condition))]
[JsonSerializable(typeof(LimitationRule))]
[JsonSerializable(typeof(Profile))]
[JsonSerializable(typeof(SourceLine))]
[JsonSerializable(typeof(Dictionary<string, JsonElement>))]
[JsonSerializable(typeof(Dictionary<string, string>))]
[JsonSerializable(typeof(JsonElement[]))]
[JsonSerializable(typeof(string[]))]
internal sealed partial class BookJson : JsonSerializerContext;
