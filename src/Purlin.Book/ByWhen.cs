using System.Text.Json.Serialization;

namespace Purlin.Book;

/// <summary>When a matter wants doing. The most pressing has the lowest number.</summary>
[JsonConverter(typeof(WordConverter<ByWhen>))]
public enum ByWhen
{
    /// <summary>Before anyone relies on it.</summary>
    [JsonStringEnumMemberName("today")]
    Today = 1,

    /// <summary>While the buyer can still step back or ask for terms.</summary>
    [JsonStringEnumMemberName("before you are bound")]
    BeforeBound = 2,

    /// <summary>Before the cold or wet season.</summary>
    [JsonStringEnumMemberName("before winter")]
    BeforeWinter = 3,

    /// <summary>Within the year.</summary>
    [JsonStringEnumMemberName("within the year")]
    WithinTheYear = 4,

    /// <summary>When somebody works there anyway.</summary>
    [JsonStringEnumMemberName("when it is next worked on")]
    WhenNextWorkedOn = 5,
}

/// <summary>The five as they are listed.</summary>
public static class ByWhenWords
{
    /// <summary>All five, the most pressing first.</summary>
    public static IReadOnlyList<ByWhen> SoonestFirst { get; } = [ByWhen.Today, ByWhen.BeforeBound, ByWhen.BeforeWinter,
        ByWhen.WithinTheYear, ByWhen.WhenNextWorkedOn];
}
