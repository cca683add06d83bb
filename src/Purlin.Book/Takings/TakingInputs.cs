using System.Text.Json.Nodes;

namespace Purlin.Book.Takings;

/// <summary>Takings by the names of the inputs that they fill.</summary>
public static class TakingInputs
{
    /// <summary>Fills every input that is on record; whether all that must be there were found.</summary>
    public static bool Fill(this IReadOnlyDictionary<string, Taking> inputs, Ground ground, FeedGroup group, FedInputs fed, JsonObject into)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        // All are looked for, also when one is missing: only then can it be told whether it is the only one, and whether anything was
        // begun.
        var whole = true;
        foreach (var (name, taking) in inputs)
        {
            if (taking.With is { } other && !into.ContainsKey(other)) continue;
            if (taking.Value(ground, group, fed) is { } value) into[name] = value;
            else whole &= !IsNeeded(taking, into);
        }
        return whole;
    }

    /// <summary>What keeps these inputs from being whole.</summary>
    public static IEnumerable<Lack> Lacks(this IReadOnlyDictionary<string, Taking> inputs, Ground ground, FeedGroup group)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        var given = new JsonObject();
        foreach (var (name, taking) in inputs)
        {
            if (taking.With is { } other && !given.ContainsKey(other)) continue;
            var scratch = new FedInputs(group.Component?.Id);
            var value = taking.Value(ground, group, scratch);
            if (value is not null) given[name] = value;
            if (!scratch.LacksKnownPart && (value is not null || !IsNeeded(taking, given))) continue;
            foreach (var lack in taking.Lacks(ground, group)) yield return lack;
        }
    }

    /// <summary>
    /// The inputs of an object inside a reckoning's input; none when something it needs is not on record. What is left out leaves no
    /// evidence behind.
    /// </summary>
    internal static JsonObject? Object(this IReadOnlyDictionary<string, Taking> inputs, Ground ground, FeedGroup group, FedInputs fed)
    {
        var made = new JsonObject();
        var its = fed.Beside();
        var whole = inputs.Fill(ground, group, its, made) && made.Count > 0;
        fed.LacksKnownPart |= its.LacksKnownPart;
        if (whole) fed.Take(its);
        return whole ? made : null;
    }

    /// <summary>Whether an input is needed here: by itself, or because another one is given.</summary>
    private static bool IsNeeded(Taking taking, JsonObject into) => taking.With is { } other ? into.ContainsKey(other) : !taking.Optional;
}
