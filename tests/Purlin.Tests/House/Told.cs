namespace Purlin.Tests.House;

/// <summary>
/// Fails with what is wrong in lines that a person reads, however many there are; a list of objects is cut off after the first few.
/// </summary>
internal static class Told
{
    private const int Most = 200;

    /// <summary>Passes when nothing is wrong.</summary>
    /// <param name="wrong">One line for each: what is wrong, where, and what to do.</param>
    /// <param name="advice">What holds for all of them; none when the lines say it.</param>
    public static void Nothing(IEnumerable<string> wrong, string advice = "")
    {
        List<string> lines = [.. wrong];
        if (lines.Count > 0) Assert.Fail($"{lines.Count} to mend{(advice.Length > 0 ? $". {advice}" : ":")}\n{string.Join('\n', lines.Take(Most))}");
    }
}
