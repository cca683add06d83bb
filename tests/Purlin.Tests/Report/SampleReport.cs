using Purlin.Book;
using Purlin.Journal.Fold;
using Purlin.Journal;
using Purlin.Judgement;
using Purlin.Reckoning;
using Purlin.Report.Edition;
using Purlin.Report;

namespace Purlin.Tests.Report;

/// <summary>A report of the small invented house with something in every chapter.</summary>
internal static class SampleReport
{
    /// <summary>A JPEG of one grey pixel, made by hand from the segments that ISO/IEC 10918-1 asks of a baseline file.</summary>
    public static byte[] Jpeg { get; } = Convert.FromBase64String(
        "/9j/4AAQSkZJRgABAQAAAQABAAD/2wBDAAEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQH/wAALCAABAAEBAREA/8QAFAABAAAAAAAAAAAAAAAAAAAACf/EABQQAQAAAAAAAAAAAAAAAAAAAAD/2gAIAQEAAD8AVN//2Q==");

    public const string Sha = "00000000000000000000000000000000000000000000000000000000000000aa";

    public static EditionMark Working { get; } = new EditionMark.WorkingCopy { At = SampleHouse.Noon };

    public static EditionMark Sealed { get; } = new EditionMark.Sealed(2, new string('a', 64)) { At = SampleHouse.Noon };

    public static byte[]? Photo(string sha) => sha == Sha ? Jpeg : null;

    /// <summary>The evidence, with the given words in every place where a person can write.</summary>
    public static Inspection Evidence(string words = "plain words")
    {
        var house = SampleHouse.House(SampleHouse.Property with { Address = $"41 Invented Lane {words}" }, 99);
        var garage = SampleHouse.Place(house, "Garage");
        Component heater = new() { Id = SampleHouse.Name(50), Kind = "water heater", Place = garage, Name = words, Facts = new Dictionary<string, Slot<Fact>> { ["year"] = Slot(new Fact(FactValue.Of(2004), null, Basis.Presumed), 51), [words.Length == 0 ? "note" : words] = Slot(new Fact(FactValue.Of(words), null, Basis.Told), 52) } };
        return house with
        {
            Opening = house.Opening! with { Body = house.Opening.Body with { Client = words, Inspector = words, Weather = words, Present = words } },
            Places = [.. house.Places.Select(place => place.Id == garage ? place with { Name = "Garage " + words } : place)],
            Components = [.. house.Components, heater],
            Observations = [.. house.Observations, new Observation { Id = SampleHouse.Name(60), At = SampleHouse.Noon, Body = new EntryBody.ObservationMade { Place = garage, Outcome = Outcome.Seen, Words = words, Spot = words, Sample = new Sample(3, 9, 1) } },
                new Observation { Id = SampleHouse.Name(61), At = SampleHouse.Noon, Body = new EntryBody.ObservationMade { Place = garage, Outcome = Outcome.NotVisible, Words = words, Reason = words } }],
            Readings = [new Reading { Id = SampleHouse.Name(70), At = SampleHouse.Noon, Body = new EntryBody.ReadingTaken { Kind = "static water pressure", Amount = new Amount(92, "psi"), Place = garage, Instrument = words, Label = words } }],
            Photos = [new Photo { Id = SampleHouse.Name(80), At = SampleHouse.Noon, Body = new EntryBody.PhotoTaken { Sha = Sha, Size = Jpeg.Length, MediaType = "image/jpeg", Place = garage } }, new Photo { Id = SampleHouse.Name(81), At = SampleHouse.Noon, Body = new EntryBody.PhotoTaken { Sha = new string('b', 64), Size = 9, MediaType = "image/jpeg", Place = garage } }],
            Editions = [new SealedEdition(SampleHouse.Name(90), new EntryBody.EditionSealed { Number = 1, Heads = new Dictionary<string, int>(), EntriesRoot = "", Page = "", Pdf = "", RuleBook = "", At = SampleHouse.Noon }, new string('c', 64))],
        };
    }

    /// <summary>Its judgement, with the given words in every sentence.</summary>
    public static JudgedInspection Judgement(Inspection inspection, string words = "plain words")
    {
        var garage = inspection.Places.First(place => place.Kind == PlaceKind.Garage).Id;
        var finding = SampleHouse.Finding("Relief valve " + words, Weight.MakeSafe, garage) with
        {
            Where = words,
            Observed = words,
            Matters = words,
            Do = words,
            Trade = words,
            Cautions = [words],
            Sources = [words],
            Evidence = [SampleHouse.Name(60), SampleHouse.Name(70), SampleHouse.Name(51)],
            Photos = [SampleHouse.Name(80)],
            Workings = [0],
            ThenAndNow = new ThenAndNowSentence("x", YearsKind.CannotSay, null, words, [words]),
            Overruled = [new Overruling(FindingPart.Weight, words, words, words, SampleHouse.Name(91))],
        };
        return SampleHouse.Judged([finding, SampleHouse.Finding("Gutter leaks", Weight.KeepUp, SampleHouse.Place(inspection, "Rear"))],
            [SampleHouse.End(words, garage), SampleHouse.End("settled " + words, garage) with { Tied = new Tied(Tie.Evidence, [], words) }]) with
        {
            Limitations = [new JudgedLimitation(SampleHouse.Name(92), words, words, null, garage, null, [SampleHouse.Name(81)])],
            Workings = [new JudgedWorking(new Working { Name = "x", Title = words, Inputs = [], Result = [], Steps = [new Step(words, 3.25, "in"), new Step(words)], Verdict = new Verdict.Outside { Because = words }, Sources = [words], Cautions = [words] }, [], SampleHouse.Name(50), garage)],
            Coverage = [new Coverage("washington", words, [new DutyState(new DutyId("washington", "1"), words, words, words, Purlin.Book.Verb.Inspect, DutyStanding.Open, [], words, words)])],
            Photos = [new SpokenPhoto(SampleHouse.Name(80), PhotoUse.Finding, finding.Id, words)],
        };
    }

    public static Paper Paper(string words = "plain words", EditionMark? mark = null, PaperKind kind = PaperKind.Report) => Model(words, mark).Paper(kind);

    public static ReportModel Model(string words = "plain words", EditionMark? mark = null)
    {
        var evidence = Evidence(words);
        return Worked(evidence, Judgement(evidence, words)).Report(mark ?? Working);
    }

    /// <summary>Evidence with a judgement made by hand.</summary>
    public static Work Worked(Inspection evidence, JudgedInspection judged) => new() { Inspection = evidence, Judged = judged, Book = RuleBook.BuiltIn, Latest = SampleHouse.Noon };

    private static Slot<Fact> Slot(Fact fact, int by) => new() { Standing = [new Stated<Fact>(fact, SampleHouse.Name(by), SampleHouse.Noon)] };
}
