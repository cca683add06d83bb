using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Book;
using Purlin.Judgement.Evidence;
using Purlin.Judgement.Memory;

namespace Purlin.Judgement.Duties;

/// <summary>Works out from an ordinary walk which things of the common core have been looked at, described, limited, or are not there.</summary>
internal sealed class CoreCovering(EvidenceIndex evidence, Looks looks, Recall recall)
{
    private readonly Presence presence = new(evidence);

    /// <summary>How it stands; a description asks for facts, everything else for a look.</summary>
    public CoreStanding Of(CoreDuty core, Verb verb)
    {
        // Where no fact is named, what was seen describes it.
        var named = verb == Verb.Describe;
        return recall.Once(named ? "described" : "looked at", core.Id, core, () => Work(core, named && core.Facts.Count > 0, named) with { Name = core.Name });
    }

    /// <summary>Places where it can be closed.</summary>
    public IEnumerable<EntryName> PlacesOf(CoreDuty core) => core.Places.Count > 0
        ? core.Places.SelectMany(evidence.PlacesOf).Select(place => place.Id)
        : core.Components.SelectMany(evidence.ComponentsOf).Where(component => component.Place is not null).Select(component => component.Place!.Value);

    /// <summary>Where fewer were tried than the sample of this standard asks; none where it sets no sample.</summary>
    public (string Size, IReadOnlyList<string> Places)? Fewer(Standard standard, CoreDuty thing) => Sampling.Fewer(evidence, standard, thing, LooksFor(thing));

    private CoreStanding Work(CoreDuty core, bool describe, bool named)
    {
        if (ByHand(core, describe, named) is { } closed) return closed;
        var met = describe ? Described(core) : Looked(core);
        if (met is not null) return met;
        if (presence.WhyAbsent(core) is { } why) return new CoreStanding(core.Id, DutyStanding.NotPresent, evidence.House is { } house ? [house] : [], why);
        return Limited(core) ?? new CoreStanding(core.Id, DutyStanding.Open, [], core.Name);
    }

    /// <summary>A description closes what is to be described, and never a look at the same thing.</summary>
    private CoreStanding? ByHand(CoreDuty core, bool describe, bool named)
    {
        if (evidence.DutyMet(DutyId.OfCore(core.Id)) is not { } slot || (slot.Value.How == DutyClose.Described && !named)) return null;
        return HandClosing.Close(slot, describe) is { } closed ? new CoreStanding(core.Id, closed.State, [slot.Standing[0].By], closed.Words) : null;
    }

    private CoreStanding? Looked(CoreDuty core)
    {
        var found = LooksFor(core).Where(look => look.Looked).ToList();
        var readings = ReadingsFor(core);
        if (found.Count == 0 && readings.Count == 0) return null;
        IEnumerable<EntryName> entries = [.. found.SelectMany(look => look.Entries), .. readings.Select(reading => reading.Id)];
        var count = new EachOne(evidence, core, found, readings, Unseen(core)).Count();
        if (count is { Left.Count: > 0 })
            return new CoreStanding(core.Id, DutyStanding.Open, [], $"{core.Name}: {count.Words}") { Left = count.Left };
        return new CoreStanding(core.Id, DutyStanding.Met, [.. entries.Distinct()], Findings.FindingWriting.Join(Words(found, readings),
            count?.Words ?? ""));
    }

    private CoreStanding? Described(CoreDuty core)
    {
        List<EntryName> by = [];
        List<string> words = [];
        foreach (var component in core.Components.SelectMany(evidence.ComponentsOf))
            foreach (var fact in core.Facts)
            {
                if (!component.Facts.TryGetValue(fact, out var slot) || string.IsNullOrWhiteSpace(slot.Value.Value.Text)) continue;
                by.Add(slot.Standing[0].By);
                words.Add(evidence.Book.Words.Say("duty.fact", ("component", component.Kind), ("fact", fact),
                    ("value", $"{slot.Value.Value.Text}{(slot.Value.Unit is { Length: > 0 } unit ? " " + unit : "")}"), ("basis", slot.Value.Basis)));
            }
        foreach (var told in core.Told)
            if (Presence.Told(evidence.Property, told) is { } known && evidence.House is { } house)
                (by, words) = ([.. by, house], [.. words, evidence.Book.Words.Say("duty.told", ("fact", told), ("value", known))]);
        var readings = core.Verbs.Contains(Verb.Describe) ? ReadingsFor(core) : [];
        foreach (var reading in readings) (by, words) = ([.. by, reading.Id], [.. words, $"{reading.Body.Kind}: {reading.Body.Amount}"]);
        return by.Count == 0 ? null : new CoreStanding(core.Id, DutyStanding.Met, by, string.Join("; ", words.Distinct(StringComparer.Ordinal)) + ".");
    }

    /// <summary>Where it could not be looked at, and why.</summary>
    private Dictionary<EntryName, string> Unseen(CoreDuty core)
    {
        Dictionary<EntryName, string> unseen = [];
        foreach (var look in LooksFor(core).Where(look => look.Outcome == Outcome.NotVisible))
        {
            if (look.Place is { } place) unseen.TryAdd(place, look.Reason ?? "");
            if (look.Component is { } component) unseen.TryAdd(component, look.Reason ?? "");
        }
        foreach (var limitation in evidence.Limitations)
        {
            if (limitation.Body.Component is { } thing) unseen.TryAdd(thing, limitation.Cause ?? limitation.Body.What);
            else if (limitation.Body.Place is { } there && (limitation.Body.Rule is null || Limits(core, limitation)))
                unseen.TryAdd(there, limitation.Cause ?? limitation.Body.What);
        }
        return unseen;
    }

    private CoreStanding? Limited(CoreDuty core)
    {
        var hidden = LooksFor(core).Where(look => look.Outcome == Outcome.NotVisible).ToList();
        if (hidden.Count > 0) return new CoreStanding(core.Id, DutyStanding.Limited, [.. hidden.SelectMany(look => look.Entries)], Reasons(hidden.Select(look => look.Reason)));
        var limits = evidence.Limitations.Where(limitation => Limits(core, limitation)).ToList();
        return limits.Count == 0 ? null : new CoreStanding(core.Id, DutyStanding.Limited, [.. limits.Select(limitation => limitation.Id)], Reasons(limits.Select(limitation => limitation.Cause ?? limitation.Body.Cause ?? limitation.Body.What)));
    }

    /// <summary>A limitation that names only a place speaks for everything there when nothing there was looked at; else it limits a part.</summary>
    private bool Limits(CoreDuty core, Limitation limitation)
    {
        if (evidence.Component(limitation.Body.Component) is { } component) return core.Components.Contains(component.Kind) && InPlace(core, limitation.Body.Place ?? component.Place);
        if (limitation.Body.Rule is { } id && evidence.Book.Limitations.TryGetValue(id, out var rule) && rule.Component.Length > 0)
            return core.Components.Contains(rule.Component) && InPlace(core, limitation.Body.Place);
        return limitation.Body.Place is { } place && !looks.LookedIn(place) && core.Places.Count > 0 && core.Places.All(kind => kind == evidence.Place(place)?.Kind);
    }

    /// <summary>A look counts once, though it may be of two kinds: told apart by itself, not by what it says.</summary>
    private IEnumerable<Sighting> LooksFor(CoreDuty core)
    {
        HashSet<Sighting>? met = core.Components.Count > 1 ? new(ReferenceEqualityComparer.Instance) : null;
        foreach (var kind in core.Components)
            foreach (var look in looks.At(kind))
                if (InPlace(core, look.Place) && Matches(core, look.Condition) && met?.Add(look) != false) yield return look;
    }

    private List<Reading> ReadingsFor(CoreDuty core) => [.. core.Readings.SelectMany(evidence.ReadingsOf)
        .Where(reading => evidence.Book.IsOfHouse(reading.Body.Kind) || InPlace(core, evidence.PlaceOf(reading)))];

    private bool InPlace(CoreDuty core, EntryName? place) => core.Places.Count == 0 || place is null || core.Places.Contains(evidence.Place(place)?.Kind ?? "");

    /// <summary>Words of the inspector's own on a component count for it as a whole.</summary>
    private static bool Matches(CoreDuty core, string condition) => core.Conditions.Count == 0 || FindingId.Parse(condition).Condition == FindingId.Own
        || core.Conditions.Any(pattern => Globs.Matches(pattern, condition));

    private string Words(List<Sighting> found, List<Reading> readings)
    {
        List<string> parts = [];
        var places = found.Select(look => look.Place).Where(place => place is not null).Distinct().OrderBy(place => evidence.Walk(place)).Select(place => evidence.NameOf(place)).ToList();
        if (places.Count > 0) parts.Add(evidence.Book.Words.Say("duty.looked", ("places", string.Join(", ", places))));
        foreach (var sample in found.Where(look => look.Sample is not null).GroupBy(look => look.Condition))
        {
            var name = evidence.Book.Conditions.TryGetValue(sample.Key, out var condition) ? condition.Name : condition?.Component ?? "";
            parts.Add(evidence.Book.Words.Say("duty.sample", ("tried", $"{sample.Sum(look => look.Sample!.Tried)}"), ("of", $"{sample.Sum(look => look.Sample!.Of)}"), ("failed", $"{sample.Sum(look => look.Sample!.Failed)}"), ("what", name)));
        }
        parts.AddRange(readings.Select(reading => $"{Findings.FindingWriting.Sentence(reading.Body.Kind, stop: false)}: {reading.Body.Amount}.").Distinct(StringComparer.Ordinal).Take(6));
        return string.Join(" ", parts);
    }

    private static string Reasons(IEnumerable<string?> reasons) => string.Join("; ", reasons.Where(reason => !string.IsNullOrWhiteSpace(reason)).Distinct(StringComparer.Ordinal));
}
