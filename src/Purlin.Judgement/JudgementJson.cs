using System.Text.Json.Nodes;
using Purlin.Book;
using Purlin.Journal.Fold;
using Purlin.Journal.Merge;
using Purlin.Journal;

namespace Purlin.Judgement;

/// <summary>
/// Writes a judgement as JSON for other programs and for checks from outside. The form is described in
/// <c>docs/schema/judgement.schema.json</c>; members are only ever added to it.
/// </summary>
public static class JudgementJson
{
    /// <summary>The judgement of an inspection as an object.</summary>
    /// <param name="judged">The judgement.</param>
    /// <param name="inspection">The inspection it is of.</param>
    /// <param name="held">Lines beside it that could not be read, so that nothing is lost without a word.</param>
    public static JsonObject Write(JudgedInspection judged, Inspection inspection, IReadOnlyList<HeldLine>? held = null)
    {
        ArgumentNullException.ThrowIfNull(judged);
        ArgumentNullException.ThrowIfNull(inspection);
        var places = inspection.Places.ToDictionary(place => place.Id, place => place.Name);
        return new JsonObject
        {
            ["format"] = "purlin-judgement",
            ["version"] = 1,
            ["inspection"] = inspection.Id,
            ["rule_book"] = judged.RuleBook,
            ["year"] = judged.Year,
            ["findings"] = List(judged.Findings, finding => Finding(finding, places)),
            ["loose_ends"] = List(judged.LooseEnds, LooseEnd),
            ["coverage"] = List(judged.Coverage, Standard),
            ["visit"] = List(judged.Visit, Around),
            ["wanted"] = List(judged.Wanted, wanted => new JsonObject { ["setting"] = wanted.Setting, ["name"] = wanted.Name, ["standard"] = wanted.Standard, ["value"] = wanted.Value, ["mark"] = wanted.Mark }),
            ["limitations"] = List(judged.Limitations, Limitation),
            ["workings"] = List(judged.Workings, working => Working(working, judged.Words)),
            ["refused"] = List(judged.Refused, refused => new JsonObject { ["reckoning"] = refused.Reckoning, ["reasons"] = Texts(refused.Reasons), ["evidence"] = Names(refused.Evidence), ["place"] = refused.Place?.ToString() }),
            ["look_again"] = List(judged.Again, AgainJson.Write),
            ["held"] = List(held ?? [], line => AgainJson.Write(line, judged.Words)),
            ["asks"] = List(judged.Asks, ask => new JsonObject { ["reckoning"] = ask.Reckoning, ["words"] = ask.Words, ["reading"] = ask.Reading, ["fact"] = ask.Fact, ["component"] = ask.Component?.ToString(), ["place"] = ask.Place?.ToString() }),
            ["photos"] = List(judged.Photos, photo => new JsonObject { ["id"] = photo.Id.ToString(), ["use"] = photo.Use, ["finding"] = photo.Finding?.ToString(), ["caption"] = photo.Caption }),
            ["notes"] = List(judged.Notes, NoteJson.Write),
            ["alerts"] = List(judged.Alerts, alert => new JsonObject { ["title"] = alert.Title, ["reason"] = alert.Reason, ["look"] = alert.Look, ["sources"] = Texts(alert.Sources) }),
            ["offers"] = List(judged.Offers, offer => new JsonObject { ["rule"] = offer.Rule, ["what"] = offer.What, ["cause"] = offer.Cause, ["next"] = offer.Next, ["because"] = Names(offer.Because) }),
            ["wording_conflicts"] = List(judged.WordingConflicts, conflict => new JsonObject { ["key"] = conflict.Key, ["was"] = conflict.Was, ["book"] = conflict.Book, ["own"] = conflict.Own, ["words"] = conflict.Words }),
            ["obstacles"] = List(judged.Obstacles, Obstacle),
        };
    }

    private static JsonObject Finding(Finding finding, Dictionary<EntryName, string> places) => new()
    {
        ["id"] = finding.Id.ToString(),
        ["condition"] = finding.Condition,
        ["grouped"] = Texts(finding.Grouped),
        ["system"] = finding.System,
        ["component"] = finding.ComponentKind,
        ["components"] = Names(finding.Components),
        ["weight"] = finding.Weight.Word(),
        ["by_when"] = finding.Due is not { } due ? null : new JsonObject { ["word"] = due.By.Word(), ["order"] = (int)due.By, ["because"] = due.Because },
        ["why"] = List(finding.Why, step => new JsonObject { ["what"] = step.What.Word(), ["words"] = step.Words, ["weight"] = step.Weight.Word() }),
        ["spread"] = finding.Spread switch { Spread.OnePlace => "one place", Spread.SeveralPlaces => "several places", _ => "throughout" },
        ["places"] = List(finding.Places, place => new JsonObject { ["id"] = place.ToString(), ["name"] = places.GetValueOrDefault(place, "") }),
        ["evidence"] = Names(finding.Evidence),
        ["photos"] = Names(finding.Photos),
        ["then_and_now"] = finding.ThenAndNow is not { } years ? null : new JsonObject
        {
            ["rule"] = years.Rule,
            ["kind"] = years.Kind.Word(),
            ["first_year"] = years.FirstYear,
            ["words"] = years.Words,
            ["year"] = years.Year is not { } known ? null : new JsonObject { ["year"] = known.Year, ["of"] = known.Of switch { YearOf.Thing => "thing", YearOf.Structure => "structure", _ => "house" }, ["basis"] = known.Basis },
            ["sources"] = Texts(years.Sources),
        },
        ["trade"] = finding.Trade,
        ["text"] = new JsonObject { ["title"] = finding.Title, ["where"] = finding.Where, ["observed"] = finding.Observed, ["matters"] = finding.Matters, ["do"] = finding.Do },
        ["cautions"] = Texts(finding.Cautions),
        ["workings"] = new JsonArray([.. finding.Workings.Select(index => (JsonNode)JsonValue.Create(index))]),
        ["sources"] = Texts(finding.Sources),
        ["overruled"] = List(finding.Overruled, change => new JsonObject { ["part"] = change.Part.Word(), ["from"] = change.From, ["to"] = change.To, ["reason"] = change.Reason, ["by"] = change.By.ToString() }),
        ["left_out"] = finding.LeftOut,
    };

    private static JsonObject LooseEnd(LooseEnd end) => new()
    {
        ["id"] = end.Id.ToString(),
        ["question"] = end.Question,
        ["because"] = end.Because,
        ["opened_by"] = Names(end.OpenedBy),
        ["look_in"] = Names(end.LookIn),
        ["still_to_look"] = Names(end.StillToLook),
        ["answers"] = Texts(end.Answers),
        ["readings"] = Texts(end.Readings),
        ["tied"] = end.Tied is not { } tied ? null : new JsonObject { ["how"] = tied.How, ["by"] = Names(tied.By), ["words"] = tied.Words },
        ["blocks"] = end.Blocks,
        ["referral"] = end.Referral,
        ["trade"] = end.Trade,
    };

    private static JsonObject Standard(Coverage coverage) => new()
    {
        ["standard"] = coverage.Standard,
        ["title"] = coverage.Title,
        ["duties"] = List(coverage.Duties, duty => new JsonObject
        {
            ["id"] = duty.Id.ToString(),
            ["section"] = duty.Section,
            ["system"] = duty.System,
            ["text"] = duty.Text,
            ["verb"] = duty.Verb.Word(),
            ["state"] = duty.State switch { DutyStanding.Met => "met", DutyStanding.Limited => "limited", DutyStanding.NotPresent => "not present", _ => "open" },
            ["evidence"] = Names(duty.Evidence),
            ["words"] = duty.Words,
            ["open_core"] = Texts(duty.OpenCore.Select(core => core.ToString())),
            ["fewer"] = Texts(duty.Fewer),
            ["mark"] = duty.Mark,
        }),
    };

    private static JsonObject Around(VisitDuty duty) => new()
    {
        ["id"] = duty.Id.ToString(),
        ["name"] = duty.Name,
        ["text"] = duty.Text,
        ["close"] = duty.Close.Word(),
        ["state"] = duty.State switch
        {
            VisitStanding.Closed => "closed",
            VisitStanding.NotDone => "not done",
            VisitStanding.DoesNotApply => "does not apply",
            VisitStanding.Dated => "dated",
            VisitStanding.Listed => "listed",
            _ => "open",
        },
        ["words"] = duty.Words,
        ["evidence"] = Names(duty.Evidence),
        ["day"] = Day(duty.Day),
        ["done"] = Day(duty.Done),
        ["bars_issue"] = duty.BarsIssue,
        ["asked"] = List(duty.Asked, asked => new JsonObject { ["duty"] = asked.Duty.ToString(), ["standard"] = asked.Standard, ["section"] = asked.Section, ["text"] = asked.Text, ["mark"] = asked.Mark, ["day"] = Day(asked.Day) }),
    };

    private static string? Day(DateOnly? day) => day?.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);

    private static JsonObject Limitation(JudgedLimitation limitation) => new()
    {
        ["id"] = limitation.Id.ToString(),
        ["what"] = limitation.What,
        ["cause"] = limitation.Cause,
        ["next"] = limitation.Next,
        ["place"] = limitation.Place?.ToString(),
        ["component"] = limitation.Component?.ToString(),
        ["photos"] = Names(limitation.Photos),
    };

    private static JsonObject Working(JudgedWorking judged, Tongue words)
    {
        var working = judged.Working.ToJson(words);
        working["name"] = judged.Working.Name;
        working["title"] = words.Say(judged.Working.Title);
        working["inputs"] = judged.Working.Inputs.DeepClone();
        working["evidence"] = Names(judged.Evidence);
        working["component"] = judged.Component?.ToString();
        working["place"] = judged.Place?.ToString();
        return working;
    }

    private static JsonObject Obstacle(Obstacle obstacle) => new()
    {
        ["kind"] = obstacle switch
        {
            Judgement.Obstacle.LooseEndOpen => "loose end",
            Judgement.Obstacle.DutyOpen => "duty",
            Judgement.Obstacle.VisitOpen => "around the visit",
            Judgement.Obstacle.PhotoUnspoken => "photograph",
            Judgement.Obstacle.NoteUnspoken => "note",
            Judgement.Obstacle.LimitationIncomplete => "limitation",
            Judgement.Obstacle.Unsettled => "unsettled",
            Judgement.Obstacle.PlaceUnvisited => "place",
            Judgement.Obstacle.NotUnderstood => "misunderstood",
            Judgement.Obstacle.UnknownEntries => "unknown entries",
            _ => throw new System.Diagnostics.UnreachableException(),
        },
        ["about"] = obstacle switch
        {
            Judgement.Obstacle.LooseEndOpen end => end.LooseEnd.ToString(),
            Judgement.Obstacle.DutyOpen duty => duty.Duty.ToString(),
            Judgement.Obstacle.VisitOpen duty => duty.Duty.ToString(),
            Judgement.Obstacle.PhotoUnspoken photo => photo.Photo.ToString(),
            Judgement.Obstacle.NoteUnspoken note => note.Note.ToString(),
            Judgement.Obstacle.LimitationIncomplete limitation => limitation.Limitation.ToString(),
            Judgement.Obstacle.NotUnderstood odd => odd.Again,
            _ => null,
        },
        ["words"] = obstacle.Words,
        ["place"] = obstacle.Place?.ToString(),
    };

    private static JsonArray List<T>(IEnumerable<T> things, Func<T, JsonObject> write) => new([.. things.Select(thing => (JsonNode)write(thing))]);

    private static JsonArray Texts(IEnumerable<string> texts) => new([.. texts.Select(text => (JsonNode)JsonValue.Create(text))]);

    private static JsonArray Names(IEnumerable<EntryName> names) => Texts(names.Select(name => name.ToString()));
}
