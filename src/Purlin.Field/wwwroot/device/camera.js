// The viewfinder in the page: opening the camera application can kill the tab, and a file chooser costs three taps more. The stream is
// opened once and kept while the person works; it rests when the screen sleeps or nothing was touched for a while.

import { putMeta, get } from './store.js';

/** @typedef {{insp:string, place?:string, component?:string, for?:string, at:number}} Intent */

const REST_AFTER_MS = 60_000;

/** @type {MediaStream|null} */
let stream = null;
/** @type {Promise<MediaStream|null>|null} */
let starting = null;
const video = document.createElement('video');
video.playsInline = true;
video.muted = true;
video.setAttribute('aria-label', 'Viewfinder');
let restTimer = 0;
/** Why there is no viewfinder, in words; empty while there may be one. */
let refusal = '';

export function whyNot() { return refusal; }
export function isLive() { return stream !== null && stream.getVideoTracks().some(track => track.readyState === 'live'); }

/** Shows the viewfinder inside an element of the page. @param {HTMLElement} frame */
export async function show(frame) {
  if (video.parentElement !== frame) frame.append(video);
  await start();
  frame.dataset.live = String(isLive());
  return isLive();
}

/** @returns {Promise<MediaStream|null>} */
export function start() {
  touch();
  if (isLive()) return Promise.resolve(stream);
  starting ??= openStream().finally(() => { starting = null; });
  return starting;
}

async function openStream() {
  if (!navigator.mediaDevices?.getUserMedia) {
    refusal = 'This browser shows no viewfinder here. Choose pictures from a file instead.';
    return null;
  }
  try {
    stream = await navigator.mediaDevices.getUserMedia({ audio: false, video: { facingMode: { ideal: 'environment' }, width: { ideal: 4096 }, height: { ideal: 3072 } } });
    refusal = '';
    video.srcObject = stream;
    await video.play().catch(() => undefined);
    return stream;
  } catch (error) {
    const name = error instanceof DOMException ? error.name : '';
    refusal = name === 'NotAllowedError' ? 'The camera is not allowed here. Allow it in the browser’s site settings, or choose pictures from a file.'
      : name === 'NotFoundError' ? 'No camera was found. Choose pictures from a file.'
        : 'The camera did not start. Another program may hold it. Try again, or choose pictures from a file.';
    return null;
  }
}

/** Every touch keeps the camera awake a while longer. */
export function touch() {
  clearTimeout(restTimer);
  restTimer = setTimeout(stop, REST_AFTER_MS);
}

export function stop() {
  clearTimeout(restTimer);
  stream?.getTracks().forEach(track => track.stop());
  stream = null;
  if (video.parentElement) video.parentElement.dataset.live = 'false';
}

/** One picture, as the browser delivers it: those bytes are the original. @returns {Promise<Blob|null>} */
export async function shoot() {
  const open = await start();
  const track = open?.getVideoTracks()[0];
  if (!track) return null;
  if ('ImageCapture' in globalThis) {
    try {
      return await new ImageCapture(track).takePhoto();
    } catch {
      // Some cameras offer it and then refuse: a frame at full track size serves as well.
    }
  }
  return await frame();
}

async function frame() {
  if (video.readyState < HTMLMediaElement.HAVE_CURRENT_DATA) await new Promise(resolve => video.addEventListener('loadeddata', resolve, { once: true }));
  const canvas = new OffscreenCanvas(video.videoWidth, video.videoHeight);
  canvas.getContext('2d')?.drawImage(video, 0, 0);
  return canvas.convertToBlob({ type: 'image/jpeg', quality: 0.92 });
}

/** @param {boolean} on @returns {Promise<boolean>} whether the lamp obeyed */
export async function torch(on) {
  const track = stream?.getVideoTracks()[0];
  try {
    await track?.applyConstraints({ advanced: [/** @type {any} */ ({ torch: on })] });
    return /** @type {any} */ (track?.getSettings())?.torch === on;
  } catch {
    return false;
  }
}

/**
 * The plain way in: the system's chooser. What the picture is for is on the disk before the chooser opens, since the system may
 * end this page meanwhile.
 * @param {Intent} intent @returns {Promise<File[]>}
 */
export async function choose(intent) {
  await putMeta('intent', intent);
  return chooser('image/*', true);
}

/** One file of another kind, an archive for instance. @param {string} accept @returns {Promise<File|undefined>} */
export async function chooseOne(accept) {
  return (await chooser(accept, false))[0];
}

/** @param {string} accept @param {boolean} multiple @returns {Promise<File[]>} */
async function chooser(accept, multiple) {
  const input = document.createElement('input');
  input.type = 'file';
  input.accept = accept;
  input.multiple = multiple;
  input.hidden = true;
  input.id = 'purlin-chooser';
  document.getElementById(input.id)?.remove();
  document.body.append(input);
  const files = await new Promise(resolve => {
    input.addEventListener('change', () => resolve([...input.files ?? []]), { once: true });
    input.addEventListener('cancel', () => resolve([]), { once: true });
    input.click();
  });
  input.remove();
  return files;
}

/** The chooser is done with: the intent is met. */
export function intentMet() { return putMeta('intent', null); }

/** A picture that was meant to be taken when the page ended; told once. @returns {Promise<Intent|null>} */
export async function lostIntent() {
  const intent = await get('meta', 'intent');
  if (intent) await putMeta('intent', null);
  return intent ?? null;
}

document.addEventListener('visibilitychange', () => {
  if (document.visibilityState === 'hidden') stop();
});
