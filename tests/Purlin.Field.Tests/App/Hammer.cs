using System.Collections.Concurrent;
using System.Text.Json;

namespace Purlin.Field.Tests.App;

/// <summary>
/// Writes acts and photographs as fast as the device module takes them, and keeps outside the page what was acknowledged: a name is noted
/// only after the promise settled, which is the tick a person would have seen.
/// </summary>
public sealed class Hammer
{
    private readonly ConcurrentQueue<(string Name, string? Sha)> ticks = new();

    public IReadOnlyList<(string Name, string? Sha)> Ticks => [.. ticks];

    private bool Note(string name, string sha)
    {
        ticks.Enqueue((name, sha.Length == 0 ? null : sha));
        return true;
    }

    /// <summary>Starts to hammer in a page that stands on the app's origin. Goes on until the page ends.</summary>
    public async Task StartAsync(IPage page, string inspection, int photoBytes = 60_000)
    {
        var binding = $"tick{Guid.NewGuid():N}";
        await page.ExposeFunctionAsync<string, string, bool>(binding, (string name, string sha) => Note(name, sha));
        await page.EvaluateAsync("""
            ([insp, size, tick]) => {
              (async () => {
                const { write } = await import('/device/writing.js');
                const { sha256 } = await import('/device/chain.js');
                for (let turn = 0; ; turn++) {
                  if (turn % 3 === 2) {
                    const bytes = crypto.getRandomValues(new Uint8Array(Math.min(size, 65536)));
                    const sha = await sha256(bytes);
                    const [name] = await write(insp, [{ type: 'photo.taken', body: { sha, size: bytes.length, mediaType: 'image/jpeg' } }], [{ bytes: bytes.buffer, type: 'image/jpeg', sha }]);
                    window[tick](name, sha);
                  } else {
                    const [name] = await write(insp, [{ type: 'note.written', body: { part: `p${Math.random()}`, text: 'line ' + turn } }]);
                    window[tick](name, '');
                  }
                }
              })();
            }
            """, new object[] { inspection, photoBytes, binding });
    }

    /// <summary>Names that were acknowledged and are not in the tables, photographs whose bytes are not, and breaks of the chain.</summary>
    public async Task<IReadOnlyList<string>> LostAsync(IPage page, string inspection)
    {
        var acknowledged = JsonSerializer.Serialize(Ticks.Select(tick => new[] { tick.Name, tick.Sha ?? "" }));
        var lost = await page.EvaluateAsync<string[]>("""
            async ([insp, json]) => {
              const { rows } = await import('/device/writing.js');
              const { get } = await import('/device/store.js');
              const { sha256, brokenIn, headsOf } = await import('/device/chain.js');
              const all = await rows(insp);
              const names = new Set(all.map(row => `${row.dev}.${row.seq}`));
              const lost = [];
              for (const [name, sha] of JSON.parse(json)) {
                if (!names.has(name)) lost.push(name);
                else if (sha && (!(await get('blobs', sha)) || await sha256((await get('blobs', sha)).bytes) !== sha)) lost.push(`bytes of ${name}`);
              }
              for (const broken of await brokenIn(all.map(row => row.line))) lost.push(`chain breaks at ${broken}`);
              for (const [dev, head] of Object.entries(headsOf(all))) if (head !== Math.max(...all.filter(row => row.dev === dev).map(row => row.seq))) lost.push(`gap in ${dev} after ${head}`);
              return lost;
            }
            """, new object[] { inspection, acknowledged });
        return lost;
    }

    /// <summary>Waits until this many more ticks have come.</summary>
    public async Task MoreAsync(int count)
    {
        var target = ticks.Count + count;
        // Counted from the last act that came: a busy machine is slow, and only one that stands still is at fault.
        var (last, since) = (ticks.Count, Environment.TickCount64);
        while (ticks.Count < target)
        {
            if (ticks.Count != last) (last, since) = (ticks.Count, Environment.TickCount64);
            Assert.True(Environment.TickCount64 - since < 90_000, $"only {ticks.Count} of {target} acts were acknowledged, and none for 90 s");
            await Task.Delay(20, TestContext.Current.CancellationToken);
        }
    }
}
