using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Book;
using Purlin.Judgement.Duties;
using Purlin.Judgement.Evidence;
using Purlin.Reckoning.Quantities;

namespace Purlin.Judgement.Findings;

/// <summary>Offers a limitation in the moment a reading or fact calls for it, until somebody has taken it up.</summary>
internal static class Offering
{
    public static List<OfferedLimitation> List(EvidenceIndex evidence, IReadOnlyList<LimitationRule> rules)
    {
        var taken = evidence.Limitations.Select(limitation => limitation.Body.Rule).ToHashSet();
        List<OfferedLimitation> offers = [];
        foreach (var rule in rules)
        {
            if (taken.Contains(rule.Id) || !IsThere(evidence, rule.Component)) continue;
            if (rule.When!.Sizes.Count > 0) BySizes(evidence, rule, offers);
            else if (rule.When.Reading is { } kind) ByReading(evidence, rule, kind, offers);
            else if (rule.When.Fact is { } fact) ByFact(evidence, rule, fact, offers);
        }
        return offers;
    }

    /// <summary>Weather too warm for a heat pump is nothing to a house that has none.</summary>
    private static bool IsThere(EvidenceIndex evidence, string component) => !evidence.Book.ToldApart.Contains(component) || evidence.ComponentsOf(component).Any();

    private static void ByReading(EvidenceIndex evidence, LimitationRule rule, string kind, List<OfferedLimitation> offers)
    {
        var when = rule.When!;
        var below = when.Setting is { } setting && StandardLimits.Strictest(evidence, setting) is { } strictest ? strictest : when.Below;
        List<EntryName> because = [];
        var words = "";
        foreach (var reading in evidence.ReadingsOf(kind))
        {
            var number = reading.Body.Amount.Value;
            if (when.Unit is { } unit && unit != reading.Body.Amount.Unit && !Units.TryConvert(number, reading.Body.Amount.Unit, unit, out number)) continue;
            if (!(number < below || number > when.Above)) continue;
            because.Add(reading.Id);
            words = evidence.Book.Words.Say("observed.reading", ("kind", kind), ("amount", reading.Body.Amount.ToString()));
        }
        if (because.Count > 0) offers.Add(new OfferedLimitation(rule.Id, rule.What, Cause(rule, words), rule.Next, because));
    }

    /// <summary>An opening too small to enter for one standard may be large enough for another: it is offered when all of them let it pass.</summary>
    private static void BySizes(EvidenceIndex evidence, LimitationRule rule, List<OfferedLimitation> offers)
    {
        var when = rule.When!;
        List<EntryName> because = [];
        List<string> words = [];
        foreach (var (standard, setting) in StandardLimits.Sizes(evidence, when.Setting ?? ""))
        {
            var small = Below(evidence, when, setting).ToList();
            if (small.Count == 0) return;
            because.AddRange(small.Select(one => one.Reading.Id));
            words.AddRange(small.Select(one => evidence.Book.Words.Say("offer.size", ("kind", FindingWriting.Sentence(one.Reading.Body.Kind, stop: false)), ("amount", one.Reading.Body.Amount.ToString()), ("standard", standard.Short), ("least", $"{one.Least:0.##} {when.Unit}"))));
        }
        if (because.Count > 0) offers.Add(new OfferedLimitation(rule.Id, rule.What, string.Join(' ', words.Distinct(StringComparer.Ordinal)), rule.Next, [.. because.Distinct()]));
    }

    private static IEnumerable<(Reading Reading, double Least)> Below(EvidenceIndex evidence, OfferWhen when, Setting setting)
    {
        foreach (var (kind, size) in when.Sizes)
            if (setting.Sizes.TryGetValue(size, out var least))
                foreach (var reading in evidence.ReadingsOf(kind))
                    if (Units.TryConvert(reading.Body.Amount.Value, reading.Body.Amount.Unit, when.Unit ?? "in", out var number) && number < least) yield return (reading, least);
    }

    private static void ByFact(EvidenceIndex evidence, LimitationRule rule, string fact, List<OfferedLimitation> offers)
    {
        var (named, name) = FactName.Parse(fact);
        var kind = named ?? "house";
        // The house itself may state a fact of its utilities, before anybody has added them as a component.
        var stated = evidence.ComponentsOf(kind).Select(component => component.Facts.GetValueOrDefault(name))
            .Concat(evidence.ComponentsOf("house").Select(house => house.Facts.GetValueOrDefault(fact)))
            .FirstOrDefault(slot => slot is not null && string.Equals(slot.Value.Value.Text, rule.When!.Is, StringComparison.OrdinalIgnoreCase));
        if (stated is null) return;
        offers.Add(new OfferedLimitation(rule.Id, rule.What, Cause(rule, $"{kind}, {name}: {stated.Value.Value.Text}"), rule.Next, [stated.Standing[0].By]));
    }

    private static string Cause(LimitationRule rule, string words) => rule.Reasons.Count == 0 ? words : FindingWriting.Join(FindingWriting.Sentence(rule.Reasons[0], stop: true), words);
}
