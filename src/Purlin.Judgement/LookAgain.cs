using Purlin.Journal;

namespace Purlin.Judgement;

/// <summary>
/// Something on record that was not understood, or only taken for what was most likely meant: it stays on record, and a person is asked to
/// look.
/// </summary>
public sealed record LookAgain
{
    /// <summary>Stable: the entry and what of it. Tied off by hand under this name, it is left as it is.</summary>
    public string Id => $"again:{Entry}/{Member}";

    /// <summary>The entry.</summary>
    public required EntryName Entry { get; init; }

    /// <summary>What of it: <c>kind</c>, <c>condition</c>, <c>place</c>, <c>unit</c>, the name of a fact, a member of the line.</summary>
    public required string Member { get; init; }

    /// <summary>What was written.</summary>
    public required string Given { get; init; }

    /// <summary>What it was taken for; none where nothing rests on it.</summary>
    public string? Taken { get; init; }

    /// <summary>What is nearest to what was written.</summary>
    public IReadOnlyList<string> Nearest { get; init; } = [];

    /// <summary>What is the matter and what to do, in plain words.</summary>
    public required string Words { get; init; }

    /// <summary>Where it was written down.</summary>
    public EntryName? Place { get; init; }

    /// <summary>Whether evidence may be lost by it, so that it must be settled before issue.</summary>
    public bool Bars { get; init; }

    /// <summary>Why it is left as it is, as the inspector says.</summary>
    public string? Settled { get; init; }
}
