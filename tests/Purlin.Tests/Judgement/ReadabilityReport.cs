using System.Globalization;
using System.Text;
using Purlin.Book;
using Purlin.Tests.House;

namespace Purlin.Tests.Judgement;

/// <summary>
/// Writes two reports to <c>artifacts/</c>: the reading grade of every text for buyers, and every line that is from memory.
/// Flesch-Kincaid grade: 0.39 words/sentence + 11.8 syllables/word - 15.59 (Kincaid and others, US Navy, Research Branch Report 8-75, 1975).
/// </summary>
public sealed class ReadabilityReport
{
    private const double MostGrade = 9;
    private const double ShareBelow = 0.9;

    // Worked by hand: 1 sentence, 6 words, 7 syllables ("water" has 2): 0.39 x 6 + 11.8 x 7/6 - 15.59 = 0.517.
    [Fact]
    public void The_grade_is_the_published_formula() => Assert.Equal(0.517, Grade("The pipe lets water get out."), 0.01);

    [Fact]
    public void Texts_for_buyers_can_be_read_at_grade_nine()
    {
        var graded = RuleBook.BuiltIn.Conditions.Values
            .Select(condition => (condition.Id, Grade: Grade($"{condition.Means} {condition.Leads} {condition.Do}")))
            .OrderByDescending(line => line.Grade).ToList();
        var report = new StringBuilder("# Flesch-Kincaid grade of what a buyer reads (means, leads, do), hardest first\n");
        foreach (var (id, grade) in graded) report.Append(CultureInfo.InvariantCulture, $"{grade,5:0.0} {(grade > MostGrade ? "*" : " ")} {id}\n");
        Write("reading-grade.txt", report);
        var easy = graded.Count(line => line.Grade <= MostGrade);
        Assert.True(easy >= ShareBelow * graded.Count, $"{easy} of {graded.Count} at grade {MostGrade} or below; hardest: {string.Join(", ", graded.Take(12).Select(line => $"{line.Id} {line.Grade:0.0}"))}");
    }

    [Fact]
    public void What_is_from_memory_is_listed()
    {
        var book = RuleBook.BuiltIn;
        var report = new StringBuilder("# Lines that nobody has confirmed yet\n");
        foreach (var (id, source) in book.Sources.Where(source => source.Value.Mark == "from memory").OrderBy(source => source.Key, StringComparer.Ordinal)) report.Append(CultureInfo.InvariantCulture, $"source {id}: {source.InWords()}\n");
        foreach (var standard in book.Standards.Values.OrderBy(standard => standard.Id, StringComparer.Ordinal))
        {
            foreach (var duty in standard.Duties.Where(duty => duty.Mark == "from memory")) report.Append(CultureInfo.InvariantCulture, $"duty {standard.Id}:{duty.Id}: {duty.Text}\n");
            foreach (var (name, setting) in standard.Settings.Where(setting => setting.Value.Mark == "from memory")) report.Append(CultureInfo.InvariantCulture, $"setting {standard.Id}: {name} = {setting.Value} {setting.Unit}\n");
        }
        Write("from-memory.txt", report);
        // A mark may only go with a confirmation, and then the figures that we publish about ourselves go down with it.
        var state = File.ReadAllText(Path.Combine(Repository.Root, "docs", "STATE.md"));
        var standards = File.ReadAllText(Path.Combine(Repository.Root, "docs", "standards.md"));
        Told.Nothing(
        [
            .. Missing(state, $" {book.Standards.Values.Sum(OfMemory)} duties, ", "docs/STATE.md"),
            .. Missing(state, $" {book.Sources.Values.Count(source => source.Mark == "from memory")} cited source", "docs/STATE.md"),
            .. book.Standards.Values.SelectMany(standard => Missing(standards, $"| {standard.Short} | {standard.Duties.Count} | {OfMemory(standard)} |", "docs/standards.md")),
        ], "What is from memory is told in figures, and they follow the book.");
    }

    private static int OfMemory(Standard standard) => standard.Duties.Count(duty => duty.Mark == "from memory");

    private static IEnumerable<string> Missing(string page, string figures, string name) =>
        page.Contains(figures, StringComparison.Ordinal) ? [] : [$"{name} must say \"{figures.Trim()}\""];


    private static void Write(string name, StringBuilder report)
    {
        var folder = Directory.CreateDirectory(Path.Combine(Repository.Root, "artifacts"));
        File.WriteAllText(Path.Combine(folder.FullName, name), report.ToString());
    }

    private static double Grade(string text)
    {
        var sentences = Math.Max(1, text.Split(['.', '?', ':', ';'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Length);
        var words = text.Split([' ', '\n', '.', ',', ';', ':', '?', '(', ')', '/', '-'], StringSplitOptions.RemoveEmptyEntries).Where(word => word.Any(char.IsLetter)).ToList();
        return words.Count == 0 ? 0 : 0.39 * words.Count / sentences + 11.8 * words.Sum(Syllables) / words.Count - 15.59;
    }

    /// <summary>Runs of vowels, less a silent final e.</summary>
    private static int Syllables(string word)
    {
        var letters = word.ToLowerInvariant();
        var count = 0;
        var vowelBefore = false;
        foreach (var letter in letters)
        {
            var vowel = "aeiouy".Contains(letter, StringComparison.Ordinal);
            if (vowel && !vowelBefore) count++;
            vowelBefore = vowel;
        }
        if (letters.EndsWith('e') && !letters.EndsWith("le", StringComparison.Ordinal) && count > 1) count--;
        return Math.Max(1, count);
    }
}
