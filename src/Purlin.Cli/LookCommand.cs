using System.CommandLine;
using System.Text.Json.Nodes;
using Purlin.Book;
using Purlin.Judgement;
using Purlin.Judgement.Looking;
using Purlin.Report;

namespace Purlin.Cli;

/// <summary>
/// <c>purlin look FILE</c>: what to look at first, place by place, from the facts of the house and from what was noticed.
/// </summary>
internal static class LookCommand
{
    // As many as stand before the inspector at a time.
    private const int Shown = 8;

    public static Command Build(Terminal terminal, TimeProvider clock)
    {
        Argument<string> file = new("FILE") { Description = "An archive NAME.purlin, or journal lines NAME.jsonl" };
        Option<string?> place = new("--place") { Description = "Only the place of this name, or places of this kind" };
        Option<bool> json = new("--json") { Description = "Print one JSON object: places with all their looks in order, alerts" };
        Command command = new("look", "What to look at first in each place") { file, place, json };
        command.SetAction(parsed => InspectionFile.Open(parsed.GetRequiredValue(file)).Match(
            opened => Look(terminal, clock, opened, parsed.GetValue(place), parsed.GetValue(json)), terminal.Refuse));
        return command;
    }

    private static int Look(Terminal terminal, TimeProvider clock, InspectionFile file, string? only, bool json)
    {
        using (file)
        {
            var work = file.Work(RuleBook.BuiltIn, clock);
            var all = LookOrder.Of(work.Inspection, work.Judged, work.Book);
            var places = all.Where(place => only is null || Is(place.Name, only) || Is(place.Kind, only)).ToList();
            if (places.Count == 0)
            {
                terminal.Refuse(only is null
                    ? "this inspection has neither places nor facts of the house; add one of them first"
                    : $"no place \"{only}\"; there are: {string.Join(", ", all.Select(place => place.Name))}");
                return ExitStatus.BadInput;
            }
            if (json) terminal.Out.WriteLine(Json(places, work.Judged).ToJsonString(ReckonCommand.Printed));
            else Print(terminal, places, work);
            return ExitStatus.Done;
        }
    }

    private static bool Is(string name, string wanted) => string.Equals(name, wanted, StringComparison.OrdinalIgnoreCase);

    private static JsonObject Json(List<PlaceLooks> places, JudgedInspection judged) => new()
    {
        ["places"] = new JsonArray([.. places.Select(place => new JsonObject
        {
            ["place"] = place.Kind,
            ["name"] = place.Name,
            ["looks"] = new JsonArray([.. place.Looks.Select(look => new JsonObject
            {
                ["condition"] = look.Condition,
                ["component"] = look.Component,
                ["rank"] = look.Rank,
                ["because"] = Texts(look.Because),
            })]),
        })]),
        ["alerts"] = new JsonArray([.. judged.Alerts.Select(alert => new JsonObject { ["title"] = alert.Title,
            ["conditions"] = Texts(alert.Conditions) })]),
    };

    private static JsonArray Texts(IEnumerable<string> texts) => new([.. texts.Select(text => JsonValue.Create(text))]);

    private static void Print(Terminal terminal, List<PlaceLooks> places, Work work)
    {
        foreach (var place in places)
        {
            terminal.Out.WriteLine(terminal.Bold(place.Name));
            foreach (var look in place.Looks.Take(Shown))
                terminal.Out.WriteLine($"  {look.Rank,2}  {work.Book.Conditions[look.Condition].Name}. {look.Because[0]}");
        }
        terminal.Out.WriteLine(terminal.Bold($"in a house like this ({work.Judged.Alerts.Count})"));
        foreach (var alert in work.Judged.Alerts) terminal.Out.WriteLine($"  {alert.Title}. {alert.Look}");
    }
}
