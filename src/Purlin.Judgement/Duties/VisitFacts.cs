using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Book;
using Purlin.Judgement.Evidence;

namespace Purlin.Judgement.Duties;

/// <summary>The facts about the visit: those that the opening holds, and those stated as facts of the house.</summary>
internal sealed class VisitFacts(EvidenceIndex evidence)
{
    private readonly IReadOnlyDictionary<string, Slot<Fact>>? facts = evidence.Component(evidence.House)?.Facts;

    public EntryBody.InspectionOpened Opening { get; } = evidence.Opening!.Body;

    /// <summary>What the fact says, and the entry that says it; none when nobody stated it.</summary>
    public (string Text, EntryName By)? Stated(string name) =>
        facts?.GetValueOrDefault(name) is { } slot && !string.IsNullOrWhiteSpace(slot.Value.Value.Text) ? (slot.Value.Value.Text.Trim(), slot.Standing[0].By) : null;

    public DateOnly? Day(string name) => name.Length > 0 && Stated(name) is { } stated ? VisitDays.Read(stated.Text) : null;

    /// <summary>What answers a question of a rule: the fact, else what the opening says.</summary>
    public (string Text, EntryName By)? Answer(VisitFact fact) => Stated(fact.Name) ?? (Held(fact.Fills) is { } held ? (held, evidence.House!.Value) : null);

    /// <summary>The last sealed edition's day, else none. The office writes it, by its own clock.</summary>
    public DateOnly? LastEdition => evidence.Editions.Count == 0 ? null : evidence.Editions.Max(VisitDays.Of);

    /// <summary>The first sealed edition; none while there is none.</summary>
    public SealedEdition? FirstEdition => evidence.Editions.MinBy(edition => edition.Body.Number);

    // A licence stands beside the inspector's name, as a number.
    private string? Held(string member) => member switch
    {
        "client" => Filled(Opening.Client),
        "inspector" => Filled(Opening.Inspector),
        "licence" => Filled(Opening.Inspector) is { } inspector && inspector.Any(char.IsAsciiDigit) ? inspector : null,
        "weather" => Filled(Opening.Weather),
        _ => null,
    };

    private static string? Filled(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();
}
