// The whole of an inspection in one file, made on the phone with no network: a plain zip whose members are stored as they are.

import { rows } from './writing.js';
import { get } from './store.js';
import { namedBlobs } from './send.js';
import { checkLine, headsOf, joinLines, rootOf, sha256 } from './chain.js';

const encoder = new TextEncoder();

/** @typedef {{name:string, bytes:Uint8Array<ArrayBuffer>}} Member */

const BLOBS = { 'image/jpeg': 'photos/*.jpg', 'image/png': 'photos/*.png', 'image/webp': 'photos/*.webp', 'audio/webm': 'sounds/*.webm', 'audio/ogg': 'sounds/*.ogg', 'audio/mp4': 'sounds/*.m4a', 'audio/wav': 'sounds/*.wav' };

/** @param {string} insp @returns {Promise<Blob>} */
export async function exportArchive(insp) {
  const all = await rows(insp);
  const readable = all.filter(row => checkLine(row.line).envelope !== null);
  const journal = joinLines([...readable, ...all.filter(row => !readable.includes(row))].map(row => row.line));
  /** @type {Member[]} */
  const members = [];
  const files = [];
  const missing = [];
  for (const sha of (await namedBlobs(insp)).sort()) {
    const blob = await get('blobs', sha);
    const mediaType = String(blob?.type ?? '').split(';')[0];
    const pattern = BLOBS[/** @type {keyof typeof BLOBS} */ (mediaType)];
    if (!blob || !pattern) { missing.push(sha); continue; }
    const name = pattern.replace('*', sha);
    members.push({ name, bytes: new Uint8Array(blob.bytes) });
    files.push({ name, sha256: sha, size: blob.size, mediaType });
  }
  const manifest = {
    format: 'purlin-archive', version: 1, inspection: insp, heads: headsOf(all), entries: readable.length, held: all.length - readable.length,
    journal: await sha256(journal), linesRoot: await rootOf(all.map(row => row.hash)), files, missing,
  };
  return zip([{ name: 'manifest.json', bytes: encoder.encode(JSON.stringify(manifest, null, 2)) }, { name: 'journal.jsonl', bytes: journal }, ...members]);
}

/** Hands a file to the person: the share sheet where there is one, else a download. @param {Blob} blob @param {string} name */
export async function shareArchive(blob, name) {
  const file = new File([blob], name, { type: blob.type });
  if (navigator.canShare?.({ files: [file] }) && matchMedia('(pointer: coarse)').matches && navigator.userActivation?.isActive) {
    try {
      await navigator.share({ files: [file] });
      return;
    } catch (error) {
      if (error instanceof DOMException && error.name === 'AbortError') return;
    }
  }
  const link = document.createElement('a');
  link.href = URL.createObjectURL(blob);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

/** A zip of stored members. @param {Member[]} members @returns {Blob} */
export function zip(members) {
  /** @type {BlobPart[]} */
  const parts = [];
  const directory = [];
  let offset = 0;
  for (const member of members) {
    const name = encoder.encode(member.name);
    const head = header(0x04034b50, name, member, null);
    parts.push(head, member.bytes);
    directory.push(header(0x02014b50, name, member, offset));
    offset += head.length + member.bytes.length;
  }
  const size = directory.reduce((sum, record) => sum + record.length, 0);
  return new Blob([...parts, ...directory, ending(members.length, size, offset)], { type: 'application/zip' });
}

/** A local header, or with an offset the record of the central directory. @param {number} mark @param {Uint8Array} name @param {Member} member @param {number|null} offset */
function header(mark, name, member, offset) {
  const isCentral = offset !== null;
  const bytes = new Uint8Array((isCentral ? 46 : 30) + name.length);
  const view = new DataView(bytes.buffer);
  view.setUint32(0, mark, true);
  let at = 4;
  if (isCentral) { view.setUint16(at, 20, true); at += 2; }
  view.setUint16(at, 20, true);
  view.setUint16(at + 2, 0x0800, true);
  view.setUint16(at + 8, 0x21, true);
  view.setUint32(at + 10, crc32(member.bytes), true);
  view.setUint32(at + 14, member.bytes.length, true);
  view.setUint32(at + 18, member.bytes.length, true);
  view.setUint16(at + 22, name.length, true);
  if (isCentral) view.setUint32(42, offset, true);
  bytes.set(name, isCentral ? 46 : 30);
  return bytes;
}

/** @param {number} count @param {number} size @param {number} offset */
function ending(count, size, offset) {
  const bytes = new Uint8Array(22);
  const view = new DataView(bytes.buffer);
  view.setUint32(0, 0x06054b50, true);
  view.setUint16(8, count, true);
  view.setUint16(10, count, true);
  view.setUint32(12, size, true);
  view.setUint32(16, offset, true);
  return bytes;
}

const CRC = Uint32Array.from({ length: 256 }, (_, index) => {
  let value = index;
  for (let bit = 0; bit < 8; bit++) value = value & 1 ? 0xedb88320 ^ (value >>> 1) : value >>> 1;
  return value;
});

/** @param {Uint8Array} bytes */
export function crc32(bytes) {
  let crc = 0xffffffff;
  for (const value of bytes) crc = CRC[(crc ^ value) & 255] ^ (crc >>> 8);
  return (crc ^ 0xffffffff) >>> 0;
}
