using Purlin.Journal;
using Purlin.Journal.Fold;

namespace Purlin.Tests.Journal.Fold;

/// <summary>What a person can see of the lines: those withdrawn, and of the state lines those whose value stands.</summary>
internal sealed record View(IReadOnlySet<EntryName> Withdrawn, IReadOnlySet<EntryName> Standing)
{
    /// <summary>As the product folds.</summary>
    public static View OfFold(IReadOnlyList<Entry> entries)
    {
        var state = Folding.Fold(entries);
        HashSet<EntryName> standing =
        [
            .. state.Components.SelectMany(component => component.Facts.Values).SelectMany(slot => slot.Standing).Select(value => value.By),
            .. state.Parts.SelectMany(part => part.Facts.Values).SelectMany(slot => slot.Standing).Select(value => value.By),
            .. state.Notes.SelectMany(note => note.Text.Standing).Select(value => value.By),
        ];
        return new View(state.Withdrawn.ToHashSet(), standing);
    }

    /// <summary>As a table with last write wins would: of each slot the value with the latest time.</summary>
    public static View OfLastWrite(IReadOnlyList<Entry> entries)
    {
        var last =
            from entry in entries
            where entry.Body is EntryBody.FactStated or EntryBody.NoteWritten
            group entry by entry.Body switch
            {
                EntryBody.FactStated stated => $"{stated.Component}/{stated.Fact}",
                EntryBody.NoteWritten written => $"{written.About}/{written.Part}",
                _ => "",
            }
            into slot
            select slot.OrderBy(entry => entry.Hlc).ThenBy(entry => entry.Name).Last().Name;
        return new View(new HashSet<EntryName>(), last.ToHashSet());
    }
}
