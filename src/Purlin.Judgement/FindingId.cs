using Purlin.Journal;

namespace Purlin.Judgement;

/// <summary>
/// The name of a finding: its condition and, where several alike are told apart, the thing it is about. Written <c>supply-piping.corroded-joint</c>,
/// <c>window.pane-cracked@k3f9.21</c>; what the inspector said in own words is <c>own@</c> or <c>note@</c> and the entry that said it.
/// Stable while the evidence is the same kind, so that entries may speak of it.
/// </summary>
/// <param name="Condition">Id of the condition, <c>own</c> or <c>note</c>.</param>
/// <param name="Of">The component, or the entry whose words it is; none for the first or only one.</param>
public readonly record struct FindingId(string Condition, EntryName? Of = null) : IComparable<FindingId>
{
    /// <summary>Stands for the condition where the inspector used own words.</summary>
    public const string Own = "own";

    private const char Apart = '@';

    /// <summary>Whether it is in the inspector's own words, so that each entry is a matter by itself.</summary>
    public bool IsOwn => Condition == Own && Of is not null;

    /// <summary>Words of the inspector's own on what no condition of the book is about.</summary>
    public static FindingId OwnWords(EntryName entry) => new(Own, entry);

    /// <summary>A note that is a matter of its own.</summary>
    public static FindingId OfNote(EntryName note) => new("note", note);

    /// <summary>Reads what <see cref="ToString"/> wrote. Any text is a name, since a journal keeps the names that another edition of the book had.</summary>
    public static FindingId Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var at = text.IndexOf(Apart, StringComparison.Ordinal);
        return at >= 0 && EntryName.TryParse(text[(at + 1)..], out var of) ? new FindingId(text[..at], of) : new FindingId(text);
    }

    /// <inheritdoc/>
    public int CompareTo(FindingId other) => string.CompareOrdinal(ToString(), other.ToString());

    /// <inheritdoc/>
    public override string ToString() => Of is { } of ? $"{Condition}{Apart}{of}" : Condition;

    /// <summary>Orders as the texts do.</summary>
    public static bool operator <(FindingId left, FindingId right) => left.CompareTo(right) < 0;

    /// <inheritdoc cref="op_LessThan"/>
    public static bool operator >(FindingId left, FindingId right) => left.CompareTo(right) > 0;

    /// <inheritdoc cref="op_LessThan"/>
    public static bool operator <=(FindingId left, FindingId right) => left.CompareTo(right) <= 0;

    /// <inheritdoc cref="op_LessThan"/>
    public static bool operator >=(FindingId left, FindingId right) => left.CompareTo(right) >= 0;
}
