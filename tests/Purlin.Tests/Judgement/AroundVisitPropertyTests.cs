using CsCheck;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Judgement;
using Purlin.Book;

namespace Purlin.Tests.Judgement;

/// <summary>What must hold of the duties around the visit whatever was stated, in whatever order: found on random journals over the real rule book.</summary>
public sealed class AroundVisitPropertyTests
{
    private static readonly VisitFact[] Facts = [.. RuleBook.BuiltIn.Visit.SelectMany(rule => rule.Facts)];
    private static readonly string[] Standards = [.. RuleBook.BuiltIn.Standards.Keys.Order(StringComparer.Ordinal)];
    private static readonly string[] Duties = [.. RuleBook.BuiltIn.Visit.Select(rule => "core:" + rule.Id), .. RuleBook.BuiltIn.Standards.Values.SelectMany(standard => standard.Duties.Where(duty => duty.Coverage == DutyCounts.ReportRule).Select(duty => $"{standard.Id}:{duty.Id}")).Order(StringComparer.Ordinal)];
    private static readonly DateTimeOffset Nine = new(2026, 10, 14, 9, 0, 0, TimeSpan.Zero);

    private sealed record Stating(int Fact, int Day, int Duty, int How, bool IsByHand);

    private static readonly Gen<Stating> One = Gen.Select(Gen.Int[0, Facts.Length - 1], Gen.Int[-40, 40], Gen.Int[0, Duties.Length - 1], Gen.Int[0, 3], Gen.Bool, (fact, day, duty, how, hand) => new Stating(fact, day, duty, how, hand));
    private static readonly Gen<(bool[] Chosen, Stating[] Said)> Visit = Gen.Select(Gen.Bool.Array[Standards.Length], One.Array[0, 14]);

    private static List<Entry> Write((bool[] Chosen, Stating[] Said) visit)
    {
        Pen pen = new("visitprops", "phone12345");
        List<Entry> entries = [pen.Write(new EntryBody.InspectionOpened { Property = new Property { Address = "1 Invented Lane" }, Date = new DateOnly(2026, 10, 14), Standards = [.. Standards.Where((_, index) => visit.Chosen[index])] }, Nine)];
        Dictionary<string, EntryName> last = new(StringComparer.Ordinal);
        foreach (var said in visit.Said)
        {
            var slot = said.IsByHand ? Duties[said.Duty] : Facts[said.Fact].Name;
            IReadOnlyList<EntryName> replaces = last.TryGetValue(slot, out var before) ? [before] : [];
            entries.Add(pen.Write(Body(entries[0].Name, said, replaces), Nine));
            last[slot] = entries[^1].Name;
        }
        return entries;
    }

    private static EntryBody Body(EntryName house, Stating said, IReadOnlyList<EntryName> replaces) => said.IsByHand
        ? new EntryBody.DutyMet { Duty = Duties[said.Duty], How = DutyClose.All[said.How], Text = "closed", Reason = said.How == 2 ? "a reason" : null, Replaces = replaces }
        : new EntryBody.FactStated { Component = house, Fact = Facts[said.Fact].Name, Value = FactValue.Of(Facts[said.Fact].Kind == AnswerKind.Day ? new DateOnly(2026, 10, 14).AddDays(said.Day).ToString("yyyy-MM-dd") : "as said"), Basis = Basis.Seen, Replaces = replaces };

    private static JudgedInspection Judge(IEnumerable<Entry> entries) => Judging.Judge(Folding.Fold(entries), RuleBook.BuiltIn, 2026);

    private static string Text(IEnumerable<Entry> entries)
    {
        var folded = Folding.Fold(entries);
        return JudgementJson.Write(Judging.Judge(folded, RuleBook.BuiltIn, 2026), folded).ToJsonString();
    }

    [Fact]
    public void Order_of_delivery_changes_nothing() => Gen.Select(Visit, Gen.Int).Sample((visit, seed) =>
    {
        var entries = Write(visit);
        var mixed = entries.ToArray();
        new Random(seed).Shuffle(mixed);
        return Text(entries) == Text(mixed);
    }, iter: 60);

    [Fact]
    public void Undo_restores_what_stood_before() => Gen.Select(Visit, One).Sample((visit, more) =>
    {
        var before = Write(visit);
        var after = Write((visit.Chosen, [.. visit.Said, more]));
        Pen pen = new("visitprops", "other12345");
        pen.Saw("phone12345", after.Count);
        after.Add(pen.Write(new EntryBody.EntryWithdrawn { Entry = after[^1].Name }, Nine.AddMinutes(1)));
        return Seen(before) == Seen(after);
    }, iter: 60);

    [Fact]
    public void What_bars_issue_is_open_and_asked_for_by_a_chosen_standard_and_can_be_answered() => Visit.Sample(visit =>
    {
        var judged = Judge(Write(visit));
        var chosen = Standards.Where((_, index) => visit.Chosen[index]).ToArray();
        return judged.Obstacles.OfType<Obstacle.VisitOpen>().Select(obstacle => judged.Visit.Single(duty => duty.Id == obstacle.Duty))
            .All(duty => duty.State == VisitStanding.Open && duty.Questions.Count > 0 && duty.Asked.All(asked => chosen.Contains(asked.Duty.Standard)));
    }, iter: 100);

    /// <summary>Every open duty is closed by hand in one entry, whatever was stated before.</summary>
    [Fact]
    public void One_entry_by_hand_closes_any_of_them() => Visit.Sample(visit =>
    {
        var entries = Write(visit);
        Pen pen = new("visitprops", "other12345");
        pen.Saw("phone12345", entries.Count);
        foreach (var obstacle in Judge(entries).Obstacles.OfType<Obstacle.VisitOpen>().ToList())
            entries.Add(pen.Write(new EntryBody.DutyMet { Duty = obstacle.Duty.ToString(), How = DutyClose.Result, Text = "Said by hand." }, Nine.AddMinutes(1)));
        return !Judge(entries).Obstacles.OfType<Obstacle.VisitOpen>().Any();
    }, iter: 60);

    /// <summary>More standards never lift a duty: what one asks stays asked, and days only become stricter.</summary>
    [Fact]
    public void Another_standard_never_makes_a_day_laxer() => Gen.Select(Visit, Gen.Int[0, Standards.Length - 1]).Sample((visit, more) =>
    {
        bool[] wider = [.. visit.Chosen];
        wider[more] = true;
        var few = Judge(Write(visit with { Said = [.. visit.Said.Where(said => !said.IsByHand)] })).Visit.Where(duty => duty.Day is not null).ToDictionary(duty => duty.Id);
        var many = Judge(Write((wider, [.. visit.Said.Where(said => !said.IsByHand)]))).Visit.Where(duty => duty.Day is not null).ToDictionary(duty => duty.Id);
        return few.All(one => many.TryGetValue(one.Key, out var other) && (one.Value.AwaitsEdition ? other.Day <= one.Value.Day : other.Day >= one.Value.Day));
    }, iter: 100);

    private static string Seen(IEnumerable<Entry> entries) => string.Join('\n', Judge(entries).Visit.Select(duty => $"{duty.Id} {duty.State} {duty.Day} {duty.Words} {string.Join(' ', duty.Evidence)}"));
}
