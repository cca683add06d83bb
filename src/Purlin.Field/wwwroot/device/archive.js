// The whole of an inspection in one file, made on the phone with no network and taken in again: pictures pass one at a time, so that a
// visit of any size needs little memory.

import { get, transact } from './store.js';
import { namedRows, receive, rows } from './writing.js';
import { linesOf, manifestOf } from './manifest.js';
import { blobOf, JOURNAL, MANIFEST, mediaTypeOf, nameOfBlob } from './names.js';
import { readList, readMember, writeZip } from './zip.js';
import { sha256, readLine } from './chain.js';
import { vouching } from './seal.js';

const encoder = new TextEncoder();
const FILE = 'archive.purlin';

/** @typedef {{name:string, sha256:string, size:number, mediaType:string}} Filed as the manifest lists it */
/** @typedef {(done:number, of:number) => void} Progress */

/** @param {string} insp @param {Progress} [tell] @returns {Promise<Blob>} */
export async function exportArchive(insp, tell = () => { }) {
  const all = await rows(insp);
  const named = (await namedRows(insp)).map(row => row.sha).sort();
  try {
    return await toFile(membersOf(insp, all, named, tell));
  } catch {
    // No file system of our own here, or no room in it: the browser keeps the parts in its own way.
    return toBlob(membersOf(insp, all, named, tell));
  }
}

/** Each picture is read once, when its turn comes, and let go of before the next. @param {string} insp @param {import('./store.js').StoredEntry[]} all @param {string[]} named @param {Progress} tell */
async function* membersOf(insp, all, named, tell) {
  yield { name: JOURNAL, bytes: linesOf(all).journal };
  const kept = [];
  for (const [at, sha] of named.entries()) {
    tell(at, named.length);
    const blob = await get('blobs', sha);
    const name = blob && nameOfBlob(sha, blob.type);
    if (!name) continue;
    const bytes = new Uint8Array(blob.bytes);
    kept.push({ sha, type: blob.type, size: bytes.length });
    yield { name, bytes };
    letGo(bytes);
  }
  /** @type {Filed[]} */
  const issued = [];
  for await (const member of issuedOf(insp, all)) {
    issued.push({ name: member.name, sha256: await sha256(member.bytes), size: member.bytes.length, mediaType: mediaTypeOf(member.name) ?? '' });
    yield member;
  }
  const manifest = await manifestOf(insp, all, named, kept, issued);
  yield { name: MANIFEST, bytes: encoder.encode(`${JSON.stringify(manifest, null, 2)}\n`) };
}

/** What was issued and is on this phone: the papers of each edition, and what the phone signed for. @param {string} insp @param {import('./store.js').StoredEntry[]} all @returns {AsyncGenerator<import('./zip.js').Member>} */
async function* issuedOf(insp, all) {
  const editions = all.map(row => readLine(row.line)).filter(line => line?.type === 'edition.sealed').map(line => /** @type {any} */ (line).body);
  const told = new Set();
  for (const { number, page, pdf } of editions) {
    // Two phones may have sealed under one number: the archive has one name for both, and the first stands.
    if (told.has(number)) continue;
    told.add(number);
    for (const [sha, ending] of [[page, 'html'], [pdf, 'pdf']]) {
      const blob = await get('blobs', sha);
      if (blob) yield { name: `editions/${number}.${ending}`, bytes: new Uint8Array(blob.bytes) };
    }
  }
  const vouched = await vouching(insp);
  if (!vouched) return;
  yield { name: 'receipts.jsonl', bytes: vouched.receipts };
  yield { name: 'office-key.pem', bytes: vouched.key };
}

/** Gives the memory of bytes back at once, where the browser can; else it is collected when it pleases. @param {Uint8Array<ArrayBuffer>} bytes */
function letGo(bytes) { /** @type {any} */ (bytes.buffer).transfer?.(0); }

/** A file in the browser's own folder of this app, written as it comes. @param {AsyncIterable<import('./zip.js').Member>} members @returns {Promise<Blob>} */
async function toFile(members) {
  const folder = await navigator.storage.getDirectory();
  const handle = await folder.getFileHandle(FILE, { create: true });
  const out = await handle.createWritable();
  try {
    await writeZip(members, bytes => out.write(bytes));
    await out.close();
  } catch (error) {
    await out.abort().catch(() => undefined);
    await folder.removeEntry(FILE).catch(() => undefined);
    throw error;
  }
  return handle.getFile();
}

/** Each part leaves the memory of the page as soon as it is a Blob. @param {AsyncIterable<import('./zip.js').Member>} members @returns {Promise<Blob>} */
async function toBlob(members) {
  /** @type {Blob[]} */
  const parts = [];
  await writeZip(members, async bytes => { parts.push(new Blob([bytes])); });
  return new Blob(parts, { type: 'application/zip' });
}

/** The copy of an earlier day is not kept: it would take the room of a whole visit. */
export async function clearArchive() {
  try {
    await (await navigator.storage.getDirectory()).removeEntry(FILE);
  } catch {
    // There was none, or this browser has no such folder.
  }
}

/** Hands a file to the person: the share sheet where there is one, else a download. @param {Blob} blob @param {string} name @param {string} type @returns {Promise<'shared'|'saved'|'left'>} */
export async function handOver(blob, name, type) {
  const file = new File([blob], name, { type });
  if (navigator.canShare?.({ files: [file] }) && matchMedia('(pointer: coarse)').matches && navigator.userActivation?.isActive) {
    try {
      await navigator.share({ files: [file] });
      return 'shared';
    } catch (error) {
      if (error instanceof DOMException && error.name === 'AbortError') return 'left';
    }
  }
  const link = document.createElement('a');
  link.href = URL.createObjectURL(file);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
  return 'saved';
}

/** An archive that a person chose, looked into and not yet taken: manifest and lines go to the screens, pictures never do. */
export class OpenedArchive {
  /** @param {import('./zip.js').Source} source @param {Map<string, import('./zip.js').Listed>} listed */
  constructor(source, listed) {
    this.source = source;
    this.listed = listed;
  }

  /** @param {Blob} file @returns {Promise<{archive: OpenedArchive|null, refusals: string[]}>} */
  static async of(file) {
    /** @type {import('./zip.js').Source} */
    const source = { size: file.size, read: async (from, to) => new Uint8Array(await file.slice(from, to).arrayBuffer()) };
    const { listed, refusals } = await readList(source);
    for (const name of [MANIFEST, JOURNAL]) if (refusals.length === 0 && !listed.has(name)) refusals.push(`This archive has no ${name}: it is none of ours.`);
    return { archive: refusals.length === 0 ? new OpenedArchive(source, listed) : null, refusals };
  }

  /** @param {string} name @returns {Promise<Uint8Array<ArrayBuffer>>} empty when it is not what the list says */
  async bytes(name) {
    const one = this.listed.get(name);
    return one ? await readMember(this.source, one) ?? new Uint8Array() : new Uint8Array();
  }

  /**
   * Checks every file that the manifest lists, and only then takes them: pictures first, lines last, so that a visit appears whole or not
   * at all. What could not be taken whole is put away again.
   * @param {string} insp @param {Uint8Array} lines @param {Filed[]} files @param {Progress} tell
   * @returns {Promise<{fresh:number, refusals:string[]}>}
   */
  async take(insp, lines, files, tell) {
    const refusals = this.strangers(files);
    for (const [at, file] of files.entries()) {
      tell(at, files.length * 2);
      const wrong = refusals.length < 20 ? await this.wrongOf(file) : '';
      if (wrong) refusals.push(wrong);
    }
    if (refusals.length > 0) return { fresh: 0, refusals };
    /** @type {string[]} */
    const put = [];
    try {
      for (const [at, file] of files.entries()) {
        tell(files.length + at, files.length * 2);
        if (!blobOf(file.name) && !file.name.startsWith('editions/')) continue;
        const bytes = await this.bytes(file.name);
        if (await putPicture(insp, file, bytes)) put.push(file.sha256);
        letGo(bytes);
      }
      return { fresh: await receive(insp, lines), refusals };
    } catch (error) {
      await transact(['blobs'], 'readwrite', tx => { for (const sha of put) tx.objectStore('blobs').delete(sha); });
      throw error;
    }
  }

  /** @param {Filed[]} files @returns {string[]} */
  strangers(files) {
    const known = new Set([MANIFEST, JOURNAL, ...files.map(file => file.name)]);
    return [...this.listed.keys()].filter(name => !known.has(name)).map(name => `${name} is in this archive and its manifest does not list it.`);
  }

  /** @param {Filed} file */
  async wrongOf(file) {
    const one = this.listed.get(file.name);
    if (!one) return `${file.name} is listed in the manifest and missing.`;
    if (one.size !== file.size) return `${file.name} has ${one.size} bytes; the manifest says ${file.size}.`;
    if ((blobOf(file.name) ?? file.sha256) !== file.sha256) return `${file.name} bears a name that is not its hash.`;
    const bytes = await readMember(this.source, one);
    const isWhole = bytes && await sha256(bytes) === file.sha256;
    if (bytes) letGo(bytes);
    return isWhole ? '' : `${file.name} was altered or damaged.`;
  }
}

/** @param {string} insp @param {Filed} file @param {Uint8Array<ArrayBuffer>} bytes @returns {Promise<boolean>} whether it was not here before */
async function putPicture(insp, file, bytes) {
  const isHere = await transact(['blobs'], 'readonly', tx => {
    const request = tx.objectStore('blobs').count(file.sha256);
    return () => request.result > 0;
  });
  if (isHere) return false;
  const buffer = bytes.byteLength === bytes.buffer.byteLength ? bytes.buffer : bytes.slice().buffer;
  await transact(['blobs'], 'readwrite', tx => { tx.objectStore('blobs').put({ sha: file.sha256, insp, bytes: buffer, type: file.mediaType, size: file.size }); });
  return true;
}
