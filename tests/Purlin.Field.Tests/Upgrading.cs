using Purlin.Field.Tests.App;

namespace Purlin.Field.Tests;

/// <summary>The phone's tables outlive the program that made them: what an older version left is taken over, whole or not at all.</summary>
public sealed class Upgrading(Browser browser)
{
    // Tables and rows as version 1 left them; the picture of line 2 is at the office, a fork stands at line 3.
    private const string OfVersionOne = """
        async count => {
          await new Promise((resolve, reject) => {
            const request = indexedDB.open('purlin', 1);
            request.onupgradeneeded = () => {
              const database = request.result;
              database.createObjectStore('meta');
              database.createObjectStore('visits', { keyPath: 'insp' });
              database.createObjectStore('entries', { keyPath: ['insp', 'dev', 'seq', 'hash'] });
              database.createObjectStore('blobs', { keyPath: 'sha' }).createIndex('insp', 'insp');
              database.createObjectStore('views', { keyPath: ['sha', 'size'] });
            };
            request.onerror = () => reject(request.error);
            request.onsuccess = async () => {
              const { nextLine } = await import('/device/chain.js');
              const database = request.result;
              const pen = { insp: 'ioldvisit0', dev: 'olddevice0', seq: 0, heads: {}, seenWritten: {} };
              const rows = [];
              const put = async (type, body) => { const made = await nextLine(pen, type, body, 1764000000000 + pen.seq); rows.push({ insp: pen.insp, dev: pen.dev, seq: pen.seq, ...made }); };
              await put('inspection.opened', { property: { address: '3 Older Row' }, date: '2025-11-24', standards: [] });
              for (let turn = 1; turn < count; turn++) await put('photo.taken', { sha: turn.toString(16).padStart(64, '0'), size: 3, mediaType: 'image/jpeg' });
              const fork = { ...pen, seq: 2, prev: rows[1].hash, hlc: undefined };
              const branch = await nextLine(fork, 'note.written', { part: 'x', text: 'the other branch' }, 1764000000900);
              rows.push({ insp: pen.insp, dev: pen.dev, seq: 3, ...branch });
              const tx = database.transaction(['meta', 'visits', 'entries', 'blobs'], 'readwrite', { durability: 'strict' });
              tx.objectStore('meta').put('olddevice0', 'device');
              tx.objectStore('visits').put({ insp: pen.insp, title: '3 Older Row', date: '2025-11-24', demo: false, opened: 1764000000000, heads: { olddevice0: count }, seenWritten: {}, photos: count - 1, office: {}, held: [] });
              for (const row of rows) tx.objectStore('entries').put(row);
              tx.objectStore('blobs').put({ sha: '1'.padStart(64, '0'), insp: pen.insp, bytes: new Uint8Array([1, 2, 3]).buffer, type: 'image/jpeg', size: 3, office: true });
              tx.oncomplete = () => { database.close(); resolve(); };
              tx.onabort = () => reject(tx.error);
            };
          });
        }
        """;

    private const string Standing = "async () => { const { standing } = await import('/device/send.js'); const { get } = await import('/device/store.js'); const s = await standing(await get('visits', 'ioldvisit0')); return `${s.entries} ${s.photos} ${s.photosAtOffice}`; }";

    [Fact]
    public async Task Tables_of_the_first_version_are_taken_over_with_all_they_hold()
    {
        await using var host = await TinyHost.StartAsync();
        await using var phone = await browser.PhoneAsync(host.Address);
        await phone.OpenBareAsync();
        await phone.Page.EvaluateAsync(OfVersionOne, 5);

        // What the office has is said again only when it has said so itself.
        Assert.Equal("5 4 0", await phone.Page.EvaluateAsync<string>(Standing));
        Assert.Equal("olddevice0", await phone.Page.EvaluateAsync<string>("async () => (await import('/device/writing.js')).device()"));
        Assert.Equal(6, (await phone.LinesAsync("ioldvisit0")).Count);
        // A forked device goes out from its split on, though the other side says that it has all.
        Assert.Equal(4, await phone.Page.EvaluateAsync<int>("async () => (await (await import('/device/writing.js')).rowsBeyond('ioldvisit0', { olddevice0: 5 })).length"));
        await phone.Page.EvaluateAsync("async () => { const { write } = await import('/device/writing.js'); await write('ioldvisit0', [{ type: 'sound.taken', body: { sha: 'f'.repeat(64), size: 1, mediaType: 'audio/webm', seconds: 1 } }]); }");
        Assert.Equal("6 5 0", await phone.Page.EvaluateAsync<string>(Standing));
        await phone.OpenReadyAsync("/");
        await Assertions.Expect(phone.Page.Locator(".visit")).ToContainTextAsync("3 Older Row");
        Assert.Empty(phone.PageErrors);
    }

    [Fact]
    public async Task A_tab_that_ends_in_the_upgrade_leaves_the_old_tables_or_the_new()
    {
        await using var host = await TinyHost.StartAsync();
        await using var phone = await browser.PhoneAsync(host.Address);
        await phone.OpenBareAsync();
        await phone.Page.EvaluateAsync(OfVersionOne, 400);
        foreach (var wait in (int[])[0, 3, 10, 30, 80])
        {
            await phone.OpenBareAsync();
            var session = await phone.Context.NewCDPSessionAsync(phone.Page);
            var crashed = new TaskCompletionSource();
            phone.Page.Crash += (_, _) => crashed.TrySetResult();
            await phone.Page.EvaluateAsync("() => { import('/device/store.js').then(store => store.get('meta', 'device')); }");
            await Task.Delay(wait, TestContext.Current.CancellationToken);
            _ = session.SendAsync("Page.crash").ContinueWith(task => task.Exception, TaskScheduler.Default);
            await crashed.Task.WaitAsync(TimeSpan.FromMinutes(2), TestContext.Current.CancellationToken);
            await phone.Page.CloseAsync();
        }

        await phone.OpenBareAsync();
        Assert.Equal("400 399 0", await phone.Page.EvaluateAsync<string>(Standing));
        Assert.Equal(401, (await phone.LinesAsync("ioldvisit0")).Count);
    }

    [Fact]
    public async Task A_window_that_holds_the_old_tables_open_is_named()
    {
        await using var host = await TinyHost.StartAsync();
        await using var phone = await browser.PhoneAsync(host.Address);
        await phone.OpenBareAsync();
        await phone.Page.EvaluateAsync(OfVersionOne, 2);
        var old = phone.Page;
        await old.EvaluateAsync("() => new Promise(resolve => { const request = indexedDB.open('purlin', 1); request.onsuccess = () => { window.held = request.result; resolve(); }; })");
        await phone.NewTabAsync();
        await phone.OpenAsync("/");
        await Assertions.Expect(phone.Page.Locator("#version-line")).ToContainTextAsync("Another window of Purlin holds an older version open");
        await old.CloseAsync();
        await phone.ReadyAsync();
        await Assertions.Expect(phone.Page.Locator(".visit")).ToContainTextAsync("3 Older Row");
    }
}
