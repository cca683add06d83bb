// The first thing that runs: it opens the capture screen where the person was, at once, and lets the rest of the program start behind it.

import { lastWhere, noteWhere } from './drafts.js';
import { openCapture, closeCapture, offerClose, newestVisit } from './capture.js';
import { get, tellVersion } from './store.js';
import { keepSending } from './send.js';

const capture = /** @type {HTMLElement} */ (document.getElementById('capture'));
const opening = document.getElementById('opening');
const isAlone = document.documentElement.dataset.program === 'capture';
let isTouched = false;

capture.addEventListener('pointerdown', () => { isTouched = true; }, { once: true });
capture.addEventListener('keydown', () => { isTouched = true; }, { once: true });
tellVersion(words => { const line = document.getElementById('version-line'); if (line) { line.textContent = words; line.hidden = false; } });

async function begin() {
  // A store that does not answer must not keep the screens from opening: they say so themselves.
  const where = await lastWhere().catch(() => null);
  // Back into a visit, never into the settings: those are one tap from the list.
  if (!isAlone && location.pathname === '/' && where && /^\/(visit\/|new$)/.test(where.url)) history.replaceState(null, '', where.url);
  startProgram();
  if (where) noteWhere(where.url === location.pathname ? where : { url: location.pathname, scroll: 0, insp: where.insp });
  const insp = /^\/visit\/([^/]+)/.exec(location.pathname)?.[1] ?? where?.insp ?? await newestVisit();
  const known = insp ? await get('visits', insp) : null;
  // The screens may have come first: then they stay.
  const isOvertaken = document.documentElement.dataset.ready === 'yes';
  if (known && !isOvertaken && (isAlone || placeOf(location.pathname))) await openCapture(capture, { insp: known.insp, place: placeOf(location.pathname) ?? where?.place ?? null, words: where?.name ?? '' });
  if (isAlone && !known) location.replace('/');
  if (isAlone) offerClose(() => location.assign(`/visit/${insp}`), '');
}

/** The rest of the program starts only once the address is the right one, so that it opens where the person was. */
function startProgram() {
  /** @type {any} */ (globalThis).Blazor?.start();
}

/** The place that an address names. @param {string} path */
function placeOf(path) {
  return /\/(?:place|list)\/([a-z0-9~]+-\d+)$/.exec(path)?.[1].replace('-', '.') ?? null;
}

/** The program is there: it takes over, unless the person is already at work here. */
export function programReady() {
  opening?.remove();
  document.documentElement.dataset.ready = 'yes';
  if (capture.hidden) return;
  if (!isTouched) closeCapture();
  else offerClose(() => { closeCapture(); document.dispatchEvent(new CustomEvent('purlin:back')); });
}

document.addEventListener('purlin:ready', programReady);
// Nothing waits for this: a camera prompt may stay unanswered for long.
void begin();
keepSending();
if ('serviceWorker' in navigator) void navigator.serviceWorker.register('/service-worker.js', { updateViaCache: 'none' });
