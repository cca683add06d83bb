using CsCheck;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Judgement;
using Purlin.Book;

namespace Purlin.Tests.Judgement;

/// <summary>Own wording over the whole real book: every sentence can be said otherwise, nothing eats it, and it travels with the inspection.</summary>
public sealed class WordingPropertyTests
{
    private const string Mark = " (my way)";
    private static readonly DateTimeOffset Noon = new(2026, 11, 25, 12, 0, 0, TimeSpan.Zero);
    private static readonly RuleBook Book = RuleBook.BuiltIn;
    private static readonly Sentence[] All = [.. Sentences.In(Book).OrderBy(sentence => sentence.Key, StringComparer.Ordinal)];

    private static readonly Overlay Everything = new() { Sentences = All.ToDictionary(sentence => sentence.Key, sentence => new OwnSentence(sentence.Text, Otherwise(sentence))) };
    private static readonly RuleBook Laid = Book.Lay(Everything).Book;

    private static readonly Gen<OwnSentence> Own = Gen.Select(Gen.String[Gen.Char.AlphaNumeric, 0, 20], Gen.String[Gen.Char[' ', '\uD7FF'], 1, 60]).Where(pair => !string.IsNullOrWhiteSpace(pair.Item2)).Select(pair => new OwnSentence(pair.Item1, pair.Item2));

    private static readonly Gen<Overlay> AnyOverlay = Gen.Select(Gen.Int[0, All.Length - 1].Array[0, 30], Own.Array[30]).Select((at, own) =>
        new Overlay { Edition = "1", Sentences = at.Distinct().Where(index => !All[index].Key.EndsWith("/trade", StringComparison.Ordinal)).Select((index, line) => (All[index].Key, Own: own[line])).ToDictionary(line => line.Key, line => line.Own) });

    private static string Otherwise(Sentence sentence) => sentence.Key.EndsWith("/trade", StringComparison.Ordinal) ? sentence.Text == "mason" ? "painter" : "mason" : sentence.Text + Mark;

    [Fact]
    public void Every_sentence_has_a_key_of_its_own_and_is_found_by_it()
    {
        Assert.Equal(All.Length, All.Select(sentence => sentence.Key).Distinct(StringComparer.Ordinal).Count());
        Assert.All(All, sentence => Assert.Equal(sentence, Sentence.Of(Book, sentence.Key)));
        // Nine conditions in ten have six sentences or more: a list that lost a kind of sentence would be far shorter.
        Assert.True(All.Length > Book.Conditions.Count * 6, $"{All.Length} sentences");
        Assert.Superset(new HashSet<string> { "causes", "be alert to", "cautions", "could not look", "duties", "readings", "how things are said", "plumbing" }, All.Select(sentence => sentence.Group).ToHashSet());
    }

    [Fact]
    public void Laying_all_of_them_at_once_changes_each_and_nothing_conflicts()
    {
        Assert.Empty(Book.Lay(Everything).Conflicts);
        Assert.All(All, sentence => Assert.Equal(Otherwise(sentence), Sentence.In(Laid, sentence.Key)));
    }

    [Fact]
    public void Every_judged_text_of_the_book_is_said_my_way() => Gen.Select(Gen.Int[0, 800], Gen.Int[0, 16].Array[1, 12]).Sample((start, looks) =>
    {
        var judged = Judging.Judge(House(start, looks), Laid, 2026);
        return judged.Findings.All(finding => finding.Title.Contains(Mark, StringComparison.Ordinal) && finding.Do.Contains(Mark, StringComparison.Ordinal) && finding.Matters.Contains(Mark, StringComparison.Ordinal)
                && finding.Trade is "mason" or "painter" && finding.Cautions.All(caution => caution.EndsWith(Mark, StringComparison.Ordinal)) && finding.Why.All(step => step.Words.EndsWith(Mark, StringComparison.Ordinal)))
            && judged.LooseEnds.All(end => end.Question.EndsWith(Mark, StringComparison.Ordinal) && end.Referral.EndsWith(Mark, StringComparison.Ordinal) && end.Because.EndsWith(Mark, StringComparison.Ordinal) && end.Trade is "mason" or "painter")
            && judged.Alerts.All(alert => alert.Title.EndsWith(Mark, StringComparison.Ordinal) && alert.Reason.EndsWith(Mark, StringComparison.Ordinal) && alert.Look.EndsWith(Mark, StringComparison.Ordinal))
            && judged.Limitations.All(limitation => limitation.Next!.EndsWith(Mark, StringComparison.Ordinal))
            && judged.Coverage.SelectMany(coverage => coverage.Duties).All(duty => duty.Text.EndsWith(Mark, StringComparison.Ordinal))
            && judged.Findings.Count > 0 && judged.Alerts.Count > 0;
    }, iter: 60);

    [Fact]
    public void A_cause_is_said_my_way()
    {
        var cause = Book.Causes[0];
        var house = new SmallHouse();
        var place = house.Place(PlaceKind.Basement);
        foreach (var condition in cause.Conditions) house.Seen(condition, place);
        var led = Assert.Single(Judging.Judge(house.Build(), Laid, 2026).Findings, finding => finding.Grouped.Count > 0);
        Assert.Equal(cause.Title + Mark, led.Title);
        Assert.StartsWith(cause.Means + Mark, led.Matters, StringComparison.Ordinal);
    }

    [Fact]
    public void Export_and_import_bring_back_any_wording() => AnyOverlay.Sample(overlay =>
    {
        var back = Overlay.Read(overlay.Write()).OrThrow();
        return back.Edition == overlay.Edition && back.Sentences.Count == overlay.Sentences.Count && overlay.Sentences.All(line => back.Sentences[line.Key] == line.Value) && back.Write().AsSpan().SequenceEqual(overlay.Write());
    }, iter: 200);

    [Fact]
    public void A_book_update_never_eats_an_own_sentence_and_shows_every_one_that_it_touched() => Gen.Select(AnyOverlay, Gen.Int[0, 6]).Sample((drawn, changed) =>
    {
        var mine = Overlay.Empty;
        foreach (var (key, own) in drawn.Sentences) mine = mine.Say(Book, key, own.Now);
        var touched = mine.Sentences.Keys.Take(changed).ToHashSet(StringComparer.Ordinal);
        var update = new Overlay { Sentences = touched.ToDictionary(key => key, key => new OwnSentence("", "The new edition says this.")) };
        // What an update writes into the book is laid into copies of its lines; the copy then counts as the book itself.
        var updated = Reprinted(Book.Lay(update).Book);
        var laid = updated.Lay(mine);
        return mine.Sentences.All(line => Sentence.In(laid.Book, line.Key) == line.Value.Now) && laid.Conflicts.Select(conflict => conflict.Key).ToHashSet(StringComparer.Ordinal).SetEquals(touched);
    }, iter: 60);

    [Fact]
    public void The_order_in_which_wording_arrives_changes_nothing() => Gen.Select(AnyOverlay, Gen.Int).Sample((overlay, seed) =>
    {
        Entry[] entries = [.. Written(overlay)];
        var before = OwnWording.Of(Folding.Fold(entries)).Write();
        new Random(seed).Shuffle(entries);
        return before.AsSpan().SequenceEqual(OwnWording.Of(Folding.Fold(entries)).Write());
    }, iter: 100);

    [Fact]
    public void Undo_gives_the_sentence_of_the_book_back()
    {
        var (pen, mine) = (new Pen("x", "aaa"), Overlay.Empty.Say(Book, "supply-piping.corroded-joint/do", "Renew the run."));
        List<Entry> entries = [.. OwnWording.Entries(mine, Folding.Fold([])).Select(body => pen.Write(body, Noon))];
        Assert.Equal("Renew the run.", Sentence.In(LaidOf(entries), "supply-piping.corroded-joint/do"));
        entries.Add(pen.Write(new EntryBody.EntryWithdrawn { Entry = entries[0].Name }, Noon));
        Assert.Same(Book, LaidOf(entries));
    }

    [Fact]
    public void Giving_a_sentence_up_says_it_as_the_book_does_and_undo_of_that_brings_mine_back()
    {
        var (pen, key) = (new Pen("x", "aaa"), "supply-piping.corroded-joint/do");
        List<Entry> entries = [pen.Write(OwnWording.Say(Folding.Fold([]), key, "was", "Renew the run.")!, Noon)];
        entries.Add(pen.Write(OwnWording.Say(Folding.Fold(entries), key, "", "")!, Noon));
        Assert.Empty(OwnWording.Of(Folding.Fold(entries)).Sentences);
        entries.Add(pen.Write(new EntryBody.EntryWithdrawn { Entry = entries[^1].Name }, Noon));
        Assert.Equal("Renew the run.", OwnWording.Of(Folding.Fold(entries)).Sentences[key].Now);
    }

    [Fact]
    public void Two_phones_that_say_it_apart_are_both_shown_and_one_choice_settles_it()
    {
        var (one, other, key) = (new Pen("x", "aaa"), new Pen("x", "bbb"), "supply-piping.corroded-joint/do");
        List<Entry> entries = [one.Write(OwnWording.Say(Folding.Fold([]), key, "", "Renew the run.")!, Noon), other.Write(OwnWording.Say(Folding.Fold([]), key, "", "Replace the run.")!, Noon)];
        var apart = Folding.Fold(entries);
        Assert.True(apart.Wordings[key].Diverges);
        Assert.Contains(key, Assert.Single(apart.Unsettled).Words, StringComparison.Ordinal);
        one.Saw("bbb", 1);
        entries.Add(one.Write(OwnWording.Say(apart, key, "", "Replace the run.")!, Noon));
        Assert.Empty(Folding.Fold(entries).Unsettled);
        Assert.Equal("Replace the run.", OwnWording.Of(Folding.Fold(entries)).Sentences[key].Now);
    }

    [Fact]
    public void What_stands_already_is_not_written_again() => AnyOverlay.Sample(overlay => OwnWording.Entries(overlay, Folding.Fold(Written(overlay))).Count == 0, iter: 40);

    [Fact]
    public void An_inspection_is_judged_with_the_wording_and_the_conditions_that_its_journal_holds()
    {
        Condition bats = new() { Id = "own.bats", Name = "Bats in the attic", Component = "attic framing", System = "attic", Places = [PlaceKind.Attic], Means = "Bats live here.", Weight = new WeightRule { Consequence = Consequence.Upkeep }, Do = "Ask a specialist.", Trade = "pest control firm" };
        var pen = new Pen("x", "aaa");
        List<Entry> entries = [pen.Write(new EntryBody.InspectionOpened { Property = new Property { Address = "1 Invented Lane" }, Date = new DateOnly(2026, 11, 25) }, Noon)];
        var attic = pen.Write(new EntryBody.PlaceAdded { Kind = PlaceKind.Attic, Name = "Attic" }, Noon);
        entries.Add(attic);
        entries.AddRange(OwnWording.Entries(Overlay.Empty.Say(Book, "supply-piping.corroded-joint/name", "Eaten joint") with { Conditions = [bats] }, Folding.Fold([])).Select(body => pen.Write(body, Noon)));
        foreach (var condition in (string[])["own.bats", "supply-piping.corroded-joint"]) entries.Add(pen.Write(new EntryBody.ObservationMade { Place = attic.Name, Condition = condition, Outcome = Outcome.Seen }, Noon));
        var judged = Judging.Judge(Folding.Fold(entries), Book, 2026);
        Assert.Equal(["Bats in the attic", "Eaten joint"], judged.Findings.Select(finding => finding.Title).Order());
        Assert.Equal(RuleBook.OwnKnowledge, Assert.Single(judged.Findings.Single(finding => finding.Id.ToString() == "own.bats").Sources));
        Assert.Empty(judged.WordingConflicts);
    }

    [Fact]
    public void A_condition_that_cannot_be_judged_is_kept_and_shown()
    {
        var pen = new Pen("x", "aaa");
        using var broken = System.Text.Json.JsonDocument.Parse("""{"id":"own.moon","name":"Moon","component":"moon","places":["moon"],"means":"m","weight":{"consequence":"upkeep"},"do":"d","trade":"the owner"}""");
        var inspection = Folding.Fold([pen.Write(new EntryBody.ConditionWritten { Id = "own.moon", Condition = broken.RootElement.Clone() }, Noon)]);
        Assert.Contains("moon", Assert.Single(Judging.Judge(inspection, Book, 2026).WordingConflicts).Words, StringComparison.Ordinal);
    }

    [Fact]
    public void The_laid_book_is_the_same_one_while_nothing_was_said_otherwise()
    {
        var (memory, pen) = (new LaidBook(), new Pen("x", "aaa"));
        List<Entry> entries = [pen.Write(new EntryBody.WordingSaid { Key = "cautions/scald", Was = Book.Cautions["scald"], Now = "Hot." }, Noon)];
        var first = memory.Of(Book, Folding.Fold(entries)).Book;
        entries.Add(pen.Write(new EntryBody.NoteWritten { Text = "dry" }, Noon));
        Assert.Same(first, memory.Of(Book, Folding.Fold(entries)).Book);
        entries.Add(pen.Write(new EntryBody.WordingSaid { Key = "cautions/scald", Was = "", Now = "Very hot.", Replaces = [entries[0].Name] }, Noon));
        Assert.Equal("Very hot.", memory.Of(Book, Folding.Fold(entries)).Book.Cautions["scald"]);
        Assert.Same(Book, memory.Of(Book, Folding.Fold([])).Book);
    }

    [Fact]
    public void Remembering_changes_nothing_when_wording_changes_between_two_judgements()
    {
        var (memory, pen) = (new JudgingMemory(), new Pen("x", "aaa"));
        List<Entry> entries = [pen.Write(new EntryBody.InspectionOpened { Property = new Property { Address = "1 Invented Lane", YearBuilt = 1968 }, Date = new DateOnly(2026, 11, 25), Standards = ["washington"] }, Noon)];
        var kitchen = pen.Write(new EntryBody.PlaceAdded { Kind = PlaceKind.Kitchen, Name = "Kitchen" }, Noon);
        entries.Add(kitchen);
        foreach (var condition in (string[])["supply-piping.corroded-joint", "receptacle.no-gfci"]) entries.Add(pen.Write(new EntryBody.ObservationMade { Place = kitchen.Name, Condition = condition, Outcome = Outcome.Seen }, Noon));
        entries.Add(pen.Write(new EntryBody.ReadingTaken { Kind = "static water pressure", Amount = new Amount(95, "psi"), Place = kitchen.Name }, Noon));
        GrowingFold fold = new();
        fold.Add(entries);
        Same();
        foreach (var sentence in Everything.Sentences.Where(line => line.Key.StartsWith("supply-piping.", StringComparison.Ordinal) || line.Key.StartsWith("receptacle.no-gfci", StringComparison.Ordinal) || line.Key.StartsWith("words/", StringComparison.Ordinal) || line.Key.StartsWith("causes/", StringComparison.Ordinal)).Take(160))
        {
            fold.Add([pen.Write(OwnWording.Say(fold.Inspection, sentence.Key, sentence.Value.Was, sentence.Value.Now)!, Noon)]);
            if (fold.Entries.Count % 8 == 0) Same();
        }
        fold.Add([pen.Write(new EntryBody.EntryWithdrawn { Entry = fold.Entries[^1].Name }, Noon)]);
        Same();

        void Same() => Assert.Equal(
            JudgementJson.Write(Judging.Judge(fold.Inspection, Book, 2026), fold.Inspection).ToJsonString(),
            JudgementJson.Write(Judging.Judge(fold.Inspection, Book, 2026, memory), fold.Inspection).ToJsonString());
    }

    private static RuleBook LaidOf(IEnumerable<Entry> entries) => new LaidBook().Of(Book, Folding.Fold(entries)).Book;

    private static IEnumerable<Entry> Written(Overlay overlay)
    {
        var pen = new Pen("x", "aaa");
        return [.. OwnWording.Entries(overlay, Folding.Fold([])).Select(body => pen.Write(body, Noon))];
    }

    /// <summary>A book as its next edition would be read: nothing lies beneath it.</summary>
    private static RuleBook Reprinted(RuleBook laid) => new()
    {
        Edition = "2",
        Conditions = laid.Conditions,
        Limitations = laid.Limitations,
        Profiles = laid.Profiles,
        ReadingKinds = laid.ReadingKinds,
        Feeds = laid.Feeds,
        FactRules = laid.FactRules,
        Causes = laid.Causes,
        Escalations = laid.Escalations,
        Standards = laid.Standards,
        Core = laid.Core,
        Aliases = laid.Aliases,
        Sources = laid.Sources,
        Words = laid.Words,
        Visit = laid.Visit,
        Settings = laid.Settings,
        Cautions = laid.Cautions,
        ToldApart = laid.ToldApart,
    };

    private static Inspection House(int start, int[] looks)
    {
        var house = new SmallHouse { Property = new Property { Address = "1 Invented Lane", YearBuilt = 1968 }, Standards = ["washington"] };
        var places = PlaceKind.All.Select(kind => house.Place(kind)).ToList();
        string[] conditions = [.. Book.Conditions.Keys.Order(StringComparer.Ordinal)];
        for (var at = 0; at < looks.Length; at++) house.Seen(conditions[(start + at) % conditions.Length], places[looks[at]]);
        house.NotVisible(conditions[(start + 50) % conditions.Length], places[0], "covered");
        return house.Build();
    }
}
