using System.Text.Json;
using System.Text.Json.Nodes;
using Purlin.Journal;
using Purlin.Journal.Archive;

namespace Purlin.Field.Device;

/// <summary>Lines: writing, reading, archives.</summary>
public sealed partial class Phone
{
    /// <summary>Writes acts in one transaction; the answer comes once the disk has them.</summary>
    public Task<Kept> WriteAsync(string inspection, string what, IEnumerable<EntryBody> bodies)
    {
        JsonArray acts = [.. bodies.Select(body => (JsonNode)new JsonObject { ["type"] = body.Type, ["body"] = JsonNode.Parse(BodyJson.Write(body)) })];
        return KeepAsync("write", inspection, acts.ToJsonString(), what);
    }

    /// <summary>Makes room for a new inspection and gives its id.</summary>
    public Task<string> NewVisitAsync(string title, DateOnly date, bool isDemo) => AskAsync<string>("newVisit", title, date.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture), isDemo);

    /// <summary>The lines of a journal beyond what is known of it, each with its line end.</summary>
    public Task<byte[]> LinesBeyondAsync(string journal, IReadOnlyDictionary<string, int> heads) =>
        AskAsync<byte[]>("linesBeyond", journal, new JsonObject(heads.Select(head => KeyValuePair.Create(head.Key, (JsonNode?)head.Value))).ToJsonString());

    /// <summary>The inspections on this phone, the last opened first.</summary>
    public async Task<IReadOnlyList<VisitRow>> VisitListAsync() => [.. (await JsonAsync("visitList"))!.AsArray().Select(node => VisitRow.Of(node!))];

    /// <summary>The name under which this phone writes.</summary>
    public Task<string> DeviceNameAsync() => AskAsync<string>("deviceName");

    /// <summary>Writes everything of an inspection into one file and hands it to the person.</summary>
    public Task<Kept> SaveArchiveAsync(string inspection, string name) => KeepAsync("saveArchive", inspection, name);

    /// <summary>Lets the person choose an archive and looks into it; none when nothing was chosen, else what speaks against it.</summary>
    public async Task<IReadOnlyList<string>?> ChooseArchiveAsync() =>
        await AskAsync<string>("chooseArchive") is { Length: > 0 } answer ? [.. JsonNode.Parse(answer)!.AsArray().Select(why => (string)why!)] : null;

    /// <summary>The manifest or the lines of the archive that was chosen; empty when they are not what its list says.</summary>
    public Task<byte[]> ArchiveBytesAsync(string name) => AskAsync<byte[]>("archiveBytes", name);

    /// <summary>Takes the archive that was chosen: pictures, each checked by its hash, then its lines. The words of the answer count the new lines.</summary>
    public Task<Kept> TakeArchiveAsync(string inspection, byte[] lines, IEnumerable<ArchivedFile> files) =>
        KeepAsync("takeArchive", inspection, lines, new JsonArray([.. files.Select(file => (JsonNode)new JsonObject { ["name"] = file.Name, ["sha256"] = file.Sha256, ["size"] = file.Size, ["mediaType"] = file.MediaType })]).ToJsonString());

    /// <summary>Bytes of a file the person chooses, at most one beyond <paramref name="most"/>; empty when nothing was chosen.</summary>
    public Task<byte[]> ChooseFileAsync(string accept, int most) => AskAsync<byte[]>("chooseFile", accept, most);
}
