// Writes an archive beyond 4 GiB by the phone's own modules: node large-archive.js FILE. Its pictures are 25 MB of nothing but a number
// each, and what is nothing is left out of the file as a hole, so that it costs little room.
import { open } from 'node:fs/promises';
import { argv } from 'node:process';
import { nextLine, sha256 } from '../../src/Purlin.Field/wwwroot/device/chain.js';
import { linesOf, manifestOf } from '../../src/Purlin.Field/wwwroot/device/manifest.js';
import { readList, readMember, writeZip } from '../../src/Purlin.Field/wwwroot/device/zip.js';

const SIZE = 25 * 1024 * 1024;
const COUNT = 172;
const picture = new Uint8Array(SIZE);
const numbered = at => { picture.set([0xff, 0xd8, at >> 8, at & 255]); return picture; };

const pen = { insp: 'large', dev: 'phone', seq: 0, heads: {}, seenWritten: {} };
const rows = [], kept = [], order = new Map();
for (let at = 0; at < COUNT; at++) {
  const sha = await sha256(numbered(at));
  order.set(sha, at);
  kept.push({ sha, type: 'image/jpeg', size: SIZE });
  const { line, hash } = await nextLine(pen, 'photo.taken', { sha, size: SIZE, mediaType: 'image/jpeg' }, 1795000000000 + at);
  rows.push({ dev: 'phone', seq: pen.seq, hash, line });
}
const manifest = await manifestOf('large', rows, kept.map(one => one.sha), kept);
const { journal } = linesOf(rows);

async function* members() {
  yield { name: 'journal.jsonl', bytes: journal };
  for (const file of manifest.files) yield { name: file.name, bytes: numbered(order.get(file.sha256)) };
  yield { name: 'manifest.json', bytes: new TextEncoder().encode(JSON.stringify(manifest)) };
}

const file = await open(argv[2], 'w+');
let length = 0;
await writeZip(members(), async bytes => {
  // Only a picture is as long as this, and all but its first bytes is nothing.
  await file.write(bytes.length === SIZE ? bytes.subarray(0, 4) : bytes, 0, undefined, length);
  length += bytes.length;
});
await file.truncate(length);

// And the phone's own reader finds the last member, whose offset needs the wide field.
const source = { size: length, read: async (from, to) => { const bytes = new Uint8Array(to - from); await file.read(bytes, 0, bytes.length, from); return bytes; } };
const { listed, refusals } = await readList(source);
const last = listed.get('manifest.json');
const back = last && await readMember(source, last);
await file.close();
if (refusals.length > 0 || !(last.offset > 2 ** 32) || JSON.parse(new TextDecoder().decode(back)).files.length !== COUNT) throw new Error(`not read back: ${refusals.join(' ')}`);
console.log(JSON.stringify({ length, files: COUNT, peak: process.memoryUsage().rss }));
