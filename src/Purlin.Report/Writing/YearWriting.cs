using Purlin.Journal;
using Purlin.Judgement;

namespace Purlin.Report.Writing;

/// <summary>Then and now in one line; the rule and its source stand in the annex.</summary>
internal static class YearWriting
{
    public static string Of(ThenAndNowSentence years, Phrase words)
    {
        if (years.Year is not { } known) return Phrase.End(years.Words);
        var whose = known.Of switch
        {
            YearOf.House => "report.years.house",
            YearOf.Structure => "report.years.structure",
            _ => "report.years.this"
        };
        var basis = known.Basis switch
        {
            Basis.Told => words.Say("report.years.told"),
            Basis.Presumed =>
            words.Say("report.years.presumed"),
            _ => ""
        };
        var key = years.Kind switch
        {
            YearsKind.Broke => "report.years.broke",
            YearsKind.Advised => "report.years.advised",
            YearsKind.Hazard => "report.years.hazard",
            _ => "report.years.unknown",
        };
        return words.Say(key, ("since", years.FirstYear is { } first ? $"{first}" : ""), ("whose", words.Say(whose, ("year",
            $"{known.Year}"))), ("basis", basis));
    }
}
