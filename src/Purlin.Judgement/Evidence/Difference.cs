using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Judgement.Memory;

namespace Purlin.Judgement.Evidence;

/// <summary>Tells the memory what has changed between two states of one inspection.</summary>
internal static class Difference
{
    /// <summary>Whether so little changed that what is remembered can be used: the opening, and with it property and standards, is the same.</summary>
    public static bool CanBeTold(Inspection before, Inspection after) => before.Id == after.Id && before.Opening?.Id == after.Opening?.Id && before.Opening?.Body == after.Opening?.Body;

    public static void Tell(Inspection before, Inspection after, Recall recall)
    {
        foreach (var place in Differing(before.Places, after.Places))
        {
            recall.Changed(Topic.Of(Subject.Place, place.Id));
            recall.Changed(Topic.Of(Subject.PlacesOf, place.Kind));
        }
        foreach (var component in Differing(before.Components, after.Components))
        {
            recall.Changed(Topic.Of(Subject.Component, component.Id));
            recall.Changed(Topic.Of(Subject.ComponentsOf, component.Kind));
        }
        foreach (var reading in Differing(before.Readings, after.Readings)) recall.Changed(Topic.Of(Subject.ReadingsOf, reading.Body.Kind));
        foreach (var photo in Differing(before.Photos, after.Photos))
            if (photo.For is { } shown) recall.Changed(Topic.Of(Subject.PhotosFor, shown));
        foreach (var absence in Differing(before.Absences, after.Absences)) recall.Changed(Topic.Of(Subject.Absent, absence.Kind));
        if (Differing(before.Parts, after.Parts).Any()) recall.Changed(Topic.Of(Subject.Parts));
        if (Differing(before.Limitations, after.Limitations).Any()) recall.Changed(Topic.Of(Subject.Limitations));
        foreach (var tie in Differing(before.Ties, after.Ties)) recall.Changed(Topic.Of(Subject.Tie, tie));
        foreach (var duty in Differing(before.DutiesMet, after.DutiesMet)) recall.Changed(Topic.Of(Subject.Duty, duty));
        if (ReferenceEquals(before.Withdrawn, after.Withdrawn)) return;
        HashSet<EntryName> turned = [.. before.Withdrawn];
        turned.SymmetricExceptWith(after.Withdrawn);
        foreach (var entry in turned) recall.Changed(Topic.Of(Subject.Withdrawn, entry));
    }

    /// <summary>
    /// What stands in one list and not in the same order in the other. Lists of one visit differ by a thing at the end or one taken out of the
    /// middle, so what is alike at both ends is passed over and the rest counts as changed.
    /// </summary>
    private static IEnumerable<T> Differing<T>(IReadOnlyList<T> before, IReadOnlyList<T> after)
        where T : class
    {
        if (ReferenceEquals(before, after)) return [];
        var (first, ends) = Window.Of(before.Count, after.Count, (one, other) => Same(before[one], after[other]));
        return [.. before.Take(before.Count - ends).Skip(first), .. after.Take(after.Count - ends).Skip(first)];
    }

    private static bool Same<T>(T left, T right)
        where T : class => ReferenceEquals(left, right) || (left is Place && left.Equals(right));

    private static IEnumerable<string> Differing<T>(IReadOnlyDictionary<string, Slot<T>> before, IReadOnlyDictionary<string, Slot<T>> after)
    {
        if (ReferenceEquals(before, after)) yield break;
        foreach (var (key, slot) in before)
            if (!after.TryGetValue(key, out var now) || !slot.Standing.Select(value => value.By).SequenceEqual(now.Standing.Select(value => value.By))) yield return key;
        foreach (var key in after.Keys)
            if (!before.ContainsKey(key)) yield return key;
    }
}
