namespace Purlin.Book.Looking;

/// <summary>
/// How often a thing of its kind shows a condition, as a senior inspector would guess it. No published rates exist for houses at large:
/// five steps order the looks, and nothing that a client reads rests on them.
/// </summary>
public sealed record Often
{
    /// <summary>The condition.</summary>
    public required string Condition { get; init; }

    /// <summary>1 (hardly ever) to 5 (in every second or third house).</summary>
    public required int Step { get; init; }

    /// <summary>First year built to which the step belongs; none for any.</summary>
    public int? From { get; init; }

    /// <summary>Last year built to which the step belongs; none for any.</summary>
    public int? To { get; init; }

    /// <summary>Of a condition the book says nothing about: met now and then.</summary>
    public const int Unsaid = 2;

    /// <summary>
    /// The share of things of its kind that show it, from 0 to 1. Outside its years it is two steps rarer; with no year known, one.
    /// </summary>
    /// <param name="built">Year of the part of the house, when known.</param>
    public double Share(int? built)
    {
        if (From is null && To is null) return Share(Step);
        if (built is not { } year) return Share(Step - 1);
        return (From is not { } from || year >= from) && (To is not { } to || year <= to) ? Share(Step) : Share(Step - 2);
    }

    /// <summary>The share that a step stands for; each is about three times the one below.</summary>
    public static double Share(int step) => step switch
    {
        >= 5 => 0.35,
        4 => 0.15,
        3 => 0.06,
        2 => 0.02,
        _ => 0.005,
    };
}
