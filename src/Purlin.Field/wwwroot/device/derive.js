// Thumbnails (320 px) and views (2,048 px): derived from an original, listed by its hash, and made again whenever they are missing.

import { transact, get } from './store.js';

export const THUMBNAIL = 320;
export const VIEW = 2048;

/** @type {Worker|null} */
let worker = null;
/** @type {Map<number, (made: any) => void>} */
const waiting = new Map();
let nextId = 0;

/** @param {ArrayBuffer} bytes @param {string} type @param {number[]} sizes @returns {Promise<{views: {size:number, bytes:ArrayBuffer}[]}>} */
function make(bytes, type, sizes) {
  if (!worker) {
    worker = new Worker(new URL('./derive-worker.js', import.meta.url), { type: 'module' });
    worker.onmessage = event => {
      waiting.get(event.data.id)?.(event.data);
      waiting.delete(event.data.id);
    };
    worker.onerror = () => {
      waiting.forEach(done => done({ views: [] }));
      waiting.clear();
    };
  }
  const id = nextId++;
  worker.postMessage({ id, bytes, type, sizes });
  return new Promise(resolve => waiting.set(id, resolve));
}

/** One original at a time, so that a long visit does not fill the memory with decoded pictures. @type {Promise<unknown>} */
let queue = Promise.resolve();

/** Makes both small pictures of an original that is on the disk. @param {string} sha @returns {Promise<void>} */
export function derive(sha) {
  const turn = queue.then(() => deriveNow(sha)).catch(() => undefined);
  queue = turn;
  return turn;
}

/** @param {string} sha */
async function deriveNow(sha) {
  if (await hasView(sha, THUMBNAIL)) return;
  const original = await get('blobs', sha);
  if (!original || !original.type.startsWith('image/')) return;
  const { views } = await make(original.bytes, original.type, [THUMBNAIL, VIEW]);
  await transact(['views'], 'readwrite', tx => {
    for (const view of views) tx.objectStore('views').put({ sha, size: view.size, bytes: view.bytes, type: 'image/jpeg' });
  });
}

/** @param {string} sha @param {number} size @returns {Promise<boolean>} */
function hasView(sha, size) {
  return transact(['views'], 'readonly', tx => {
    const request = tx.objectStore('views').count([sha, size]);
    return () => request.result > 0;
  });
}

/** The small picture, or the original where there is none yet. @param {string} sha @param {number} size @returns {Promise<{bytes:ArrayBuffer, type:string}|null>} */
export async function picture(sha, size) {
  const made = await get('views', [sha, size]);
  if (made) return made;
  await derive(sha);
  return await get('views', [sha, size]) ?? await get('blobs', sha) ?? null;
}

/** @type {Map<string, string>} */
const addresses = new Map();

/** An address for the original as it was taken; empty when it is not on this device. @param {string} sha @returns {Promise<string>} */
export async function original(sha) {
  const known = addresses.get(sha);
  if (known) return known;
  const found = await get('blobs', sha);
  if (!found) return '';
  const made = URL.createObjectURL(new Blob([found.bytes], { type: found.type }));
  addresses.set(sha, made);
  return made;
}

/** An address for an img element; the same one for the same picture. @param {string} sha @param {number} size @returns {Promise<string>} */
export async function address(sha, size) {
  const key = `${sha}:${size}`;
  const known = addresses.get(key);
  if (known) return known;
  const found = await picture(sha, size);
  if (!found) return '';
  const made = URL.createObjectURL(new Blob([found.bytes], { type: found.type }));
  addresses.set(key, made);
  return made;
}
