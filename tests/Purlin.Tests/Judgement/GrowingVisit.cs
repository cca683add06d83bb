using CsCheck;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Judgement;
using Purlin.Book;

namespace Purlin.Tests.Judgement;

/// <summary>One act of a random visit: what kind, and numbers that choose among what there is.</summary>
internal sealed record VisitAct(int Kind, int First, int Second, int Third);

/// <summary>A random visit over the real rule book, written by the journal's own pen, in which every kind of entry comes up that judgement looks at.</summary>
internal sealed class GrowingVisit
{
    private static readonly RuleBook Book = RuleBook.BuiltIn;
    private static readonly string[] Conditions = [.. Book.Conditions.Keys.Order(StringComparer.Ordinal)];
    private static readonly ReadingKind[] Kinds = [.. Book.ReadingKinds.Values.OrderBy(kind => kind.Kind, StringComparer.Ordinal)];
    private static readonly string[] ComponentKinds = [.. Book.ComponentKinds()];
    private static readonly string[] ToldApart = [.. Book.ToldApart.Order(StringComparer.Ordinal)];
    private static readonly string[] Weights = ["make safe", "act now", "put right", "keep up", "know about"];

    private readonly Pen pen = new("visit", "phone");
    private readonly GrowingFold fold = new();
    private readonly int start;
    private DateTimeOffset now = new(2026, 10, 14, 9, 0, 0, TimeSpan.Zero);

    public GrowingVisit(int start)
    {
        this.start = start;
        Write(new EntryBody.InspectionOpened { Property = new() { Address = "1 Invented Lane", YearBuilt = 1968, Foundation = "crawl space" }, Date = new DateOnly(2026, 10, 14), Standards = ["washington", "texas"] });
        foreach (var kind in PlaceKind.All) Write(new EntryBody.PlaceAdded { Kind = kind, Name = kind });
    }

    public static Gen<(int Start, VisitAct[] Acts)> Random { get; } =
        Gen.Select(Gen.Int[0, 700], Gen.Select(Gen.Int[0, 99], Gen.Int[0, 999], Gen.Int[0, 999], Gen.Int[0, 999], (kind, first, second, third) => new VisitAct(kind, first, second, third)).Array[1, 40]);

    public Inspection Inspection => fold.Inspection;

    /// <summary>Does one act; <paramref name="judged"/> is what the inspector sees before it.</summary>
    public void Do(VisitAct act, JudgedInspection judged)
    {
        var (kind, first, second, third) = act;
        // Every place may have been withdrawn by now: then there is nowhere to do anything.
        if (Inspection.Places.Count == 0) return;
        EntryName? component = Inspection.Components.Count > 1 && third % 2 == 0 ? Some(Inspection.Components, second).Id : null;
        var place = Some(Inspection.Places, first).Id;
        switch (kind)
        {
            // From a stretch of neighbouring conditions, so that causes, escalations and questions meet.
            case < 34: Look(place, component, Conditions[(start + second % 30) % Conditions.Length], third); break;
            case < 46: Take(Some(Kinds, second), place, component, third); break;
            case < 54: Write(new EntryBody.ComponentAdded { Kind = third % 3 == 0 ? Some(ToldApart, second) : Some(ComponentKinds, second), Place = place }); break;
            case < 62 when component is { } on: Write(new EntryBody.FactStated { Component = on, Fact = third % 3 == 0 ? "year" : "material", Value = third % 3 == 0 ? FactValue.Of(1940 + second % 80) : FactValue.Of(second % 2 == 0 ? "galvanized steel" : "polybutylene"), Basis = Basis.Seen }); break;
            case < 66: Write(new EntryBody.PhotoTaken { Sha = $"{second:x64}", Size = 1, MediaType = "image/jpeg", Place = place, For = Evidence(third) }); break;
            case < 69 when Inspection.Photos.Count > 0: Write(new EntryBody.PhotoPlaced { Photo = Some(Inspection.Photos, first).Id, Use = third % 2 == 0 ? PhotoUse.Context : PhotoUse.Finding, For = Evidence(second) }); break;
            case < 73: Write(new EntryBody.LimitationRecorded { What = $"Part {second}", Cause = third % 2 == 0 ? "stored goods" : null, Next = third % 3 == 0 ? "Have it looked at." : null, Place = place, Component = component, Rule = third % 5 == 0 ? Some([.. Book.Limitations.Keys.Order(StringComparer.Ordinal)], second) : null }); break;
            case < 75: Say(place, first, second, third); break;
            case < 79 when judged.LooseEnds.Count > 0: TieOff(Some(judged.LooseEnds, first), second, third); break;
            case < 84 when judged.Findings.Count > 0: Write(new EntryBody.JudgementOverruled { Finding = Some(judged.Findings, first).Id.ToString(), Part = third % 4 == 0 ? "left out" : "weight", Value = third % 4 == 0 ? "" : Some(Weights, second), Reason = "as I see it" }); break;
            case < 87: Write(new EntryBody.DutyMet { Duty = "core:" + Some([.. Book.Core.Keys.Order(StringComparer.Ordinal)], second), How = third % 2 == 0 ? DutyClose.NotInspected : DutyClose.Result, Reason = "snow", Text = "done" }); break;
            case < 90: Write(new EntryBody.PlaceAdded { Kind = Some(PlaceKind.All, second), Name = $"New {first}" }); break;
            case < 92: Write(new EntryBody.PlaceNamed { Place = place, Name = $"Called {second}" }); break;
            case < 97: Write(new EntryBody.EntryWithdrawn { Entry = Some(fold.Entries, 1 + first % Math.Max(1, fold.Entries.Count - 1)).Name }); break;
            default: if (Inspection.Withdrawn.Count > 0) Write(new EntryBody.EntryRestored { Entry = Some(Inspection.Withdrawn, second) }); break;
        }
    }

    /// <summary>What is said later of a limitation, in the form of today and of earlier journals, what is noted, what becomes of it, and what is not there.</summary>
    private void Say(EntryName place, int first, int second, int third)
    {
        var limitation = Inspection.Limitations.Count > 0 ? Some(Inspection.Limitations, first).Id : (EntryName?)null;
        EntryBody said = (third % 7) switch
        {
            0 when limitation is { } of => new EntryBody.NoteWritten { About = of, Part = second % 2 == 0 ? "cause" : "next", Text = "Said later." },
            1 when limitation is { } of => new EntryBody.LimitationCompleted { Limitation = of, Member = second % 2 == 0 ? "cause" : "next", Text = "Said later still." },
            2 => new EntryBody.ComponentAbsent { Kind = Some(ComponentKinds, second), Place = second % 3 == 0 ? null : place },
            3 when Inspection.Notes.Count > 0 => Some(Inspection.Notes, second).Fated(Fate.Matter) with { Title = $"Matter {second}", Weight = Some(Weights, first), Under = place },
            4 when Inspection.Notes.Count > 0 => Some(Inspection.Notes, second).Fated(Fate.Under) with { Under = place },
            _ => new EntryBody.NoteWritten { About = place, Part = $"n{third}", Text = $"Noted {second}." },
        };
        Write(Inspection.Replacing(said));
    }

    private void Look(EntryName place, EntryName? component, string condition, int chance) => Write(new EntryBody.ObservationMade
    {
        Place = place,
        Component = component,
        Condition = chance % 17 == 0 ? null : condition,
        Words = chance % 17 == 0 ? "something of my own" : null,
        Outcome = (chance % 10) switch { < 6 => Outcome.Seen, < 9 => Outcome.Clear, _ => Outcome.NotVisible },
        Reason = chance % 10 == 9 ? "covered" : null,
        Sample = chance % 7 == 0 ? new Sample(8, 12, chance % 3) : null,
    });

    private void Take(ReadingKind kind, EntryName place, EntryName? component, int chance) => Write(new EntryBody.ReadingTaken
    {
        Kind = kind.Kind,
        Amount = new Amount(Math.Round(kind.Least + (kind.Most - kind.Least) * (chance % 20) / 20.0, 1), kind.Unit),
        Place = place,
        Component = component,
        Set = chance % 4 == 0 ? "one" : null,
    });

    private void TieOff(LooseEnd end, int second, int third)
    {
        var evidence = third % 3 == 0 ? Evidence(second) : null;
        Write(new EntryBody.LooseEndTied { LooseEnd = end.Id.ToString(), How = evidence is null ? Tie.Referral : Tie.Evidence, Evidence = evidence is { } one ? [one] : [], Reason = "as told" });
    }

    private EntryName? Evidence(int chance) => Inspection.Observations.Count == 0 ? null : Some(Inspection.Observations, chance).Id;

    private void Write(EntryBody body)
    {
        now += TimeSpan.FromSeconds(9);
        fold.Add([pen.Write(body, now)]);
    }

    private static T Some<T>(IReadOnlyList<T> from, int chance) => from[chance % from.Count];
}
