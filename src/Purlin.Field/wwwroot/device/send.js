// Sending to the office and taking what others wrote. Every request may be repeated; nothing is asked of the person except to sign in
// again, and then everything is kept meanwhile. What stands where is said in words and figures.

import { transact, get, isFull, putMeta } from './store.js';
import { OWN, changeVisit, device, journals, mintAnew, namedRows, receive, rowsBeyond, visits } from './writing.js';
import { joinLines, sha256 } from './chain.js';
import { Answer, ask, officeAsk, wordsOf } from './office.js';

const CHUNK = 1024 * 1024;
const LINES_AT_ONCE = 1000;
const HASHES_AT_ONCE = 500;
const FIRST_WAIT_MS = 1000;
const LONGEST_WAIT_MS = 5 * 60 * 1000;

/** @typedef {{state:'idle'|'sending'|'waiting'|'signed out', words:string, last:number}} Sending */

/** @type {Sending} */
let sending = { state: 'idle', words: '', last: 0 };
/** @type {Set<() => void>} */
const listeners = new Set();
let tries = 0;
let timer = 0;
/** @type {Promise<void>|null} */
let running = null;
let isAsked = false;

export function state() { return sending; }

/** @param {() => void} listener */
export function onSending(listener) { listeners.add(listener); }

/** @param {Partial<Sending>} change */
function tell(change) {
  sending = { ...sending, ...change };
  listeners.forEach(listener => listener());
}


/** Sends now, and again whenever there is reason to. */
export function keepSending() {
  addEventListener('online', () => sendSoon(0));
  document.addEventListener('visibilitychange', () => { if (document.visibilityState === 'visible') sendSoon(0); });
  sendSoon(0);
}

/** @param {number} wait */
export function sendSoon(wait) {
  clearTimeout(timer);
  timer = setTimeout(() => void sendNow(), wait);
}

/** Tries the whole of it. Asked for while it runs, it runs once more before it says that it is done. @returns {Promise<void>} */
export function sendNow() {
  if (running) {
    isAsked = true;
    return running;
  }
  running = sendUntilUnasked().finally(() => { running = null; });
  return running;
}

async function sendUntilUnasked() {
  do {
    isAsked = false;
    clearTimeout(timer);
    try {
      await sendAll();
      tries = 0;
      tell({ state: 'idle', words: '', last: Date.now() });
      await putMeta('lastContact', Date.now());
      sendSoon(LONGEST_WAIT_MS);
    } catch (error) {
      afterFailure(error);
    }
  } while (isAsked);
}

/** @param {unknown} error */
function afterFailure(error) {
  if (error instanceof Answer && (error.status === 401 || error.status === 403)) {
    tell({ state: 'signed out', words: error.message });
    return;
  }
  tell({ state: 'waiting', words: error instanceof Answer ? error.message : 'No contact with the office. Everything is kept here and goes by itself when there is a signal.' });
  sendSoon(Math.random() * Math.min(LONGEST_WAIT_MS, FIRST_WAIT_MS * 2 ** tries++));
}

async function sendAll() {
  if (await get('meta', 'alone')) return;
  const ours = (await journals()).sort((a, b) => a.opened - b.opened);
  // With nothing here to send, the office is asked all the same: a person learns at once that this phone is signed out.
  if (ours.length === 0) await ask('/office/inspections');
  for (const visit of ours) {
    tell({ state: 'sending', words: '' });
    await exchange(visit.insp);
  }
  // A new phone has no wording of its own yet: what the office keeps of it comes along.
  if (!ours.some(visit => visit.insp === OWN)) await pull(OWN);
  for (const visit of ours) await sendBlobs(visit.insp);
}

/** Entries both ways. @param {string} insp */
async function exchange(insp) {
  const first = await (await ask(`/sync/${insp}/heads`)).json();
  await compareClock(first.now);
  const own = await device();
  /** @type {import('./writing.js').Visit} */
  const visit = await get('visits', insp);
  if ((first.heads?.[own] ?? 0) > (visit.heads[own] ?? 0)) await mintAnew();
  let answer = first;
  for (const batch of await batches(insp, first.heads ?? {})) {
    answer = await (await ask(`/sync/${insp}/entries`, { method: 'POST', body: batch, headers: { 'Content-Type': 'application/x-ndjson' } })).json();
  }
  await pull(insp);
  await changeVisit(insp, one => {
    one.office = answer.heads ?? {};
    one.checked = Date.now();
    if (Array.isArray(answer.held)) for (const held of answer.held) if (!one.held.includes(heldWords(held))) one.held.push(heldWords(held));
    if (answer.held === 0) one.held = [];
    one.receipt = answer.receipt ?? one.receipt;
  });
}

/** @param {{name?:string, why:string}} held */
const heldWords = held => `${held.name ?? 'a line without a name'}: ${held.why}`;

/** What the office does not have, of every device, in batches. @param {string} insp @param {Record<string, number>} heads */
async function batches(insp, heads) {
  const missing = await rowsBeyond(insp, heads);
  const cut = [];
  for (let at = 0; at < missing.length; at += LINES_AT_ONCE) cut.push(joinLines(missing.slice(at, at + LINES_AT_ONCE).map(row => row.line)));
  return cut;
}

/** @param {string} insp */
export async function pull(insp) {
  for (; ;) {
    const visit = await get('visits', insp);
    const have = Object.entries(visit?.heads ?? {}).map(([dev, seq]) => `${dev}:${seq}`).join(',');
    const answer = await ask(`/sync/${insp}/entries${have ? `?have=${encodeURIComponent(have)}` : ''}`);
    const fresh = await receive(insp, new Uint8Array(await answer.arrayBuffer()));
    if (fresh === 0 || !answer.headers.has('Purlin-More')) return;
  }
}

/** @param {string} insp */
async function sendBlobs(insp) {
  const named = (await namedRows(insp)).map(row => row.sha);
  for (let at = 0; at < named.length; at += HASHES_AT_ONCE) {
    const asked = named.slice(at, at + HASHES_AT_ONCE);
    const answer = await (await ask('/blobs/missing', { method: 'POST', body: JSON.stringify(asked), headers: { 'Content-Type': 'application/json' } })).json();
    /** @type {string[]} */
    const missing = Array.isArray(answer) ? answer : answer.missing ?? [];
    await markAtOffice(insp, asked.filter(sha => !missing.includes(sha)));
    for (const sha of missing) {
      await sendOne(insp, sha);
      tell({ state: 'sending' });
    }
  }
}

/** The office has these whole, by hash; a picture of another phone is safe there though it is not here. @param {string} insp @param {string[]} shas */
function markAtOffice(insp, shas) {
  return transact(['named'], 'readwrite', tx => { for (const sha of shas) tx.objectStore('named').put({ insp, sha, office: 1 }); });
}

/** One picture that the office will not take stops none behind it. @param {string} insp @param {string} sha */
async function sendOne(insp, sha) {
  try {
    await sendBlob(insp, sha);
  } catch (error) {
    if (!(error instanceof Answer) || ![413, 415, 422].includes(error.status)) throw error;
    unwanted.set(sha, error.status);
  }
}

/** Pictures the office refused in this sitting, by answer. @type {Map<string, number>} */
const unwanted = new Map();

/** Goes on where the office stopped; never sends a picture whole twice. @param {string} insp @param {string} sha */
async function sendBlob(insp, sha) {
  const blob = await get('blobs', sha);
  if (!blob) return;
  const head = await ask(`/blobs/${sha}`, { method: 'HEAD' });
  let offset = Number(head.headers.get('Upload-Offset') ?? 0);
  let isWhole = head.headers.has('Purlin-Whole');
  while (!isWhole) {
    const answer = await ask(`/blobs/${sha}`, {
      method: 'PATCH', body: blob.bytes.slice(offset, offset + CHUNK),
      headers: { 'Content-Type': 'application/offset+octet-stream', 'Upload-Offset': String(offset), 'Upload-Length': String(blob.size) },
    });
    const next = Number(answer.headers.get('Upload-Offset') ?? offset);
    isWhole = answer.headers.has('Purlin-Whole');
    if (!isWhole && next === offset) throw new Answer(answer.status, wordsOf(answer.status));
    offset = next;
  }
  await markAtOffice(insp, [sha]);
}

/** Fetches a picture that another device took. @param {string} sha @param {string} insp @returns {Promise<boolean>} */
export async function fetchBlob(sha, insp) {
  try {
    const answer = await ask(`/blobs/${sha}`);
    const bytes = await answer.arrayBuffer();
    const type = answer.headers.get('Content-Type') ?? 'image/jpeg';
    await transact(['blobs'], 'readwrite', tx => { tx.objectStore('blobs').put({ sha, insp, bytes, type, size: bytes.byteLength }); });
    return true;
  } catch {
    return false;
  }
}

/** @param {string} insp @returns {Promise<string>} what came of it, in words */
export async function askToSeal(insp) {
  try {
    const answer = await officeAsk(`/office/inspections/${insp}/editions`, 'POST', {});
    const told = await answer.json().catch(() => ({}));
    // An edition that stands already, sealed while this phone was away, comes along with its line as a new one does.
    if (answer.ok || answer.status === 409) await pull(insp);
    return answer.ok ? `Edition ${told.number} is sealed.` : told.words ?? wordsOf(answer.status);
  } catch {
    return 'No contact with the office. Nothing is lost; ask again when there is a signal.';
  }
}

/** Brings page or PDF of an edition here, checked against the hash that its seal bears. @param {string} insp @param {number} number @param {string} kind @param {string} sha @returns {Promise<string>} why not, or empty */
export async function bringPaper(insp, number, kind, sha) {
  if (await get('blobs', sha)) return '';
  try {
    const answer = await ask(`/office/inspections/${insp}/editions/${number}/${kind}`);
    const bytes = await answer.arrayBuffer();
    if (await sha256(bytes) !== sha) return 'What the office sent is not what was sealed. Nothing was kept of it; ask the office.';
    const type = kind === 'pdf' ? 'application/pdf' : 'text/html';
    await transact(['blobs'], 'readwrite', tx => { tx.objectStore('blobs').put({ sha, insp, bytes, type, size: bytes.byteLength }); });
    return '';
  } catch (error) {
    if (isFull(error)) return 'The phone is full: this paper was not kept here. Free space and ask again; it is safe at the office.';
    return error instanceof Answer ? error.message : 'This paper is at the office and not yet on this phone. Open it again when there is a signal.';
  }
}

/** @param {string} code @returns {Promise<string>} why not; empty when signed in */
export async function signIn(code) {
  try {
    const answer = await officeAsk('/office/session', 'POST', { code });
    if (answer.ok) { sendSoon(0); return ''; }
    return (await answer.json().catch(() => ({}))).words ?? wordsOf(answer.status);
  } catch {
    return 'No contact with the office. Everything is kept here; sign in when there is a signal.';
  }
}

/** Inspections that the office holds and this phone does not. @returns {Promise<{id:string, address:string, date:string, demo:boolean}[]>} */
export async function elsewhere() {
  try {
    const answer = await officeAsk('/office/inspections', 'GET');
    if (answer.status === 401 && sending.state !== 'signed out') tell({ state: 'signed out', words: 'The office asks who you are.' });
    if (!answer.ok) return [];
    const here = new Set((await visits()).map(visit => visit.insp));
    return (await answer.json()).filter((/** @type {{id:string}} */ one) => one.id !== OWN && !here.has(one.id));
  } catch {
    return [];
  }
}

/** @param {string|undefined} now */
async function compareClock(now) {
  const office = Date.parse(now ?? '');
  if (Number.isFinite(office)) await putMeta('clockAhead', Date.now() - office);
}

/**
 * What is safe where, for one inspection, in figures.
 * @param {import('./writing.js').Visit} visit
 * @returns {Promise<{entries:number, entriesAtOffice:number, photos:number, photosAtOffice:number, held:number, checked:number, words:string}>}
 */
export async function standing(visit) {
  const [photos, photosAtOffice] = await transact(['named'], 'readonly', tx => {
    const index = tx.objectStore('named').index('office');
    const [all, there] = [index.count(IDBKeyRange.bound([visit.insp], [visit.insp, []])), index.count([visit.insp, 1])];
    return () => [all.result, there.result];
  });
  const entries = Object.values(visit.heads).reduce((sum, seq) => sum + seq, 0);
  const entriesAtOffice = Object.entries(visit.heads).reduce((sum, [dev, seq]) => sum + Math.min(seq, visit.office[dev] ?? 0), 0);
  const standing = { entries, entriesAtOffice, photos, photosAtOffice, held: visit.held.length, checked: visit.checked ?? 0 };
  return { ...standing, words: inWords(standing) };
}

/** @param {{entries:number, entriesAtOffice:number, photos:number, photosAtOffice:number, held:number, checked:number}} s */
function inWords(s) {
  if (s.held > 0) return `${s.held} held at the office for a look; nothing is lost`;
  if (s.checked === 0 || s.entriesAtOffice === 0) return 'Only on this phone';
  if (s.entriesAtOffice < s.entries) return `${s.entries - s.entriesAtOffice} notes to go, ${s.photosAtOffice} of ${s.photos} photographs at the office`;
  if (s.photosAtOffice < s.photos) return `${s.photosAtOffice} of ${s.photos} photographs at the office`;
  return `All at the office, checked ${new Date(s.checked).toTimeString().slice(0, 5)}`;
}
