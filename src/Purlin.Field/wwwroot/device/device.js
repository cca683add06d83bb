// The border between the two programs on the phone: what the screens may ask of the device. Text and bytes cross it, nothing else.

import * as store from './store.js';
import * as writing from './writing.js';
import * as camera from './camera.js';
import * as sender from './send.js';
import * as office from './office.js';
import * as sound from './sound.js';
import * as drafts from './drafts.js';
import { keepPhoto, keepSound } from './photo.js';
import { address, original, picture } from './derive.js';
import { inPlainWords } from './words.js';
import { signal } from './signal.js';
import { openCapture, closeCapture } from './capture.js';
import { OpenedArchive, clearArchive, exportArchive, handOver } from './archive.js';
import { rest } from './scroll.js';

export { programReady } from './start.js';
export { askToKeep } from './store.js';
export { draft, clearDraft, clearDrafts } from './drafts.js';
export { phoneKey, keepPaper, signFor } from './seal.js';
export { scrollBack, show, toTop } from './scroll.js';

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

/** A place on the drawing was tapped, or a balloon that stands on it. @param {Event} event */
function onPlace(event) {
  const spot = /** @type {Element} */ (event.target).closest?.('svg [data-place]');
  const drawing = spot?.closest('[data-insp]');
  if (!spot || !drawing) return;
  event.preventDefault();
  // On the drawing of a place the things themselves are touched, whatever stands on them.
  const matter = event instanceof MouseEvent && !drawing.matches('.place-drawing') ? balloonAt(drawing, event) : null;
  if (matter) void screens?.invokeMethodAsync('MatterTapped', Number(matter));
  else void screens?.invokeMethodAsync('PlaceTapped', spot.getAttribute('data-place'));
}

/** The number of the balloon under the thumb: places lie over the whole drawing, so balloons are found by where they are. @param {Element} drawing @param {MouseEvent} event @returns {string|null} */
function balloonAt(drawing, event) {
  const under = [...drawing.querySelectorAll('[data-matter]')].filter(balloon => {
    const { left, right, top, bottom } = balloon.getBoundingClientRect();
    return event.clientX >= left && event.clientX <= right && event.clientY >= top && event.clientY <= bottom;
  });
  return under.at(-1)?.getAttribute('data-matter') ?? null;
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

/** How far a long piece of work has come, in words. @param {string} words */
function tellProgress(words) { void screens?.invokeMethodAsync('Progress', words); }

/** The archive that was chosen and looked into. @type {OpenedArchive|null} */
let chosen = null;

/** Looks into a file the person chooses. @returns {Promise<string>} nothing chosen: empty; else what speaks against it */
export async function chooseArchive() {
  const file = await camera.chooseOne('.purlin,application/zip');
  if (!file) return '';
  const { archive, refusals } = await OpenedArchive.of(file);
  chosen = archive;
  return JSON.stringify(refusals);
}

/** Manifest or lines of the archive that was chosen. @param {string} name @returns {Promise<Uint8Array>} */
export async function archiveBytes(name) { return await chosen?.bytes(name) ?? new Uint8Array(); }

/** Takes the archive that was chosen: its pictures, each checked, then its lines. @param {string} insp @param {Uint8Array} lines @param {string} files as the manifest lists them, JSON */
export function takeArchive(insp, lines, files) {
  return kept('The archive', async () => {
    if (!chosen) return { ok: false, words: 'No archive is open.' };
    const { fresh, refusals } = await chosen.take(insp, lines, JSON.parse(files), (done, of) => tellProgress(`Taking over: ${done} of ${of}`));
    chosen = null;
    return refusals.length > 0 ? { ok: false, words: `Nothing was taken. ${refusals.slice(0, 3).join(' ')}` } : { ok: true, words: String(fresh) };
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

/** Sends everything and waits for the end of it. @returns {Promise<string>} why it is not all there, or empty */
export async function sendAll() {
  await sender.sendNow();
  return sender.state().words;
}

/** @param {string} code */
export function signIn(code) { return sender.signIn(code); }

export async function signedIn() { return JSON.stringify(await office.signedIn()); }

/** @param {string} id */
export function signOutOther(id) { return office.signOutOther(id); }

export async function linkForOther() { return JSON.stringify(await office.linkForOther()); }

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

/** Where the person is: kept, so that the next start is here again. @param {string} url @param {string} name of what is shown there */
export function noteWhere(url, name) { drafts.noteAddress(url, name); }

/** The thing that is chosen where the person is. @param {string|null} component */
export function noteChosen(component) { drafts.noteWhere({ component: component ?? undefined }); }

/** The thing that was chosen at this address when the program ended; empty when the person comes from elsewhere. @param {string} url */
export async function chosenAt(url) {
  const where = await drafts.lastWhere();
  return where?.url === url ? where.component ?? '' : '';
}

/** @param {string} insp @param {string|null} place @param {string} words */
export async function largeViewfinder(insp, place, words) {
  const element = /** @type {HTMLElement} */ (document.getElementById('capture'));
  rest();
  await openCapture(element, { insp, place, words, onClose: () => { closeCapture(); document.dispatchEvent(new CustomEvent('purlin:back')); } });
}

/** Asks the office to seal; it answers what it lacks when it cannot. @param {string} insp @returns {Promise<string>} in words */
export function askToSeal(insp) { return sender.askToSeal(insp); }

/** Brings page or PDF of an edition to this phone, where it then stays. @param {string} insp @param {number} number @param {string} kind @param {string} sha @returns {Promise<string>} why not, or empty */
export function bringPaper(insp, number, kind, sha) { return sender.bringPaper(insp, number, kind, sha); }

/** Shows a page that is on this phone in a frame without any rights. @param {HTMLIFrameElement} frame @param {string} sha */
export async function showPaper(frame, sha) {
  const blob = await store.get('blobs', sha);
  if (blob) frame.srcdoc = new TextDecoder().decode(blob.bytes);
}

/** Hands a paper that is on this phone to the person. @param {string} sha @param {string} name @param {string} type */
export async function handPaper(sha, name, type) {
  const blob = await store.get('blobs', sha);
  return blob ? handOver(new Blob([blob.bytes], { type }), name, type) : 'left';
}

/** @param {string} insp @param {string} name */
export function saveArchive(insp, name) {
  return kept('The archive', async () => {
    await clearArchive();
    await handOver(await exportArchive(insp, (done, of) => tellProgress(`Writing the copy: ${done} of ${of} pictures`)), name, 'application/zip');
    return { ok: true };
  });
}

/** Hands bytes made by the program to the person. @param {Uint8Array<ArrayBuffer>} bytes @param {string} name @param {string} type */
export async function hand(bytes, name, type) {
  await handOver(new Blob([bytes], { type }), name, type);
}

/** A page of our own making in a frame without any rights. @param {HTMLIFrameElement} frame @param {string} html */
export function showPage(frame, html) {
  frame.srcdoc = html;
}
