using System.Text.RegularExpressions;
using Purlin.Book;
using Purlin.Hearing;
using Purlin.Hearing.Listening;

namespace Purlin.Bench;

/// <summary>
/// An hour of narration: the words of the fixtures one after the other. The peer finds the names of things with one regular expression
/// and understands nothing.
/// </summary>
internal static class HearingBench
{
    // 150 words a minute is how people dictate; common practice.
    private const int Hour = 9_000;

    public static void Run(Results results)
    {
        var book = RuleBook.BuiltIn;
        string[] said = [.. Directory.EnumerateFiles("tests/Purlin.Tests/Fixtures/narrations")
            .Where(file => Path.GetExtension(file) is ".txt" or ".vtt" or ".srt").Order(StringComparer.Ordinal)
            .SelectMany(file => TranscriptReader.Read(File.ReadAllText(file)).OrThrow().Words).Select(word => word.Text)];
        var text = string.Join(' ', Enumerable.Range(0, Hour).Select(at => said[at % said.Length]));
        var transcript = TranscriptReader.Read(text).OrThrow();
        Ear ear = new(book);
        var called = book.Hearing.Things.Values.SelectMany(line => line).Distinct(StringComparer.Ordinal)
            .OrderByDescending(name => name.Length).Select(Regex.Escape);
        Regex names = new($@"\b({string.Join('|', called)})\b", RegexOptions.Compiled, TimeSpan.FromMinutes(1));
        results.Alone("an ear for the built-in book", () => GC.KeepAlive(new Ear(book)), runs: 5);
        results.Pair($"an hour, {Hour} words", () => ear.Listen(transcript), "the same, names of things by one regular expression",
            () => GC.KeepAlive(names.Count(text)), runs: 5);
    }
}
