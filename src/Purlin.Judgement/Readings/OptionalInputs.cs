using System.Text.Json.Nodes;
using Purlin.Book;
using Purlin.Journal;
using Purlin.Reckoning;

namespace Purlin.Judgement.Readings;

/// <summary>
/// Reckons, and where the reckoning refuses an input that it can do without, reckons without it: a wrong reading beside the main one never takes
/// that one with it. What was refused is told all the same.
/// </summary>
internal static class OptionalInputs
{
    /// <summary>What came of it, and why inputs were left out.</summary>
    public static (Checked<Working> Reckoned, IReadOnlyList<Refusal> LeftOut) Reckon(Feed feed, JsonObject inputs, JudgingMemory memory)
    {
        var first = memory.Reckon(feed, inputs);
        if (first.IsAccepted) return (first, []);
        var given = feed.Inputs.Where(input => input.Value.Optional && inputs.ContainsKey(input.Key)).Select(input => input.Key).ToList();
        var named = given.Where(name => first.Refusals.Any(refusal => Head(refusal.Input) == name)).ToList();
        // Those that the refusal names first; then all of them, for a refusal may name one of two that do not go together.
        foreach (var without in new[] { named, given }.Where(names => names.Count > 0))
            if (memory.Reckon(feed, Without(feed, inputs, without)) is { IsAccepted: true } reckoned) return (reckoned, first.Refusals);
        return (first, []);
    }

    private static JsonObject Without(Feed feed, JsonObject inputs, List<string> names)
    {
        var kept = inputs.DeepClone().AsObject();
        foreach (var name in names.Concat(feed.Together.Where(pair => pair.Any(names.Contains)).SelectMany(pair => pair))) kept.Remove(name);
        return kept;
    }

    /// <summary>The input itself, where a refusal names a member of it: <c>outdoor.tons</c>, <c>treads[2]</c>.</summary>
    private static string Head(string path) => path.IndexOfAny(['.', '[']) is > 0 and var at ? path[..at] : path;
}
