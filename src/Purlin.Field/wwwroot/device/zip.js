// A plain zip, written and read piece by piece, so that an inspection of any size passes through little memory. Members are stored as
// they are; beyond 4 GiB the offsets go into the wide records (APPNOTE.TXT 6.3.10, sections 4.3.14, 4.3.15 and 4.5.3).

import { ARCHIVE_FILES, ARCHIVE_UNFOLDS } from './limits.js';
import { mediaTypeOf, mostBytes } from './names.js';

/** @typedef {{name:string, bytes:Uint8Array<ArrayBuffer>}} Member */
/** @typedef {{name:string, size:number, packed:number, method:number, crc:number, offset:number}} Listed */
/** @typedef {{size:number, read:(from:number, to:number) => Promise<Uint8Array<ArrayBuffer>>}} Source */

const encoder = new TextEncoder();
const WIDE = 0xffffffff;
const LOCAL = 0x04034b50, CENTRAL = 0x02014b50, END = 0x06054b50, WIDE_END = 0x06064b50, WIDE_LOCATOR = 0x07064b50;
const DAY_ONE = 0x21;
const NAMES_IN_UTF8 = 0x0800;
const LONGEST_LIST = 4 * 1024 * 1024;

/** Writes members one after another; only one is held at a time. @param {AsyncIterable<Member>} members @param {(bytes: Uint8Array<ArrayBuffer>) => Promise<void>} write */
export async function writeZip(members, write) {
  /** @type {Listed[]} */
  const listed = [];
  let offset = 0;
  for await (const { name, bytes } of members) {
    const one = { name, size: bytes.length, packed: bytes.length, method: 0, crc: crc32(bytes), offset };
    const head = localHeader(one);
    await write(head);
    await write(bytes);
    listed.push(one);
    offset += head.length + bytes.length;
  }
  const list = joined(listed.map(centralRecord));
  await write(list);
  await write(ending(listed.length, list.length, offset));
}

/** @param {Listed} one */
function localHeader(one) {
  const name = encoder.encode(one.name);
  const { bytes, put } = fields(30 + name.length);
  put([LOCAL, 4], [20, 2], [NAMES_IN_UTF8, 2], [0, 2], [0, 2], [DAY_ONE, 2], [one.crc, 4], [one.size, 4], [one.size, 4], [name.length, 2], [0, 2]);
  bytes.set(name, 30);
  return bytes;
}

/** @param {Listed} one */
function centralRecord(one) {
  const name = encoder.encode(one.name);
  const isWide = one.offset >= WIDE;
  const { bytes, put } = fields(46 + name.length + (isWide ? 12 : 0));
  const needs = isWide ? 45 : 20;
  put([CENTRAL, 4], [needs, 2], [needs, 2], [NAMES_IN_UTF8, 2], [0, 2], [0, 2], [DAY_ONE, 2], [one.crc, 4], [one.size, 4], [one.size, 4],
    [name.length, 2], [isWide ? 12 : 0, 2], [0, 2], [0, 2], [0, 2], [0, 4], [isWide ? WIDE : one.offset, 4]);
  bytes.set(name, 46);
  if (isWide) put([1, 2, 46 + name.length], [8, 2], [one.offset, 8]);
  return bytes;
}

/** @param {number} count @param {number} size @param {number} offset */
function ending(count, size, offset) {
  const isWide = offset >= WIDE || count >= 0xffff;
  const { bytes, put } = fields((isWide ? 76 : 0) + 22);
  if (isWide) {
    put([WIDE_END, 4], [44, 8], [45, 2], [45, 2], [0, 4], [0, 4], [count, 8], [count, 8], [size, 8], [offset, 8]);
    put([WIDE_LOCATOR, 4], [0, 4], [offset + size, 8], [1, 4]);
  }
  const few = isWide ? 0xffff : count;
  put([END, 4], [0, 2], [0, 2], [few, 2], [few, 2], [isWide ? WIDE : size, 4], [isWide ? WIDE : offset, 4], [0, 2]);
  return bytes;
}

/** Little-endian numbers, one after another: value, width, and where to go on from. @param {number} length */
function fields(length) {
  const bytes = new Uint8Array(length);
  const view = new DataView(bytes.buffer);
  let at = 0;
  /** @param {number[][]} all */
  const put = (...all) => {
    for (const [value, width, from] of all) {
      at = from ?? at;
      if (width === 2) view.setUint16(at, value, true);
      else if (width === 4) view.setUint32(at, value, true);
      else view.setBigUint64(at, BigInt(value), true);
      at += width;
    }
  };
  return { bytes, put };
}

/** @param {Uint8Array[]} parts */
function joined(parts) {
  const whole = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) { whole.set(part, at); at += part.length; }
  return whole;
}

/**
 * The list at the end of a zip, read by itself and checked before anything is unfolded. Every reason to go no further, in words; none when
 * the list is one that we could have written.
 * @param {Source} source @returns {Promise<{listed: Map<string, Listed>, refusals: string[]}>}
 */
export async function readList(source) {
  /** @param {string} words */
  const refused = words => ({ listed: new Map(), refusals: [words] });
  const head = source.size < 22 ? new Uint8Array(4) : await source.read(0, 4);
  if (head[0] !== 0x50 || head[1] !== 0x4b) return refused('This file is no archive. Choose a file that ends in .purlin.');
  const end = await readEnd(source);
  if (!end) return refused('The end of this archive is missing: it was cut off on its way. Copy it again.');
  if (end.count > ARCHIVE_FILES) return refused(`This archive says that it holds ${end.count} files; ${ARCHIVE_FILES} is the most.`);
  if (end.size > LONGEST_LIST || end.from + end.size !== end.at) return refused('The list of files in this archive does not end where it says. It was altered or damaged.');
  return walk(await source.read(end.from, end.from + end.size), end.count, source.size);
}

/** No comment after it: two ends in one file could be read differently by two programs. @param {Source} source */
async function readEnd(source) {
  const at = source.size - 22;
  const view = viewOf(await source.read(at, source.size));
  if (view.getUint32(0, true) !== END || view.getUint16(20, true) !== 0) return null;
  const [count, size, from] = [view.getUint16(10, true), view.getUint32(12, true), view.getUint32(16, true)];
  if (count !== 0xffff && size !== WIDE && from !== WIDE) return { count, size, from, at };
  return at < 76 ? null : readWideEnd(source, at);
}

/** @param {Source} source @param {number} end */
async function readWideEnd(source, end) {
  const locator = viewOf(await source.read(end - 20, end));
  if (locator.getUint32(0, true) !== WIDE_LOCATOR) return null;
  const at = Number(locator.getBigUint64(8, true));
  if (at > end - 76) return null;
  const view = viewOf(await source.read(at, at + 56));
  if (view.getUint32(0, true) !== WIDE_END) return null;
  return { count: Number(view.getBigUint64(32, true)), size: Number(view.getBigUint64(40, true)), from: Number(view.getBigUint64(48, true)), at };
}

/** @param {Uint8Array} bytes */
function viewOf(bytes) { return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength); }

/** @param {Uint8Array} list @param {number} count @param {number} length */
function walk(list, count, length) {
  const view = viewOf(list);
  /** @type {Map<string, Listed>} */
  const listed = new Map();
  /** @type {string[]} */
  const refusals = [];
  let at = 0;
  let total = 0;
  for (let left = count; left > 0 && refusals.length < 20; left--) {
    if (at + 46 > list.length || view.getUint32(at, true) !== CENTRAL) return { listed, refusals: ['The list of files in this archive is broken. Copy it again.'] };
    const next = at + 46 + view.getUint16(at + 28, true) + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
    if (next > list.length) return { listed, refusals: ['The list of files in this archive is broken. Copy it again.'] };
    const one = readRecord(list, view, at);
    total += one.size;
    const wrong = listed.has(one.name) ? `${one.name} is in this archive twice.` : refusalOf(view, at, one);
    if (wrong) refusals.push(wrong);
    listed.set(one.name, one);
    at = next;
  }
  if (at < list.length && refusals.length === 0) refusals.push('This archive holds more files than it says.');
  if (total > length * ARCHIVE_UNFOLDS + 1024 * 1024) refusals.push(`This archive has ${length} bytes and claims to unfold to ${total}.`);
  return { listed, refusals };
}

/** @param {Uint8Array} list @param {DataView} view @param {number} at @returns {Listed} */
function readRecord(list, view, at) {
  const name = String.fromCharCode(...list.subarray(at + 46, at + 46 + Math.min(200, view.getUint16(at + 28, true))));
  const offset = view.getUint32(at + 42, true);
  return {
    name, method: view.getUint16(at + 10, true), crc: view.getUint32(at + 16, true), packed: view.getUint32(at + 20, true), size: view.getUint32(at + 24, true),
    offset: offset === WIDE ? wideOffset(view, at) : offset,
  };
}

/** The wide field holds only what does not fit, in the order size, packed size, offset. @param {DataView} view @param {number} at @returns {number} */
function wideOffset(view, at) {
  const from = at + 46 + view.getUint16(at + 28, true);
  const to = Math.min(from + view.getUint16(at + 30, true), view.byteLength);
  for (let field = from; field + 4 <= to; field += 4 + view.getUint16(field + 2, true)) {
    if (view.getUint16(field, true) !== 1) continue;
    const before = (view.getUint32(at + 24, true) === WIDE ? 8 : 0) + (view.getUint32(at + 20, true) === WIDE ? 8 : 0);
    return field + 12 + before <= to ? Number(view.getBigUint64(field + 4 + before, true)) : WIDE;
  }
  return WIDE;
}

/** @param {DataView} view @param {number} at @param {Listed} one @returns {string} */
function refusalOf(view, at, one) {
  if (!mediaTypeOf(one.name)) return `No file of an archive is called ${one.name.replace(/[^\x20-\x7e]/g, '?').slice(0, 80)}.`;
  if (view.getUint16(at + 8, true) & 1) return `${one.name} is encrypted.`;
  if (one.method !== 0 && one.method !== 8) return `${one.name} is packed in way ${one.method}.`;
  if ((view.getUint32(at + 38, true) >>> 16 & 0xf000) === 0xa000) return `${one.name} is a link, no file.`;
  return one.size > mostBytes(one.name) ? `${one.name} claims ${one.size} bytes; ${mostBytes(one.name)} is the most.` : '';
}

/** The bytes of a member, read no further than one byte beyond what it claims; null when it is not what the list says. @param {Source} source @param {Listed} one @returns {Promise<Uint8Array<ArrayBuffer>|null>} */
export async function readMember(source, one) {
  const head = await source.read(one.offset, one.offset + 30);
  if (head.length < 30 || viewOf(head).getUint32(0, true) !== LOCAL) return null;
  const from = one.offset + 30 + viewOf(head).getUint16(26, true) + viewOf(head).getUint16(28, true);
  if (one.method === 0 && one.packed !== one.size) return null;
  const packed = await source.read(from, from + one.packed);
  if (packed.length !== one.packed) return null;
  const bytes = one.method === 0 ? packed : await unfold(packed, one.size);
  return bytes && bytes.length === one.size && crc32(bytes) === one.crc ? bytes : null;
}

/** @param {Uint8Array<ArrayBuffer>} packed @param {number} most @returns {Promise<Uint8Array<ArrayBuffer>|null>} */
async function unfold(packed, most) {
  const reader = new Blob([packed]).stream().pipeThrough(new DecompressionStream('deflate-raw')).getReader();
  const whole = new Uint8Array(most);
  let at = 0;
  try {
    for (; ;) {
      const { done, value } = await reader.read();
      if (done) return whole.subarray(0, at);
      if (at + value.length > most) { void reader.cancel(); return null; }
      whole.set(value, at);
      at += value.length;
    }
  } catch {
    return null;
  }
}

/** Eight tables, so that eight bytes go at a time: a visit has a thousand million of them. */
const CRC = Array.from({ length: 8 }, () => new Uint32Array(256));
for (let index = 0; index < 256; index++) {
  let value = index;
  for (let bit = 0; bit < 8; bit++) value = value & 1 ? 0xedb88320 ^ (value >>> 1) : value >>> 1;
  CRC[0][index] = value;
}
for (let index = 0; index < 256; index++) for (let table = 1; table < 8; table++) CRC[table][index] = CRC[0][CRC[table - 1][index] & 255] ^ (CRC[table - 1][index] >>> 8);

/** @param {Uint8Array} bytes */
export function crc32(bytes) {
  const [a, b, c, d, e, f, g, h] = CRC;
  let crc = -1;
  let at = 0;
  for (; at + 8 <= bytes.length; at += 8) {
    const low = crc ^ (bytes[at] | bytes[at + 1] << 8 | bytes[at + 2] << 16 | bytes[at + 3] << 24);
    crc = h[low & 255] ^ g[low >>> 8 & 255] ^ f[low >>> 16 & 255] ^ e[low >>> 24] ^ d[bytes[at + 4]] ^ c[bytes[at + 5]] ^ b[bytes[at + 6]] ^ a[bytes[at + 7]];
  }
  for (; at < bytes.length; at++) crc = a[(crc ^ bytes[at]) & 255] ^ (crc >>> 8);
  return (crc ^ -1) >>> 0;
}
