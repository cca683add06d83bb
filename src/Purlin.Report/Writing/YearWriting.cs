using Purlin.Journal;
using Purlin.Judgement;

namespace Purlin.Report.Writing;

/// <summary>Then and now in one line; the rule and its source stand in the annex.</summary>
internal static class YearWriting
{
    public static string Of(ThenAndNowSentence years)
    {
        if (years.Year is not { } known) return Phrase.End(years.Words);
        var whose = known.Of switch { YearOf.House => $"the house is of {known.Year}", YearOf.Structure => $"what it is part of is of {known.Year}", _ => $"this is of {known.Year}" };
        var basis = known.Basis switch { Basis.Told => ", as told", Basis.Presumed => ", as presumed", _ => "" };
        return years.Kind switch
        {
            YearsKind.Broke => $"Asked for{Since(years)}; {whose}{basis}: it was the rule then, unless this place had struck it out.",
            YearsKind.Advised => $"Asked for{Since(years)}; {whose}{basis}: not the rule then. New work needs it today.",
            YearsKind.Hazard => $"No rule of its day forbade it ({whose}{basis}); the hazard is known.",
            _ => $"What was the rule then is not known ({whose}{basis}).",
        };
    }

    private static string Since(ThenAndNowSentence years) => years.FirstYear is { } first ? $" since {first}" : "";
}
