using Purlin.Journal;

namespace Purlin.Book.Looking;

/// <summary>What stands in a kind of place in most houses, in the order of the eye: from the ground up, from the door clockwise.</summary>
public sealed record Usual
{
    /// <summary>Kind of place.</summary>
    public required string Place { get; init; }

    /// <summary>The things, as the eye meets them.</summary>
    public required IReadOnlyList<UsualThing> Things { get; init; }

    /// <summary>Conditions that a senior inspector has in mind on entering such a place, the first ones first.</summary>
    public IReadOnlyList<string> First { get => field ?? []; init; }

    /// <summary>Ids of sources, or <c>common practice</c>.</summary>
    public IReadOnlyList<string> Sources { get => field ?? []; init; }

    /// <summary>The share of such places that have a thing, in a house of these facts; what the book does not name is rare there.</summary>
    public double Share(string component, Property? property)
    {
        var named = Things.Where(thing => thing.Component == component).ToList();
        return named.Where(thing => thing.IsFor(property)).Select(thing => thing.Share).DefaultIfEmpty(named.Count > 0 ? Rare : Unsaid)
            .Max();
    }

    /// <summary>
    /// How many times likelier a condition is met in such a place than on its kind of thing anywhere; 1 for what is not in mind there.
    /// </summary>
    public double InMind(string condition)
    {
        for (var at = 0; at < First.Count; at++)
            if (First[at] == condition) return 1 + (Foremost * Math.Pow(Next, at));
        return 1;
    }

    private const double Foremost = 12;
    private const double Next = 0.97;
    private const double Rare = 0.02;
    private const double Unsaid = 0.01;
}

/// <summary>A thing that is usual in a kind of place.</summary>
public sealed record UsualThing
{
    /// <summary>Kind of component.</summary>
    public required string Component { get; init; }

    /// <summary>The share of such places that have it, 0 to 1.</summary>
    public required double Share { get; init; }

    /// <summary>Only where the house is so; none for any house.</summary>
    public HouseWith? With { get; init; }

    /// <summary>Whether this line speaks for a house of these facts; what is not known of the house does not speak against it.</summary>
    public bool IsFor(Property? property) => With is not { } with || property is not { } house
        || (IsSo(with.Foundation, house.Foundation) && IsSo(with.Garage, house.Garage)
            && IsSo(with.Deck, Told(house.Deck)) && IsSo(with.Chimney, Told(house.Chimney)));

    private static bool IsSo(string? wanted, string? told) => wanted is null || told is null || wanted == told;

    private static string? Told(bool? fact) => fact is { } told ? told ? "yes" : "no" : null;
}

/// <summary>Facts of the property that a line asks for.</summary>
public sealed record HouseWith
{
    /// <summary><c>slab</c>, <c>crawl space</c>, <c>basement</c>, <c>piers</c>.</summary>
    public string? Foundation { get; init; }

    /// <summary><c>none</c>, <c>attached</c>, <c>detached</c>, <c>carport</c>.</summary>
    public string? Garage { get; init; }

    /// <summary><c>yes</c> or <c>no</c>.</summary>
    public string? Deck { get; init; }

    /// <summary><c>yes</c> or <c>no</c>.</summary>
    public string? Chimney { get; init; }
}
