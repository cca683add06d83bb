using System.Text.Json;
using Purlin.Field.Tests.App;

namespace Purlin.Field.Tests;

/// <summary>The device module against the test vectors that the rooms are held to as well.</summary>
public sealed class Vectors(Browser browser) : IAsyncLifetime
{
    private TinyHost host = null!;
    private Phone phone = null!;

    public async ValueTask InitializeAsync()
    {
        host = await TinyHost.StartAsync();
        phone = await browser.PhoneAsync(host.Address);
        await phone.OpenBareAsync();
    }

    private static string Read(string name) => File.ReadAllText(Path.Combine(PublishedApp.Repository, "tests", "vectors", name));

    /// <summary>Runs a script over the vectors; it returns a list of what differs, and how many cases it ran.</summary>
    private async Task RunAsync(string vectors, string script, int atLeast)
    {
        var answer = await phone.Page.EvaluateAsync<JsonElement>("async vectors => { const chain = await import('/device/chain.js'); const v = JSON.parse(vectors); const wrong = []; let ran = 0; const same = (name, got, expected) => { ran++; if (JSON.stringify(got) !== JSON.stringify(expected)) wrong.push(`${name}: got ${JSON.stringify(got)}, expected ${JSON.stringify(expected)}`); }; const bytes = one => one.base64 !== undefined ? Uint8Array.from(atob(one.base64), c => c.charCodeAt(0)) : new TextEncoder().encode(one.line);" + script + "; return { wrong, ran }; }", vectors);
        Assert.Empty(answer.GetProperty("wrong").EnumerateArray().Select(wrong => wrong.GetString()));
        Assert.True(answer.GetProperty("ran").GetInt32() >= atLeast, $"only {answer.GetProperty("ran")} checks ran");
    }

    [Fact]
    public Task Lines_are_read_and_hashed_alike() => RunAsync(Read("lines.json"), """
        // Two things only the rooms can see: a member given twice, and what a body may hold. The device keeps such lines and passes them on.
        const envelope = ['line', 'seq', 'dev', 'insp', 'hlc', 'prev', 'seen', 'type', 'body', 'v'];
        for (const one of v.cases) {
          const checked = chain.checkLine(bytes(one));
          if (one.accepted) {
            same(one.name, [checked.refuses, await chain.sha256(bytes(one)), checked.envelope.insp, checked.envelope.dev, checked.envelope.seq, checked.envelope.hlc, checked.envelope.prev ?? null, checked.envelope.seen ?? {}, checked.envelope.type],
              [null, one.hash, one.insp, one.dev, one.seq, one.hlc, one.prev, one.seen, one.type]);
          } else if (envelope.includes(one.refuses) && one.name !== 'member twice') {
            same(one.name, [checked.refuses, checked.named ? `${checked.named.dev}.${checked.named.seq}` : null], [one.refuses, one.named]);
          }
        }
        """, 40);

    [Fact]
    public Task Chains_break_alike() => RunAsync(Read("chain.json"), """
        const lines = v.lines.map(line => new TextEncoder().encode(line));
        for (const line of lines) { const read = chain.readLine(line); same(`hash of ${read.dev}.${read.seq}`, await chain.sha256(line), v.hashes[`${read.dev}.${read.seq}`]); }
        same('broken', (await chain.brokenIn(lines)).sort(), [...v.broken].sort());
        """, 2);

    [Fact]
    public Task Clocks_go_on_alike() => RunAsync(Read("hlc.json"), """
        for (const one of v.next) same(one.name, chain.hlcNext(one.clock, one.now), one.next);
        for (const one of v.adopt) same(one.name, chain.hlcMeet(one.clock, one.other, one.now), one.after);
        for (const [a, b] of v.ordered) same(`${a} < ${b}`, a < b, true);
        """, 15);

    [Fact]
    public Task A_pen_keeps_the_same_books() => RunAsync(Read("seen.json"), """
        const pen = { insp: v.insp, dev: v.device, seq: 0, heads: {}, seenWritten: {} };
        let previous;
        for (const step of v.steps) {
          for (const [dev, seq] of Object.entries(step.saw ?? {})) pen.heads[dev] = Math.max(pen.heads[dev] ?? 0, seq);
          if (!step.write) continue;
          const { line, hash } = await chain.nextLine(pen, step.write.type, step.write.body, step.write.now);
          const read = chain.readLine(line);
          same(`line ${read.seq}`, { seq: read.seq, hlc: read.hlc, seen: read.seen ?? {}, prev: read.prev ?? null }, { ...step.expect, prev: previous ?? null });
          previous = hash;
        }
        """, 4);

    [Fact]
    public Task Deliveries_are_taken_alike() => RunAsync(Read("delivery.json"), """
        const known = async line => { const b = new TextEncoder().encode(line); const e = chain.readLine(b); return { dev: e.dev, seq: e.seq, hash: await chain.sha256(b), line: b }; };
        const name = one => `${one.dev}.${one.seq}`;
        for (const one of v.cases) {
          const here = await Promise.all(one.here.map(known));
          const got = await chain.take(here[0] ? chain.readLine(here[0].line).insp : 'vec1', here, Uint8Array.from(atob(one.ndjson), c => c.charCodeAt(0)));
          // The device keeps what it cannot judge: a held line that has a name is among the taken.
          same(one.name, [got.taken.map(name).sort(), got.nameless, got.waiting.map(name).sort(), got.isTorn, got.heads],
            [[...one.taken, ...one.held.filter(held => held !== null)].sort(), one.held.filter(held => held === null).length, [...one.waiting].sort(), one.torn, one.heads]);
        }
        for (const one of v.lacking) {
          const here = await Promise.all(one.here.map(known));
          same(one.name, chain.lacking(here, one.have).map(name).sort(), one.names.map(given => given.replace(/~\d+/, '')).sort());
        }
        """, 12);

    [Fact]
    public Task Both_branches_of_a_fork_are_kept() => RunAsync(Read("forks.json"), """
        for (const one of v.cases) {
          const insp = chain.readLine(new TextEncoder().encode(one.lines[0])).insp;
          const got = await chain.take(insp, [], new TextEncoder().encode(one.lines.join('\n') + '\n'));
          same(one.name, got.taken.length, new Set(one.lines).size);
        }
        """, 1);

    [Fact]
    public Task Roots_are_alike() => RunAsync(Read("root.json"), "for (const one of v.cases) same(String(one.hashes.length), await chain.rootOf(one.hashes), one.root);", 5);

    public async ValueTask DisposeAsync()
    {
        await phone.DisposeAsync();
        await host.DisposeAsync();
    }
}
