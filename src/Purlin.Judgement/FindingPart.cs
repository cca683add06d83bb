using System.Text.Json.Serialization;
using Purlin.Book;

namespace Purlin.Judgement;

/// <summary>A part of a finding that the inspector can put otherwise, in the order in which it is applied. The words are those of the journal.</summary>
[JsonConverter(typeof(WordConverter<FindingPart>))]
public enum FindingPart
{
    /// <summary>How much it matters.</summary>
    [JsonStringEnumMemberName("weight")]
    Weight,

    /// <summary>By when it wants doing.</summary>
    [JsonStringEnumMemberName("by when")]
    ByWhen,

    /// <summary>Its heading.</summary>
    [JsonStringEnumMemberName("title")]
    Title,

    /// <summary>Why it matters.</summary>
    [JsonStringEnumMemberName("text")]
    Text,

    /// <summary>What to do.</summary>
    [JsonStringEnumMemberName("recommendation")]
    Recommendation,

    /// <summary>By whom.</summary>
    [JsonStringEnumMemberName("trade")]
    Trade,

    /// <summary>Whether it is left out of the report.</summary>
    [JsonStringEnumMemberName("left out")]
    LeftOut,
}
