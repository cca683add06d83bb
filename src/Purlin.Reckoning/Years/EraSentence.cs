using Purlin.Journal;

namespace Purlin.Reckoning.Years;

/// <summary>
/// What a report prints about a rule and a year: then, now, and the hazard whatever the rule. Short sentences for a buyer.
/// </summary>
internal sealed class EraSentence(Era era, int year, string? built)
{
    /// <summary>All three parts; one that has nothing to say is left out.</summary>
    public static Said Of(Said then, Era era) =>
        new("then-and-now.sentence", ("then", then), ("now", Now(era)), ("hazard", era.HazardSaid ?? Nothing));

    private static readonly Said Nothing = Said.Verbatim("");

    /// <summary>The part about then.</summary>
    /// <param name="adopted">Year of local adoption, where known.</param>
    /// <param name="then">Whether it applied then; none where the years do not decide.</param>
    public Said Then(int? adopted, bool? then)
    {
        var word = then switch { true => "yes", false => "no", null => "open" };
        if (era.RequiredNow == "no longer used") return Write($"then-and-now.material.{word}");
        if (adopted is { } here) return Write($"then-and-now.adopted.{(then == true ? "yes" : "no")}", ("adopted", here));
        if (era.FirstYear is null) return Write("then-and-now.undated");
        if (then is null && era.UsualLagYears != 0 && year < era.FirstYear) return Write("then-and-now.code.earlier");
        return Write(era.UsualLagYears == 0 ? $"then-and-now.law.{word}" : $"then-and-now.code.{word}");
    }

    private Said Write(string key, params ReadOnlySpan<Filled> more) => new(key,
    [
        ("what", era.WhatSaid), ("rule", era.Rule), ("year", year), ("built", built is null ? Nothing : Words.Of(built)),
        ("verb", era.RequiredNow == "permitted" ? "permitted" : "asked"), ("begins", era.RequiredNow == "later" ? "later" : "begun"),
        ("first", era.FirstYear ?? 0), ("latest", era.FirstYear == era.FirstYearLatest ? "" : $"{era.FirstYearLatest}"), .. more,
    ]);

    private static Said Now(Era era) => era.RequiredNow switch
    {
        "yes" => era.UsualLagYears == 0 ? "then-and-now.now.law" : "then-and-now.now.yes",
        "no" => "then-and-now.now.no",
        "when work is done" => "then-and-now.now.when-work-is-done",
        "permitted" => "then-and-now.now.permitted",
        "partly" => "then-and-now.now.partly",
        "later" => "then-and-now.now.later",
        "where adopted" => "then-and-now.now.where-adopted",
        _ => Nothing,
    };
}
