using Purlin.Book;
using Purlin.Field.Device;
using Purlin.Field.Visits;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Journal.Merge;
using Purlin.Report.Edition;

namespace Purlin.Field.Issue;

/// <summary>
/// Seals an edition on the phone alone: page and PDF are set and kept here, then the line that names them is written and signed for with
/// the phone's own key. Nothing of it needs an office, and an office that comes later takes it like any other line.
/// </summary>
public sealed class PhoneSeal(Phone phone, OpenVisit visit, TimeProvider clock)
{
    // As large as the office prints them, or nearly.
    private const int PrintedEdge = 2048;

    /// <summary>Seals the next edition; gives why it was not sealed, or nothing.</summary>
    /// <param name="tell">How far it has come, in words.</param>
    public async Task<string> SealAsync(Func<string, Task> tell)
    {
        ArgumentNullException.ThrowIfNull(tell);
        var work = visit.WorkNow();
        if (work.Judged.Obstacles.Count > 0) return "Something stands in the way still. Nothing was sealed.";
        if (visit.Unreadable.Count > 0) return "A line of this inspection cannot be read here, so this phone cannot vouch for all of it. Let the office seal it.";
        var set = EntrySet.Of(visit.Id, visit.Entries);
        var last = visit.Inspection.Editions is [.., var newest] ? newest : null;
        var root = Merkle.Root(set.Under(set.Heads()).Select(entry => entry.Hash));
        if (last is not null && IsUnchanged(set, last)) return $"Nothing has changed since edition {last.Body.Number}; it stands.";
        EditionMark.Sealed mark = new((last?.Body.Number ?? 0) + 1, root)
        {
            At = DateTimeOffset.FromUnixTimeSeconds(clock.GetUtcNow().ToUnixTimeSeconds()).ToOffset(clock.GetLocalNow().Offset),
            Previous = last?.Seal,
            PhoneKey = await phone.PhoneKeyAsync(),
        };
        var (photos, missing) = await PhotosAsync(work.Paper(Report.PaperKind.Report, mark).Pictures.Select(picture => picture.Sha), tell);
        if (missing > 0) return $"{missing} {(missing == 1 ? "photograph is" : "photographs are")} not on this phone. Fetch them first, or let the office seal.";
        await tell("Setting the pages");
        var issued = await work.IssueAsync(mark, photos.GetValueOrDefault);
        await tell("Keeping them");
        var page = await phone.KeepPaperAsync(visit.Id, issued.Page.ToArray(), "text/html");
        var pdf = await phone.KeepPaperAsync(visit.Id, issued.Pdf.ToArray(), "application/pdf");
        // Not an act of the screen: what was sealed is never taken back.
        var kept = await phone.WriteAsync(visit.Id, $"Edition {mark.Number}", [new EntryBody.EditionSealed
        {
            Number = mark.Number, Heads = set.Heads(), EntriesRoot = root, Photos = issued.Photos, Page = page, Pdf = pdf,
            RuleBook = work.Judged.RuleBook, RuleBookHash = RuleBook.BuiltIn.Hash, PreviousEdition = mark.Previous, At = mark.At,
        }]);
        if (!kept.Ok) return kept.Words ?? "The edition was not sealed. Everything before it is kept.";
        await phone.SignForAsync(visit.Id);
        return "";
    }

    private static bool IsUnchanged(EntrySet set, SealedEdition last)
    {
        HashSet<string> known = [last.Seal, .. set.Under(last.Body.Heads).Select(entry => entry.Hash)];
        return set.Entries.All(entry => known.Contains(entry.Hash));
    }

    private async Task<(Dictionary<string, byte[]?> Photos, int Missing)> PhotosAsync(IEnumerable<string> shas, Func<string, Task> tell)
    {
        Dictionary<string, byte[]?> photos = new(StringComparer.Ordinal);
        IReadOnlyList<string> all = [.. shas.Distinct(StringComparer.Ordinal)];
        foreach (var sha in all)
        {
            await tell($"Preparing photograph {photos.Count + 1} of {all.Count}");
            var bytes = await phone.PictureBytesAsync(sha, PrintedEdge, visit.Id);
            photos[sha] = bytes.Length > 0 ? bytes : null;
        }
        return (photos, photos.Values.Count(bytes => bytes is null));
    }
}
