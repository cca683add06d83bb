using System.Text.Json.Serialization;
using Purlin.Book;

namespace Purlin.Judgement;

/// <summary>What the years say of a finding, the gravest first.</summary>
[JsonConverter(typeof(WordConverter<YearsKind>))]
public enum YearsKind
{
    /// <summary>It was asked for when this was put in.</summary>
    [JsonStringEnumMemberName("broke the rule of its day")]
    Broke,

    /// <summary>No rule of any year asks for it, and it hurts people all the same.</summary>
    [JsonStringEnumMemberName("never a rule but a known hazard")]
    Hazard,

    /// <summary>It was not asked for then; it is today.</summary>
    [JsonStringEnumMemberName("not required then, advised now")]
    Advised,

    /// <summary>The years do not decide.</summary>
    [JsonStringEnumMemberName("cannot say")]
    CannotSay,
}
