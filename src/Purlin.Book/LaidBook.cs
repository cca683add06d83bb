using Purlin.Journal.Fold;

namespace Purlin.Book;

/// <summary>
/// A book with the wording of an inspection laid over it, kept until that wording changes: the same book object while nothing was said
/// otherwise, so that whoever remembers by it goes on. For one inspection and one thread.
/// </summary>
public sealed class LaidBook
{
    private RuleBook? over;
    private string wording = "";
    private OverlaidBook? laid;
    private (object Sentences, object Conditions)? seen;

    /// <summary>The book to judge this inspection with, and what has moved on under its own wording.</summary>
    public OverlaidBook Of(RuleBook book, Inspection inspection)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(inspection);
        if (inspection.Wordings.Count == 0 && inspection.OwnConditions.Count == 0)
            return laid is { Conflicts.Count: 0 } && ReferenceEquals(laid.Book, book) ? laid : laid = new OverlaidBook(book, []);
        (object, object) now = (inspection.Wordings, inspection.OwnConditions);
        if (laid is not null && ReferenceEquals(over, book) && seen is { } before && ReferenceEquals(before.Sentences, now.Item1)
            && ReferenceEquals(before.Conditions, now.Item2)) return laid;
        var says = Text(inspection);
        if (laid is null || !ReferenceEquals(over, book) || says != wording) laid = book.Lay(OwnWording.Of(inspection));
        (over, wording, seen) = (book, says, now);
        return laid;
    }

    /// <summary>Everything that was said, as one text to compare with.</summary>
    private static string Text(Inspection inspection) => string.Join('\n',
        inspection.Wordings.OrderBy(line => line.Key, StringComparer.Ordinal)
            .Select(line => $"{line.Key}\t{line.Value.Value.Was}\t{line.Value.Value.Now}")
            .Concat(inspection.OwnConditions.OrderBy(line => line.Key, StringComparer.Ordinal)
                .Select(line => $"{line.Key}\t{line.Value.Value.Condition?.GetRawText()}")));
}
