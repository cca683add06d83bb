using System.Text.Json.Nodes;
using Purlin.Journal;
using Purlin.Judgement.Evidence;
using Purlin.Judgement.Findings;
using Purlin.Reckoning;
using Dated = Purlin.Reckoning.Years.ThenAndNow;

namespace Purlin.Judgement.ThenAndNow;

/// <summary>Judges a finding by the year of its thing: the rule of its day and the hazard whatever the rule are two matters.</summary>
internal sealed class Years(EvidenceIndex evidence, JudgingMemory memory)
{
    /// <summary>It was asked for when this was put in.</summary>
    public const string Broke = "broke the rule of its day";

    /// <summary>It was not asked for then; it is today.</summary>
    public const string Advised = "not required then, advised now";

    /// <summary>No rule of any year asks for it, and it hurts people all the same.</summary>
    public const string Hazard = "never a rule but a known hazard";

    /// <summary>The years do not decide.</summary>
    public const string CannotSay = "cannot say";

    private static readonly string[] Gravest = [Broke, Hazard, Advised, CannotSay];

    public ThenAndNowSentence? Of(Matter matter)
    {
        var own = YearOf(matter);
        if ((own ?? evidence.Property?.YearBuilt) is not { } year) return null;
        var gravest = RulesOf(matter).Order(StringComparer.Ordinal).Select(rule => memory.Year(rule, year, Reckon))
            .OrderBy(sentence => sentence is null ? Gravest.Length : Array.IndexOf(Gravest, sentence.Kind)).FirstOrDefault();
        // Nobody knows that an outlet of an old house is as old as the house.
        return own is not null || gravest is null ? gravest : gravest with { Words = gravest.Words.Replace(Dated.Installed, Dated.Built, StringComparison.Ordinal) };
    }

    /// <summary>The rules for the kinds of place where it was seen, by name; the gravest of what they say is printed.</summary>
    private IEnumerable<string> RulesOf(Matter matter)
    {
        var byPlace = matter.Places.Select(place => matter.Condition.Eras.GetValueOrDefault(evidence.Place(place)?.Kind ?? "") ?? matter.Condition.Era);
        return byPlace.DefaultIfEmpty(matter.Condition.Era).OfType<string>().Distinct();
    }

    /// <summary>The year on the thing itself, when there is one.</summary>
    private int? YearOf(Matter matter)
    {
        foreach (var look in matter.Seen)
            if (evidence.Component(look.Component)?.Fact("year")?.Value.Number is { } year) return (int)year;
        foreach (var component in evidence.ComponentsOf(matter.Condition.Component))
            if (component.Fact("year")?.Value.Number is { } year) return (int)year;
        return null;
    }

    private static ThenAndNowSentence? Reckon(string rule, int year)
    {
        var reckoned = Reckonings.Reckon("then-and-now", new JsonObject { ["rule"] = rule, ["year_installed"] = year });
        return reckoned.Match<ThenAndNowSentence?>(working => Read(rule, working), _ => null);
    }

    private static ThenAndNowSentence Read(string rule, Working working)
    {
        var result = working.Result;
        var first = result["first_year"] is JsonValue value && value.TryGetValue<int>(out var year) ? year : (int?)null;
        var words = result["sentence"] is JsonValue sentence && sentence.TryGetValue<string>(out var said) ? said : working.Verdict.Because;
        return new ThenAndNowSentence(rule, KindOf(result, first), first, words, [.. working.Sources]);
    }

    /// <summary>A row about what was sold or permitted is no rule; what it leaves is the hazard.</summary>
    private static string KindOf(JsonObject result, int? first) => (Word(result["required_then"]), Word(result["required_now"]), first, result["hazard"] is not null) switch
    {
        (_, "permitted" or "no" or "no longer used" or "partly" or "where adopted", _, true) => Hazard,
        // What a rule allows breaks none.
        (_, "permitted", _, _) => CannotSay,
        ("yes", _, _, _) => Broke,
        ("no", "yes" or "when work is done", _, _) => Advised,
        (_, not ("yes" or "when work is done"), null, true) => Hazard,
        _ => CannotSay,
    };

    private static string Word(JsonNode? node) => node is null ? "" : node.GetValueKind() == System.Text.Json.JsonValueKind.String ? node.GetValue<string>() : node.ToJsonString();
}
