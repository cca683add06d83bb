using Purlin.Book;
using Purlin.Book.Search;
using Purlin.Hearing.Matters;
using Purlin.Hearing.Talk;

namespace Purlin.Hearing.Proposing;

/// <summary>What is said beside a matter: whom it is for, how sure the speaker is, where on the thing, and how far it goes.</summary>
internal sealed class Asides(HearingWords words, Turns turns)
{
    private const int LongestSpot = 7;

    private readonly Phrases trades = new(words.Trades
        .SelectMany(line => line.Value.Select(name => (Stems.Split(name), new[] { line.Key }))));

    /// <summary>The trade that is named within a stretch; the last one counts.</summary>
    public string? Trade(List<string> texts, PieceRange within)
    {
        string? trade = null;
        for (var at = within.Start; at < within.End; at++)
        {
            if (trades.At(texts, at) is not var (taken, means)) continue;
            trade = means[0];
            at += taken - 1;
        }
        return trade;
    }

    /// <summary>Whether a stretch is hedged, or told by somebody else.</summary>
    public bool IsHedged(List<string> texts, PieceRange within) => First("hedge", texts, within) is not null
        || First("told", texts, within) is not null;

    /// <summary>Where on the thing, in the speaker's words.</summary>
    public string? Spot(Surveyed ground, List<PieceRange> stretches)
    {
        foreach (var stretch in stretches)
            for (var at = stretch.Start; at < stretch.End - 1; at++)
                if (turns.At("where", ground.Texts, at) > 0) return Words(ground, at, stretch.End);
        return null;
    }

    /// <summary>How far it goes, in the speaker's words.</summary>
    public string? Spread(List<string> texts, PieceRange within) =>
        First("spread", texts, within) is { } spread ? string.Join(' ', texts.Skip(spread.Start).Take(spread.End - spread.Start)) : null;

    private PieceRange? First(string kind, List<string> texts, PieceRange within)
    {
        for (var at = within.Start; at < within.End; at++)
            if (turns.At(kind, texts, at) is > 0 and var taken) return new PieceRange(at, at + taken);
        return null;
    }

    private string Words(Surveyed ground, int from, int limit)
    {
        var to = from + 1;
        while (to < limit && to - from < LongestSpot && !ground.Pieces[to].Pause && turns.At("boundary", ground.Texts, to) == 0
            && turns.At("not", ground.Texts, to) == 0) to++;
        return string.Join(' ', ground.Texts.Skip(from).Take(to - from));
    }
}
