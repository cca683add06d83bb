using Purlin.Journal;
using Purlin.Journal.Fold;

namespace Purlin.Book;

/// <summary>
/// Own wording as it travels in a journal: what an inspection says is in its record, so that the same evidence reads the same everywhere.
/// </summary>
public static class OwnWording
{
    /// <summary>The journal of the inspector's own book: the same entries, the same sync, and no inspection.</summary>
    public const string Journal = "own-wording";

    /// <summary>
    /// What the journal holds of own wording. Where two values stand beside each other, the first is used and both are shown.
    /// </summary>
    public static Overlay Of(Inspection inspection)
    {
        ArgumentNullException.ThrowIfNull(inspection);
        if (inspection.Wordings.Count == 0 && inspection.OwnConditions.Count == 0) return Overlay.Empty;
        List<Condition> conditions = [];
        List<OverlayConflict> unread = [];
        foreach (var (id, slot) in inspection.OwnConditions.OrderBy(line => line.Key, StringComparer.Ordinal))
        {
            if (slot.Value.Condition is not { } json) continue;
            var read = OwnConditions.Read(json);
            if (read.IsAccepted) conditions.Add(read.OrThrow() with { Id = id });
            else unread.Add(new OverlayConflict(id, "", null, id,
                $"This condition of yours is kept and not used: {string.Join("; ", read.Refusals)}."));
        }
        return new Overlay
        {
            Edition = inspection.Opening?.Body.RuleBook ?? "",
            Sentences = inspection.Wordings.Where(line => line.Value.Value.Now.Length > 0)
                .ToDictionary(line => line.Key, line => new OwnSentence(line.Value.Value.Was, line.Value.Value.Now),
                StringComparer.Ordinal),
            Conditions = conditions,
            Unread = unread,
        };
    }

    /// <summary>The entries that bring this wording into a journal, beyond what stands there; each names what it replaces.</summary>
    public static IReadOnlyList<EntryBody> Entries(Overlay overlay, Inspection into)
    {
        ArgumentNullException.ThrowIfNull(overlay);
        ArgumentNullException.ThrowIfNull(into);
        List<EntryBody> entries = [];
        foreach (var (key, sentence) in overlay.Sentences.OrderBy(line => line.Key, StringComparer.Ordinal))
            if (Say(into, key, sentence.Was, sentence.Now) is { } said) entries.Add(said);
        foreach (var own in overlay.Conditions.OrderBy(own => own.Id, StringComparer.Ordinal))
            if (Write(into, own) is { } written) entries.Add(written);
        return entries;
    }

    /// <summary>The entry that says a sentence so; none when it stands so already. Empty words give it back to the book.</summary>
    public static EntryBody.WordingSaid? Say(Inspection into, string key, string was, string now)
    {
        ArgumentNullException.ThrowIfNull(into);
        var slot = into.Wordings.GetValueOrDefault(key);
        if (slot is null ? now.Length == 0 : !slot.Diverges && slot.Value.Now == now && (now.Length == 0 || slot.Value.Was == was))
            return null;
        return into.Replacing(new EntryBody.WordingSaid { Key = key, Was = was, Now = now });
    }

    /// <summary>The entry that writes a condition so; none when it stands so already.</summary>
    public static EntryBody.ConditionWritten? Write(Inspection into, Condition own)
    {
        ArgumentNullException.ThrowIfNull(into);
        ArgumentNullException.ThrowIfNull(own);
        var (slot, json) = (into.OwnConditions.GetValueOrDefault(own.Id), OwnConditions.Write(own));
        if (slot is { Diverges: false, Value.Condition: { } stands } && IsSame(stands, own)) return null;
        return into.Replacing(new EntryBody.ConditionWritten { Id = own.Id, Condition = json });
    }

    /// <summary>The entry that gives a condition up; none when there is none.</summary>
    public static EntryBody.ConditionWritten? GiveUp(Inspection from, string id)
    {
        ArgumentNullException.ThrowIfNull(from);
        return from.OwnConditions.TryGetValue(id, out var slot) && (slot.Diverges || slot.Value.Condition is not null)
            ? from.Replacing(new EntryBody.ConditionWritten { Id = id }) : null;
    }

    /// <summary>Whether two conditions of one's own say the same, however they were written down.</summary>
    public static bool IsSame(Condition one, Condition other) =>
        OwnConditions.Write(one).GetRawText() == OwnConditions.Write(other).GetRawText();

    private static bool IsSame(System.Text.Json.JsonElement stands, Condition own)
    {
        var read = OwnConditions.Read(stands);
        return read.IsAccepted && IsSame(read.OrThrow(), own);
    }
}
