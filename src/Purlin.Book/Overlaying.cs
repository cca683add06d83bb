namespace Purlin.Book;

/// <summary>Lays the inspector's own wording over a book.</summary>
public static class Overlaying
{
    /// <summary>The book with everything of the inspector's own in it, and what has moved on under it. Laid over a book that was laid over
    /// already,
    /// it is still compared with what the book itself says.</summary>
    public static OverlaidBook Lay(this RuleBook book, Overlay overlay)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(overlay);
        if (overlay.IsEmpty) return new OverlaidBook(book, overlay.Unread);
        List<OverlayConflict> conflicts = [.. overlay.Unread];
        var beneath = book.Beneath ?? book;
        var layer = new OverlayLayer(book);
        foreach (var own in overlay.Conditions.OrderBy(own => own.Id, StringComparer.Ordinal)) Add(layer, beneath, own, conflicts);
        foreach (var (key, sentence) in overlay.Sentences.OrderBy(line => line.Key, StringComparer.Ordinal))
            Say(layer, beneath, key, sentence, conflicts);
        return new OverlaidBook(layer.Book() with { Beneath = beneath }, conflicts);
    }

    private static void Add(OverlayLayer layer, RuleBook beneath, Condition own, List<OverlayConflict> conflicts)
    {
        var refusals = OwnConditions.Broken(own);
        if (refusals.Count > 0)
        {
            conflicts.Add(new OverlayConflict(own.Id, "", null, own.Name,
                $"This condition of yours is kept and not used: {string.Join("; ", refusals)}."));
            return;
        }
        foreach (var lost in OwnConditions.Dangling(own, beneath))
            conflicts.Add(new OverlayConflict(own.Id, lost, null, own.Name,
                $"Your condition points to {lost}, which the rule book does not have. It is used without that."));
        layer.Add(own with { Own = true, Sources = own.Sources.Count == 0 ? [RuleBook.OwnKnowledge] : own.Sources });
    }

    private static void Say(OverlayLayer layer, RuleBook beneath, string key, OwnSentence sentence, List<OverlayConflict> conflicts)
    {
        var says = Sentence.In(beneath, key);
        if (says is null) conflicts.Add(new OverlayConflict(key, sentence.Was, null, sentence.Now,
            "The rule book has no such sentence any more. Yours is kept and not used."));
        else if (Sentence.Refuses(key, sentence.Now) is { } why)
            conflicts.Add(new OverlayConflict(key, sentence.Was, says, sentence.Now, why));
        else
        {
            if (says != sentence.Was && says != sentence.Now)
                conflicts.Add(new OverlayConflict(key, sentence.Was, says, sentence.Now,
                    "The rule book says something new here. Yours stands until you decide."));
            layer.Say(key, sentence.Now);
        }
    }
}
