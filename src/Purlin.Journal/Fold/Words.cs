namespace Purlin.Journal.Fold;

/// <summary>How a line is called in a sentence for people.</summary>
internal static class Words
{
    public static string Of(EntryBody body) => body switch
    {
        EntryBody.InspectionOpened => "The opening of the inspection",
        EntryBody.PlaceAdded added => $"The place “{added.Name}”",
        EntryBody.ComponentAdded added => $"The component “{added.Name ?? added.Kind}”",
        EntryBody.ReadingTaken taken => $"The reading “{taken.Kind}” {taken.Amount}",
        EntryBody.ObservationMade made => $"The observation “{made.Words ?? made.Condition ?? made.Outcome}”",
        EntryBody.PhotoTaken => "A photograph",
        EntryBody.SoundTaken => "A sound note",
        EntryBody.LimitationRecorded recorded => $"The limitation “{recorded.What}”",
        EntryBody.FactStated stated => $"The fact “{stated.Fact}: {stated.Value}”",
        EntryBody.NoteWritten => "A note",
        EntryBody.EntryWithdrawn => "A withdrawal",
        EntryBody.EntryRestored => "A restoration",
        _ => $"An entry ({body.Type})",
    };

    public static string Days(long milliseconds) => $"{Math.Round(milliseconds / 86_400_000.0):0} days";
}
