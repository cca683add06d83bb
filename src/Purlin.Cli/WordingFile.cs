using System.CommandLine;
using Purlin.Journal;
using Purlin.Book;

namespace Purlin.Cli;

/// <summary>A file of own wording, and the option that lays one over the rule book for a run.</summary>
internal static class WordingFile
{
    public static Option<string?> Option() => new("--wording") { Description = "A file of own wording to lay over the rule book for this run; what the inspection itself holds goes over it" };

    public static Checked<Overlay> Open(string path)
    {
        if (!File.Exists(path)) return new Refusal("own wording", path, "a file that exists, as purlin wording export writes it");
        if (new FileInfo(path).Length > Overlay.MostBytes) return new Refusal("own wording", $"{path} of more than {Overlay.MostBytes} bytes", $"at most {Overlay.MostBytes} bytes");
        return Overlay.Read(File.ReadAllBytes(path));
    }

    /// <summary>The built-in book, in a language, with the file's wording over it; the book itself when no file is named.</summary>
    public static Checked<RuleBook> Lay(string? path, Terminal terminal, string? language = null)
    {
        var book = language is null || language == Tongue.Standard ? RuleBook.BuiltIn : RuleBook.BuiltIn.In(Tongue.BuiltIn(language));
        if (path is null) return book;
        return Open(path).Match<Checked<RuleBook>>(
            overlay =>
            {
                var laid = book.Lay(overlay);
                foreach (var conflict in laid.Conflicts) terminal.Refuse($"{conflict.Key}: {conflict.Words}");
                return laid.Book;
            },
            refusals => Checked<RuleBook>.Refused(refusals));
    }
}
