using Purlin.Book;
using Purlin.Hearing.Listening;
using Purlin.Hearing.Matters;
using Purlin.Hearing.Talk;
using Purlin.Journal;

namespace Purlin.Hearing.Proposing;

/// <summary>Draws up proposals of what was understood.</summary>
internal sealed class Proposer(RuleBook book, string[] names, Repertoire repertoire, Turns turns)
{
    private readonly Asides asides = new(book.Hearing, turns);
    private readonly Figuring figuring = new(book, names, repertoire);

    public List<HeardProposal> Of(Surveyed ground, List<HeardMatter> matters, Transcript transcript)
    {
        var reach = Reaching.Of(ground, matters);
        var (amounts, bare) = figuring.Of(ground, matters, reach);
        List<HeardProposal> proposals = [.. bare.Select(figures => Bare(ground, figures, transcript))];
        for (var index = 0; index < matters.Count; index++) proposals.Add(Proposal(ground, matters[index], reach[index], amounts[index],
            transcript));
        return [.. proposals.OrderBy(proposal => proposal.Words[0].Start)];
    }

    private HeardProposal Proposal(Surveyed ground, HeardMatter matter, PieceRange reach, List<HeardAmount> amounts, Transcript transcript)
    {
        var condition = matter.Condition < 0 ? null : repertoire.Conditions[matter.Condition];
        var words = Words(ground, matter.Stretches);
        return new HeardProposal
        {
            From = transcript.Words[words[0].Start].From,
            To = transcript.Words[words[^1].End - 1].To,
            Place = PlaceOf(ground, matter, condition),
            Component = names[matter.Component],
            Condition = condition?.Id,
            Outcome = matter.Outcome,
            Amounts = [.. amounts],
            Trade = asides.Trade(ground.Texts, reach),
            Hedged = matter.Outcome != Outcome.NotVisible
                && asides.IsHedged(ground.Texts, new PieceRange(Math.Max(0, matter.Start - 2), Math.Min(reach.End, matter.End + 4))),
            Spot = asides.Spot(ground, matter.Stretches),
            Spread = asides.Spread(ground.Texts, new PieceRange(matter.Start, Math.Min(reach.End, matter.End + 4))),
            Confidence = Math.Round(1 / (1 + Math.Exp(-matter.Score / 3)), 3),
            Words = [.. words],
        };
    }

    private HeardProposal Bare(Surveyed ground, BareFigures figures, Transcript transcript)
    {
        var words = Words(ground, figures.Stretches);
        return new HeardProposal
        {
            From = transcript.Words[words[0].Start].From,
            To = transcript.Words[words[^1].End - 1].To,
            Place = figures.Place,
            Component = figures.Component,
            Outcome = Outcome.Seen,
            Amounts = [.. figures.Amounts],
            Hedged = asides.IsHedged(ground.Texts, new PieceRange(Math.Max(0, figures.Stretches[0].Start - 3), figures.Stretches[^1].End)),
            Confidence = 0.6,
            Words = [.. words],
        };
    }

    /// <summary>Where a matter is: where one stands, unless the book looks for it elsewhere only.</summary>
    private static string? PlaceOf(Surveyed ground, HeardMatter matter, Condition? condition)
    {
        if (condition is null || condition.Places.Count == 0) return matter.Place;
        for (var at = matter.Start; at < matter.Stretches[0].End; at++)
            if (ground.Named[at] is { } named && condition.Places.Contains(named)
                && (matter.Place is null || !condition.Places.Contains(matter.Place))) return named;
        if (matter.Place is null) return condition.Places.Count == 1 ? condition.Places[0] : null;
        return condition.Places.Contains(matter.Place) ? matter.Place : condition.Places[0];
    }

    private static List<WordRange> Words(Surveyed ground, List<PieceRange> stretches)
    {
        List<WordRange> words = [];
        foreach (var stretch in stretches.OrderBy(stretch => stretch.Start))
        {
            var range = new WordRange(ground.Pieces[stretch.Start].First, ground.Pieces[stretch.End - 1].End);
            if (words.Count > 0 && range.Start <= words[^1].End) words[^1] = new WordRange(words[^1].Start,
                Math.Max(words[^1].End, range.End));
            else words.Add(range);
        }
        return words;
    }
}
