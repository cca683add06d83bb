// Words in progress and where the person is: kept every 300 ms of quiet and whenever the page may be about to end, so that a flat
// battery costs at most the last word, and the next start is exactly here again.

import { get, putMeta, transact } from './store.js';

const QUIET_MS = 300;

/** @type {Map<string, string>} */
const unsaved = new Map();
let timer = 0;

/** @param {string} key @param {string} text */
export function keepDraft(key, text) {
  unsaved.set(key, text);
  later();
}

function later() {
  clearTimeout(timer);
  timer = setTimeout(flush, QUIET_MS);
}

export function flush() {
  clearTimeout(timer);
  const writes = [...unsaved].map(([key, text]) => putMeta(`draft:${key}`, text || null));
  unsaved.clear();
  if (whereChanged) {
    whereChanged = false;
    writes.push(putMeta('where', where));
  }
  return Promise.all(writes).then(() => undefined);
}

/** @param {string} key @returns {Promise<string>} */
export async function draft(key) {
  return unsaved.get(key) ?? await get('meta', `draft:${key}`) ?? '';
}

/** @param {string} key */
export function clearDraft(key) {
  unsaved.delete(key);
  return putMeta(`draft:${key}`, null);
}

/** Forgets every draft whose key begins so. @param {string} start */
export function clearDrafts(start) {
  for (const key of unsaved.keys()) if (key.startsWith(start)) unsaved.delete(key);
  return transact(['meta'], 'readwrite', tx => { tx.objectStore('meta').delete(IDBKeyRange.bound(`draft:${start}`, `draft:${start}\uffff`)); });
}

/** Whether words are half typed anywhere: a new version then waits. */
export function isHalfTyped() {
  return [...document.querySelectorAll('[data-draft]')].some(field => /** @type {HTMLInputElement} */ (field).value !== '');
}

/** @typedef {{url:string, scroll:number, insp?:string, place?:string, name?:string, component?:string}} Where */
/** @type {Where} */
let where = { url: '/', scroll: 0 };
let whereChanged = false;

/** @param {Partial<Where>} change */
export function noteWhere(change) {
  where = { ...where, ...change };
  whereChanged = true;
  later();
}

/** A screen was opened: another address begins at its top with nothing chosen. @param {string} url @param {string} name */
export function noteAddress(url, name) {
  const insp = /^\/visit\/([^/]+)/.exec(url)?.[1];
  const place = /\/place\/([a-z0-9~]+-\d+)$/.exec(url)?.[1].replace('-', '.');
  noteWhere(url === where.url ? { insp, place, name } : { url, insp, place, name, scroll: 0, component: undefined });
}

/** @returns {Promise<Where|null>} */
export async function lastWhere() {
  return await get('meta', 'where') ?? null;
}

document.addEventListener('input', event => {
  const field = /** @type {HTMLInputElement} */ (event.target);
  const key = field.dataset?.draft;
  if (key) keepDraft(key, field.value);
});
addEventListener('scroll', () => noteWhere({ scroll: Math.round(scrollY) }), { passive: true });
addEventListener('blur', () => void flush(), true);
addEventListener('pagehide', () => void flush());
document.addEventListener('visibilitychange', () => void flush());
