using Purlin.Field.House;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Journal.Told;

namespace Purlin.Field.Visits;

/// <summary>
/// The house as it is told, drawn before an inspection is opened: by the same entries that will be written, so that it is the same
/// drawing.
/// </summary>
public static class Preview
{
    private const string Nowhere = "preview";

    public static string Of(ToldHouse told) => Section.Picture(Fold(told));

    private static Inspection Fold(ToldHouse told)
    {
        ArgumentNullException.ThrowIfNull(told);
        Pen pen = new(Nowhere, Nowhere);
        EntryBody opened = new EntryBody.InspectionOpened { Property = told.Facts, Date = new DateOnly(2000, 1, 1) };
        return Folding.Fold([.. told.Entries(at => new EntryName(Nowhere, at), 1).Prepend(opened).Select(body =>
            pen.Write(body, DateTimeOffset.UnixEpoch))]);
    }
}
