using System.Text.Json.Serialization;

namespace Purlin.Book;

/// <summary>What a condition can do.</summary>
[JsonConverter(typeof(WordConverter<Consequence>))]
public enum Consequence
{
    /// <summary>Someone can be hurt.</summary>
    [JsonStringEnumMemberName("injury")]
    Injury,

    /// <summary>It damages the house.</summary>
    [JsonStringEnumMemberName("damage")]
    Damage,

    /// <summary>Something does not work as it should.</summary>
    [JsonStringEnumMemberName("function")]
    Function,

    /// <summary>It is a matter of upkeep.</summary>
    [JsonStringEnumMemberName("upkeep")]
    Upkeep,

    /// <summary>It does no harm.</summary>
    [JsonStringEnumMemberName("none")]
    None,
}

/// <summary>When it comes to that.</summary>
[JsonConverter(typeof(WordConverter<Timing>))]
public enum Timing
{
    /// <summary>It is under way.</summary>
    [JsonStringEnumMemberName("now")]
    Now,

    /// <summary>Soon, if nothing is done.</summary>
    [JsonStringEnumMemberName("soon")]
    Soon,

    /// <summary>Later, with time to plan.</summary>
    [JsonStringEnumMemberName("later")]
    Later,
}

/// <summary>Whether a spread makes a condition matter more.</summary>
[JsonConverter(typeof(WordConverter<Lift>))]
public enum Lift
{
    /// <summary>It matters as much as in one place.</summary>
    [JsonStringEnumMemberName("same")]
    Same,

    /// <summary>It matters one step more.</summary>
    [JsonStringEnumMemberName("raise")]
    Raise,
}
