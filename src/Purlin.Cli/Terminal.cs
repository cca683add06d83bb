using System.Collections.Immutable;
using Purlin.Journal;

namespace Purlin.Cli;

/// <summary>Where a command reads and writes: handed in, so that tests are ordinary callers.</summary>
public sealed class Terminal(TextReader input, TextWriter output, TextWriter error, bool colour, bool progress)
{
    /// <summary>The language of the command line.</summary>
    public static Tongue Words { get; } = Tongue.BuiltIn(Tongue.Standard);

    /// <summary>Standard input.</summary>
    public TextReader In => input;

    /// <summary>Standard output: results only.</summary>
    public TextWriter Out => output;

    /// <summary>Standard error: refusals and progress.</summary>
    public TextWriter Error => error;

    /// <summary>Colour only for a person at a screen; NO_COLOR is honoured (no-color.org).</summary>
    public static Terminal OfThisProcess() => new(
        Console.In,
        Console.Out,
        Console.Error,
        colour: !Console.IsOutputRedirected && string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR")),
        progress: !Console.IsErrorRedirected);

    /// <summary>Words in bold where there is somebody to see it.</summary>
    public string Bold(string words) => colour ? $"\u001b[1m{words}\u001b[0m" : words;

    /// <summary>Words in the accent, for what can hurt someone; the words must say it too.</summary>
    public string Accent(string words) => colour ? $"\u001b[1;31m{words}\u001b[0m" : words;

    /// <summary>One line that says what is refused and what to do.</summary>
    public void Refuse(string words) => error.WriteLine($"purlin: {words}");

    /// <summary>All refusals of one input; gives the exit status.</summary>
    public int Refuse(ImmutableArray<Refusal> refusals)
    {
        foreach (var refusal in refusals) Refuse(refusal.ToString());
        return ExitStatus.BadInput;
    }

    /// <summary>Says how far long work has come, on one line that is written over; silent when piped.</summary>
    public void Progress(string words)
    {
        if (progress) error.Write($"\r\u001b[K{words}");
    }

    /// <summary>Clears the line of progress.</summary>
    public void ProgressDone()
    {
        if (progress) error.Write("\r\u001b[K");
    }
}
