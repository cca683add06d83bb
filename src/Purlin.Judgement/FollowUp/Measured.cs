using Purlin.Book;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Judgement.Evidence;
using Purlin.Judgement.Readings;

namespace Purlin.Judgement.FollowUp;

/// <summary>One number or fact that may answer a question: what was measured, and what was found. Of one thing all that was found is one sentence.</summary>
internal sealed record MeasuredAnswer(IReadOnlyList<EntryName> Entries, EntryName? Place, bool OfHouse, Said About, Said Found, EntryName? Component = null);

/// <summary>Finds what answers to a name that rules give as a reading: a reading itself, a working, or facts.</summary>
internal sealed class Measured(EvidenceIndex evidence, JudgingMemory memory)
{
    public IReadOnlyList<MeasuredAnswer> For(string name) => memory.Recall.Once<List<MeasuredAnswer>>("measured", name, null, () => [.. Named(name)]);

    /// <summary>Facts by <c>kind/fact</c>.</summary>
    public IReadOnlyList<MeasuredAnswer> Facts(string wanted) => memory.Recall.Once<List<MeasuredAnswer>>("measured fact", wanted, null, () => [.. Stated(wanted)]);

    private IEnumerable<MeasuredAnswer> Named(string name)
    {
        foreach (var reading in evidence.ReadingsOf(name)) yield return Of(reading);
        foreach (var working in memory.WorkingsFor(name))
            yield return new MeasuredAnswer(working.Evidence, working.Place, false, working.Working.Title, working.Working.Verdict.Because, working.Component);
        if (!evidence.Book.Aliases.TryGetValue(name, out var alias)) yield break;
        foreach (var other in alias.Readings)
            foreach (var reading in evidence.ReadingsOf(other)) yield return Of(reading);
        foreach (var fact in alias.Facts)
            foreach (var answer in Facts(fact)) yield return answer;
    }

    private IEnumerable<MeasuredAnswer> Stated(string wanted)
    {
        if (FactName.Parse(wanted) is not { Kind: { } kind, Fact: var fact }) yield break;
        foreach (var component in evidence.ComponentsOf(kind))
        {
            if (!component.Facts.TryGetValue(fact, out var slot)) continue;
            yield return new MeasuredAnswer([slot.Standing[0].By], component.Place, true,
                new("observed.fact.of", ("component", component.Kind), ("fact", fact)),
                new("observed.fact.found", ("value", slot.Value.Value.Text), ("basis", slot.Value.Basis)), component.Id);
        }
    }

    private MeasuredAnswer Of(Reading reading) => new([reading.Id], evidence.PlaceOf(reading), evidence.Book.IsOfHouse(reading.Body.Kind),
        new("observed.reading.of", ("kind", reading.Body.Kind)), Said.Verbatim(reading.Body.Amount.ToString()), reading.Body.Component);
}
