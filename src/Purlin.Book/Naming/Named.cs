using System.Text.Json.Serialization;

namespace Purlin.Book.Naming;

/// <summary>What a synonym is of.</summary>
[JsonConverter(typeof(WordConverter<Named>))]
public enum Named
{
    /// <summary>A kind of place.</summary>
    [JsonStringEnumMemberName("place")]
    Place,

    /// <summary>A kind of component.</summary>
    [JsonStringEnumMemberName("component")]
    Component,

    /// <summary>A kind of reading.</summary>
    [JsonStringEnumMemberName("reading")]
    Reading,

    /// <summary>A condition, by its id.</summary>
    [JsonStringEnumMemberName("condition")]
    Condition,

    /// <summary>The name of a fact.</summary>
    [JsonStringEnumMemberName("fact")]
    Fact,

    /// <summary>The value of a fact.</summary>
    [JsonStringEnumMemberName("value")]
    Value,

    /// <summary>A unit.</summary>
    [JsonStringEnumMemberName("unit")]
    Unit,

    /// <summary>A word inside a value.</summary>
    [JsonStringEnumMemberName("word")]
    Word,

    /// <summary>A word that tells nothing inside a value.</summary>
    [JsonStringEnumMemberName("filler")]
    Filler,
}
