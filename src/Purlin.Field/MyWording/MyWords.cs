using Purlin.Field.Visits;

namespace Purlin.Field.MyWording;

/// <summary>What stands in one's own words: in the inspection that is open, else in the own book.</summary>
public static class MyWords
{
    /// <summary>The own words of a key; empty when it is said as the book does.</summary>
    public static string Of(OwnBook own, OpenVisit? visit, string key) =>
        visit is { Id.Length: > 0 } ? visit.Inspection.Wordings.GetValueOrDefault(key)?.Value.Now ?? "" : own.Overlay.Sentences.GetValueOrDefault(key)?.Now ?? "";
}
