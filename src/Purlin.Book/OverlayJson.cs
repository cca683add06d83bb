using System.Text.Json.Serialization;

namespace Purlin.Book;

/// <summary>
/// Reading and writing of overlays. Members that a newer program added are passed over, not refused: it is the inspector's file.
/// </summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    WriteIndented = true,
    RespectNullableAnnotations = true,
    RespectRequiredConstructorParameters = true,
    MaxDepth = 16)]
[JsonSerializable(typeof(Overlay))]
[JsonSerializable(typeof(Condition))]
[JsonSerializable(typeof(SortedDictionary<string, OwnSentence>))]
internal sealed partial class OverlayJson : JsonSerializerContext;
