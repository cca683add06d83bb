// The device module against the test vectors: run under node and in the browser alike. Each check gets the vectors, the modules and a way
// to say what was got and what was expected.

const text = new TextEncoder();
const base64 = encoded => Uint8Array.from(atob(encoded), character => character.charCodeAt(0));
const bytes = one => one.base64 !== undefined ? base64(one.base64) : text.encode(one.line);
const nameOf = one => `${one.dev}.${one.seq}`;

export const checks = {
  // Three things only the rooms can see: a member given twice, half a character, and what a body may hold. The device keeps such lines and passes them on.
  async lines(v, { chain }, same) {
    const envelope = ['line', 'seq', 'dev', 'insp', 'hlc', 'prev', 'seen', 'type', 'body', 'v'];
    for (const one of v.cases) {
      const checked = chain.checkLine(bytes(one));
      if (one.accepted) {
        const { insp, dev, seq, hlc, prev, seen, type } = checked.envelope;
        same(one.name, [checked.refuses, await chain.sha256(bytes(one)), insp, dev, seq, hlc, prev ?? null, seen ?? {}, type], [null, one.hash, one.insp, one.dev, one.seq, one.hlc, one.prev, one.seen, one.type]);
      } else if (envelope.includes(one.refuses) && !['member twice', 'half a surrogate pair'].includes(one.name)) {
        same(one.name, [checked.refuses, checked.named ? nameOf(checked.named) : null], [one.refuses, one.named]);
      }
    }
  },

  async chain(v, { chain }, same) {
    const lines = v.lines.map(line => text.encode(line));
    for (const line of lines) { const read = chain.readLine(line); same(`hash of ${nameOf(read)}`, await chain.sha256(line), v.hashes[nameOf(read)]); }
    same('broken', (await chain.brokenIn(lines)).sort(), [...v.broken].sort());
  },

  async hlc(v, { chain }, same) {
    for (const one of v.next) same(one.name, chain.hlcNext(one.clock, one.now), one.next);
    for (const one of v.adopt) same(one.name, chain.hlcMeet(one.clock, one.other, one.now), one.after);
    for (const [a, b] of v.ordered) same(`${a} < ${b}`, a < b, true);
  },

  async seen(v, { chain }, same) {
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
  },

  async delivery(v, { chain }, same) {
    const known = async line => { const b = text.encode(line); const e = chain.readLine(b); return { dev: e.dev, seq: e.seq, hash: await chain.sha256(b), line: b }; };
    for (const one of v.cases) {
      const here = await Promise.all(one.here.map(known));
      const got = await chain.take(here[0] ? chain.readLine(here[0].line).insp : 'vec1', here, base64(one.ndjson));
      // The device keeps what it cannot judge: a held line that has a name is among the taken.
      same(one.name, [got.taken.map(nameOf).sort(), got.nameless, got.waiting.map(nameOf).sort(), got.isTorn, got.heads],
        [[...one.taken, ...one.held.filter(held => held !== null)].sort(), one.held.filter(held => held === null).length, [...one.waiting].sort(), one.torn, one.heads]);
    }
    for (const one of v.lacking) {
      const here = await Promise.all(one.here.map(known));
      const expected = one.names.map(given => given.replace(/~\d+/, '')).sort();
      same(one.name, chain.lacking(here, one.have).map(nameOf).sort(), expected);
      // The same asked device by device, as the tables are asked.
      const splits = chain.splitsOf(here);
      same(`${one.name}, by device`, here.filter(row => row.seq >= chain.fromOf(row.dev, one.have, splits)).map(nameOf).sort(), expected);
    }
  },

  async forks(v, { chain }, same) {
    for (const one of v.cases) {
      const insp = chain.readLine(text.encode(one.lines[0])).insp;
      const got = await chain.take(insp, [], text.encode(one.lines.join('\n') + '\n'));
      same(one.name, got.taken.length, new Set(one.lines).size);
    }
  },

  async root(v, { chain }, same) {
    for (const one of v.cases) same(String(one.hashes.length), await chain.rootOf(one.hashes), one.root);
  },

  async causal(v, { chain, causal }, same) {
    const envelopes = v.lines.map(line => chain.readLine(text.encode(line)));
    same('order', causal.inOrder(envelopes.reverse()).map(line => line.name), v.order);
  },

  async places(v, { chain, places }, same) {
    for (const one of v.cases) {
      const got = places.placesIn(one.lines.map(line => chain.readLine(text.encode(line))));
      same(one.name, got.map(spot => ({ place: spot.name, kind: spot.kind, name: spot.words })), one.places);
    }
  },

  async archive(v, { chain, names, manifest }, same) {
    for (const one of v.names) same(`${one.mediaType} of ${one.sha.slice(0, 8)}`, names.nameOfBlob(one.sha, one.mediaType), one.name);
    for (const one of v.types) same(one.name, names.mediaTypeOf(one.name), one.mediaType);
    for (const one of v.manifests) {
      const rows = await Promise.all(one.lines.map(async line => { const b = text.encode(line); return { ...chain.readLine(b), hash: await chain.sha256(b), line: b }; }));
      const kept = await Promise.all(one.blobs.map(async blob => ({ sha: await chain.sha256(base64(blob.base64)), type: blob.mediaType, size: base64(blob.base64).length })));
      same(one.name, (await manifest.manifestOf('vec1', rows, rows.map(row => row.body.sha).filter(sha => sha), kept)), one.manifest);
    }
  },

  async limits(v, { limits }, same) {
    for (const [name, figure] of Object.entries(v.limits)) same(name, limits[name], figure);
    same('as many', Object.keys(limits).sort(), Object.keys(v.limits).sort());
  },

  async pictures(v, { dimensions }, same) {
    for (const one of v.cases) same(one.name, dimensions.dimensionsOf(base64(one.base64).buffer), one.width === null ? {} : { width: one.width, height: one.height });
  },
};

const MODULES = ['chain', 'causal', 'places', 'names', 'manifest', 'limits', 'dimensions'];

/** Runs one check; gives what differs and how many comparisons were made. */
export async function run(name, vectors, folder) {
  const modules = Object.fromEntries(await Promise.all(MODULES.map(async module => [module, await import(`${folder}/${module}.js`)])));
  const wrong = [];
  let ran = 0;
  const plain = value => JSON.stringify(value, (_, inner) => inner && typeof inner === 'object' && !Array.isArray(inner) ? Object.fromEntries(Object.entries(inner).sort(([a], [b]) => a < b ? -1 : 1)) : inner);
  await checks[name](vectors, modules, (what, got, expected) => {
    ran++;
    if (plain(got) !== plain(expected)) wrong.push(`${what}: got ${plain(got)}, expected ${plain(expected)}`);
  });
  return { wrong, ran };
}
