using Purlin.Journal;

namespace Purlin.Office.Issue;

/// <summary>
/// Erases an inspection whose time has run out: the bytes of its lines, its photographs and sounds, pages and PDFs of its editions. Names, hashes, receipts and
/// seals stay: they tell nothing of the house and still prove what was issued.
/// </summary>
internal static class Erasure
{
    /// <returns>False when it must still be kept; then nothing was erased.</returns>
    public static async Task<bool> Run(Desk desk, string inspection, DateTimeOffset now)
    {
        var named = await desk.Shelf.With(inspection, journal => journal.Lines.Entries.Select(entry => FileOf(entry.Body)).OfType<string>().ToHashSet(StringComparer.Ordinal), CancellationToken.None);
        foreach (var edition in await desk.Journals.Editions(inspection, CancellationToken.None)) named.UnionWith([edition.Page, edition.Pdf]);
        if (!await desk.Journals.Erase(inspection, now)) return false;
        foreach (var sha in await OnlyHere(desk, named)) await desk.Blobs.Remove(sha);
        desk.Views.Drop(named);
        return true;
    }

    /// <summary>A photograph that another inspection shows too is still that one's.</summary>
    private static async Task<IEnumerable<string>> OnlyHere(Desk desk, HashSet<string> named)
    {
        var elsewhere = await desk.Journals.Shown(named, CancellationToken.None);
        return named.Where(sha => !elsewhere.Contains(sha));
    }

    private static string? FileOf(EntryBody body) => body switch
    {
        EntryBody.PhotoTaken photo => photo.Sha,
        EntryBody.SoundTaken sound => sound.Sha,
        _ => null,
    };
}
