import assert from 'node:assert/strict';
import { test } from 'node:test';
import { crc32 as crcOfZlib, deflateRawSync } from 'node:zlib';
import { crc32, readList, readMember, writeZip } from '../../src/Purlin.Field/wwwroot/device/zip.js';

const H = n => n.toString(16).padStart(64, '0');

async function zipOf(members) {
  const parts = [];
  await writeZip((async function* () { yield* members; })(), async bytes => { parts.push(bytes.slice()); });
  return Buffer.concat(parts);
}

const source = bytes => ({ size: bytes.length, read: async (from, to) => new Uint8Array(bytes.subarray(Math.max(0, from), to)) });
const member = (name, ...bytes) => ({ name, bytes: Uint8Array.from(bytes) });
const plain = [member('journal.jsonl', 1, 2, 3), member(`photos/${H(1)}.jpg`, 4, 5), member('manifest.json', 6)];

test('the checksum is that of zlib at every length around its stride', () => {
  const bytes = Uint8Array.from({ length: 70 }, (_, at) => at * 37 & 255);
  for (let length = 0; length <= bytes.length; length++) assert.equal(crc32(bytes.subarray(0, length)), crcOfZlib(bytes.subarray(0, length)));
});

test('what was written is read back', async () => {
  const zip = await zipOf(plain);
  const { listed, refusals } = await readList(source(zip));
  assert.deepEqual(refusals, []);
  for (const { name, bytes } of plain) assert.deepEqual(await readMember(source(zip), listed.get(name)), bytes);
});

test('a folded member is unfolded, and no further than it claims', async () => {
  const whole = Buffer.alloc(5000, 7);
  const packed = deflateRawSync(whole);
  const zip = Buffer.concat([await zipOf([{ name: 'journal.jsonl', bytes: new Uint8Array(packed) }])]);
  const { listed } = await readList(source(zip));
  const one = listed.get('journal.jsonl');
  assert.deepEqual(Buffer.from(await readMember(source(zip), { ...one, method: 8, size: 5000, crc: crcOfZlib(whole) })), whole);
  assert.equal(await readMember(source(zip), { ...one, method: 8, size: 4999, crc: crcOfZlib(whole) }), null);
});

test('no cut and no altered byte of it is taken for whole', async () => {
  const zip = await zipOf(plain);
  for (let length = 0; length < zip.length; length++) assert.notDeepEqual((await readList(source(zip.subarray(0, length)))).refusals, [], `cut at ${length}`);
  for (let at = 0; at < zip.length; at++) {
    const altered = Buffer.from(zip);
    altered[at] ^= 0x55;
    const { listed, refusals } = await readList(source(altered)).catch(error => assert.fail(`byte ${at}: ${error.stack}`));
    if (refusals.length > 0) continue;
    const read = [];
    for (const { name, bytes } of plain) {
      const one = listed.get(name);
      const got = one ? await readMember(source(altered), one) : null;
      if (got) { assert.deepEqual(got, bytes, `byte ${at} of ${name}`); read.push(name); }
    }
  }
});

test('names that lead outside, names twice and false claims are refused', async () => {
  const refusals = async members => (await readList(source(await zipOf(members)))).refusals.join(' ');
  assert.match(await refusals([member('../manifest.json', 1)]), /No file of an archive is called/);
  assert.match(await refusals([member('C:photos', 1)]), /No file of an archive is called/);
  assert.match(await refusals([member('manifest.json', 1), member('manifest.json', 2)]), /twice/);
  const many = Array.from({ length: 6001 }, (_, at) => ({ name: `photos/${H(at)}.jpg`, bytes: new Uint8Array() }));
  assert.match(await refusals(many), /6001 files; 6000 is the most/);
  const claims = await zipOf(plain);
  claims.writeUInt32LE(200 * 1024 * 1024, claims.indexOf('PK\x01\x02', 0, 'latin1') + 24);
  assert.match((await readList(source(claims))).refusals.join(' '), /claims 209715200 bytes/);
  const linked = await zipOf(plain);
  linked.writeUInt32LE(0xA1FF0000, linked.indexOf('PK\x01\x02', 0, 'latin1') + 38);
  assert.match((await readList(source(linked))).refusals.join(' '), /a link/);
  const locked = await zipOf(plain);
  locked.writeUInt16LE(1, locked.indexOf('PK\x01\x02', 0, 'latin1') + 8);
  assert.match((await readList(source(locked))).refusals.join(' '), /encrypted/);
  assert.match((await readList(source(Buffer.from('no zip at all, only words in a file')))).refusals.join(' '), /no archive/);
});
