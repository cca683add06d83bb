namespace Purlin.Hearing;

/// <summary>A photograph on the clock of the narration.</summary>
/// <param name="Sha">SHA-256 of its bytes, in hex.</param>
/// <param name="Seconds">When it was taken, counted as the words are.</param>
public sealed record TimedPhoto(string Sha, double Seconds);

/// <summary>Puts each photograph with the words that were spoken around it.</summary>
public static class Photographs
{
    // One looks, says it, lifts the phone, takes the picture: common practice is within so many seconds.
    private const double Around = 15;

    // What was said before a picture is what it shows more often than what is said after.
    private const double Later = 1.5;

    /// <summary>
    /// What was heard, each photograph with the proposal whose words are nearest in time; one that is near none stays out.
    /// </summary>
    public static Heard With(this Heard heard, IEnumerable<TimedPhoto> photos)
    {
        ArgumentNullException.ThrowIfNull(heard);
        var of = photos.OrderBy(photo => photo.Seconds).ThenBy(photo => photo.Sha, StringComparer.Ordinal)
            .Select(photo => (photo.Sha, Index: Nearest(heard, photo.Seconds)))
                .Where(line => line.Index >= 0).ToLookup(line => line.Index, line => line.Sha);
        return heard with
        {
            Proposals = [.. heard.Proposals
            .Select((proposal, index) => proposal with { Photos = [.. of[index].Distinct(StringComparer.Ordinal)] })]
        };
    }

    private static int Nearest(Heard heard, double seconds)
    {
        var (nearest, least) = (-1, Around);
        for (var index = 0; index < heard.Proposals.Length; index++)
        {
            if (heard.Proposals[index] is not { From: { } from, To: { } to }) continue;
            var apart = seconds < from ? (from - seconds) * Later : Math.Max(0, seconds - to);
            if (apart >= least) continue;
            (nearest, least) = (index, apart);
        }
        return nearest;
    }
}
