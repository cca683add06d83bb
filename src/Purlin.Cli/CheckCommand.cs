using System.CommandLine;
using Purlin.Book;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Office.Copies;
using Purlin.Office.Pictures;
using Purlin.Office.Storage;

namespace Purlin.Cli;

/// <summary><c>purlin check FILE</c>: whether the record is whole and unaltered, with no network. <c>purlin check --data DIR</c>: the same of an office's folder.</summary>
internal static class CheckCommand
{
    private const int MostShown = 200;

    public static Command Build(Terminal terminal)
    {
        Argument<string?> file = new("FILE") { Description = "An archive NAME.purlin, or journal lines NAME.jsonl", Arity = ArgumentArity.ZeroOrOne };
        Option<string?> key = new("--key") { Description = "The office's public key as a file, or its fingerprint as the report prints it: only then somebody outside the file vouches for it" };
        Option<DirectoryInfo?> data = new("--data") { Description = "An office's folder, or a backup of it, instead of a file" };
        Command command = new("check", "Check that a record is whole: hashes, chains, forks, gaps, photographs, seals, receipts; status 1 when something is amiss") { file, key, data };
        command.SetAction(async (parsed, cancel) =>
        {
            if (parsed.GetValue(data) is { } folder) return await Folder(terminal, folder.FullName, cancel);
            if (parsed.GetValue(file) is { } path) return Key(parsed.GetValue(key)).Match(print => Check(terminal, path, print), terminal.Refuse);
            terminal.Refuse("name a FILE, or an office's folder with --data DIR");
            return ExitStatus.BadInput;
        });
        return command;
    }

    /// <summary>An office's folder or a backup, and what is amiss in it.</summary>
    internal static async Task<int> Folder(Terminal terminal, string folder, CancellationToken cancel)
    {
        var amiss = await Verify.Run(folder, cancel);
        Print(terminal, amiss);
        terminal.Out.WriteLine($"{folder}: {(amiss.Count == 0 ? "whole" : $"{amiss.Count} amiss")}");
        return amiss.Count == 0 ? ExitStatus.Done : ExitStatus.Found;
    }

    private static int Check(Terminal terminal, string path, string? key)
    {
        var opened = InspectionFile.Open(path);
        if (!opened.IsAccepted)
        {
            terminal.Refuse(opened.Refusals);
            // A damaged archive is what this command looks for; a file that is no archive at all is bad input.
            return LooksLikeArchive(path) ? ExitStatus.Found : ExitStatus.BadInput;
        }
        using var file = opened.OrThrow();
        var vouched = Receipts.Look(file, key);
        List<string> amiss = [.. Amiss(file), .. vouched.Amiss];
        Print(terminal, amiss);
        // A name that nobody understands makes no record less whole; it is told all the same.
        foreach (var words in OddWords.Of(file.Work(RuleBook.BuiltIn, TimeProvider.System).Judged, [])) terminal.Out
            .WriteLine($"look again: {words}");
        var inspection = file.Inspection;
        var counts = $"{inspection.Entries} entries of {inspection.Devices.Count} devices, {inspection.Photos.Count} photographs, {inspection.Editions.Count} editions";
        terminal.Out.WriteLine(vouched.Words);
        terminal.Out.WriteLine($"{counts}; {(amiss.Count == 0 ? key is null ? "whole in itself" : "whole" : $"{amiss.Count} amiss")}");
        return amiss.Count == 0 ? ExitStatus.Done : ExitStatus.Found;
    }

    private static void Print(Terminal terminal, IReadOnlyList<string> amiss)
    {
        foreach (var words in amiss.Take(MostShown)) terminal.Out.WriteLine($"amiss: {words}");
        if (amiss.Count > MostShown) terminal.Out.WriteLine($"amiss: and {amiss.Count - MostShown} more");
    }

    /// <summary>A fingerprint, in groups as it is printed or not, or that of a key in a file.</summary>
    private static Checked<string?> Key(string? given)
    {
        if (given is null) return (string?)null;
        var plain = string.Concat(given.Where(c => !char.IsWhiteSpace(c))).ToLowerInvariant();
        if (Sha.Is(plain)) return plain;
        if (!File.Exists(given) || new FileInfo(given).Length > 10_000) return new Refusal("--key", given, "a file with the office's public key, or its fingerprint of 64 digits");
        return ReceiptChain.FingerprintOf(File.ReadAllText(given)) is { } print ? print : new Refusal("--key", given, "a public key as the office gives it (PEM)");
    }

    private static IEnumerable<string> Amiss(InspectionFile file)
    {
        var inspection = file.Inspection;
        if (file.Torn is { } torn) yield return torn;
        foreach (var held in file.Held) yield return $"a line could not be read and is kept as it came: {string.Join("; ", held.Why)}";
        foreach (var missing in inspection.Missing) yield return $"entry {missing} is missing";
        foreach (var unsettled in inspection.Unsettled.Where(one => one.Kind is UnsettledKind.BrokenChain or UnsettledKind.Fork)) yield return unsettled.Words;
        if (file.HasPhotos)
        {
            foreach (var photo in inspection.Photos.DistinctBy(photo => photo.Body.Sha))
            {
                if (file.Photo(photo.Body.Sha) is not { } bytes) yield return $"photograph {photo.Id} ({photo.Body.Sha[..12]}) is not in the archive";
                else if (!IsPicture(bytes)) yield return $"photograph {photo.Id} ({photo.Body.Sha[..12]}) is no picture, or has more than {Limits.PhotoPixels} pixels";
            }
        }
        foreach (var words in Seals.Amiss(file)) yield return words;
    }

    private static bool IsPicture(byte[] bytes)
    {
        using MemoryStream stream = new(bytes, writable: false);
        return PictureKind.Kind(stream)?.StartsWith("image/", StringComparison.Ordinal) == true;
    }

    private static bool LooksLikeArchive(string path)
    {
        if (!File.Exists(path)) return false;
        using var stream = File.OpenRead(path);
        Span<byte> head = stackalloc byte[2];
        return stream.ReadAtLeast(head, 2, throwOnEndOfStream: false) == 2 && head is [(byte)'P', (byte)'K'];
    }
}
