using Purlin.Journal;
using Purlin.Book;
using Purlin.Judgement.Evidence;
using Purlin.Judgement.Memory;

namespace Purlin.Judgement.Duties;

/// <summary>Says for each standard chosen how each of its duties stands. A duty over several things stands open while one of them does.</summary>
internal sealed class Covering(EvidenceIndex evidence, CoreCovering core, Recall recall)
{
    public List<Coverage> Cover()
    {
        List<Coverage> all = [];
        foreach (var chosen in evidence.Chosen)
        {
            if (evidence.Book.Standards.TryGetValue(chosen, out var standard))
                all.Add(new Coverage(standard.Id, $"{standard.Title}, {standard.Edition}", [.. standard.Duties.Select(duty => Counted(standard, duty)).OfType<DutyState>()]));
            else
                all.Add(new Coverage(chosen, evidence.Book.Words.Say("duty.unknown-standard", ("standard", chosen)), []));
        }
        return all;
    }

    private DutyState? Counted(Standard standard, Duty duty) =>
        recall.Once("duty", new DutyId(standard.Id, duty.Id).ToString(), duty, () => new Standing(Counts(duty) ? State(standard, duty) : null)).State;

    private bool Counts(Duty duty) => duty.Verb != Verb.NotRequired && (duty.Coverage == DutyCounts.Always || (duty.Coverage == DutyCounts.IfAgreed && IsThere(duty)));

    /// <summary>An optional system counts once there is one on record: it was put there because it was agreed.</summary>
    private bool IsThere(Duty duty) => duty.Core.Any(id => evidence.Book.Core.TryGetValue(id, out var thing) && thing.Components.Any(kind => evidence.ComponentsOf(kind).Any()));

    private DutyState State(Standard standard, Duty duty)
    {
        var id = new DutyId(standard.Id, duty.Id);
        List<CoreDuty> things = [.. duty.Core.Where(evidence.Book.Core.ContainsKey).Select(name => evidence.Book.Core[name])];
        List<CoreStanding> standings = [.. things.Select(thing => core.Of(thing, duty.Verb))];
        var state = ByHand(id, duty, standings) ?? Together(id, duty, standings);
        if (state.State == DutyStanding.Met) state = Sampled(state, standard, things);
        return state with { Places = [.. things.SelectMany(core.PlacesOf).Distinct().OrderBy(place => evidence.Walk(place))] };
    }

    private DutyState Sampled(DutyState state, Standard standard, IEnumerable<CoreDuty> things)
    {
        foreach (var thing in things)
            if (core.Fewer(standard, thing) is { } fewer)
                state = state with { Fewer = [.. state.Fewer, .. fewer.Places], Words = $"{state.Words} {evidence.Book.Words.Say("duty.fewer." + fewer.Size, ("what", thing.Name), ("places", string.Join(", ", fewer.Places)))}" };
        return state;
    }

    private DutyState? ByHand(DutyId id, Duty duty, List<CoreStanding> standings)
    {
        if (evidence.DutyMet(id) is not { } slot || HandClosing.Close(slot, duty.Verb == Verb.Describe) is not { } closed) return null;
        if (closed.State == DutyStanding.NotPresent && standings.Count > 1) return NotHere(id, duty, standings, slot.Standing[0].By,
            closed.Words);
        return Of(id, duty, closed.State, [slot.Standing[0].By], closed.Words);
    }

    /// <summary>"Not in this house" answers the one part that is open. Of several it does not say which.</summary>
    private DutyState? NotHere(DutyId id, Duty duty, List<CoreStanding> standings, EntryName by, string words)
    {
        var open = standings.FindAll(standing => standing.State == DutyStanding.Open);
        if (open is [var one]) return Together(id, duty, [.. standings.Select(standing => standing == one
            ? one with { State = DutyStanding.NotPresent, Evidence = [by], Words = words } : standing)]);
        if (open.Count == 0) return null;
        var told = Together(id, duty, standings);
        return told with { Words = $"{told.Words} {evidence.Book.Words.Say("duty.which-part")}" };
    }

    private DutyState Together(DutyId id, Duty duty, IReadOnlyList<CoreStanding> standings)
    {
        var open = standings.Where(standing => standing.State == DutyStanding.Open).ToList();
        if (open.Count > 0 || standings.Count == 0)
        {
            var missing = string.Join("; ", open.Select(standing => standing.Words).Distinct(StringComparer.Ordinal));
            return Of(id, duty, DutyStanding.Open, [], evidence.Book.Words.Say("duty.open", ("missing", missing))) with { OpenCore = [.. open.Select(standing => DutyId.OfCore(standing.Core))] };
        }
        var state = standings.Any(standing => standing.State == DutyStanding.Met) ? DutyStanding.Met
            : standings.Any(standing => standing.State == DutyStanding.Limited) ? DutyStanding.Limited : DutyStanding.NotPresent;
        var words = string.Join(" ", standings.Where(standing => standing.Words.Length > 0).Select(standing => standings.Count == 1 ? standing.Words : $"{standing.Name}: {Lower(standing.Words)}"));
        return Of(id, duty, state, [.. standings.SelectMany(standing => standing.Evidence).Distinct()], words);
    }

    private static string Lower(string words) => words.Length > 1 && char.IsLower(words[1]) ? char.ToLowerInvariant(words[0]) + words[1..] : words;

    private static DutyState Of(DutyId id, Duty duty, DutyStanding state, IReadOnlyList<EntryName> by, string words) =>
        new(id, duty.Id, duty.System, duty.Text, duty.Verb, state, by, words, duty.Mark);

    private sealed record Standing(DutyState? State);
}
