using Purlin.Book;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Judgement;

namespace Purlin.Report.Writing;

/// <summary>The evidence by name, and how each piece of it is said in a line.</summary>
internal sealed class Record
{
    private readonly Dictionary<EntryName, Place> places;
    private readonly Dictionary<EntryName, Component> components;
    private readonly Dictionary<EntryName, Observation> observations;
    private readonly Dictionary<EntryName, Reading> readings;
    private readonly Dictionary<EntryName, (Component Component, string Fact, Fact Value, DateTimeOffset At)> facts = [];
    private readonly Dictionary<LooseEnd, Finding?> openedBy = new(ReferenceEqualityComparer.Instance);

    public Record(Inspection inspection, JudgedInspection judged, RuleBook book)
    {
        (Inspection, Judged, Book, Words) = (inspection, judged, book, new Phrase(book.Words));
        places = inspection.Places.ToDictionary(place => place.Id);
        components = inspection.Components.ToDictionary(component => component.Id);
        observations = inspection.Observations.ToDictionary(observation => observation.Id);
        readings = inspection.Readings.ToDictionary(reading => reading.Id);
        foreach (var component in inspection.Components)
            foreach (var (name, slot) in component.Facts)
                foreach (var stated in slot.Standing) facts[stated.By] = (component, name, stated.Value, stated.At);
        Matters = [.. judged.Findings.Where(finding => !finding.LeftOut)];
        foreach (var end in judged.LooseEnds) openedBy[end] = Matters.FirstOrDefault(finding => finding.Evidence.Intersect(end.OpenedBy).Any());
    }

    public Inspection Inspection { get; }

    public JudgedInspection Judged { get; }

    public RuleBook Book { get; }

    /// <summary>Turns of phrase in the language of the book.</summary>
    public Phrase Words { get; }

    /// <summary>Findings that are in the report, in the order of their numbers.</summary>
    public IReadOnlyList<Finding> Matters { get; }

    /// <summary>The house itself, with the facts stated of it.</summary>
    public Component? House => Inspection.Opening is { } opening ? components.GetValueOrDefault(opening.Id) : null;

    public string PlaceName(EntryName? place) => place is { } name && places.TryGetValue(name, out var found) ? Words.Place(found.Name) : "";

    public string ComponentName(EntryName? component) => component is { } name && components.TryGetValue(name, out var found) ? ComponentName(found) : "";

    public string ComponentName(Component component) => component.Name is { Length: > 0 } name && !name.Contains(component.Kind, StringComparison.OrdinalIgnoreCase) ? $"{Words.Kind(component.Kind)}, {name}" : component.Name ?? Words.Kind(component.Kind);

    public Observation? Observation(EntryName entry) => observations.GetValueOrDefault(entry);

    /// <summary>The number of the matter that opened a loose end; none when that is not in the report.</summary>
    public int? MatterOf(LooseEnd end) => openedBy.GetValueOrDefault(end) is { } finding ? Number(finding) : null;

    /// <summary>Questions that a finding opened and that nobody settled: they go to a trade.</summary>
    public IEnumerable<LooseEnd> HandedOn(Finding finding) => Judged.LooseEnds.Where(end => IsHandedOn(end) && ReferenceEquals(openedBy.GetValueOrDefault(end), finding));

    public static bool IsHandedOn(LooseEnd end) => end.Tied is null || end.Tied.How == Tie.Referral;

    /// <summary>Whether what to do about it is said in the language of the paper, or still as the built-in book says it in English.</summary>
    public bool IsTranslated(Finding finding) => Words.Language == Tongue.Standard
        || RuleBook.BuiltIn.Conditions.GetValueOrDefault(finding.Condition)?.Do != finding.Do && !RuleBook.BuiltIn.Causes.Any(cause => cause.Do == finding.Do);

    public int Number(Finding finding)
    {
        for (var index = 0; index < Matters.Count; index++)
            if (ReferenceEquals(Matters[index], finding)) return index + 1;
        return 0;
    }

    /// <summary>Name of a condition, as a person says it.</summary>
    public string ConditionName(string? id) => id is null ? ""
        : Book.Conditions.TryGetValue(id, out var condition) ? condition.Name
        : Phrase.Sentence(id[(id.IndexOf('.', StringComparison.Ordinal) + 1)..].Replace('-', ' '));

    /// <summary>When an entry was written, as its device believed; none for kinds that bear no time of their own.</summary>
    public DateTimeOffset? At(EntryName entry) =>
        observations.TryGetValue(entry, out var observation) ? observation.At : readings.TryGetValue(entry, out var reading) ? reading.At : facts.TryGetValue(entry, out var fact) ? fact.At : null;

    /// <summary>One line for an entry of the trail; empty when it is of a kind that says nothing by itself.</summary>
    public string Say(EntryName entry) =>
        observations.TryGetValue(entry, out var observation) ? Say(observation)
        : readings.TryGetValue(entry, out var reading) ? Say(reading)
        : facts.TryGetValue(entry, out var fact) ? Words.Say("report.say.fact", ("component", Phrase.Sentence(ComponentName(fact.Component))), ("fact", Words.Word(fact.Fact)), ("value", Words.Value(fact.Value)), ("basis", Words.Basis(fact.Value.Basis)))
        : components.TryGetValue(entry, out var component) ? $"{Phrase.Sentence(ComponentName(component))}{In(component.Place)}."
        : "";

    private string Say(Observation observation)
    {
        var body = observation.Body;
        var what = body.Condition is null ? "" : ConditionName(body.Condition);
        var outcome = body.Outcome switch
        {
            Outcome.Seen => "report.say.seen",
            Outcome.Clear => "report.say.clear",
            _ => "report.say.not-visible",
        };
        var line = Words.Say(outcome, ("place", PlaceName(body.Place)), ("spot", body.Spot ?? ""), ("what", Phrase.Join(what, what.Length > 0 && body.Words is { } words ? Phrase.Sentence(words) : body.Words)));
        if (body.Sample is { } sample) line = $"{Phrase.End(line)} {Words.Count(sample)}";
        if (body.Reason is { Length: > 0 } reason) line = $"{Phrase.End(line)} {Words.Say("report.say.reason", ("reason", reason))}";
        return Phrase.End(line);
    }

    private string Say(Reading reading)
    {
        var body = reading.Body;
        return Words.Say("report.say.reading", ("kind", Words.Word(body.Kind)), ("amount", Words.Amount(body.Amount)), ("label", body.Label ?? ""), ("place", PlaceName(body.Place)), ("instrument", body.Instrument ?? ""));
    }

    private string In(EntryName? place) => PlaceName(place) is { Length: > 0 } name ? $", {name}" : "";
}
