namespace Purlin.Book;

/// <summary>A published document that rules rest on.</summary>
public sealed record SourceLine
{
    /// <summary>Title of the document.</summary>
    public required string Document { get; init; }

    /// <summary>Section or table.</summary>
    public string Section { get => field ?? ""; init; }

    /// <summary>Edition or year.</summary>
    public string Edition { get => field ?? ""; init; }

    /// <summary>Who publishes it.</summary>
    public string Publisher { get => field ?? ""; init; }

    /// <summary>Page where it was seen; empty when it was not, or when the address would name a firm.</summary>
    public string Seen { get => field ?? ""; init; }

    /// <summary><c>confirmed</c> or <c>from memory</c>.</summary>
    public string Mark { get => field ?? ""; init; }

    /// <summary>In words: document, section, edition, and the mark when nobody has confirmed it.</summary>
    public string InWords()
    {
        var words = Document;
        if (Edition.Length > 0) words += $", {Edition}";
        if (Section.Length > 0) words += $", {Section}";
        return Mark == "from memory" ? words + " (from memory)" : words;
    }
}
