// The capture screen: viewfinder, shutter, words, sound, undo, next place. It stands by itself, so that the first photograph never
// waits for the rest of the program. Every act is on the disk before its tick is shown.

import * as camera from './camera.js';
import { keepPhoto, keepSound } from './photo.js';
import { rows, write, visits } from './writing.js';
import { readLine } from './chain.js';
import { placesIn } from './places.js';
import { address, THUMBNAIL } from './derive.js';
import { startSound, stopSound, isRecording, seconds } from './sound.js';
import { inPlainWords } from './words.js';
import { signal } from './signal.js';
import { clearDraft, draft, noteWhere } from './drafts.js';

const MOST_WAITING = 3;

/** @typedef {{insp:string, place:string|null, words:string, onClose?: (() => void)|null}} CaptureAt `onClose` leads back to where the camera was opened */

/** @type {CaptureAt} */
let at = { insp: '', place: null, words: '' };
/** @type {import('./places.js').Spot[]} */
let spots = [];
let waiting = 0;
/** Photographs of each place, those of earlier sittings counted. @type {Map<string, number>} */
let taken = new Map();
/** @type {{name:string, words:string}|null} */
let lastAct = null;
let ticking = 0;
let isWired = false;
/** @type {HTMLElement} */
let root;

/** @param {string} name @returns {HTMLElement} */
const part = name => /** @type {HTMLElement} */ (root.querySelector(`[data-part="${name}"]`));

const SCREEN = `
<header class="cap-head"><button type="button" class="cap-place" data-act="places"><small>here</small><span data-part="place"></span></button>
<button type="button" class="quiet" data-act="close" data-part="close" hidden></button></header>
<div class="cap-frame" data-part="frame"><p class="cap-why" data-part="why" hidden></p></div>
<ul class="cap-places" data-part="places" hidden></ul>
<p class="cap-line" role="status" aria-live="polite" data-part="line"></p>
<div class="undo" data-part="undo" hidden><span data-part="undo-words"></span><button type="button" data-act="undo">Undo</button></div>
<form class="cap-words" data-part="form"><label class="unseen" for="cap-text">Note about this place</label>
<input id="cap-text" autocomplete="off" maxlength="2000" placeholder="Type or dictate a note"><button type="submit">Keep</button></form>
<div class="cap-bar"><button type="button" class="act" data-act="say"><b>say</b><small data-part="say">sound note</small></button>
<button type="button" class="shutter" data-act="shoot" aria-label="Take photograph"><i></i></button>
<div class="cap-side"><button type="button" class="act" data-act="next" data-part="next"><b>next place</b><small data-part="next-words"></small></button></div></div>
<div class="cap-more"><button type="button" class="quiet" data-act="file">From a file</button><button type="button" class="quiet" data-act="torch" aria-pressed="false">Torch</button>
<button type="button" class="quiet" data-act="dark" aria-pressed="false">Dark</button></div>`;

/** @param {HTMLElement} element @param {CaptureAt} where */
export async function openCapture(element, where) {
  root = element;
  at = where;
  if (!root.querySelector('.cap-head')) {
    root.innerHTML = SCREEN;
    if (!isWired) root.addEventListener('click', onClick);
    isWired = true;
    part('form').addEventListener('submit', event => { event.preventDefault(); void keepWords(); });
  }
  root.hidden = false;
  offerClose(where.onClose ?? null);
  const text = /** @type {HTMLInputElement} */ (root.querySelector('#cap-text'));
  await readVisit();
  if (root.hidden) return;
  if (!at.place && spots[0]) { at.place = spots[0].name; at.words = spots[0].words; }
  text.dataset.draft = draftKey();
  text.value = await draft(draftKey());
  if (root.hidden) return;
  drawPlace();
  await showCamera();
}

export function closeCapture() {
  if (!root) return;
  root.hidden = true;
  root.replaceChildren();
}

export function isOpen() { return root !== undefined && !root.hidden; }

/** The way back goes where one came from, and says so. @param {(() => void)|null} onClose @param {string} [back] */
export function offerClose(onClose, back = at.words) {
  at.onClose = onClose;
  if (!root?.querySelector('.cap-head')) return;
  part('close').hidden = !onClose;
  part('close').textContent = back ? `Back to ${back}` : 'Back to the house';
}

async function readVisit() {
  const envelopes = (await rows(at.insp)).map(row => readLine(row.line)).filter(one => one !== null);
  spots = placesIn(envelopes);
  taken = new Map();
  for (const { type, body } of envelopes) if (type === 'photo.taken') taken.set(body.place ?? '', (taken.get(body.place ?? '') ?? 0) + 1);
}

const draftKey = () => `${at.insp}/capture/${at.place ?? ''}`;

async function showCamera() {
  await camera.show(part('frame'));
  if (root.hidden) return;
  const why = camera.whyNot();
  part('why').hidden = why === '';
  part('why').textContent = why;
}

function drawPlace() {
  const spot = spots.find(one => one.name === at.place);
  part('place').textContent = spot?.words ?? (at.words || 'Whole house');
  const next = nextSpot();
  part('next').hidden = !next;
  part('next-words').textContent = next?.words ?? '';
}

function nextSpot() {
  const index = spots.findIndex(one => one.name === at.place);
  return spots[index + 1] ?? spots[0];
}

/** @param {string} place */
async function moveTo(place) {
  at.place = place;
  at.words = spots.find(one => one.name === place)?.words ?? '';
  part('places').hidden = true;
  noteWhere({ place, name: at.words });
  const text = /** @type {HTMLInputElement} */ (root.querySelector('#cap-text'));
  text.dataset.draft = draftKey();
  text.value = await draft(draftKey());
  drawPlace();
}

/** @param {MouseEvent} event */
function onClick(event) {
  const button = /** @type {HTMLElement} */ (event.target).closest('button');
  if (!button) return;
  camera.touch();
  const spot = button.dataset.spot;
  if (spot) return void moveTo(spot);
  const acts = { shoot, undo, say, file, torch, dark, places: drawPlaces, next: () => { const next = nextSpot(); if (next) void moveTo(next.name); }, close: () => at.onClose?.() };
  void acts[/** @type {keyof typeof acts} */ (button.dataset.act ?? '')]?.();
}

async function shoot() {
  if (waiting >= MOST_WAITING) return;
  waiting++;
  press('shutter');
  try {
    const blob = await camera.shoot();
    if (!blob) { await showCamera(); return; }
    await keep(blob);
  } finally {
    waiting--;
  }
}

/** @param {Blob} blob */
async function keep(blob) {
  const place = at.place ?? '';
  const number = (taken.get(place) ?? 0) + 1;
  taken.set(place, number);
  try {
    const photo = await keepPhoto(blob, { insp: at.insp, place: at.place });
    done(photo.name, `Photograph ${number} of ${at.words || 'the house'}`);
    await showThumbnail(photo.sha);
  } catch (error) {
    taken.set(place, number - 1);
    refused(inPlainWords(error, `Photograph ${number}`));
  }
}

/** @param {string} sha */
async function showThumbnail(sha) {
  const image = part('frame').querySelector('img') ?? document.createElement('img');
  image.alt = 'The last photograph';
  image.className = 'cap-last';
  image.src = await address(sha, THUMBNAIL);
  part('frame').append(image);
}

async function keepWords() {
  const text = /** @type {HTMLInputElement} */ (root.querySelector('#cap-text'));
  const words = text.value.trim();
  if (words === '') return;
  try {
    const [name] = await write(at.insp, [{ type: 'note.written', body: { ...(at.place ? { about: at.place } : {}), part: `n${crypto.randomUUID().replaceAll('-', '').slice(0, 16)}`, text: words, replaces: [] } }]);
    text.value = '';
    await clearDraft(draftKey());
    done(name, `Note: ${words.slice(0, 40)}`);
  } catch (error) {
    refused(inPlainWords(error, 'The note'));
  }
}

async function say() {
  if (!isRecording()) {
    const why = await startSound();
    if (why) return refused(why);
    ticking = setInterval(() => { part('say').textContent = `stop ${Math.floor(seconds())} s`; }, 500);
    part('say').textContent = 'stop';
    return;
  }
  clearInterval(ticking);
  part('say').textContent = 'sound note';
  const sound = await stopSound();
  if (!sound) return;
  try {
    const note = await keepSound(sound.blob, { insp: at.insp, place: at.place }, sound.seconds);
    done(note.name, `Sound note, ${sound.seconds} s`);
  } catch (error) {
    refused(inPlainWords(error, 'The sound note'));
  }
}

async function file() {
  for (const blob of await camera.choose({ insp: at.insp, ...(at.place ? { place: at.place } : {}), at: Date.now() })) await keep(blob);
  await camera.intentMet();
}

async function undo() {
  if (!lastAct) return;
  const { name, words } = lastAct;
  try {
    await write(at.insp, [{ type: 'entry.withdrawn', body: { entry: name } }]);
    lastAct = null;
    part('undo').hidden = true;
    part('line').textContent = `Taken back: ${words}`;
    signal('undone');
  } catch (error) {
    refused(inPlainWords(error, 'The undo'));
  }
}

/** @param {string} name @param {string} words */
function done(name, words) {
  lastAct = { name, words };
  part('undo').hidden = false;
  part('undo-words').textContent = `✓ ${words}`;
  part('line').textContent = '';
  root.dataset.kept = String(Number(root.dataset.kept ?? 0) + 1);
  root.dispatchEvent(new CustomEvent('purlin:kept', { bubbles: true, detail: { name } }));
  signal('kept');
}

/** @param {string} words */
function refused(words) {
  part('line').textContent = words;
  signal('refused');
}

/** @param {string} name */
function press(name) {
  const button = root.querySelector(`.${name}`);
  button?.classList.add('pressed');
  setTimeout(() => button?.classList.remove('pressed'), 120);
}

async function torch() {
  const button = /** @type {HTMLElement} */ (root.querySelector('[data-act="torch"]'));
  const on = await camera.torch(button.getAttribute('aria-pressed') !== 'true');
  button.setAttribute('aria-pressed', String(on));
}

function dark() {
  const page = document.documentElement;
  const isDark = page.dataset.theme === 'dark';
  page.dataset.theme = isDark ? localStorage.getItem('purlin-theme') ?? 'day' : 'dark';
  root.querySelector('[data-act="dark"]')?.setAttribute('aria-pressed', String(page.dataset.theme === 'dark'));
}

function drawPlaces() {
  const list = part('places');
  list.hidden = !list.hidden;
  list.replaceChildren(...spots.map(spot => {
    const item = document.createElement('li');
    const button = document.createElement('button');
    button.type = 'button';
    button.dataset.spot = spot.name;
    button.textContent = spot.words;
    if (spot.name === at.place) button.setAttribute('aria-current', 'true');
    item.append(button);
    return item;
  }));
}

/** The visit to photograph when nobody said which: where the person was, else the newest. @returns {Promise<string|null>} */
export async function newestVisit() {
  return (await visits())[0]?.insp ?? null;
}
