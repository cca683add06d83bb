using System.Diagnostics;
using System.Net.Http.Headers;
using System.Net.Http.Json;
using System.Text.Json.Nodes;
using Purlin.Journal;
using Purlin.Journal.Merge;

namespace Purlin.Office.Tests.Office;

/// <summary>The program itself, killed at random while lines and a photograph arrive: every acknowledged line and byte is there after the next start.</summary>
public sealed class KillTests
{
    private const string Visit = "visit1";
    private const int Kills = 5;

    [Fact]
    public async Task Killed_at_any_moment_the_office_has_every_acknowledged_line_and_goes_on()
    {
        var cancel = TestContext.Current.CancellationToken;
        var folder = RunningOffice.NewFolder();
        var lines = Lines.Notes(Visit, "aaa", 2_000);
        var photo = Pictures.Jpeg(2400, 1800, 95);
        var chance = new Random(25112026);
        string? code = null;
        var (acknowledged, offset, whole, settling) = (0, 0L, false, false);
        for (var run = 0; run <= Kills; run++)
        {
            using var office = await Process(folder, cancel);
            code ??= office.Code;
            using var client = await SignedIn(office.Address, code!, cancel);
            var heads = RunningOffice.HeadsOf(JsonNode.Parse(await client.GetStringAsync($"/sync/{Visit}/heads", cancel))!);
            Assert.True(heads.GetValueOrDefault("aaa") >= acknowledged, $"{heads.GetValueOrDefault("aaa")} held, {acknowledged} acknowledged");
            var head = await client.SendAsync(new HttpRequestMessage(HttpMethod.Head, $"/blobs/{Sha.Of(photo)}"), cancel);
            var arrived = long.Parse(head.Headers.GetValues("Upload-Offset").Single());
            // An office that dies while the last piece settles may ask for the file again, and has acknowledged nothing of it as whole.
            Assert.True((arrived >= offset || settling) && (!whole || head.Headers.Contains("Purlin-Whole")), $"{arrived} bytes held, {offset} acknowledged");
            (acknowledged, offset, whole) = (heads.GetValueOrDefault("aaa"), arrived, head.Headers.Contains("Purlin-Whole"));
            if (run == Kills) break;

            // On a slow machine the first answer may come later than the kill: every other run has one in hand before the clock starts.
            if (run % 2 == 1) acknowledged = await Push(client, lines, acknowledged, 1 + chance.Next(15), cancel);
            var killing = KillLater(office, 40 + chance.Next(900));
            try
            {
                // A quick machine is done before the kill.
                while (acknowledged < lines.Count || !whole)
                {
                    acknowledged = await Push(client, lines, acknowledged, 1 + chance.Next(15), cancel);
                    var piece = 1 + chance.Next(40_000);
                    settling = !whole && offset + piece >= photo.Length;
                    if (!whole) (offset, whole) = await Send(client, photo, offset, piece, cancel);
                }
            }
            catch (HttpRequestException)
            {
                // The office is gone; what was answered before counts.
            }

            await killing;
        }

        Assert.True(acknowledged > 0, "something was acknowledged before the kills");
        await using var last = await RunningOffice.Start(folder);
        await last.Push(Visit, lines);
        var held = LineBlock.Read(await last.Client.GetByteArrayAsync($"/sync/{Visit}/entries", cancel), Visit).Entries;
        Assert.Equal(lines.Select(entry => entry.Hash), held.Select(entry => entry.Hash));
        Assert.Equal(2_000, held.Count);
    }

    private static async Task<int> Push(HttpClient client, List<Entry> lines, int from, int count, CancellationToken cancel)
    {
        if (from == lines.Count) return from;
        var content = new ByteArrayContent(RunningOffice.Bytes(lines.Skip(from).Take(count)));
        content.Headers.ContentType = new MediaTypeHeaderValue("application/x-ndjson");
        return RunningOffice.HeadsOf(await RunningOffice.Read(await client.PostAsync($"/sync/{Visit}/entries", content, cancel)))["aaa"];
    }

    private static async Task<(long Offset, bool Whole)> Send(HttpClient client, byte[] photo, long offset, int count, CancellationToken cancel)
    {
        // All bytes may be there and not yet be settled: then an empty piece settles them.
        var content = new ByteArrayContent(photo, (int)offset, (int)Math.Min(count, photo.Length - offset));
        content.Headers.ContentType = new MediaTypeHeaderValue("application/offset+octet-stream");
        var request = new HttpRequestMessage(HttpMethod.Patch, $"/blobs/{Sha.Of(photo)}") { Content = content };
        request.Headers.Add("Upload-Offset", $"{offset}");
        request.Headers.Add("Upload-Length", $"{photo.Length}");
        var answer = await client.SendAsync(request, cancel);
        Assert.True(answer.IsSuccessStatusCode, $"{answer.StatusCode}");
        return (long.Parse(answer.Headers.GetValues("Upload-Offset").Single()), answer.Headers.Contains("Purlin-Whole"));
    }

    private static async Task KillLater(OfficeProcess office, int milliseconds)
    {
        await Task.Delay(milliseconds);
        office.Kill();
    }

    private static async Task<HttpClient> SignedIn(Uri address, string code, CancellationToken cancel)
    {
        var client = new HttpClient { BaseAddress = address };
        client.DefaultRequestHeaders.Add("X-Field", "1");
        var answer = await client.PostAsJsonAsync("/office/session", new { code }, cancel);
        Assert.True(answer.IsSuccessStatusCode, $"{answer.StatusCode}");
        return client;
    }

    private static async Task<OfficeProcess> Process(string folder, CancellationToken cancel)
    {
        var here = AppContext.BaseDirectory;
        var own = Path.Combine(here, "Purlin.Office.Tests");
        var start = new ProcessStartInfo("dotnet", ["exec", "--runtimeconfig", own + ".runtimeconfig.json", "--depsfile", own + ".deps.json", Path.Combine(here, "purlin.dll"), "serve", "--data", folder, "--address", "http://127.0.0.1:0"])
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
        };
        var process = System.Diagnostics.Process.Start(start)!;
        string? code = null;
        while (await process.StandardOutput.ReadLineAsync(cancel) is { } line)
        {
            if (line.StartsWith("Owner's code", StringComparison.Ordinal)) code = line.Split(": ")[1];
            if (line.StartsWith("Purlin is at ", StringComparison.Ordinal)) return new OfficeProcess(process, new Uri(line.Split(' ')[3]), code);
        }

        throw new InvalidOperationException("the office did not start");
    }

    private sealed class OfficeProcess(Process process, Uri address, string? code) : IDisposable
    {
        public Uri Address { get; } = address;

        public string? Code { get; } = code;

        /// <summary>Without warning, as a power cut of this program alone would be.</summary>
        public void Kill()
        {
            process.Kill();
            process.WaitForExit();
        }

        public void Dispose()
        {
            if (!process.HasExited) Kill();
            process.Dispose();
        }
    }
}
