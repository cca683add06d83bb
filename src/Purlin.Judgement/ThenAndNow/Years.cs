using System.Text.Json.Nodes;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Judgement.Evidence;
using Purlin.Judgement.Findings;
using Purlin.Reckoning;
using Eras = Purlin.Reckoning.Years.Eras;

namespace Purlin.Judgement.ThenAndNow;

/// <summary>Judges a finding by the year of its thing: the rule of its day and the hazard whatever the rule are two matters.</summary>
internal sealed class Years(EvidenceIndex evidence, JudgingMemory memory)
{
    public ThenAndNowSentence? Of(Concern matter)
    {
        var said = from year in matter.Seen.Select(look => YearFor(look, matter.Condition.Component)).OfType<Dating>().Distinct()
                   from rule in RulesOf(matter).Order(StringComparer.Ordinal)
                   let sentence = memory.Year(rule, year.Known.Year, year.Structure, Reckon)
                   where sentence is not null
                   select Told(sentence, year);
        return said.OrderBy(sentence => sentence.Kind).FirstOrDefault();
    }

    /// <summary>The sentence about whatever has that year, and how the year is known where it was not read or seen.</summary>
    private ThenAndNowSentence Told(ThenAndNowSentence sentence, Dating year)
    {
        var words = sentence.Words;
        var how = year.Known.Basis switch { Basis.Told => "year.told", Basis.Presumed => "year.presumed", _ => "" };
        if (how.Length > 0) words = $"{words} {evidence.Book.Words.Say(how, ("year", $"{year.Known.Year}"))}";
        return sentence with { Words = words, Year = year.Known };
    }

    /// <summary>The rules for the kinds of place where it was seen, by name; the gravest of what they say is printed.</summary>
    private IEnumerable<string> RulesOf(Concern matter)
    {
        var byPlace = matter.Places.Select(place => matter.Condition.Eras.GetValueOrDefault(evidence.Place(place)?.Kind ?? "") ?? matter.Condition.Era);
        return byPlace.DefaultIfEmpty(matter.Condition.Era).OfType<string>().Select(rule => Eras.In(rule, State())).Distinct();
    }

    /// <summary>The state the house stands in, where it is on record.</summary>
    private string? State() => evidence.Component(evidence.House)?.Fact("state")?.Value.Text;

    /// <summary>
    /// The year of what was looked at: its own, else that of the structure its place is, else that of the house. The year of another thing is
    /// never taken, were it of the same kind: an undated panel is not as old as the dated one in the garage.
    /// </summary>
    private Dating? YearFor(Sighting look, string kind)
    {
        var component = evidence.Component(look.Component);
        if (Stated(component) is { } own) return own;
        if (component?.Kind != kind && Stated(OnlyOne(kind, look.Place ?? component?.Place)) is { } only) return only;
        if (evidence.Place(look.Place ?? component?.Place) is { } place && Stated(Single(evidence.ComponentsOf(place.Kind).Where(thing => thing.Place == place.Id))) is { } structure)
            return structure with { Known = structure.Known with { Of = YearOf.Structure }, Structure = place.Kind };
        // A part that was built later has its own year or none: that of the main house says nothing of it.
        if (evidence.PartOf(look.Place ?? component?.Place) is { } name && evidence.Parts.FirstOrDefault(one => one.Id == name) is { } part)
            return part.Year is { Value.Number: { } since } year ? new Dating(new KnownYear((int)since, YearOf.Structure, year.Basis),
                part.Kind) : null;
        if (Stated(evidence.Component(evidence.House), "year built") is { } house) return AsHouse(house.Known);
        return evidence.Property?.YearBuilt is { } built ? AsHouse(new KnownYear(built, YearOf.House, "")) : null;
    }

    private static Dating AsHouse(KnownYear year) => new(year with { Of = YearOf.House }, "house");

    private static Dating? Stated(Component? thing, string fact = "year") =>
        thing?.Fact(fact) is { Value.Number: { } year } stated ? new Dating(new KnownYear((int)year, YearOf.Thing, stated.Basis), null) : null;

    /// <summary>The thing that must be meant: the only one of its kind, or the only one of it in this place.</summary>
    private Component? OnlyOne(string kind, EntryName? place)
    {
        var all = evidence.ComponentsOf(kind).ToList();
        return Single(all) ?? Single(all.Where(thing => place is not null && thing.Place == place));
    }

    private static Component? Single(IEnumerable<Component> things) => things.Take(2).ToList() is [var only] ? only : null;

    /// <summary>A year, and the structure it is the year of where it is not that of the thing itself.</summary>
    private sealed record Dating(KnownYear Known, string? Structure);

    private ThenAndNowSentence? Reckon(string rule, int year, string? built)
    {
        var input = new JsonObject { ["rule"] = rule, ["year_installed"] = year };
        if (built is not null) input["built"] = built;
        var reckoned = Reckonings.Reckon("then-and-now", input);
        return reckoned.Match<ThenAndNowSentence?>(working => Read(rule, working), _ => null);
    }

    private ThenAndNowSentence Read(string rule, Working working)
    {
        var result = working.Result;
        var first = result["first_year"] is JsonValue value && value.TryGetValue<int>(out var year) ? year : (int?)null;
        var words = evidence.Book.Words.Say(working.Sentences.GetValueOrDefault("sentence") ?? working.Verdict.Because);
        return new ThenAndNowSentence(rule, KindOf(working, first), first, words, [.. working.Sources]);
    }

    /// <summary>A row about what was sold or permitted is no rule; what it leaves is the hazard.</summary>
    private static YearsKind KindOf(Working working, int? first) => (Word(working.Result["required_then"]), Word(working.Result["required_now"]), first, working.Sentences.ContainsKey("hazard")) switch
    {
        (_, "permitted" or "no" or "no longer used" or "partly" or "where adopted", _, true) => YearsKind.Hazard,
        // What a rule allows breaks none.
        (_, "permitted", _, _) => YearsKind.CannotSay,
        ("yes", _, _, _) => YearsKind.Broke,
        ("no", "yes" or "when work is done", _, _) => YearsKind.Advised,
        (_, not ("yes" or "when work is done"), null, true) => YearsKind.Hazard,
        _ => YearsKind.CannotSay,
    };

    private static string Word(JsonNode? node) => node is null ? "" : node.GetValueKind() == System.Text.Json.JsonValueKind.String ? node.GetValue<string>() : node.ToJsonString();
}
