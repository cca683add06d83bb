using Purlin.Field.Tests.App;

namespace Purlin.Field.Tests;

/// <summary>What fails on the phone is seen there: what happened, what is safe, what to do.</summary>
public sealed class Failures(Browser browser) : IAsyncLifetime
{
    private TinyHost host = null!;
    private Phone phone = null!;

    public async ValueTask InitializeAsync()
    {
        host = await TinyHost.StartAsync();
        phone = await browser.PhoneAsync(host.Address);
    }

    [Fact]
    public async Task A_screen_that_stops_says_so_and_the_others_go_on()
    {
        await phone.OpenBareAsync();
        var seed = await phone.SeedAsync();
        Break("export async function standing(insp) {", "export async function standing(insp) { throw new Error('the shelf fell down');");
        await phone.OpenReadyAsync(seed.Url());
        await Assertions.Expect(phone.Page.Locator(".failed")).ToContainTextAsync("Every act with a tick is kept; nothing was lost or changed.");
        await Assertions.Expect(phone.Page.Locator(".failed details")).ToContainTextAsync("the shelf fell down");
        await phone.Page.MeetsAsync("a screen that stopped");
        await phone.Page.GetByRole(AriaRole.Link, new() { Name = "To the inspections" }).TapAsync();
        await Assertions.Expect(phone.Page.Locator(".visit")).ToContainTextAsync("14 Alder Bend");
        await Assertions.Expect(phone.Page.Locator(".failed")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task What_fails_behind_the_screen_is_seen_on_it()
    {
        await phone.OpenBareAsync();
        var seed = await phone.SeedAsync();
        // Another window writes; what this one reads of it then cannot be had.
        Break("export function linesBeyond(insp, heads) {", "export function linesBeyond(insp, heads) { if (window.broken) throw new Error('the line is torn');");
        await phone.OpenReadyAsync(seed.Url());
        await Assertions.Expect(phone.Page.Locator(".places a").First).ToBeVisibleAsync();
        await phone.Page.EvaluateAsync("async insp => { window.broken = true; const { write } = await import('/device/writing.js'); await write(insp, [{ type: 'note.written', body: { part: 'n', text: 'from elsewhere' } }]); }", seed.Insp);
        await Assertions.Expect(phone.Page.Locator(".refused")).ToContainTextAsync("could not be read here");
        await Assertions.Expect(phone.Page.Locator(".refused")).ToContainTextAsync("It is kept on the phone");
    }

    private void Break(string from, string to)
    {
        var text = System.Text.Encoding.UTF8.GetString(host.Read("/device/device.js"));
        Assert.Contains(from, text, StringComparison.Ordinal);
        host.Put("/device/device.js", System.Text.Encoding.UTF8.GetBytes(text.Replace(from, to, StringComparison.Ordinal)));
    }

    /// <summary>No step after an act may grow with the visit: neither what the screens read nor what is said about safety reads the lines of before.</summary>
    [Fact]
    public async Task An_act_late_in_a_visit_reads_no_more_rows_than_one_early()
    {
        await phone.OpenBareAsync();
        var seed = await phone.SeedAsync();
        var early = await RowsReadAsync(seed);
        await phone.Page.EvaluateAsync("""
            async insp => {
              const { write } = await import('/device/writing.js');
              for (let turn = 0; turn < 20; turn++) await write(insp, Array.from({ length: 50 }, (_, at) => ({ type: 'note.written', body: { part: `n${turn}-${at}`, text: 'one of many' } })));
            }
            """, seed.Insp);
        var late = await RowsReadAsync(seed);
        Assert.InRange(early, 1, 10);
        Assert.Equal(early, late);
    }

    private Task<int> RowsReadAsync(Seed seed) => phone.Page.EvaluateAsync<int>("""
        async insp => {
          const { write, linesBeyond } = await import('/device/writing.js');
          const { standing } = await import('/device/send.js');
          const { get } = await import('/device/store.js');
          const heads = { ...(await get('visits', insp)).heads };
          let read = 0;
          const originals = {};
          for (const name of ['getAll', 'get', 'openCursor']) {
            originals[name] = IDBObjectStore.prototype[name];
            IDBObjectStore.prototype[name] = function (...given) {
              const request = originals[name].apply(this, given);
              if (this.name === 'entries') request.addEventListener('success', () => { read += Array.isArray(request.result) ? request.result.length : request.result ? 1 : 0; });
              return request;
            };
          }
          await write(insp, [{ type: 'note.written', body: { part: `late${Math.random()}`, text: 'one more' } }]);
          await linesBeyond(insp, heads);
          await standing(await get('visits', insp));
          Object.assign(IDBObjectStore.prototype, originals);
          return read;
        }
        """, seed.Insp);

    public async ValueTask DisposeAsync()
    {
        await phone.DisposeAsync();
        await host.DisposeAsync();
    }
}
