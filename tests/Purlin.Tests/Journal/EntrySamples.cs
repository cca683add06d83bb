using System.Text.Json;
using Purlin.Journal;

namespace Purlin.Tests.Journal;

/// <summary>
/// One entry of every kind with every member filled, written into one small visit: each may come after the ones before it. A kind without a
/// sample here fails <see cref="EntryKindTests"/>.
/// </summary>
internal static class EntrySamples
{
    private static readonly DateTimeOffset Noon = new(2026, 11, 25, 12, 0, 0, TimeSpan.Zero);
    private static readonly EntryName House = new("aaa", 1), Room = new("aaa", 2), Closet = new("aaa", 3), Heater = new("aaa", 4), Tank = new("aaa", 5);
    private static readonly EntryName Look = new("aaa", 6), Photo = new("aaa", 7), Limit = new("aaa", 8), Words = new("aaa", 9), Wing = new("aaa", 11), Offer = new("aaa", 12);

    /// <summary>The first entries of a visit by <c>aaa</c>, in order.</summary>
    public static IReadOnlyList<EntryBody> Visit { get; } =
    [
        new EntryBody.InspectionOpened
        {
            Property = new Property { Address = "1 Invented Way", YearBuilt = 1962 }, Client = "A buyer", Inspector = "An inspector", Date = new DateOnly(2026, 11, 25),
            Standards = ["washington"], RuleBook = "1", Weather = "dry", Present = "the buyer", Demo = true,
            Earlier = new EarlierVisit { Inspection = "one", Date = new DateOnly(2026, 10, 14), Edition = 2, Seal = Hash('c') },
        },
        new EntryBody.PlaceAdded { Kind = PlaceKind.Room, Name = "Room", Storey = 0, Order = 1 },
        new EntryBody.PlaceAdded { Kind = PlaceKind.Room, Name = "Closet", Parent = Room, Storey = 0, Order = 2 },
        new EntryBody.ComponentAdded { Kind = "water heater", Place = Closet, Name = "the heater" },
        new EntryBody.ComponentAdded { Kind = "expansion tank", Place = Closet, Name = "the tank" },
        new EntryBody.ObservationMade { Place = Closet, Component = Heater, Condition = "x", Words = "stained", Outcome = Outcome.Seen, Reason = "dark", Sample = new Sample(3, 4, 1), Spot = "left" },
        new EntryBody.PhotoTaken { Sha = Hash('a'), Size = 9, MediaType = "image/jpeg", Width = 4, Height = 3, Place = Closet, Component = Heater, For = Look },
        new EntryBody.LimitationRecorded { What = "the closet", Cause = "locked", Next = "have it opened", Rule = "r", Place = Closet, Component = Heater },
        new EntryBody.NoteWritten { About = Closet, Part = "n1", Text = "smells of gas" },
        new EntryBody.SoundTaken { Sha = Hash('b'), Size = 9, MediaType = "audio/webm", Seconds = 3, Place = Closet, Component = Heater },
        new EntryBody.PartAdded { Kind = PartKind.Wing, Name = "Wing", Joins = House, Side = "left" },
        new EntryBody.ProposalMade
        {
            Entry = "fact.stated", Body = JsonElement.Parse("""{"component":"aaa.4","fact":"year","value":1994,"basis":"nameplate"}"""), Confidence = 0.9, Reader = "plates 1",
            From = [new ReadFrom(Photo, new PictureBox(0.1, 0.2, 0.3, 0.1), 3, 4, 1)],
        },
    ];

    /// <summary>One of every kind, as the next entry of the visit.</summary>
    public static IReadOnlyList<EntryBody> All { get; } =
    [
        Visit[0], Visit[5], Visit[7], Visit[9], Visit[10], Visit[11],
        new EntryBody.PlaceAdded { Kind = PlaceKind.Room, Name = "Closet", Parent = Room, Storey = 0, Level = 0.5, Part = Wing, Order = 2 },
        new EntryBody.ComponentAdded { Kind = "expansion tank", Place = Closet, Part = Wing, Of = Heater, Name = "the second tank" },
        new EntryBody.PhotoTaken
        {
            Sha = Hash('a'), Size = 9, MediaType = "image/jpeg", Width = 4, Height = 3, Place = Closet, Component = Heater, For = Look, Use = PhotoUse.Nameplate,
        },
        new EntryBody.PartLeveled { Part = Wing, Levels = [new Level(-0.5, LevelForm.Lower, "Den"), new Level(0.5, LevelForm.Full), new Level(1.5, LevelForm.Half)] },
        new EntryBody.PartClad { Part = Wing, Side = "front", Claddings = [new Cladding("brick veneer", "up to the sills"), new Cladding("vinyl siding")], Basis = Basis.Seen },
        new EntryBody.PlanDrawn { Place = Closet, Outline = [new Corner(0, 0), new Corner(4, 0), new Corner(4, 3.5)] },
        new EntryBody.ComponentPlaced { Component = Tank, Place = Room, Part = Wing, Of = Heater },
        new EntryBody.ComponentAbsent { Kind = "window", Place = Closet, Part = Wing, Words = "bricked up" },
        new EntryBody.PhotoMarked { Photo = Photo, Shape = MarkShape.Line, From = new PicturePoint(0, 0.25), To = new PicturePoint(1, 0.25), Words = "crack", Length = new Amount(14, "in") },
        new EntryBody.LimitationCompleted { Limitation = Limit, Member = LimitationNext, Text = "have it opened before closing" },
        new EntryBody.NoteFated
        {
            Note = Words, About = Closet, Part = "n1", How = Fate.Matter, Title = "Smell of gas", Text = "Gas was smelled.", Weight = "make safe",
            Recommendation = "Call the gas utility.", Trade = "plumber", Under = Heater, Reason = "none",
        },
        new EntryBody.ProposalDropped { Proposal = Offer, Reason = "misread" },
        new EntryBody.DeviceJoined { Name = "phone" },
        new EntryBody.ClockChecked { Office = Noon, AheadMilliseconds = -5 },
        new EntryBody.EditionSealed
        {
            Number = 2, Heads = new Dictionary<string, int> { ["aaa"] = 9 }, EntriesRoot = Hash('a'), Photos = [Hash('e')], Page = Hash('b'), Pdf = Hash('c'),
            RuleBook = "1", RuleBookHash = Hash('f'), PreviousEdition = Hash('d'), At = Noon,
        },
        new EntryBody.PlaceNamed { Place = Room, Name = "Den" },
        new EntryBody.PlacePlaced { Place = Closet, Parent = Room, Part = Wing, Level = -0.5, Order = 1.5 },
        new EntryBody.FactStated { Component = Heater, Fact = "year", Value = FactValue.Of(1994), Unit = "a", Basis = Basis.Nameplate },
        new EntryBody.ReadingTaken
        {
            Kind = "static water pressure", Amount = new Amount(61, "psi"), Place = Closet, Component = Heater, Instrument = "gauge", Set = "s",
            Point = new PlanPoint(3.5, 12, "ft", 0.5), Label = "hose tap",
        },
        new EntryBody.PhotoPlaced { Photo = Photo, Use = PhotoUse.Finding, For = Look, Place = Closet, Component = Heater, Caption = "stain", Reason = "no" },
        new EntryBody.NoteWritten { About = Closet, Part = "n1", Text = "smells of gas, strongly", Replaces = [Words] },
        new EntryBody.LooseEndTied { LooseEnd = "x", How = Tie.Evidence, Evidence = [Look], Trade = "plumber", Reason = "dry" },
        new EntryBody.JudgementOverruled { Finding = "x", Part = "weight", Value = "keep up", Reason = "dry for years" },
        new EntryBody.DutyMet { Duty = "core:S-01", How = DutyClose.Result, Text = "done", Reason = "r" },
        new EntryBody.WordingSaid { Key = "water-heater.too-hot/do", Was = "Turn it down.", Now = "Set it to 120 °F." },
        new EntryBody.ConditionWritten { Id = "own.bats", Condition = JsonElement.Parse("""{"id":"own.bats","places":["attic"]}""") },
        new EntryBody.EntryWithdrawn { Entry = Look, Reason = "a slip" },
        new EntryBody.EntryRestored { Entry = Look },
    ];

    private const string LimitationNext = EntryBody.LimitationCompleted.Next;

    private static string Hash(char digit) => new(digit, 64);
}
