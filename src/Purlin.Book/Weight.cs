using System.Text.Json.Serialization;

namespace Purlin.Book;

/// <summary>
/// How much a finding matters, worked out from consequence, spread and timing. The heaviest has the highest number of bars.
/// </summary>
[JsonConverter(typeof(WordConverter<Weight>))]
public enum Weight
{
    /// <summary>No action; so that it is no surprise. One bar.</summary>
    [JsonStringEnumMemberName("know about")]
    KnowAbout = 1,

    /// <summary>Upkeep. Two bars.</summary>
    [JsonStringEnumMemberName("keep up")]
    KeepUp = 2,

    /// <summary>A defect to repair in the ordinary course. Three bars.</summary>
    [JsonStringEnumMemberName("put right")]
    PutRight = 3,

    /// <summary>Damage is under way or close; settle it before buying. Four bars.</summary>
    [JsonStringEnumMemberName("act now")]
    ActNow = 4,

    /// <summary>Someone can be hurt. Five bars and the accent.</summary>
    [JsonStringEnumMemberName("make safe")]
    MakeSafe = 5,
}

/// <summary>The five weights as they are listed.</summary>
public static class WeightWords
{
    /// <summary>All five, heaviest first.</summary>
    public static IReadOnlyList<Weight> HeaviestFirst { get; } = [Weight.MakeSafe, Weight.ActNow, Weight.PutRight, Weight.KeepUp,
        Weight.KnowAbout];
}
