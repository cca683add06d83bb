namespace Purlin.Hearing.Talk;

/// <summary>A stretch of pieces.</summary>
/// <param name="Start">The first.</param>
/// <param name="End">The one after the last.</param>
internal readonly record struct PieceRange(int Start, int End)
{
    public bool Covers(int at) => at >= Start && at < End;
}
