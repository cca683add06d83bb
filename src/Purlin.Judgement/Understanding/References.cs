using Purlin.Book;
using Purlin.Book.Naming;
using Purlin.Journal;
using Purlin.Journal.Fold;

namespace Purlin.Judgement.Understanding;

/// <summary>What on record points to something that is not there: a place nobody added, a rule that the book does not have.</summary>
internal sealed class References(Inspection inspection, RuleBook book, KnownNames names, Telling telling)
{
    private readonly HashSet<EntryName> places = [.. inspection.Places.Select(place => place.Id)];
    private readonly HashSet<EntryName> things = [.. inspection.Components.Select(component =>
        component.Id), .. inspection.Parts.Select(part => part.Id)];
    private readonly HashSet<EntryName> withdrawn = [.. inspection.Withdrawn];
    private readonly List<LookAgain> told = [];

    public IReadOnlyList<LookAgain> List()
    {
        foreach (var component in inspection.Components) Place(component.Id, component.Place);
        foreach (var observation in inspection.Observations) Both(observation.Id, observation.Body.Place, observation.Body.Component);
        foreach (var reading in inspection.Readings) Both(reading.Id, reading.Body.Place, reading.Body.Component);
        foreach (var absence in inspection.Absences) Place(absence.Id, absence.Place);
        foreach (var limitation in inspection.Limitations)
        {
            Both(limitation.Id, limitation.Body.Place, limitation.Body.Component);
            if (limitation.Body.Rule is { } rule) Named(limitation.Id, "rule", telling.Say("again.what.limitation"), rule,
                names.Limitation(rule));
        }
        foreach (var stray in inspection.StrayFacts)
            Lost(stray.Entry, "component", $"{stray.Of}", telling.Say("again.stray", ("fact", stray.Name), ("value",
                stray.Fact.Value.Text), ("given", $"{stray.Of}")));
        foreach (var (id, slot) in inspection.DutiesMet) Duty(id, slot.Standing[0].By);
        foreach (var ((finding, _), slot) in inspection.Overrulings) Condition(finding.Split('@')[0], slot.Standing[0].By, "finding");
        foreach (var (end, slot) in inspection.Ties)
            if (!end.StartsWith("again:", StringComparison.Ordinal)) Condition(end.Split('/')[0], slot.Standing[0].By, "looseEnd");
        return told;
    }

    private void Both(EntryName entry, EntryName? place, EntryName? component)
    {
        Place(entry, place);
        if (component is { } thing && !things.Contains(thing) && !withdrawn.Contains(thing)) Lost(entry, "component", $"{thing}",
            telling.Say("again.missing.component", ("given", $"{thing}")));
    }

    private void Place(EntryName entry, EntryName? place)
    {
        if (place is { } there && !places.Contains(there) && !withdrawn.Contains(there)) Lost(entry, "place", $"{there}",
            telling.Say("again.missing.place", ("given", $"{there}")));
    }

    private void Duty(string id, EntryName by)
    {
        var colon = id.IndexOf(':', StringComparison.Ordinal);
        var (of, name) = colon < 0 ? ("", id) : (id[..colon], id[(colon + 1)..]);
        var known = of == "core" ? book.Core.Keys.Concat(book.Visit.Select(rule => rule.Id)) : book.Standards.TryGetValue(of,
            out var standard) ? standard.Duties.Select(duty => duty.Id) : book.Standards.Keys;
        if (!known.Contains(name)) Named(by, "duty", telling.Say("again.what.duty"), id, new Meant(id, Found.Unknown,
            Nearest.To(of.Length == 0 || of == "core" || book.Standards.ContainsKey(of) ? name : of, known) is { } near ? [near] : []));
    }

    /// <summary>A finding and a loose end are named by their condition, and stay named when the evidence is taken back.</summary>
    private void Condition(string id, EntryName by, string member)
    {
        if (id is not ("own" or "note")) Named(by, member, telling.Say("again.what.finding"), id, names.Condition(id));
    }

    private void Named(EntryName entry, string member, string what, string given, Meant meant)
    {
        // Nothing is judged by such a name, so a slip is not taken but told.
        var strict = meant.Found is Found.Slip or Found.Same ? new Meant(given, Found.Unknown, [meant.Name]) : meant;
        if (telling.Name(entry, member, what, given, strict, bars: false) is { } one) told.Add(one);
    }

    private void Lost(EntryName entry, string member, string given, string words) => told.Add(Telling.Odd(entry, member, given, words,
        bars: true));
}
