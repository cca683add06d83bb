namespace Purlin.Journal.Fold;

/// <summary>The names in a body: what it builds on. One list of members serves both for reading them and for putting fork marks on them.</summary>
internal static class Names
{
    private static readonly IReadOnlyList<EntryName> None = [];

    /// <summary>Every entry the body names, in the order of its members.</summary>
    public static IReadOnlyList<EntryName> In(EntryBody body)
    {
        List<EntryName>? found = null;
        Mapped(body, name =>
        {
            (found ??= []).Add(name);
            return name;
        });
        return found ?? None;
    }

    /// <summary>The body with every name passed through <paramref name="map"/>.</summary>
    public static EntryBody Mapped(EntryBody body, Func<EntryName, EntryName> map)
    {
        EntryName? Maybe(EntryName? name) => name is { } there ? map(there) : null;
        IReadOnlyList<EntryName> Each(IReadOnlyList<EntryName> names) => names.Count == 0 ? names : [.. names.Select(map)];
        return body switch
        {
            EntryBody.PlaceAdded added => added with { Parent = Maybe(added.Parent) },
            EntryBody.ComponentAdded added => added with { Place = Maybe(added.Place) },
            EntryBody.ReadingTaken taken => taken with { Place = Maybe(taken.Place), Component = Maybe(taken.Component) },
            EntryBody.ObservationMade made => made with { Place = map(made.Place), Component = Maybe(made.Component) },
            EntryBody.PhotoTaken taken => taken with { Place = Maybe(taken.Place), Component = Maybe(taken.Component), For = Maybe(taken.For) },
            EntryBody.SoundTaken taken => taken with { Place = Maybe(taken.Place), Component = Maybe(taken.Component) },
            EntryBody.LimitationRecorded recorded => recorded with { Place = Maybe(recorded.Place), Component = Maybe(recorded.Component) },
            EntryBody.FactStated stated => stated with { Component = map(stated.Component), Replaces = Each(stated.Replaces) },
            EntryBody.PlaceNamed named => named with { Place = map(named.Place), Replaces = Each(named.Replaces) },
            EntryBody.PlacePlaced placed => placed with { Place = map(placed.Place), Parent = Maybe(placed.Parent), Replaces = Each(placed.Replaces) },
            EntryBody.PhotoPlaced placed => placed with
            {
                Photo = map(placed.Photo),
                For = Maybe(placed.For),
                Place = Maybe(placed.Place),
                Component = Maybe(placed.Component),
                Replaces = Each(placed.Replaces),
            },
            EntryBody.NoteWritten written => written with { About = Maybe(written.About), Replaces = Each(written.Replaces) },
            EntryBody.LooseEndTied tied => tied with { Evidence = Each(tied.Evidence), Replaces = Each(tied.Replaces) },
            EntryBody.JudgementOverruled overruled => overruled with { Replaces = Each(overruled.Replaces) },
            EntryBody.DutyMet met => met with { Replaces = Each(met.Replaces) },
            EntryBody.WordingSaid said => said with { Replaces = Each(said.Replaces) },
            EntryBody.ConditionWritten written => written with { Replaces = Each(written.Replaces) },
            EntryBody.EntryWithdrawn withdrawn => withdrawn with { Entry = map(withdrawn.Entry) },
            EntryBody.EntryRestored restored => restored with { Entry = map(restored.Entry) },
            _ => body,
        };
    }
}
