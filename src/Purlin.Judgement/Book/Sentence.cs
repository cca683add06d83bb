namespace Purlin.Judgement.Book;

/// <summary>Finds and replaces one sentence of the book by its key: a condition's id, a slash and the part.</summary>
internal static class Sentence
{
    /// <summary>What the book says; none when it has no such line.</summary>
    public static string? In(RuleBook book, string key)
    {
        var slash = key.IndexOf('/', StringComparison.Ordinal);
        if (slash < 0) return null;
        var (id, part) = (key[..slash], key[(slash + 1)..]);
        if (book.Conditions.TryGetValue(id, out var condition)) return In(condition, part);
        if (book.Limitations.TryGetValue(id, out var limitation)) return part switch { "what" => limitation.What, "next" => limitation.Next, _ => null };
        return id switch
        {
            "words" => book.Words.Sentences.GetValueOrDefault(part),
            "cautions" => book.Cautions.GetValueOrDefault(part),
            _ => null,
        };
    }

    /// <summary>The condition with one part said otherwise.</summary>
    public static Condition Put(Condition condition, string part, string now) => part switch
    {
        "name" => condition with { Name = now },
        "means" => condition with { Means = now },
        "leads" => condition with { Leads = now },
        "clears" => condition with { Clears = now },
        "do" => condition with { Do = now },
        "trade" => condition with { Trade = now },
        _ => condition with { Look = [.. condition.Look.Select(follow => Put(follow, part, now))] },
    };

    private static string? In(Condition condition, string part) => part switch
    {
        "name" => condition.Name,
        "means" => condition.Means,
        "leads" => condition.Leads,
        "clears" => condition.Clears,
        "do" => condition.Do,
        "trade" => condition.Trade,
        _ => condition.Look.Select(follow => part == $"look/{follow.Id}/ask" ? follow.Ask : part == $"look/{follow.Id}/refer" ? follow.Refer : null).FirstOrDefault(text => text is not null),
    };

    private static Follow Put(Follow follow, string part, string now) =>
        part == $"look/{follow.Id}/ask" ? follow with { Ask = now } : part == $"look/{follow.Id}/refer" ? follow with { Refer = now } : follow;
}
