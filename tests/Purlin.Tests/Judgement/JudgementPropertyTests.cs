using CsCheck;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Judgement;
using Purlin.Book;

namespace Purlin.Tests.Judgement;

/// <summary>What must hold for any walk through any house: found on many random inspections over the real rule book.</summary>
public sealed class JudgementPropertyTests
{
    private static readonly string[] Conditions = [.. RuleBook.BuiltIn.Conditions.Keys.Order(StringComparer.Ordinal)];
    private static readonly string[] Kinds = [.. PlaceKind.All];

    // Drawn from one system most of the time, so that causes and escalations meet.
    private static readonly Gen<(int Condition, int Place, int Outcome, int Failed)> Look = Gen.Select(Gen.Int[0, 39], Gen.Int[0, 16], Gen.Int[0, 9], Gen.Int[0, 4]);
    private static readonly Gen<(int Start, (int Condition, int Place, int Outcome, int Failed)[] Looks, int Pressure)> Walk = Gen.Select(Gen.Int[0, 600], Look.Array[1, 24], Gen.Int[30, 120]);

    private static (SmallHouse House, List<EntryName> Entries) Make((int Start, (int Condition, int Place, int Outcome, int Failed)[] Looks, int Pressure) walk, bool spoil = false)
    {
        var house = new SmallHouse { Property = new Property { Address = "1 Invented Lane", YearBuilt = 1968 }, Standards = ["washington"] };
        var places = Kinds.Select(kind => house.Place(kind)).ToList();
        List<EntryName> entries = [house.Read("static water pressure", walk.Pressure, "psi", places[1])];
        foreach (var (condition, place, outcome, failed) in walk.Looks)
        {
            entries.Add(house.Observe(new EntryBody.ObservationMade
            {
                Place = places[place],
                Condition = Conditions[(walk.Start + condition) % Conditions.Length],
                Outcome = outcome < 6 ? Outcome.Seen : outcome < 9 ? Outcome.Clear : Outcome.NotVisible,
                Reason = outcome < 9 ? null : "covered",
                Sample = failed == 0 ? null : new Sample(10, 12, failed),
            }));
        }
        if (spoil) entries.Add(house.Seen(Conditions[walk.Start % Conditions.Length], places[walk.Pressure % places.Count]));
        return (house, entries);
    }

    private static JudgedInspection Judge(Inspection inspection) => Judging.Judge(inspection, RuleBook.BuiltIn, 2026);

    private static Weight? WeightOf(JudgedInspection judged, string condition) =>
        judged.Findings.Where(finding => finding.Condition == condition || finding.Grouped.Contains(condition)).Select(finding => (Weight?)finding.Weight).Max();

    [Fact]
    public void More_evidence_of_harm_never_makes_a_matter_smaller() => Walk.Sample(walk =>
    {
        var before = Judge(Make(walk).House.Build());
        var after = Judge(Make(walk, spoil: true).House.Build());
        return Conditions.All(condition => WeightOf(before, condition) is not { } was || WeightOf(after, condition) >= was);
    }, iter: 150);

    [Fact]
    public void Undo_restores_the_judgement_exactly() => Walk.Sample(walk =>
    {
        var before = Make(walk).House.Build();
        var (house, entries) = Make(walk, spoil: true);
        house.Withdraw(entries[^1]);
        return Text(before) == Text(house.Build());
    }, iter: 60);

    [Fact]
    public void Order_of_entries_changes_nothing_of_the_meaning() => Gen.Select(Walk, Gen.Int).Sample((walk, seed) =>
    {
        var (house, _) = Make(walk);
        return Meaning(Judge(house.Build())) == Meaning(Judge(house.Build(seed)));
    }, iter: 60);

    [Fact]
    public void The_same_evidence_gives_the_same_judgement() => Walk.Sample(walk => Text(Make(walk).House.Build()) == Text(Make(walk).House.Build()), iter: 60);

    [Fact]
    public void Remembering_reckonings_changes_nothing()
    {
        var memory = new JudgingMemory();
        Walk.Sample(walk =>
        {
            var inspection = Make(walk).House.Build();
            return Text(inspection) == JudgementJson.Write(Judging.Judge(inspection, RuleBook.BuiltIn, 2026, memory), inspection).ToJsonString();
        }, iter: 60, threads: 1);
    }

    [Fact]
    public void No_question_is_answered_by_the_look_that_opened_it() => Walk.Sample(walk => Judge(Make(walk).House.Build()).LooseEnds
        .All(end => end.Tied is null || end.OpenedBy.Count > 1 || !end.Tied.By.Contains(end.OpenedBy[0])), iter: 80);

    [Fact]
    public void Every_look_that_saw_something_is_in_a_finding() => Walk.Sample(walk =>
    {
        var inspection = Make(walk).House.Build();
        var spoken = Judge(inspection).Findings.SelectMany(finding => finding.Evidence).ToHashSet();
        return inspection.Observations.Where(observation => observation.Body.Outcome == Outcome.Seen).All(observation => spoken.Contains(observation.Id));
    }, iter: 80);

    private static string Text(Inspection inspection) => JudgementJson.Write(Judge(inspection), inspection).ToJsonString();

    /// <summary>What a reader would be told, without the order in which evidence is listed.</summary>
    private static string Meaning(JudgedInspection judged) => string.Join('\n',
    [
        .. judged.Findings.Select(finding => $"{finding.Id} {string.Join('+', finding.Grouped)} {finding.Weight} {finding.Spread} {finding.Where} {string.Join(' ', finding.Evidence.Order())} {finding.Trade} {finding.Matters} {finding.Do}"),
        .. judged.LooseEnds.Select(end => $"{end.Id} {end.Tied?.How} {string.Join(' ', end.StillToLook)}"),
        .. judged.Coverage.SelectMany(coverage => coverage.Duties).Select(duty => $"{duty.Id} {duty.State}"),
        .. judged.Obstacles.Select(obstacle => obstacle.GetType().Name).Order(),
    ]);
}
