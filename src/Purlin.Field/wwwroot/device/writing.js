// The one pen of this phone. Every act is written at once, in one strict transaction with the bytes of its photograph, and the promise
// returned here settles only after the disk has it. One writer at a time, by a lock that all windows share.

import { transact, get, putMeta, entryRange, entriesFrom, isFull, dropBallast, holdBallast, hasBallast } from './store.js';
import { nextLine, mint, hlcMeet, take, fromOf, splitsOf, joinLines, namedBy } from './chain.js';
import { ENTRIES, PHOTOS } from './limits.js';

/** @typedef {{type:string, body:any}} Act */
/** @typedef {{bytes:ArrayBuffer, type:string, sha:string}} Bytes */
/** @typedef {{insp:string, title:string, opened:number, date:string, demo:boolean, heads:Record<string, number>, seenWritten:Record<string, number>, hlc?:string,
 *   photos:number, office:Record<string, number>, checked?:number, held:string[], receipt?:any, splits?:Record<string, number>}} Visit */

/** The journal of the inspector's own wording: kept and sent like that of an inspection, and no inspection. */
export const OWN = 'own-wording';

const channel = 'BroadcastChannel' in globalThis ? new BroadcastChannel('purlin') : null;
/** @type {Set<(insp: string) => void>} */
const listeners = new Set();
if (channel) channel.onmessage = event => listeners.forEach(listener => listener(String(event.data)));

/** Called after any window wrote or received entries. @param {(insp: string) => void} listener */
export function onWritten(listener) { listeners.add(listener); }

/** @param {string} insp */
function tellWritten(insp) {
  channel?.postMessage(insp);
  listeners.forEach(listener => listener(insp));
}

/** @type {Promise<unknown>} */
let queue = Promise.resolve();

/** @template T @param {() => Promise<T>} work @returns {Promise<T>} */
async function alone(work) {
  if (navigator.locks) return await navigator.locks.request('purlin-pen', work);
  const turn = queue.then(work, work);
  queue = turn.catch(() => undefined);
  return turn;
}

/** This phone's name as a writer; minted once, and anew when the tables were wiped. @returns {Promise<string>} */
export async function device() {
  const known = await get('meta', 'device');
  if (known) return known;
  await alone(async () => {
    if (!await get('meta', 'device')) await putMeta('device', mint());
  });
  return await get('meta', 'device');
}

/** The office knows more of us than we do (a copied profile, a restored backup): go on under a new name. */
export async function mintAnew() {
  await alone(() => putMeta('device', mint()));
  return await get('meta', 'device');
}

/** @param {string} title @param {string} date @param {boolean} demo @returns {Promise<string>} */
export async function newVisit(title, date, demo) {
  const insp = `i${mint()}`;
  await putVisit(emptyVisit(insp, title, date, demo));
  return insp;
}

/** @param {string} insp @param {string} title @param {string} date @param {boolean} demo @returns {Visit} */
function emptyVisit(insp, title, date, demo) {
  return { insp, title, date, demo, opened: Date.now(), heads: {}, seenWritten: {}, photos: 0, office: {}, held: [], splits: {} };
}

/** @param {Visit} visit @returns {Promise<void>} */
export function putVisit(visit) {
  return transact(['visits'], 'readwrite', tx => { tx.objectStore('visits').put(visit); });
}

/** Changes a visit's row under the lock. @param {string} insp @param {(visit: Visit) => void} change @returns {Promise<void>} */
export function changeVisit(insp, change) {
  return alone(async () => {
    const visit = await get('visits', insp);
    if (!visit) return;
    change(visit);
    await putVisit(visit);
  });
}

/** The inspections of this phone, the last opened first. @returns {Promise<Visit[]>} */
export async function visits() {
  return (await journals()).filter(visit => visit.insp !== OWN);
}

/** Everything that is kept and sent: the inspections, and the own wording. @returns {Promise<Visit[]>} */
export async function journals() {
  const all = await transact(['visits'], 'readonly', tx => {
    const request = tx.objectStore('visits').getAll();
    return () => request.result;
  });
  return all.sort((a, b) => b.opened - a.opened);
}

/** @param {string} insp @param {string} dev @returns {Promise<import('./store.js').StoredEntry|undefined>} */
function lastOf(insp, dev) {
  return transact(['entries'], 'readonly', tx => {
    const request = tx.objectStore('entries').openCursor(entryRange(insp, dev), 'prev');
    return () => request.result?.value;
  });
}

/**
 * Writes acts, with the bytes that belong to them, in one strict transaction. Gives their names once the disk has them.
 * @param {string} insp @param {Act[]} acts @param {Bytes[]} [blobs] @returns {Promise<string[]>}
 */
export async function write(insp, acts, blobs = []) {
  const dev = await device();
  const names = await alone(() => writeAlone(insp, dev, acts, blobs));
  tellWritten(insp);
  return names;
}

/** @param {string} insp @param {string} dev @param {Act[]} acts @param {Bytes[]} blobs @returns {Promise<string[]>} */
async function writeAlone(insp, dev, acts, blobs) {
  /** @type {Visit|undefined} */
  const visit = await get('visits', insp) ?? (insp === OWN ? emptyVisit(OWN, 'My wording', '', false) : undefined);
  if (!visit) throw new Error('This inspection is not on this phone.');
  refuseBeyondLimits(visit, acts);
  const rows = await linesFor(visit, dev, acts);
  visit.photos += acts.filter(act => act.type === 'photo.taken').length;
  const named = acts.map(act => namedBy(/** @type {any} */ (act))).filter(sha => sha !== null);
  await putRoomFor(blobs.length > 0, () => transact(['entries', 'visits', 'blobs', 'named'], 'readwrite', tx => {
    for (const row of rows) tx.objectStore('entries').put(row);
    for (const sha of named) tx.objectStore('named').put({ insp, sha, office: 0 });
    for (const blob of blobs) tx.objectStore('blobs').put({ sha: blob.sha, insp, bytes: blob.bytes, type: blob.type, size: blob.bytes.byteLength });
    tx.objectStore('visits').put(visit);
  }));
  return rows.map(row => `${row.dev}.${row.seq}`);
}

/** What is beyond the limits could be neither archived nor taken by the office. @param {Visit} visit @param {Act[]} acts */
function refuseBeyondLimits(visit, acts) {
  const entries = Object.values(visit.heads).reduce((sum, seq) => sum + seq, 0);
  if (entries + acts.length > ENTRIES) throw new RangeError(`This was not kept: this inspection holds ${entries} entries and ${ENTRIES} is the most. Everything before it is kept. Open a second inspection for the rest.`);
  const photos = acts.filter(act => act.type === 'photo.taken').length;
  if (photos > 0 && visit.photos + photos > PHOTOS) throw new RangeError(`This photograph was not kept: this inspection holds ${visit.photos} and ${PHOTOS} is the most. Everything before it is kept. Go on with notes, or open a second inspection for the rest.`);
}

/** @param {Visit} visit @param {string} dev @param {Act[]} acts */
async function linesFor(visit, dev, acts) {
  const last = await lastOf(visit.insp, dev);
  /** @type {import('./chain.js').Pen} */
  const pen = { insp: visit.insp, dev, seq: last?.seq ?? 0, prev: last?.hash, hlc: visit.hlc, heads: visit.heads, seenWritten: visit.seenWritten };
  const first = pen.seq;
  const written = [];
  for (const act of acts) {
    const { line, hash } = await nextLine(pen, act.type, replaceOwnNames(act.body, dev, written.length, first), Date.now());
    written.push({ insp: visit.insp, dev, seq: pen.seq, hash, line });
  }
  visit.hlc = pen.hlc;
  visit.heads[dev] = pen.seq;
  return written;
}

/** Acts written together may name one another before they have names: `writtentogether.1` is the first of them. @param {any} body @param {string} dev @param {number} written @param {number} from @returns {any} */
function replaceOwnNames(body, dev, written, from) {
  if (written === 0) return body;
  return JSON.parse(JSON.stringify(body), (_, value) => {
    const match = typeof value === 'string' ? /^writtentogether\.(\d+)$/.exec(value) : null;
    return match && Number(match[1]) <= written ? `${dev}.${from + Number(match[1])}` : value;
  });
}

/**
 * At the first refusal the ballast goes and a write without photographs is tried again; a photograph is refused in words until
 * there is room for the ballast once more, so that it cannot eat what was kept for the notes.
 * @param {boolean} isLarge @param {() => Promise<void>} work
 */
async function putRoomFor(isLarge, work) {
  if (isLarge && await get('meta', 'full') && !await refill()) throw new DOMException('full', 'QuotaExceededError');
  try {
    await work();
  } catch (error) {
    if (!isFull(error)) throw error;
    const held = await hasBallast();
    if (held) await dropBallast();
    await putMeta('full', true);
    if (isLarge || !held) throw error;
    await work();
  }
}

async function refill() {
  if (!await holdBallast()) return false;
  await putMeta('full', null);
  return true;
}

/** The lines beyond what somebody has, of every device. @param {string} insp @param {Record<string, number>} heads @returns {Promise<Uint8Array<ArrayBuffer>>} */
export async function linesBeyond(insp, heads) {
  return joinLines((await rowsBeyond(insp, heads)).map(row => row.line));
}

/** The rows beyond what somebody has: only those are read, however long the visit has become. @param {string} insp @param {Record<string, number>} have @returns {Promise<import('./store.js').StoredEntry[]>} */
export async function rowsBeyond(insp, have) {
  const visit = await withSplits(insp);
  if (!visit) return [];
  return transact(['entries'], 'readonly', tx => {
    const asked = Object.keys(visit.heads).sort().map(dev => tx.objectStore('entries').getAll(entriesFrom(insp, dev, fromOf(dev, have, visit.splits))));
    return () => asked.flatMap(request => request.result);
  });
}

/** Where devices forked is worked out from all lines once for a visit of an older version, and kept up from then on. @param {string} insp */
async function withSplits(insp) {
  /** @type {Visit|undefined} */
  const visit = await get('visits', insp);
  if (!visit || visit.splits) return /** @type {(Visit & {splits: Record<string, number>})|undefined} */ (visit);
  const splits = splitsOf(await rows(insp));
  await changeVisit(insp, one => { one.splits ??= splits; });
  return { ...visit, splits };
}

/** @param {string} insp @param {string} [dev] @returns {Promise<import('./store.js').StoredEntry[]>} */
export function rows(insp, dev) {
  return transact(['entries'], 'readonly', tx => {
    const request = tx.objectStore('entries').getAll(entryRange(insp, dev));
    return () => request.result;
  });
}

/**
 * Takes lines of other devices (or our own, back from the office) into the tables. Lines already there change nothing; another line
 * under a known name is kept beside it: a fork, which the fold shows.
 * @param {string} insp @param {Uint8Array} bytes @returns {Promise<number>} how many were new
 */
export async function receive(insp, bytes) {
  if (bytes.length === 0) return 0;
  const fresh = await alone(() => receiveAlone(insp, bytes));
  if (fresh > 0) tellWritten(insp);
  return fresh;
}

/** @param {string} insp @param {Uint8Array} bytes */
async function receiveAlone(insp, bytes) {
  const here = await rows(insp);
  const { taken, heads } = await take(insp, here, bytes);
  if (taken.length === 0) return 0;
  /** @type {Visit} */
  const visit = await get('visits', insp) ?? emptyVisit(insp, 'Inspection', '', false);
  for (const { envelope } of taken) if (envelope) note(visit, envelope);
  visit.heads = heads;
  visit.splits = splitsOf([...here, ...taken]);
  const named = taken.map(one => namedBy(one.envelope)).filter(sha => sha !== null);
  const known = new Set((await namedRows(insp)).map(row => row.sha));
  await transact(['entries', 'visits', 'named'], 'readwrite', tx => {
    for (const { dev, seq, hash, line } of taken) tx.objectStore('entries').put({ insp, dev, seq, hash, line });
    for (const sha of named) if (!known.has(sha)) tx.objectStore('named').put({ insp, sha, office: 0 });
    tx.objectStore('visits').put(visit);
  });
  return taken.length;
}

/** The pictures and sounds that the lines of a visit name. @param {string} insp @returns {Promise<import('./store.js').StoredName[]>} */
export function namedRows(insp) {
  return transact(['named'], 'readonly', tx => {
    const request = tx.objectStore('named').getAll(IDBKeyRange.bound([insp], [insp, []]));
    return () => request.result;
  });
}

/** What the list of visits shows of a line. @param {Visit} visit @param {import('./chain.js').Envelope} envelope */
function note(visit, envelope) {
  visit.hlc = hlcMeet(visit.hlc, envelope.hlc, Date.now());
  if (envelope.type === 'photo.taken') visit.photos++;
  if (envelope.type !== 'inspection.opened') return;
  visit.title = String(envelope.body?.property?.address ?? visit.title);
  visit.date = String(envelope.body?.date ?? visit.date);
  visit.demo = envelope.body?.demo === true;
}
