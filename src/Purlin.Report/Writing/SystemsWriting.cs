using System.Globalization;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Report.Plans;

namespace Purlin.Report.Writing;

/// <summary>What is there, fact by fact, with how each is known.</summary>
internal static class SystemsWriting
{
    private static readonly string[] order = ["site", "exterior", "roof", "attic", "structure", "plumbing", "electrical", "heating", "cooling", "interior"];

    /// <summary>The chapter that names every thing with its facts.</summary>
    public static IEnumerable<Chapter> Of(ReportModel model)
    {
        var record = model.Record;
        var year = record.Judged.Year;
        var systems = record.Book.Conditions.Values.GroupBy(condition => condition.Component).ToDictionary(group => group.Key, group => group.First().System);
        NoteWriting notes = new(record);
        var groups = record.Inspection.Components.Where(component => component.Kind != "house" && (component.Facts.Count > 0 || component.Place is not null || notes.Under(component.Id).Count > 0))
            .GroupBy(component => systems.GetValueOrDefault(component.Kind, "other"))
            .OrderBy(group => Array.IndexOf(order, group.Key) is var at && at < 0 ? order.Length : at).ToArray();
        var house = record.Inspection.Components.FirstOrDefault(component => component.Kind == "house");
        List<Block> blocks = [];
        // What was settled about the visit is a fact of the house in the journal, and stands in a chapter of its own.
        if (house is not null) house = house with { Facts = house.Facts.Where(fact => !record.Book.Visit.Any(rule => rule.Facts.Any(known => known.Name == fact.Key))).ToDictionary() };
        if (house is { Facts.Count: > 0 }) blocks.Add(Table(record, notes, "The house", [house], year));
        blocks.AddRange(groups.Select(group => Table(record, notes, Phrase.Sentence(group.Key), [.. group], year)));
        blocks.AddRange(notes.Elsewhere());
        if (blocks.Count > 0)
            yield return new Chapter("systems", "The house at a glance", "What is there, and how we know it. What was told to us or presumed is marked and was not checked.", blocks) { Form = ChapterForm.Reference };
    }

    /// <summary>The drawing of ages; none when nothing has one.</summary>
    public static IEnumerable<Block> AgeDrawing(Record record)
    {
        AgeLine[] lines = [.. record.Judged.Workings.Where(done => done.Working.Name == "service-life").Select(done => new AgeLine(Phrase.Sentence(record.ComponentName(done.Component) is { Length: > 0 } name ? name : record.Book.Words.Say(done.Working.Title)), done.Working.Result))];
        if (Ages.Draw(lines, record.Judged.Year, 560) is { } wide)
            yield return new Block.Figure(wide, "Thick line: the years it has stood. Hatched: the years in which most of its kind come to their end. Cross line: the usual end. Some fail sooner and some last longer.") { Upright = Ages.Draw(lines, record.Judged.Year, 340) };
    }

    private static Block.Table Table(Record record, NoteWriting notes, string caption, IReadOnlyList<Component> components, int year) =>
        new(caption, ["", ""], [.. components.Select(component => (IReadOnlyList<Prose>)[Named(record, component), Facts(component, notes.Under(component.Id), year)])]) { Shares = [0.36, 0.64], Fine = true };

    private static string Named(Record record, Component component) =>
        $"{Phrase.Sentence(Record.ComponentName(component))}\n{(record.PlaceName(component.Place) is { Length: > 0 } place ? place : "Whole house")}";

    private static string Facts(Component component, IReadOnlyList<string> noted, int year) => component.Facts.Count + noted.Count == 0 ? "There; no facts recorded." :
        string.Join('\n', component.Facts.OrderBy(fact => Rank(fact.Key)).ThenBy(fact => fact.Key, StringComparer.Ordinal).Select(fact => Line(fact.Key, fact.Value, year)).Concat(noted));

    private static string Line(string name, Slot<Fact> slot, int year)
    {
        var said = slot.Standing.Select(stated => $"{Phrase.Value(stated.Value).Replace("\n", " / ", StringComparison.Ordinal)}{Age(name, stated.Value, year)} ({Phrase.Basis(stated.Value.Basis)})");
        return $"{Phrase.Sentence(name)}: {string.Join("; or ", said)}";
    }

    // A year alone is a figure; the age is what a reader can use.
    private static string Age(string name, Fact fact, int year)
    {
        if (name is not ("year" or "year built") || fact.Value.Number is not { } made || made < 1700 || made > year) return "";
        var age = year - (int)made;
        return age == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $", about {age} {(age == 1 ? "year" : "years")} old");
    }

    private static int Rank(string fact) => fact switch { "material" => 0, "year" => 1, "fuel" => 2, "capacity" or "rating" or "input" => 3, _ => 4 };
}
