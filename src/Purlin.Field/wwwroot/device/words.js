// What went wrong, in three parts: what happened, what is safe, what to do.

import { isFull } from './store.js';

/** @param {unknown} error @param {string} what for instance "Photograph 213" @returns {string} */
export function inPlainWords(error, what) {
  if (isFull(error)) return `${what} was not kept: the phone is full. Everything before it is kept. Free space, or go on with notes.`;
  if (error instanceof RangeError) return error.message;
  const name = error instanceof DOMException ? error.name : '';
  if (name === 'VersionError') return `${what} was not kept: a newer Purlin is open in another window. Close it and open this one again. Everything before it is kept.`;
  return `${what} was not kept: the phone’s storage did not answer. Everything before it is kept. Try once more; if it goes on, restart the browser.`;
}
