using Purlin.Hearing.Talk;

namespace Purlin.Hearing.Matters;

/// <summary>What is told of one thing, out of one or several stretches.</summary>
internal sealed class HeardMatter(Statement first, string? place)
{
    public int Condition { get; } = first.Condition;

    public int Component { get; set; } = first.Component;

    public string Outcome { get; set; } = first.Outcome;

    /// <summary>How well the best of its stretches fits.</summary>
    public double Score { get; private set; } = first.Score;

    /// <summary>Kind of place it is about.</summary>
    public string? Place { get; set; } = place;

    public List<PieceRange> Stretches { get; } = [first.Span];

    public int Start => Stretches[0].Start;

    public int End => Stretches[^1].End;

    /// <summary>Takes in what tells of the same once more.</summary>
    public void Join(Statement again)
    {
        Score = Math.Max(Score, again.Score);
        if (again.Span.Start <= End + 1) Stretches[^1] = new PieceRange(Stretches[^1].Start, again.Span.End);
        else Stretches.Add(again.Span);
    }
}
