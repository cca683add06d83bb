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
        var (record, words) = (model.Record, model.Words);
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
        if (house is { Facts.Count: > 0 }) blocks.Add(Table(record, notes, words.Say("report.the-house"), [house], year));
        blocks.AddRange(groups.Select(group => Table(record, notes, Phrase.Sentence(words.Word(group.Key)), [.. group], year)));
        blocks.AddRange(notes.Elsewhere());
        if (blocks.Count > 0)
            yield return new Chapter("systems", words.Say("report.systems.title"), words.Say("report.systems.lead"), blocks) { Form = ChapterForm.Reference };
    }

    /// <summary>The drawing of ages; none when nothing has one.</summary>
    public static IEnumerable<Block> AgeDrawing(Record record)
    {
        AgeLine[] lines = [.. record.Judged.Workings.Where(done => done.Working.Name == "service-life").Select(done => new AgeLine(Phrase.Sentence(record.ComponentName(done.Component) is { Length: > 0 } name ? name : record.Words.Say(done.Working.Title)), done.Working.Result))];
        if (Ages.Draw(lines, record.Judged.Year, 560, record.Words.Tongue) is { } wide)
            yield return new Block.Figure(wide, record.Words.Say("report.ages.caption")) { Upright = Ages.Draw(lines, record.Judged.Year, 340, record.Words.Tongue) };
    }

    private static Block.Table Table(Record record, NoteWriting notes, string caption, IReadOnlyList<Component> components, int year) =>
        new(caption, ["", ""], [.. components.Select(component => (IReadOnlyList<Prose>)[Named(record, component), Facts(component, notes.Under(component.Id), year, record.Words)])]) { Shares = [0.36, 0.64], Fine = true };

    private static string Named(Record record, Component component) =>
        $"{Phrase.Sentence(record.ComponentName(component))}\n{(record.PlaceName(component.Place) is { Length: > 0 } place ? place : record.Words.Say("report.whole-house"))}";

    private static string Facts(Component component, IReadOnlyList<string> noted, int year, Phrase words) => component.Facts.Count + noted.Count == 0 ? words.Say("report.systems.bare") :
        string.Join('\n', component.Facts.OrderBy(fact => Rank(fact.Key)).ThenBy(fact => fact.Key, StringComparer.Ordinal).Select(fact => Line(fact.Key, fact.Value, year, words)).Concat(noted));

    private static string Line(string name, Slot<Fact> slot, int year, Phrase words)
    {
        var said = slot.Standing.Select(stated => words.Say("report.systems.value", ("value", words.Value(stated.Value).Replace("\n", " / ", StringComparison.Ordinal)), ("age", Age(name, stated.Value, year, words)), ("basis", words.Basis(stated.Value.Basis))));
        return words.Say("report.systems.fact", ("fact", Phrase.Sentence(words.Word(name))), ("values", SaidValue.Of(said)));
    }

    // A year alone is a figure; the age is what a reader can use.
    private static string Age(string name, Fact fact, int year, Phrase words)
    {
        if (name is not ("year" or "year built") || fact.Value.Number is not { } made || made < 1700 || made > year) return "";
        var age = year - (int)made;
        return age == 0 ? "" : words.Say("report.systems.age", ("years", age));
    }

    private static int Rank(string fact) => fact switch { "material" => 0, "year" => 1, "fuel" => 2, "capacity" or "rating" or "input" => 3, _ => 4 };
}
