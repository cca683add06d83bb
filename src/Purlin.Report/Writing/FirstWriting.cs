using Purlin.Book;
using Purlin.Judgement;

namespace Purlin.Report.Writing;

internal static class FirstWriting
{
    public const string Id = "first";

    /// <summary>The lightest weight the first drawing pins: the two heaviest, or all when there are few.</summary>
    public static Weight Heaviest(IReadOnlyList<Matter> matters) => matters.Count <= 14 || matters.All(matter => matter.Weight < Weight.ActNow) ? Weight.KnowAbout : Weight.ActNow;

    public static Chapter Of(Record record, IReadOnlyList<Matter> matters) => new(Id, "What matters first", Lead(record, matters), [.. Lists(matters), .. Trades(matters)]);

    private static string Lead(Record record, IReadOnlyList<Matter> matters)
    {
        if (matters.Count == 0) return "Nothing to report was found on the day, where we could look. Read with it what could not be looked at.";
        var hurt = matters.Count(matter => matter.Weight == Weight.MakeSafe);
        var damage = matters.Count(matter => matter.Weight == Weight.ActNow);
        var rest = matters.Count - hurt - damage;
        List<string> parts = [];
        if (hurt > 0) parts.Add($"{Phrase.Many(hurt, "matter", "matters")} by which someone can be hurt");
        if (damage > 0) parts.Add($"{(parts.Count == 0 ? Phrase.Many(damage, "matter", "matters") : $"{damage}")} where damage is under way or close");
        if (rest > 0) parts.Add(parts.Count == 0 ? Phrase.Many(rest, "matter that is a repair, upkeep or worth knowing", "matters that are repairs, upkeep or worth knowing") : $"{rest} that {(rest == 1 ? "is a repair, upkeep or worth knowing" : "are repairs, upkeep or worth knowing")}");
        var limits = record.Judged.Limitations.Count;
        return $"We found {Phrase.List(parts)}." + (limits > 0 ? $" {(limits == 1 ? "One thing" : $"{limits} things")} could not be looked at or tested; they are listed after the matters." : "");
    }

    private static IEnumerable<Block> Lists(IReadOnlyList<Matter> matters)
    {
        foreach (var weight in (Weight[])[Weight.MakeSafe, Weight.ActNow])
        {
            var these = matters.Where(matter => matter.Weight == weight).ToArray();
            if (these.Length == 0) continue;
            yield return new Block.Table($"{Phrase.Sentence(weight.Word())}. {Phrase.Meaning(weight)}", ["Matter", "Where", "What to do"],
                [.. these.Select(matter => (IReadOnlyList<string>)[$"{matter.Number}. {matter.Title}", matter.Say(MatterWriting.Where), matter.Say(MatterWriting.Do)])])
            { Shares = [0.32, 0.26, 0.42] };
        }
    }

    private static IEnumerable<Block> Trades(IReadOnlyList<Matter> matters)
    {
        var trades = matters.Where(matter => matter.Weight >= Weight.PutRight).GroupBy(matter => matter.Say(MatterWriting.Whom).TrimEnd('.'), StringComparer.OrdinalIgnoreCase)
            .OrderBy(group => group.Min(matter => matter.Number)).ToArray();
        if (trades.Length == 0) yield break;
        yield return new Block.Table("Whom to call. The same matters, repairs included, by the trade that deals with them.", ["Trade", "Matters"],
            [.. trades.Select(group => (IReadOnlyList<string>)[group.Key, string.Join(", ", group.Select(matter => matter.Number))])])
        { Shares = [0.4, 0.6] };
    }

    /// <summary>How the weights read, and how many matters have each.</summary>
    public static Block.Table Weights(IReadOnlyList<Matter> matters) => new("How the weights read. The bars under a number are its weight, one to five.", ["Weight", "What it asks", "Matters"],
            [.. WeightWords.HeaviestFirst.Select(weight => (IReadOnlyList<string>)[$"{Phrase.Sentence(weight.Word())} ({Phrase.Many((int)weight, "bar", "bars")})", Phrase.Meaning(weight), $"{matters.Count(matter => matter.Weight == weight)}"])])
    { Shares = [0.3, 0.56, 0.14] };
}
