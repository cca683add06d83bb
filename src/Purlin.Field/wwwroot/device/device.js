// The border between the two programs on the phone: what the screens may ask of the device. Text and bytes cross it, nothing else.

import * as store from './store.js';
import * as writing from './writing.js';
import * as camera from './camera.js';
import * as sender from './send.js';
import * as sound from './sound.js';
import * as drafts from './drafts.js';
import { keepPhoto, keepSound } from './photo.js';
import { address, original, picture } from './derive.js';
import { inPlainWords } from './words.js';
import { signal } from './signal.js';
import { openCapture, closeCapture, isOpen } from './capture.js';
import { exportArchive, shareArchive } from './archive.js';

export { programReady } from './start.js';
export { askToKeep, probe } from './store.js';
export { keepDraft, draft, clearDraft, clearDrafts } from './drafts.js';

/** @typedef {{invokeMethodAsync: (name: string, ...values: unknown[]) => Promise<unknown>}} Screens */
/** @typedef {{ok:boolean, names?:string[], sha?:string, words?:string}} Kept */

/** @type {Screens|null} */
let screens = null;

/** @param {Screens} reference */
export function listen(reference) {
  screens = reference;
  writing.onWritten(insp => void screens?.invokeMethodAsync('Written', insp));
  sender.onSending(() => void screens?.invokeMethodAsync('Sending'));
  document.addEventListener('purlin:back', () => void screens?.invokeMethodAsync('Written', ''));
  document.addEventListener('click', onPlace);
  document.addEventListener('keydown', event => { if (event.key === 'Enter' || event.key === ' ') onPlace(event); });
}

/** A place on the drawing was tapped. @param {Event} event */
function onPlace(event) {
  const spot = /** @type {Element} */ (event.target).closest?.('svg [data-place]');
  const drawing = spot?.closest('[data-insp]');
  if (!spot || !drawing) return;
  event.preventDefault();
  void screens?.invokeMethodAsync('PlaceTapped', spot.getAttribute('data-place'));
}

/** @param {string} what @param {() => Promise<Kept>} work @returns {Promise<string>} */
async function kept(what, work) {
  try {
    return JSON.stringify(await work());
  } catch (error) {
    signal('refused');
    return JSON.stringify({ ok: false, words: inPlainWords(error, what) });
  }
}

/** Writes acts; the answer comes after the disk has them. @param {string} insp @param {string} acts @param {string} what */
export function write(insp, acts, what) {
  return kept(what, async () => {
    const names = await writing.write(insp, JSON.parse(acts));
    signal(acts.includes('"entry.withdrawn"') ? 'undone' : 'kept');
    return { ok: true, names };
  });
}

/** @param {string} title @param {string} date @param {boolean} demo */
export function newVisit(title, date, demo) { return writing.newVisit(title, date, demo); }

/** @param {string} insp @param {string} heads what the screens have already, as JSON */
export function linesBeyond(insp, heads) { return writing.linesBeyond(insp, JSON.parse(heads)); }

/** Takes an opened archive into the tables: its lines, then its pictures. @param {string} insp @param {Uint8Array} lines */
export function receive(insp, lines) { return writing.receive(insp, lines); }

/** @param {string} insp @param {string} sha @param {string} type @param {Uint8Array<ArrayBuffer>} bytes */
export async function receivePicture(insp, sha, type, bytes) {
  await store.transact(['blobs'], 'readwrite', tx => {
    tx.objectStore('blobs').put({ sha, insp, bytes: bytes.slice().buffer, type, size: bytes.length, office: false });
  });
}

/** Bytes of a file the person chooses, one beyond the most at most; none when nothing was chosen. @param {string} accept @param {number} [most] @returns {Promise<Uint8Array>} */
export async function chooseFile(accept, most) {
  const file = await camera.chooseOne(accept);
  return file ? new Uint8Array(await (most === undefined ? file : file.slice(0, most + 1)).arrayBuffer()) : new Uint8Array();
}

export async function deviceName() { return writing.device(); }

export async function visitList() {
  const all = await writing.visits();
  const list = await Promise.all(all.map(async visit => ({
    insp: visit.insp, title: visit.title, date: visit.date, demo: visit.demo, ...await sender.standing(visit), heldWords: visit.held,
  })));
  return JSON.stringify(list);
}

/** @param {string} insp */
export async function standing(insp) {
  const visit = await store.get('visits', insp);
  return JSON.stringify(visit ? await sender.standing(visit) : null);
}

export async function sendingState() {
  const isAlone = await store.get('meta', 'alone') === true;
  return JSON.stringify({ ...sender.state(), lastContact: await store.get('meta', 'lastContact') ?? 0, clockAhead: await store.get('meta', 'clockAhead') ?? 0, isAlone });
}

export function sendNow() { sender.sendSoon(0); }

/** @param {string} code */
export function signIn(code) { return sender.signIn(code); }

export async function elsewhere() { return JSON.stringify(await sender.elsewhere()); }

/** Brings an inspection from the office to this phone; pictures come as they are looked at. @param {string} insp @returns {Promise<string>} */
export async function bring(insp) {
  try {
    await sender.pull(insp);
    sender.sendSoon(0);
    return '';
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}

/** @param {boolean} isAlone */
export async function keepToPhone(isAlone) { await store.putMeta('alone', isAlone ? true : null); }

/** @param {HTMLElement} frame */
export async function showViewfinder(frame) {
  if (isOpen()) return '';
  await camera.show(frame);
  return camera.whyNot();
}

export function restViewfinder() { camera.stop(); }

/** Takes and keeps one picture. @param {string} insp @param {string|null} place @param {string|null} component @param {string|null} evidence */
export function takePhoto(insp, place, component, evidence) {
  return kept('The photograph', async () => {
    const blob = await camera.shoot();
    if (!blob) return { ok: false, words: camera.whyNot() };
    const photo = await keepPhoto(blob, { insp, place, component, for: evidence });
    signal('kept');
    return { ok: true, names: [photo.name], sha: photo.sha };
  });
}

/** Pictures from the system's chooser. @param {string} insp @param {string|null} place @param {string|null} component @param {string|null} evidence */
export function choosePhotos(insp, place, component, evidence) {
  return kept('The photograph', async () => {
    const about = { insp, place, component, for: evidence };
    const files = await camera.choose({ insp, at: Date.now(), ...(place ? { place } : {}), ...(component ? { component } : {}), ...(evidence ? { for: evidence } : {}) });
    const names = [];
    for (const file of files) names.push((await keepPhoto(file, about)).name);
    await camera.intentMet();
    return { ok: true, names };
  });
}

export async function lostPhoto() { return JSON.stringify(await camera.lostIntent()); }

/** @param {string} insp @param {string|null} place @param {string|null} component */
export function toggleSound(insp, place, component) {
  return kept('The sound note', async () => {
    if (!sound.isRecording()) {
      const why = await sound.startSound();
      return { ok: why === '', words: why };
    }
    const made = await sound.stopSound();
    if (!made) return { ok: false, words: 'Nothing was recorded.' };
    const note = await keepSound(made.blob, { insp, place, component }, made.seconds);
    signal('kept');
    return { ok: true, names: [note.name] };
  });
}

export function isRecording() { return sound.isRecording(); }

/** @param {string} sha @param {number} size @param {string} insp */
export async function pictureAddress(sha, size, insp) {
  const here = await address(sha, size);
  if (here) return here;
  return await sender.fetchBlob(sha, insp) ? address(sha, size) : '';
}

/** An address to play a sound note from; fetched when another device took it. @param {string} sha @param {string} insp @returns {Promise<string>} */
export async function soundAddress(sha, insp) {
  const here = await original(sha);
  if (here) return here;
  return await sender.fetchBlob(sha, insp) ? original(sha) : '';
}

/** Bytes for the report made on the phone; fetched when another device took the picture. @param {string} sha @param {number} size @param {string} insp @returns {Promise<Uint8Array>} */
export async function pictureBytes(sha, size, insp) {
  const found = await picture(sha, size) ?? (await sender.fetchBlob(sha, insp) ? await picture(sha, size) : null);
  return found ? new Uint8Array(found.bytes) : new Uint8Array();
}

export async function meter() {
  const [meter, ballast, camera] = await Promise.all([store.meter(), store.holdBallast(), cameraAllowed()]);
  const worker = await navigator.serviceWorker?.getRegistration();
  return JSON.stringify({
    ...meter, ballast, camera, clockAhead: await store.get('meta', 'clockAhead') ?? 0,
    cached: !!worker?.active, newer: !!worker?.waiting, lastContact: await store.get('meta', 'lastContact') ?? 0,
  });
}

async function cameraAllowed() {
  try {
    return (await navigator.permissions.query({ name: /** @type {any} */ ('camera') })).state;
  } catch {
    return 'not told by this browser';
  }
}

/** Uses a version that waits; refused while words are half typed or the viewfinder is open. @returns {Promise<string>} why not, or empty */
export async function useNewer() {
  if (drafts.isHalfTyped()) return 'Words are half typed. Finish or clear them first.';
  if (camera.isLive()) camera.stop();
  const worker = await navigator.serviceWorker?.getRegistration();
  if (!worker?.waiting) return 'There is no newer version waiting.';
  navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true });
  worker.waiting.postMessage('take over');
  return '';
}

/** @param {string} key */
export function setting(key) { return localStorage.getItem(`purlin-${key}`) ?? ''; }

/** @param {string} key @param {string} value */
export function setSetting(key, value) {
  localStorage.setItem(`purlin-${key}`, value);
  if (key === 'theme' || key === 'glove' || key === 'hand') document.documentElement.dataset[key] = value;
}

/** @param {string} url @param {string|null} insp @param {string|null} place @param {string|null} name */
export function noteWhere(url, insp, place, name) {
  drafts.noteWhere({ url, scroll: 0, insp: insp ?? undefined, place: place ?? undefined, name: name ?? undefined });
}

/** Puts the page where it was, after a kill. @param {string} url */
export async function scrollBack(url) {
  const where = await drafts.lastWhere();
  if (where?.url === url && where.scroll > 0) scrollTo(0, where.scroll);
}

/** @param {string} insp @param {string|null} place @param {string} words */
export async function largeViewfinder(insp, place, words) {
  const element = /** @type {HTMLElement} */ (document.getElementById('capture'));
  await openCapture(element, { insp, place, words, onClose: () => { closeCapture(); document.dispatchEvent(new CustomEvent('purlin:back')); } });
}

/** Asks the office to seal; it answers what it lacks when it cannot. @param {string} insp @returns {Promise<string>} in words */
export async function askToSeal(insp) {
  await sender.sendNow();
  return sender.askToSeal(insp);
}

/** @param {string} insp @param {string} name */
export function saveArchive(insp, name) {
  return kept('The archive', async () => {
    await shareArchive(await exportArchive(insp), name);
    return { ok: true };
  });
}

/** Hands bytes made by the program to the person. @param {Uint8Array<ArrayBuffer>} bytes @param {string} name @param {string} type */
export async function hand(bytes, name, type) {
  await shareArchive(new Blob([bytes], { type }), name);
}

/** A page of our own making in a frame without any rights. @param {HTMLIFrameElement} frame @param {string} html */
export function showPage(frame, html) {
  frame.srcdoc = html;
}

/** @param {HTMLElement} element */
export function focus(element) { element?.focus?.(); }
