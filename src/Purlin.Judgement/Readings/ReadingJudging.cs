using System.Text.Json.Nodes;
using Purlin.Book;
using Purlin.Book.Takings;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Judgement.Evidence;
using Purlin.Reckoning;

namespace Purlin.Judgement.Readings;

/// <summary>What one feed came to.</summary>
internal sealed class FeedResult
{
    public List<JudgedWorking> Workings { get; } = [];

    public List<RefusedReckoning> Refused { get; } = [];

    public List<AskedEvidence> Asks { get; } = [];

    public List<Sighting> Looks { get; } = [];
}

/// <summary>Judges readings and facts by themselves: calls the reckonings they feed, keeps the workings, and raises conditions as looks.</summary>
internal sealed class ReadingJudging(EvidenceIndex evidence, JudgingMemory memory)
{
    private readonly EvidenceGround ground = new(evidence, memory);

    /// <summary>Every reckoning done, in the order of the rule book's feeds.</summary>
    public List<JudgedWorking> Workings { get; } = [];

    /// <summary>Reckonings that had all their inputs and refused one of them.</summary>
    public List<RefusedReckoning> Refused { get; } = [];

    /// <summary>Readings and facts of which one alone is missing before something can be reckoned.</summary>
    public List<AskedEvidence> Asks { get; } = [];

    public List<Sighting> Judge()
    {
        List<Sighting> looks = [];
        foreach (var feed in evidence.Book.Feeds)
        {
            var result = memory.Feed(feed, () => Whole(feed));
            Workings.AddRange(result.Workings);
            Refused.AddRange(result.Refused);
            Asks.AddRange(result.Asks);
            looks.AddRange(result.Looks);
        }
        foreach (var kind in memory.Book.NumbersThatRaise)
            looks.AddRange(memory.Recall.Once<List<Sighting>>("number", kind.Kind, null, () => [.. evidence.ReadingsOf(kind.Kind).SelectMany(reading => ByNumber(kind, reading))]));
        foreach (var (kind, rules) in memory.Book.FactRules)
            looks.AddRange(memory.Recall.Once<List<Sighting>>("fact", kind, null, () => [.. rules.SelectMany(rule => evidence.ComponentsOf(kind).SelectMany(component => ByFact(rule, component)))]));
        return looks;
    }

    private FeedResult Whole(Feed feed)
    {
        FeedResult result = new();
        foreach (var group in FeedGroups.Of(feed, evidence)) ByReckoning(feed, group, result);
        return result;
    }

    private void ByReckoning(Feed feed, FeedGroup group, FeedResult result)
    {
        if (!Reckonings.Find(feed.Reckoning).IsAccepted || feed.Without.Any(fact => group.Component?.Fact(fact) is not null)) return;
        var fed = feed.Bind(ground, group);
        if (!fed.IsBegun) return;
        if (!fed.IsWhole)
        {
            if (feed.Asks) Ask(feed, group, fed, result);
            return;
        }
        if (feed.Bars.FirstOrDefault(bar => group.Component?.Fact(bar.Fact) is { } known && bar.Is.Contains(known.Value.Text, StringComparer.OrdinalIgnoreCase)) is { } bar)
        {
            Refuse(feed, group, fed, [bar.Because], result);
            return;
        }
        var (reckoned, leftOut) = OptionalInputs.Reckon(feed, fed.Inputs, memory);
        // A wet bulb above its dry bulb, a point beside the plan: the readings stand as evidence, and the person is asked to look again.
        Refuse(feed, group, fed, (reckoned.IsAccepted ? leftOut : reckoned.Refusals).Select(refusal => refusal.In(evidence.Book.Words)), result);
        if (!reckoned.IsAccepted) return;
        var working = reckoned.OrThrow();
        JudgedWorking judged = new(working, fed.Entries, group.Component?.Id, group.Place);
        result.Workings.Add(judged);
        foreach (var (member, fact) in feed.Confirms) Confirm(feed, group, working, member, fact, result);
        foreach (var raise in feed.Raises.Where(raise => InPlace(raise, group.Place)))
            if (Raising.By(raise, working) is { } raised)
                result.Looks.Add(Look(raise, raised, fed.Entries, group.Place, group.Component?.Id, raise.Because ?? evidence.Book.Words.Say(working.Verdict.Because)) with { Working = judged });
    }

    private static void Refuse(Feed feed, FeedGroup group, FedInputs fed, IEnumerable<string> reasons, FeedResult result)
    {
        if (reasons.ToList() is { Count: > 0 } told) result.Refused.Add(new RefusedReckoning(feed.Reckoning, told, fed.Entries, group.Place));
    }

    /// <summary>Where one thing alone is missing it is asked for; where one is there and not understood, that is said.</summary>
    private void Ask(Feed feed, FeedGroup group, FedInputs fed, FeedResult result)
    {
        if (feed.Lacks(ground, group) is not [{ CanBeAsked: true } lack]) return;
        if (lack.Given is { } given)
        {
            Refuse(feed, group, fed, [new Refusal(lack.Fact!, Said.Verbatim(given), new("allowed.word", ("words", SaidValue.Of(lack.Known)))).In(evidence.Book.Words)], result);
            return;
        }
        var key = lack.Reading is not null ? "asked.reading" : lack.Property is not null ? "asked.property" : "asked.fact";
        result.Asks.Add(new AskedEvidence(feed.Reckoning, evidence.Book.Words.Say(key,
            ("what", lack.Reading ?? lack.Fact ?? PropertyWords(lack.Property!)), ("component", lack.Component?.Kind ?? ""), ("answer", feed.Answers is [var first, ..] ? first : feed.Reckoning)),
            lack.Reading, lack.Fact, lack.Component?.Id ?? group.Component?.Id, lack.Component is null ? group.Place : lack.Component.Place));
    }

    /// <summary>What a plate only suggests is judged by nobody until a person says so.</summary>
    private void Confirm(Feed feed, FeedGroup group, Working working, string member, string fact, FeedResult result)
    {
        if (group.Component is not { } component || component.Fact(fact) is not null) return;
        if (Raising.At(working, "result." + member) is not JsonObject found || (string?)found["confidence"] != "inferred") return;
        result.Asks.Add(new AskedEvidence(feed.Reckoning, evidence.Book.Words.Say("asked.confirm", ("what", fact), ("component", component.Kind),
            ("value", $"{found["value"]} {found["unit"]}".TrimEnd()), ("reason", working.Sentences.TryGetValue(member + ".reason", out var reason) ? evidence.Book.Words.Say(reason) : "")), null, fact, component.Id, component.Place));
    }

    private static string PropertyWords(string name) => string.Concat(name.Select(letter => char.IsUpper(letter) ? $" {char.ToLowerInvariant(letter)}" : $"{letter}"));

    private IEnumerable<Sighting> ByNumber(ReadingKind kind, Reading reading)
    {
        foreach (var raise in kind.Raises)
        {
            if (!InPlace(raise, evidence.PlaceOf(reading)) || !Raising.Number(reading.Body.Amount, raise.Unit.Length > 0 ? raise.Unit : kind.Unit, out var number)) continue;
            if (!raise.For.All(only => Known(reading, only.Key, only.Value))) continue;
            var raised = Raising.Beyond(raise, number);
            if (!raised && !raise.Clears) continue;
            var words = evidence.Book.Words.Say("observed.reading", ("kind", kind.Kind), ("amount", reading.Body.Amount.ToString()));
            yield return Look(raise, raised, [reading.Id], evidence.PlaceOf(reading), reading.Body.Component, Findings.FindingWriting.Join(words, raise.Because ?? ""));
        }
    }

    /// <summary>Whether what is on record under that name is one of the words: of the component read on, else of everything in the same place.</summary>
    private bool Known(Reading reading, string fact, IReadOnlyList<string> words)
    {
        bool IsOne(Fact known) => words.Contains(known.Value.Text, StringComparer.OrdinalIgnoreCase);
        if (evidence.Component(reading.Body.Component)?.Fact(fact) is { } own) return IsOne(own);
        if (evidence.PlaceOf(reading) is not { } place) return false;
        List<Fact> there =
        [
            .. evidence.Book.Sheets.Values.Where(sheet => sheet.Facts.Any(kind => kind.Fact == fact)).OrderBy(sheet => sheet.Component, StringComparer.Ordinal)
                .SelectMany(sheet => evidence.ComponentsOf(sheet.Component)).Where(component => component.Place == place)
                .Select(component => component.Fact(fact)).OfType<Fact>(),
        ];
        return there.Count > 0 && there.TrueForAll(IsOne);
    }

    private IEnumerable<Sighting> ByFact(FactRule rule, Component component)
    {
        if (!component.Facts.TryGetValue(rule.Fact, out var slot)) yield break;
        var fact = slot.Value;
        var raised = fact.Value.Number is { } number
            ? Raising.Beyond(rule.Raise, rule.Age ? evidence.YearNow - number : number)
            : rule.Raise.Is.Contains(fact.Value.Text, StringComparer.OrdinalIgnoreCase);
        if (!raised && !rule.Raise.Clears) yield break;
        var words = evidence.Book.Words.Say("observed.fact", ("component", rule.Component), ("fact", rule.Fact), ("value", fact.Value.Text), ("basis", fact.Basis));
        yield return Look(rule.Raise, raised, [slot.Standing[0].By], component.Place, component.Id, Findings.FindingWriting.Join(words, rule.Raise.Because ?? ""));
    }

    private bool InPlace(Raise raise, EntryName? place) => raise.In.Count == 0 || raise.In.Contains(evidence.Place(place)?.Kind ?? "");

    private Sighting Look(Raise raise, bool raised, IReadOnlyList<EntryName> entries, EntryName? place, EntryName? component, string words) => new Sighting
    {
        Condition = raise.Condition,
        Outcome = raised ? Outcome.Seen : Outcome.Clear,
        Entries = entries,
        Place = place,
        Component = component,
        Words = words,
    }.Placed(evidence);
}
