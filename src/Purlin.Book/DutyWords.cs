using System.Text.Json.Serialization;

namespace Purlin.Book;

/// <summary>What a standard asks to be done.</summary>
[JsonConverter(typeof(WordConverter<Verb>))]
public enum Verb
{
    /// <summary>Look at it.</summary>
    [JsonStringEnumMemberName("inspect")]
    Inspect,

    /// <summary>Name what it is.</summary>
    [JsonStringEnumMemberName("describe")]
    Describe,

    /// <summary>Say how it is.</summary>
    [JsonStringEnumMemberName("report")]
    Report,

    /// <summary>Use it.</summary>
    [JsonStringEnumMemberName("operate")]
    Operate,

    /// <summary>Say that it was not looked at.</summary>
    [JsonStringEnumMemberName("must-state-limitation")]
    StateLimitation,

    /// <summary>Nothing: the standard says that it need not be done.</summary>
    [JsonStringEnumMemberName("not-required")]
    NotRequired,
}

/// <summary>When a duty counts.</summary>
[JsonConverter(typeof(WordConverter<DutyCounts>))]
public enum DutyCounts
{
    /// <summary>At every visit.</summary>
    [JsonStringEnumMemberName("always")]
    Always,

    /// <summary>Where the thing is on record, for it was agreed to look at it.</summary>
    [JsonStringEnumMemberName("if agreed")]
    IfAgreed,

    /// <summary>It is a rule for the report or the visit, not for the walk.</summary>
    [JsonStringEnumMemberName("report rule")]
    ReportRule,

    /// <summary>Never.</summary>
    [JsonStringEnumMemberName("none")]
    Never,
}

/// <summary>What closes a duty around the visit.</summary>
[JsonConverter(typeof(WordConverter<VisitClose>))]
public enum VisitClose
{
    /// <summary>The report does it by itself.</summary>
    [JsonStringEnumMemberName("program")]
    Program,

    /// <summary>The inspector states it before issue.</summary>
    [JsonStringEnumMemberName("fact")]
    Fact,

    /// <summary>A day to keep.</summary>
    [JsonStringEnumMemberName("date")]
    Date,

    /// <summary>It is listed and not asked for.</summary>
    [JsonStringEnumMemberName("word")]
    Word,
}

/// <summary>What a duty that the report closes is judged by.</summary>
[JsonConverter(typeof(WordConverter<VisitProof>))]
public enum VisitProof
{
    /// <summary>The property is named.</summary>
    [JsonStringEnumMemberName("property")]
    Property,

    /// <summary>There is a report.</summary>
    [JsonStringEnumMemberName("report")]
    Report,

    /// <summary>Each matter says why it matters and what to do.</summary>
    [JsonStringEnumMemberName("matters")]
    Matters,

    /// <summary>Each limitation gives its reason.</summary>
    [JsonStringEnumMemberName("reasons")]
    Reasons,

    /// <summary>What is to be described is described.</summary>
    [JsonStringEnumMemberName("descriptions")]
    Descriptions,

    /// <summary>The sample is told.</summary>
    [JsonStringEnumMemberName("sample")]
    Sample,
}

/// <summary>How a question about the visit is answered.</summary>
[JsonConverter(typeof(WordConverter<AnswerKind>))]
public enum AnswerKind
{
    /// <summary>With a day.</summary>
    [JsonStringEnumMemberName("day")]
    Day,

    /// <summary>With one of a few words.</summary>
    [JsonStringEnumMemberName("choice")]
    Choice,

    /// <summary>With words of one's own.</summary>
    [JsonStringEnumMemberName("words")]
    Words,
}

/// <summary>Which of several days counts.</summary>
[JsonConverter(typeof(WordConverter<DayPick>))]
public enum DayPick
{
    /// <summary>The first.</summary>
    [JsonStringEnumMemberName("earliest")]
    Earliest,

    /// <summary>The last.</summary>
    [JsonStringEnumMemberName("latest")]
    Latest,
}

/// <summary>What a setting of a standard is for.</summary>
[JsonConverter(typeof(WordConverter<SettingUse>))]
public enum SettingUse
{
    /// <summary>A limit in reckonings and offers.</summary>
    [JsonStringEnumMemberName("limit")]
    Limit,

    /// <summary>A day to keep.</summary>
    [JsonStringEnumMemberName("date")]
    Date,

    /// <summary>How many of many like things are tried.</summary>
    [JsonStringEnumMemberName("sample")]
    Sample,

    /// <summary>Shown where the inspector decides.</summary>
    [JsonStringEnumMemberName("shown")]
    Shown,
}

/// <summary>Which of several limits asks the most.</summary>
[JsonConverter(typeof(WordConverter<Strictest>))]
public enum Strictest
{
    /// <summary>The highest number.</summary>
    [JsonStringEnumMemberName("highest")]
    Highest,

    /// <summary>The lowest number.</summary>
    [JsonStringEnumMemberName("lowest")]
    Lowest,
}
