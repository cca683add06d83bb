using System.CommandLine;
using Purlin.Journal;
using Purlin.Journal.Fold;

namespace Purlin.Cli;

/// <summary><c>purlin check FILE</c>: whether the record is whole and unaltered, with no network.</summary>
internal static class CheckCommand
{
    public static Command Build(Terminal terminal)
    {
        Argument<string> file = new("FILE") { Description = "An archive NAME.purlin, or journal lines NAME.jsonl" };
        Command command = new("check", "Check that a record is whole: hashes, chains, forks, gaps, photographs, seals, receipts; status 1 when something is amiss") { file };
        command.SetAction(parsed => Check(terminal, parsed.GetRequiredValue(file)));
        return command;
    }

    private const int MostShown = 200;

    private static int Check(Terminal terminal, string path)
    {
        var opened = InspectionFile.Open(path);
        if (!opened.IsAccepted)
        {
            terminal.Refuse(opened.Refusals);
            // A damaged archive is what this command looks for; a file that is no archive at all is bad input.
            return LooksLikeArchive(path) ? ExitStatus.Found : ExitStatus.BadInput;
        }
        using var file = opened.OrThrow();
        var amiss = Amiss(file).ToList();
        foreach (var words in amiss.Take(MostShown)) terminal.Out.WriteLine($"amiss: {words}");
        if (amiss.Count > MostShown) terminal.Out.WriteLine($"amiss: and {amiss.Count - MostShown} more");
        var inspection = file.Inspection;
        terminal.Out.WriteLine($"{inspection.Entries} entries of {inspection.Devices.Count} devices, {inspection.Photos.Count} photographs, {inspection.Editions.Count} editions; {(amiss.Count == 0 ? "whole" : $"{amiss.Count} amiss")}");
        return amiss.Count == 0 ? ExitStatus.Done : ExitStatus.Found;
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
            foreach (var photo in inspection.Photos.Where(photo => file.Photo(photo.Body.Sha) is null)) yield return $"photograph {photo.Id} ({photo.Body.Sha[..12]}) is not in the archive";
        }
        foreach (var words in Seals.Amiss(file)) yield return words;
        foreach (var words in Receipts.Amiss(file)) yield return words;
    }

    private static bool LooksLikeArchive(string path)
    {
        if (!File.Exists(path)) return false;
        using var stream = File.OpenRead(path);
        Span<byte> head = stackalloc byte[2];
        return stream.ReadAtLeast(head, 2, throwOnEndOfStream: false) == 2 && head is [(byte)'P', (byte)'K'];
    }
}
