using Purlin.Book;
using Purlin.Hearing.Listening;
using Purlin.Hearing.Matters;
using Purlin.Hearing.Places;
using Purlin.Hearing.Proposing;
using Purlin.Hearing.Talk;

namespace Purlin.Hearing;

/// <summary>
/// Understands what an inspector says while walking, by the words of a rule book. Made once for a book; then each narration costs some
/// milliseconds. Not for two threads at once.
/// </summary>
public sealed class Ear
{
    private readonly Surveying surveying;
    private readonly Parting parting;
    private readonly Settling settling;
    private readonly Proposer proposer;

    /// <summary>Learns how the conditions, things and places of a book are spoken of.</summary>
    public Ear(RuleBook book) : this(book, HearingScale.Usual)
    {
    }

    internal Ear(RuleBook book, HearingScale weighing)
    {
        ArgumentNullException.ThrowIfNull(book);
        string[] names = [.. book.ComponentKinds().Append("house").Distinct(StringComparer.Ordinal)];
        var components = names.Select((name, number) => (name, number)).ToDictionary(line => line.name, line => line.number,
            StringComparer.Ordinal);
        var turns = new Turns(book.Hearing);
        var meanings = new Meanings(book, turns);
        var repertoire = new Repertoire(book, meanings, components);
        var whereabouts = new Whereabouts(book.Hearing, turns);
        surveying = new Surveying(new Mending(book, turns), turns, meanings, new Things(book.Hearing, turns, components), whereabouts);
        proposer = new Proposer(book, names, repertoire, turns);
        settling = new Settling(turns, weighing);
        parting = new Parting(repertoire, weighing, components);
    }

    /// <summary>What was said, as proposals.</summary>
    /// <param name="transcript">The words.</param>
    /// <param name="place">Kind of place the speaker stands in at first; none when unknown.</param>
    public Heard Listen(Transcript transcript, string? place = null)
    {
        ArgumentNullException.ThrowIfNull(transcript);
        var ground = surveying.Of(transcript, place);
        var matters = settling.Of(ground, parting.Of(ground));
        var proposals = proposer.Of(ground, matters, transcript);
        var taken = proposals.SelectMany(proposal => proposal.Words)
            .SelectMany(range => Enumerable.Range(range.Start, range.End - range.Start)).Distinct().Count();
        return new Heard([.. proposals], transcript.Words.Length - taken);
    }
}
