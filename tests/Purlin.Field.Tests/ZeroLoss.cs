using Purlin.Field.Tests.App;

namespace Purlin.Field.Tests;

/// <summary>Acknowledged is what a person saw ticked. Whatever happens next, none of it may be gone.</summary>
public sealed class ZeroLoss(Browser browser) : IAsyncLifetime
{
    private TinyHost host = null!;

    public async ValueTask InitializeAsync() => host = await TinyHost.StartAsync();

    [Fact]
    public async Task A_tab_that_crashes_loses_nothing_acknowledged()
    {
        await using var phone = await browser.PhoneAsync(host.Address);
        await phone.OpenBareAsync();
        var seed = await phone.SeedAsync();
        Hammer hammer = new();
        var chance = new Random(20261125);
        // At instants that have nothing to do with what is being written; as many as go into the time, which a busy machine makes few.
        var begun = Environment.TickCount64;
        var run = 0;
        for (; run < Instants && (run < 20 || Environment.TickCount64 - begun < MostMilliseconds); run++)
        {
            await phone.OpenBareAsync();
            await hammer.StartAsync(phone.Page, seed.Insp);
            await Task.Delay(chance.Next(0, 160), TestContext.Current.CancellationToken);
            await CrashAsync(phone);
        }

        await phone.NewTabAsync();
        await phone.OpenBareAsync();
        TestContext.Current.TestOutputHelper?.WriteLine($"{run} crashes, {hammer.Ticks.Count} acts acknowledged");
        Assert.True(hammer.Ticks.Count > 40);
        Assert.Empty(await hammer.LostAsync(phone.Page, seed.Insp));
    }

    private const int Instants = 200;
    private const int MostMilliseconds = 60_000;

    private static async Task CrashAsync(Phone phone)
    {
        var crashed = new TaskCompletionSource();
        phone.Page.Crash += (_, _) => crashed.TrySetResult();
        var session = await phone.Context.NewCDPSessionAsync(phone.Page);
        _ = session.SendAsync("Page.crash").ContinueWith(task => task.Exception, TaskScheduler.Default);
        await crashed.Task.WaitAsync(TimeSpan.FromMinutes(2), TestContext.Current.CancellationToken);
        await phone.Page.CloseAsync();
    }

    [Fact]
    public async Task Two_windows_writing_at_once_use_no_sequence_twice()
    {
        await using var phone = await browser.PhoneAsync(host.Address);
        await phone.OpenBareAsync();
        var seed = await phone.SeedAsync();
        Hammer hammer = new();
        var first = phone.Page;
        await hammer.StartAsync(first, seed.Insp, 2000);
        await phone.NewTabAsync();
        await phone.OpenBareAsync();
        await hammer.StartAsync(phone.Page, seed.Insp, 2000);
        await hammer.MoreAsync(120);
        await first.CloseAsync();
        await phone.Page.CloseAsync();
        await phone.OpenBareAsync();
        Assert.Equal(hammer.Ticks.Count, hammer.Ticks.Select(tick => tick.Name).Distinct(StringComparer.Ordinal).Count());
        Assert.Empty(await hammer.LostAsync(phone.Page, seed.Insp));
    }

    /// <summary>A phone whose clock jumps five years ahead, ten back, and right again: nothing is lost, no time hides a line, and the order is that of writing.</summary>
    [Fact]
    public async Task A_clock_that_jumps_loses_nothing_and_keeps_the_order()
    {
        await using var phone = await browser.PhoneAsync(host.Address);
        await phone.OpenBareAsync();
        var seed = await phone.SeedAsync();
        var before = (await phone.LinesAsync(seed.Insp)).Count;
        await phone.Page.EvaluateAsync("""
            async insp => {
              const { write } = await import('/device/writing.js');
              const right = Date.now.bind(Date);
              const year = 365 * 24 * 3600 * 1000;
              for (const [turn, off] of [0, 5 * year, 5 * year, -5 * year, -5 * year, 0].entries()) {
                Date.now = () => right() + off;
                await write(insp, [{ type: 'place.added', body: { kind: 'room', name: `Room ${turn}`, order: 20 + turn } }]);
              }
              Date.now = right;
            }
            """, seed.Insp);
        var lines = await phone.LinesAsync(seed.Insp);
        Assert.Equal(before + 6, lines.Count);
        Assert.Equal(["Room 0", "Room 1", "Room 2", "Room 3", "Room 4", "Room 5"], lines.TakeLast(6).Select(line => line.GetProperty("body").GetProperty("name").GetString()));
        await phone.OpenReadyAsync(seed.Url());
        await Assertions.Expect(phone.Page.Locator(".places b")).ToContainTextAsync(["Room 0", "Room 1", "Room 2", "Room 3", "Room 4", "Room 5"]);
        Assert.Empty(phone.PageErrors);
    }

    [Fact]
    public async Task A_full_phone_refuses_photographs_in_words_and_still_takes_notes()
    {
        await using var phone = await browser.PhoneAsync(host.Address);
        await phone.OpenBareAsync();
        var session = await phone.Context.NewCDPSessionAsync(phone.Page);
        await session.SendAsync("Storage.overrideQuotaForOrigin", new() { ["origin"] = host.Address, ["quotaSize"] = 24 * 1024 * 1024 });
        var seed = await phone.SeedAsync();
        Assert.True(await phone.Page.EvaluateAsync<bool>("async () => (await import('/device/store.js')).holdBallast()"));

        var answer = await phone.Page.EvaluateAsync<System.Text.Json.JsonElement>("""
            async insp => {
              const { keepPhoto } = await import('/device/photo.js');
              const { write } = await import('/device/writing.js');
              const { inPlainWords } = await import('/device/words.js');
              const kept = []; let words = '';
              for (let turn = 0; turn < 40 && !words; turn++) {
                const bytes = new Uint8Array(1048576); for (let at = 0; at < bytes.length; at += 65536) crypto.getRandomValues(bytes.subarray(at, at + 65536));
                try { kept.push((await keepPhoto(new Blob([bytes], { type: 'image/png' }), { insp })).name); } catch (error) { words = inPlainWords(error, `Photograph ${turn + 1}`); }
              }
              const notes = [];
              for (let turn = 0; turn < 50; turn++) notes.push((await write(insp, [{ type: 'note.written', body: { part: `n${turn}`, text: 'the note outlives the photographs' } }]))[0]);
              let second = '';
              try { const bytes = new Uint8Array(4 * 1048576); for (let at = 0; at < bytes.length; at += 65536) crypto.getRandomValues(bytes.subarray(at, at + 65536)); await keepPhoto(new Blob([bytes], { type: 'image/png' }), { insp }); } catch (error) { second = error.name; }
              return { kept, words, notes, second };
            }
            """, seed.Insp);
        var kept = answer.GetProperty("kept").EnumerateArray().Select(name => name.GetString()!).ToList();
        Assert.InRange(kept.Count, 1, 20);
        Assert.Contains("the phone is full", answer.GetProperty("words").GetString(), StringComparison.Ordinal);
        Assert.Contains("Everything before it is kept", answer.GetProperty("words").GetString(), StringComparison.Ordinal);
        Assert.Equal("QuotaExceededError", answer.GetProperty("second").GetString());
        var names = (await phone.LinesAsync(seed.Insp)).Select(line => $"{line.GetProperty("dev").GetString()}.{line.GetProperty("seq")}").ToHashSet(StringComparer.Ordinal);
        Assert.All(kept.Concat(answer.GetProperty("notes").EnumerateArray().Select(name => name.GetString()!)), name => Assert.Contains(name, names));
    }

    [Fact]
    public async Task A_database_closed_under_the_page_is_opened_again_and_the_write_repeated()
    {
        await using var phone = await browser.PhoneAsync(host.Address);
        await phone.OpenBareAsync();
        var seed = await phone.SeedAsync();
        var before = (await phone.LinesAsync(seed.Insp)).Count;
        // Closes whatever connection is used, just before its transaction is asked for: once at each of the first twelve calls.
        await phone.Page.EvaluateAsync("""
            () => {
              const original = IDBDatabase.prototype.transaction; let calls = 0;
              IDBDatabase.prototype.transaction = function (...given) { calls++; if (calls % 2 === 1 && calls < 24) this.close(); return original.apply(this, given); };
            }
            """);
        await phone.Page.EvaluateAsync("async insp => { const { write } = await import('/device/writing.js'); for (let turn = 0; turn < 6; turn++) await write(insp, [{ type: 'note.written', body: { part: `c${turn}`, text: 'closed and opened' } }]); }", seed.Insp);
        Assert.Equal(before + 6, (await phone.LinesAsync(seed.Insp)).Count);
    }

    public async ValueTask DisposeAsync() => await host.DisposeAsync();
}
