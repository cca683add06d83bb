using System.Collections;

namespace Purlin.Report;

/// <summary>A stretch of a sentence.</summary>
/// <param name="Text">Plain words.</param>
/// <param name="To">Address inside the paper it leads to; none for mere words.</param>
/// <param name="Strong">Whether it stands out.</param>
public sealed record Run(string Text, string? To = null, bool Strong = false);

/// <summary>Words with their links: the page makes them anchors, the PDF areas one can follow.</summary>
public sealed class Prose : IReadOnlyList<Run>
{
    private readonly IReadOnlyList<Run> runs;

    /// <summary>Stretches in the order of reading.</summary>
    public Prose(params IReadOnlyList<Run> runs) => this.runs = [.. runs.Where(run => run.Text.Length > 0)];

    /// <summary>Nothing said.</summary>
    public static Prose Empty { get; } = new([]);

    /// <inheritdoc/>
    public int Count => runs.Count;

    /// <inheritdoc/>
    public Run this[int index] => runs[index];

    /// <summary>Words without a link.</summary>
    public static implicit operator Prose(string text) => new(new Run(text));

    /// <summary>One stretch that leads somewhere.</summary>
    public static Prose Link(string text, string to) => new(new Run(text, to));

    /// <summary>Several of them, one after another, with these words between.</summary>
    public static Prose Join(string between, IEnumerable<Prose> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        List<Run> all = [];
        foreach (var part in parts)
        {
            if (all.Count > 0) all.Add(new Run(between));
            all.AddRange(part);
        }
        return new Prose(all);
    }

    /// <summary>Words, then others.</summary>
    public Prose Then(Prose other) => new([.. this, .. other]);

    /// <inheritdoc/>
    public IEnumerator<Run> GetEnumerator() => runs.GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <summary>The words without their links.</summary>
    public override string ToString() => string.Concat(runs.Select(run => run.Text));
}
