// The phone's own key, for editions that no office sealed: made here once, never to be taken out, and what it signs can be checked by
// anyone who has the fingerprint from the paper. Its receipts have the form of the office's.

import { get, putMeta, transact } from './store.js';
import { rows } from './writing.js';
import { headsOf, rootOf, sha256 } from './chain.js';

const KEY = 'phone-key';
const encoder = new TextEncoder();
const CURVE = { name: 'ECDSA', namedCurve: 'P-256' };

/** @param {string} insp */
const receiptsOf = insp => `phone-receipts:${insp}`;

/** @returns {Promise<CryptoKeyPair>} */
async function pair() {
  const kept = await get('meta', KEY);
  if (kept) return kept;
  const made = await crypto.subtle.generateKey(CURVE, false, ['sign', 'verify']);
  await putMeta(KEY, made);
  // Two windows may have made one each: the one that was kept is the phone's.
  return await get('meta', KEY);
}

/** @returns {Promise<Uint8Array<ArrayBuffer>>} the public key as SubjectPublicKeyInfo */
async function spki() { return new Uint8Array(await crypto.subtle.exportKey('spki', (await pair()).publicKey)); }

/** The fingerprint of the phone's key, as the paper prints it. @returns {Promise<string>} */
export async function phoneKey() { return sha256(await spki()); }

/** @param {Uint8Array} bytes */
const base64 = bytes => btoa(Array.from(bytes, byte => String.fromCharCode(byte)).join(''));

/** Keeps a paper of an edition made here, under its hash. @param {string} insp @param {Uint8Array} paper @param {string} type @returns {Promise<string>} the hash */
export async function keepPaper(insp, paper, type) {
  const bytes = paper.slice().buffer;
  const sha = await sha256(new Uint8Array(bytes));
  await transact(['blobs'], 'readwrite', tx => { tx.objectStore('blobs').put({ sha, insp, bytes, type, size: bytes.byteLength }); });
  return sha;
}

/** Signs for all lines that are here now. @param {string} insp @returns {Promise<void>} */
export async function signFor(insp) {
  const all = await rows(insp);
  /** @type {string[]} */
  const before = await get('meta', receiptsOf(insp)) ?? [];
  const heads = Object.fromEntries(Object.entries(headsOf(all)).sort(([a], [b]) => a < b ? -1 : 1));
  const receipt = JSON.stringify({
    n: before.length + 1, insp, heads, root: await rootOf(all.map(row => row.hash)), at: new Date().toISOString(),
    prev: before.length > 0 ? await sha256(encoder.encode(before[before.length - 1])) : '',
  });
  const signature = new Uint8Array(await crypto.subtle.sign({ name: 'ECDSA', hash: 'SHA-256' }, (await pair()).privateKey, encoder.encode(receipt)));
  await putMeta(receiptsOf(insp), [...before, `${receipt.slice(0, -1)},"signature":"${base64(signature)}"}`]);
}

/** What an archive carries of it: receipts and the public key; none where this phone never sealed. @param {string} insp @returns {Promise<{receipts: Uint8Array<ArrayBuffer>, key: Uint8Array<ArrayBuffer>}|null>} */
export async function vouching(insp) {
  /** @type {string[]} */
  const lines = await get('meta', receiptsOf(insp)) ?? [];
  if (lines.length === 0) return null;
  const body = (base64(await spki()).match(/.{1,64}/g) ?? []).join('\n');
  return { receipts: encoder.encode(lines.map(line => `${line}\n`).join('')), key: encoder.encode(`-----BEGIN PUBLIC KEY-----\n${body}\n-----END PUBLIC KEY-----\n`) };
}
