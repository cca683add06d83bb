namespace Purlin.Journal.Fold;

/// <summary>What goes with a thing that is taken back: a place with what was found in it, a component with what was said of it.</summary>
public static class Holdings
{
    /// <summary>The entries to take back, what rests on others before what it rests on, the thing itself last.</summary>
    /// <param name="inspection">The state.</param>
    /// <param name="thing">A place, a component or any other entry.</param>
    public static IReadOnlyList<EntryName> Of(Inspection inspection, EntryName thing)
    {
        ArgumentNullException.ThrowIfNull(inspection);
        List<EntryName> places = Below(inspection.Places, place => place.Id, place => place.Parent, [thing]);
        HashSet<EntryName> held = [.. places];
        List<EntryName> components = [.. inspection.Components.Where(component => component.Place is { } at && held.Contains(at))
            .Select(component => component.Id)];
        components = Below(inspection.Components, component => component.Id, component => component.Of, [.. places, .. components]);
        held.UnionWith(components);
        bool Held(params ReadOnlySpan<EntryName?> names)
        {
            foreach (var name in names)
                if (name is { } there && held.Contains(there)) return true;
            return false;
        }

        List<EntryName> evidence =
        [
            .. inspection.Observations.Where(one => Held(one.Body.Place, one.Body.Component)).Select(one => one.Id),
            .. inspection.Readings.Where(one => Held(one.Body.Place, one.Body.Component)).Select(one => one.Id),
            .. inspection.Limitations.Where(one => Held(one.Body.Place, one.Body.Component)).Select(one => one.Id),
            .. inspection.Photos.Where(one => Held(one.Place, one.Component)).Select(one => one.Id),
            .. inspection.Sounds.Where(one => Held(one.Body.Place, one.Body.Component)).Select(one => one.Id),
            .. inspection.Absences.Where(one => Held(one.Place)).Select(one => one.Id),
        ];
        held.UnionWith(evidence);
        var notes = inspection.Notes.Where(note => Held(note.About)).SelectMany(note => note.Text.Standing).Select(stated => stated.By);
        return [.. notes.Concat(evidence).Distinct(), .. components.Except(places).Reverse(), .. places.AsEnumerable().Reverse()];
    }

    /// <summary>These and everything under them, the nearest first. What stands in a ring is met once.</summary>
    private static List<EntryName> Below<T>(IReadOnlyList<T> all, Func<T, EntryName> name, Func<T, EntryName?> over, List<EntryName> from)
    {
        var under = all.Where(one => over(one) is not null).ToLookup(one => over(one)!.Value, name);
        List<EntryName> found = [.. from];
        HashSet<EntryName> met = [.. from];
        for (var at = 0; at < found.Count; at++)
            foreach (var next in under[found[at]])
                if (met.Add(next)) found.Add(next);
        return found;
    }
}
