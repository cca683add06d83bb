using System.Text.Json.Serialization;

namespace Purlin.Book;

/// <summary>How many places must answer a question.</summary>
[JsonConverter(typeof(WordConverter<Need>))]
public enum Need
{
    /// <summary>One of them answers it.</summary>
    [JsonStringEnumMemberName("any")]
    Any,

    /// <summary>Each of them that exists.</summary>
    [JsonStringEnumMemberName("all")]
    All,
}

/// <summary>How near two matters must be to each other to count as together.</summary>
[JsonConverter(typeof(WordConverter<Within>))]
public enum Within
{
    /// <summary>In the same house.</summary>
    [JsonStringEnumMemberName("house")]
    House,

    /// <summary>In the same place.</summary>
    [JsonStringEnumMemberName("place")]
    Place,
}

/// <summary>What one working of a feed is made for.</summary>
[JsonConverter(typeof(WordConverter<FeedBy>))]
public enum FeedBy
{
    /// <summary>Readings taken together.</summary>
    [JsonStringEnumMemberName("set")]
    Set,

    /// <summary>A component.</summary>
    [JsonStringEnumMemberName("component")]
    Component,

    /// <summary>A place.</summary>
    [JsonStringEnumMemberName("place")]
    Place,

    /// <summary>The house.</summary>
    [JsonStringEnumMemberName("house")]
    House,

    /// <summary>Each reading by itself.</summary>
    [JsonStringEnumMemberName("reading")]
    Reading,
}
