// The phone's own tables. A write is acknowledged only by its transaction's `complete` under durability 'strict': that is the moment
// the bytes are on the disk, and the only moment a tick may be shown. Nothing here knows what an entry means.

import { namedBy, readLine } from './chain.js';

/** @typedef {{insp:string, dev:string, seq:number, hash:string, line:Uint8Array}} StoredEntry */
/** @typedef {{sha:string, insp:string, bytes:ArrayBuffer, type:string, size:number}} StoredBlob */
/** @typedef {{insp:string, sha:string, office:0|1}} StoredName a picture or sound that the lines name, and whether the office has its bytes, checked */
/** @typedef {'meta'|'visits'|'entries'|'blobs'|'views'|'named'} Table */

const NAME = 'purlin';
const VERSION = 2;
const BALLAST_BYTES = 16 * 1024 * 1024;

/** @type {Promise<IDBDatabase>|null} */
let opening = null;

/** Told when another window upgrades the tables, or holds an old version open. @type {(words: string) => void} */
let onVersion = () => { };

/** @param {(words: string) => void} listener */
export function tellVersion(listener) { onVersion = listener; }

/** @returns {Promise<IDBDatabase>} */
function open() {
  opening ??= new Promise((resolve, reject) => {
    const request = indexedDB.open(NAME, VERSION);
    request.onupgradeneeded = event => upgrade(request.result, /** @type {IDBTransaction} */ (request.transaction), event.oldVersion);
    request.onblocked = () => onVersion('Another window of Purlin holds an older version open. Close it; nothing is lost.');
    request.onerror = () => { opening = null; reject(request.error); };
    request.onsuccess = () => {
      const database = request.result;
      database.onclose = () => { opening = null; };
      database.onversionchange = () => {
        database.close();
        opening = null;
        onVersion('A newer version of Purlin was opened in another window. Open this one again.');
      };
      resolve(database);
    };
  });
  return opening;
}

/**
 * Upgrades only ever add, one step for each version that was left behind, in the one transaction of the upgrade: ended at any point, the
 * old tables stand as they were.
 * @param {IDBDatabase} database @param {IDBTransaction} tx @param {number} oldVersion
 */
function upgrade(database, tx, oldVersion) {
  if (oldVersion < 1) {
    database.createObjectStore('meta');
    database.createObjectStore('visits', { keyPath: 'insp' });
    database.createObjectStore('entries', { keyPath: ['insp', 'dev', 'seq', 'hash'] });
    database.createObjectStore('blobs', { keyPath: 'sha' }).createIndex('insp', 'insp');
    database.createObjectStore('views', { keyPath: ['sha', 'size'] });
  }
  if (oldVersion < 2) {
    database.createObjectStore('named', { keyPath: ['insp', 'sha'] }).createIndex('office', ['insp', 'office']);
    if (oldVersion === 1) listNamed(tx);
  }
}

/** What the lines of an older version name. Whether the office has it is asked again at the next contact: until then too little is said, never too much. @param {IDBTransaction} tx */
function listNamed(tx) {
  const request = tx.objectStore('entries').openCursor();
  request.onsuccess = () => {
    const cursor = request.result;
    if (!cursor) return;
    const sha = namedBy(readLine(cursor.value.line));
    if (sha) tx.objectStore('named').put({ insp: cursor.value.insp, sha, office: 0 });
    cursor.continue();
  };
}

/**
 * Runs one transaction and gives its result after `complete`. The work issues its requests at once and returns a value, or a function
 * that is called at the end to read what the requests found.
 * @template T
 * @param {Table[]} tables
 * @param {'readonly'|'readwrite'} mode
 * @param {(tx: IDBTransaction) => T | (() => T)} work
 * @returns {Promise<T>}
 */
export async function transact(tables, mode, work) {
  for (let turn = 1; ; turn++) {
    const database = await open();
    try {
      return await once(database, tables, mode, work);
    } catch (error) {
      // Some browsers close the database under a page that slept. Every write here may be repeated, so it is.
      if (turn === 3 || !wasClosed(error)) throw error;
      if (opening && await opening === database) opening = null;
    }
  }
}

/** @param {unknown} error */
function wasClosed(error) {
  return error instanceof DOMException && (error.name === 'InvalidStateError' || error.name === 'UnknownError');
}

/**
 * @template T
 * @param {IDBDatabase} database @param {Table[]} tables @param {'readonly'|'readwrite'} mode @param {(tx: IDBTransaction) => T | (() => T)} work
 * @returns {Promise<T>}
 */
function once(database, tables, mode, work) {
  return new Promise((resolve, reject) => {
    const tx = database.transaction(tables, mode, mode === 'readwrite' ? { durability: 'strict' } : {});
    /** @type {any} */
    let result;
    tx.oncomplete = () => resolve(typeof result === 'function' ? result() : result);
    tx.onabort = () => reject(tx.error ?? new DOMException('The database was closed', 'UnknownError'));
    result = work(tx);
  });
}

/** @param {Table} table @param {IDBValidKey} key @returns {Promise<any>} */
export function get(table, key) {
  return transact([table], 'readonly', tx => {
    const request = tx.objectStore(table).get(key);
    return () => request.result;
  });
}

/** @param {string} key @param {unknown} value @returns {Promise<void>} */
export function putMeta(key, value) {
  return transact(['meta'], 'readwrite', tx => {
    if (value === undefined || value === null) tx.objectStore('meta').delete(key);
    else tx.objectStore('meta').put(value, key);
  });
}

/** @param {string} insp @param {string} [dev] */
export function entryRange(insp, dev) {
  return dev === undefined ? IDBKeyRange.bound([insp], [insp, []]) : IDBKeyRange.bound([insp, dev], [insp, dev, []]);
}

/** A device's entries from a sequence on. @param {string} insp @param {string} dev @param {number} seq */
export function entriesFrom(insp, dev, seq) {
  return IDBKeyRange.bound([insp, dev, seq], [insp, dev, []]);
}

/** @param {unknown} error */
export function isFull(error) {
  return error instanceof DOMException && error.name === 'QuotaExceededError';
}

/** Room held back so that notes outlive photographs: let go at the first refusal. */
export async function holdBallast() {
  if (await hasBallast()) return true;
  try {
    // Of chance, since a store that compresses would keep zeros in no room at all.
    const bytes = new Uint8Array(BALLAST_BYTES);
    for (let at = 0; at < bytes.length; at += 65536) crypto.getRandomValues(bytes.subarray(at, at + 65536));
    await putMeta('ballast', bytes.buffer);
    return true;
  } catch (error) {
    if (isFull(error)) return false;
    throw error;
  }
}

export async function dropBallast() {
  await putMeta('ballast', null);
}

/** Counts the key, so that 16 MB are not read to learn that they are there. @returns {Promise<boolean>} */
export function hasBallast() {
  return transact(['meta'], 'readonly', tx => {
    const request = tx.objectStore('meta').count('ballast');
    return () => request.result > 0;
  });
}

/** Writes, reads back and compares: a private window or a store that forgets is found at the door, not in the attic. @returns {Promise<boolean>} */
export async function probe() {
  try {
    const written = crypto.getRandomValues(new Uint8Array(1024));
    await putMeta('probe', written);
    const read = await get('meta', 'probe');
    await putMeta('probe', null);
    return read instanceof Uint8Array && read.length === written.length && read.every((value, at) => value === written[at]);
  } catch {
    return false;
  }
}

/** @returns {Promise<{used:number, free:number, kept:boolean, works:boolean}>} */
export async function meter() {
  const estimate = await navigator.storage?.estimate?.() ?? {};
  const used = estimate.usage ?? 0;
  return {
    used, free: Math.max(0, (estimate.quota ?? 0) - used),
    kept: await navigator.storage?.persisted?.() ?? false,
    works: await probe(),
  };
}

/** Asks the browser not to clear our tables by itself. Must be called from a tap. @returns {Promise<boolean>} */
export async function askToKeep() {
  return await navigator.storage?.persist?.() ?? false;
}
