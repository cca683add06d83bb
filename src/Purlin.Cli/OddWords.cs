using Purlin.Journal.Merge;
using Purlin.Judgement;

namespace Purlin.Cli;

/// <summary>
/// What of a record was not understood, in sentences: lines that could not be read, and names that the book does not have.
/// </summary>
internal static class OddWords
{
    private const int MostHeld = 200;

    /// <summary>A sentence for each; what the inspector left as it is is not among them.</summary>
    public static IEnumerable<string> Of(JudgedInspection judged, IReadOnlyList<HeldLine> held)
    {
        foreach (var line in held.Take(MostHeld)) yield return Terminal.Words.Say("again.held", ("line", line.Name?.ToString()
            ?? Begin(line)), ("why", string.Join("; ", line.Why)));
        if (held.Count > MostHeld) yield return Terminal.Words.Say("again.held.more", ("count", held.Count - MostHeld));
        foreach (var again in judged.Again.Where(again => again.Settled is null)) yield return $"{again.Entry}: {again.Words}";
    }

    private static string Begin(HeldLine line)
    {
        const int Shown = 60;
        var text = System.Text.Encoding.UTF8.GetString(line.Raw.Span[..Math.Min(line.Raw.Length, Shown)]);
        return line.Raw.Length > Shown ? text + "..." : text;
    }
}
