using Purlin.Book;
using Purlin.Hearing;
using Purlin.Tests.House;

namespace Purlin.Tests.Hearing;

/// <summary>
/// How well narrations are understood, against labels made before the reader was. The levels are what is reached, less a little: they
/// may rise and
/// not fall. Run with PURLIN_WRITE=1 to write the figures into bench/results.
/// </summary>
public sealed class MeasureTests
{
    private static readonly Ear Ear = new(RuleBook.BuiltIn);

    private static readonly Lazy<Tally> Open = new(() => Tally.Of(Narration.Open(), Listen));

    private static readonly Lazy<Tally> HeldOut = new(() => Tally.Of(Narration.HeldOut(), Listen));

    [Fact]
    public void What_the_reader_was_tuned_on_is_understood()
    {
        Assert.InRange(Open.Value.F1, OpenF1, 1);
        Assert.InRange(Open.Value.Precision, OpenPrecision, 1);
        Assert.InRange((double)Open.Value.AsidesQuiet / Open.Value.Asides, OpenQuiet, 1);
    }

    [Fact]
    public void What_nobody_looked_at_is_understood()
    {
        Assert.InRange(HeldOut.Value.F1, HeldOutF1, 1);
        Assert.InRange(HeldOut.Value.Precision, HeldOutPrecision, 1);
    }

    [Fact]
    public void The_figures_are_written_down()
    {
        var path = Path.Combine(Repository.Root, "bench/results/heard.md");
        var text = Text();
        if (Environment.GetEnvironmentVariable("PURLIN_WRITE") == "1") File.WriteAllText(path, text);
        // The figures move with every phrase of the book; that each row is there is enough.
        Assert.Equal(text.Count(letter => letter == '\n'), File.ReadAllText(path).Count(letter => letter == '\n'));
    }

    private const double OpenF1 = 0.70, OpenPrecision = 0.70, OpenQuiet = 0.80, HeldOutF1 = 0.55, HeldOutPrecision = 0.60;

    private static Heard Listen(Narration narration) => Ear.Listen(narration.Transcript);

    private static string Text()
    {
        List<string> lines =
        [
            "# What is heard", "",
            "Narrations of tests/Purlin.Tests/Fixtures/narrations against their labels: component, condition and outcome must be right and the words overlap. Place, trade and",
            "hedge are shares of the right ones, amounts of those that should have some, quiet the share of asides of which nothing is proposed.", "",
            "| narrations | wanted | proposed | precision | recall | F1 | place | amounts | trade | hedge | quiet |",
            "| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |",
            Open.Value.Row("tuned on"), HeldOut.Value.Row("**held out**"), "",
                "By what makes a narration hard; a narration has several of these.", "",
            "| held out, with | wanted | proposed | precision | recall | F1 | place | amounts | trade | hedge | quiet |",
            "| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |",
        ];
        var heldOut = Narration.HeldOut();
        foreach (var phenomenon in heldOut.SelectMany(narration => narration.Phenomena).Distinct().Order(StringComparer.Ordinal))
            lines.Add(Tally.Of(heldOut.Where(narration => narration.Phenomena.Contains(phenomenon)), Listen).Row(phenomenon));
        return string.Join('\n', lines) + "\n";
    }
}
