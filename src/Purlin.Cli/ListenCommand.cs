using System.CommandLine;
using System.Globalization;
using System.Text;
using Purlin.Book;
using Purlin.Hearing;
using Purlin.Hearing.Listening;
using Purlin.Journal;

namespace Purlin.Cli;

/// <summary><c>purlin listen FILE</c>: what was said while walking, as entries that the inspector may take.</summary>
internal static class ListenCommand
{
    private const long MostBytes = 64L * 1024 * 1024;

    public static Command Build(Terminal terminal)
    {
        Argument<string> file = new("FILE") { Description = "What was said: WebVTT, SubRip, or plain text with or without clock times" };
        Option<string?> photos = new("--photos") { Description = "A folder of photographs; each is put with the words spoken around it" };
        Option<DateTimeOffset?> began = new("--began")
        {
            Description = "When the recording began, such as 2026-04-02T09:15:00-05:00; without it, when FILE was last written less its length",
        };
        Option<string?> place = new("--place") { Description = "The kind of place the speaker stands in at first; purlin book list places prints them" };
        Option<bool> json = new("--json") { Description = "Print one JSON object, as docs/schema/heard.schema.json has it" };
        Command command = new("listen", "Turn what was said while walking into proposed entries") { file, photos, began, place, json };
        command.SetAction(parsed => Listen(terminal, parsed.GetRequiredValue(file), parsed.GetValue(photos), parsed.GetValue(began),
            parsed.GetValue(place), parsed.GetValue(json)));
        return command;
    }

    private static int Listen(Terminal terminal, string file, string? photos, DateTimeOffset? began, string? place, bool json)
    {
        if (place is not null && !PlaceKind.All.Contains(place)) return terminal.Refuse([new Refusal("place", Journal.Said.Verbatim(place),
            $"one of {string.Join(", ", PlaceKind.All)}")]);
        return Read(file).Match(transcript =>
            Hear(terminal, file, transcript, photos, began, place).Match(heard => Print(terminal, transcript, heard, json),
            terminal.Refuse), terminal.Refuse);
    }

    private static Checked<Transcript> Read(string file)
    {
        if (!File.Exists(file)) return new Refusal("file", Journal.Said.Verbatim(file), "a file that exists, with what was said");
        if (new FileInfo(file).Length is > MostBytes and var length) return new Refusal("file", $"{length} bytes",
            $"at most {MostBytes} bytes");
        return TranscriptReader.Read(File.ReadAllText(file, Encoding.UTF8));
    }

    private static Checked<Heard> Hear(Terminal terminal, string file, Transcript transcript, string? photos, DateTimeOffset? began,
        string? place)
    {
        if (transcript.BrokenTimes > 0) terminal.Refuse($"{file}: {transcript.BrokenTimes} times cannot be read; their words are kept without a time");
        var heard = new Ear(RuleBook.BuiltIn).Listen(transcript, place);
        if (photos is null) return heard;
        return NarrationPhotos.Read(photos, file, transcript, began).Match<Checked<Heard>>(timed => Placed(terminal, heard, timed),
            refused => Checked<Heard>.Refused(refused));
    }

    private static Heard Placed(Terminal terminal, Heard heard, IReadOnlyList<TimedPhoto> timed)
    {
        var placed = heard.With(timed);
        var left = timed.Count - placed.Proposals.Sum(proposal => proposal.Photos.Length);
        if (left > 0) terminal.Refuse($"{left} of {timed.Count} photographs were taken near no words that say something; give --began where the recording began at another time");
        return placed;
    }

    private static int Print(Terminal terminal, Transcript transcript, Heard heard, bool json)
    {
        if (json) terminal.Out.WriteLine(HeardJson.Write(heard));
        else
        {
            foreach (var proposal in heard.Proposals) Print(terminal, transcript, proposal);
            terminal.Out.WriteLine($"{heard.Proposals.Length} proposals; {heard.Ignored} of {transcript.Words.Length} words are in none of them");
        }
        return ExitStatus.Done;
    }

    private static void Print(Terminal terminal, Transcript transcript, HeardProposal proposal)
    {
        var what = proposal.Condition is { } condition ? $"{condition}: {RuleBook.BuiltIn.Conditions[condition].Name}" : proposal.Component;
        var sure = proposal.Confidence.ToString("0.00", CultureInfo.InvariantCulture);
        var where = $"({proposal.Place ?? "place not told"}{(proposal.Hedged ? ", not sure" : "")}, {sure})";
        terminal.Out.WriteLine($"{Time(proposal.From)}{terminal.Bold($"{proposal.Outcome}  {what}")}  {where}");
        foreach (var amount in proposal.Amounts)
        {
            var value = amount.Value.ToString("0.####", CultureInfo.InvariantCulture);
            terminal.Out.WriteLine($"        {amount.Kind}: {value} {amount.Unit}".TrimEnd());
        }
        if (proposal.Trade is { } trade) terminal.Out.WriteLine($"        for: {trade}");
        if (proposal.Photos.Length > 0) terminal.Out.WriteLine($"        photographs: {proposal.Photos.Length}");
        terminal.Out.WriteLine($"        \"{string.Join(" ... ", proposal.Words.Select(range => Said(transcript, range)))}\"");
    }

    private static string Said(Transcript transcript, WordRange range) =>
        string.Join(' ', transcript.Words.AsSpan(range.Start, range.End - range.Start).ToArray().Select(word => word.Text));

    private static string Time(double? seconds) => seconds is { } known ? $"{TimeSpan.FromSeconds(known):hh\\:mm\\:ss}  " : "";
}
