using System.Text.Json.Serialization;
using Purlin.Book;

namespace Purlin.Judgement;

/// <summary>What speaks for a weight.</summary>
[JsonConverter(typeof(WordConverter<Speaks>))]
public enum Speaks
{
    /// <summary>What it can do.</summary>
    [JsonStringEnumMemberName("consequence")]
    Consequence,

    /// <summary>When it comes to that.</summary>
    [JsonStringEnumMemberName("timing")]
    Timing,

    /// <summary>How far it spreads.</summary>
    [JsonStringEnumMemberName("spread")]
    Spread,

    /// <summary>Another matter beside it.</summary>
    [JsonStringEnumMemberName("together")]
    Together,

    /// <summary>The inspector, whose own matter it is.</summary>
    [JsonStringEnumMemberName("inspector")]
    Inspector,

    /// <summary>The inspector, who overruled the program.</summary>
    [JsonStringEnumMemberName("overruled")]
    Overruled,
}
