// Requests to the office: each says which device it comes from, so that the owner sees who is signed in.

import { device } from './writing.js';

/** An answer of the office that is not a success. */
export class Answer extends Error {
  /** @param {number} status @param {string} words */
  constructor(status, words) {
    super(words);
    this.status = status;
  }
}

/** Asks and gives the answer, whatever it is. @param {string} path @param {string} method @param {any} [body] */
export async function officeAsk(path, method, body) {
  const headers = { ...await marks(), ...(body ? { 'Content-Type': 'application/json' } : {}) };
  return fetch(path, { method, credentials: 'same-origin', cache: 'no-store', headers, ...(body ? { body: JSON.stringify(body) } : {}) });
}

/** Asks for what is wanted; an answer that is no success is thrown. @param {string} path @param {RequestInit} [init] @returns {Promise<Response>} */
export async function ask(path, init = {}) {
  const answer = await fetch(path, { ...init, credentials: 'same-origin', cache: 'no-store', headers: { ...await marks(), ...init.headers } });
  if (answer.ok || answer.status === 409) return answer;
  throw new Answer(answer.status, wordsOf(answer.status));
}

async function marks() {
  return { 'X-Field': '1', 'X-Device': await device() };
}

/** @param {number} status */
export function wordsOf(status) {
  if (status === 401 || status === 403) return 'Signed out of the office. Everything is kept here; sign in to send it.';
  if (status === 507) return 'The office has no room left. Everything is kept here and will be sent when there is room.';
  if (status === 429) return 'The office asks to wait a little. Everything is kept here.';
  if (status === 404) return 'No office answers at this address. Everything is kept here.';
  return `The office answered with an error (${status}). Everything is kept here and will be tried again.`;
}

/** @typedef {{id:string, device:string, since:string|null, seen:string|null, here:boolean}} SignedIn */

/** The devices that are signed in; none when the office does not say. @returns {Promise<SignedIn[]>} */
export async function signedIn() {
  try {
    const answer = await officeAsk('/office/sessions', 'GET');
    return answer.ok ? await answer.json() : [];
  } catch {
    return [];
  }
}

/** Signs another device out. @param {string} id @returns {Promise<string>} why not; empty when it is done */
export async function signOutOther(id) {
  try {
    const answer = await officeAsk(`/office/sessions/${encodeURIComponent(id)}`, 'DELETE');
    return answer.ok ? '' : (await answer.json().catch(() => ({}))).words ?? wordsOf(answer.status);
  } catch {
    return 'No contact with the office. That device is still signed in; try again when there is a signal.';
  }
}

/** A link that signs one more device in, once. @returns {Promise<{address:string, size:number, path:string}|null>} none when the office gives none */
export async function linkForOther() {
  try {
    const answer = await officeAsk('/office/sessions/link', 'POST', {});
    return answer.ok ? await answer.json() : null;
  } catch {
    return null;
  }
}
