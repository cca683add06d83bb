// From bytes to a kept photograph: hashed, written with its entry in one transaction, and only then shown as kept.

import { write } from './writing.js';
import { sha256 } from './chain.js';
import { derive } from './derive.js';

export const PHOTO_BYTES = 25 * 1024 * 1024;

/** @typedef {{insp:string, place?:string|null, component?:string|null, for?:string|null}} About */

/**
 * Keeps a picture. The promise settles when the disk has both the bytes and the entry.
 * @param {Blob} blob @param {About} about @returns {Promise<{name:string, sha:string}>}
 */
export async function keepPhoto(blob, about) {
  if (blob.size > PHOTO_BYTES) throw new RangeError(`This picture has ${Math.ceil(blob.size / 1048576)} MB; 25 MB is the most. Nothing else is touched. Take it again at a smaller size.`);
  const bytes = await blob.arrayBuffer();
  const sha = await sha256(bytes);
  const size = await dimensions(bytes, blob.type);
  const body = { sha, size: bytes.byteLength, mediaType: blob.type || 'image/jpeg', ...size, ...where(about) };
  const [name] = await write(about.insp, [{ type: 'photo.taken', body }], [{ bytes, type: body.mediaType, sha }]);
  void derive(sha);
  return { name, sha };
}

/** @param {Blob} blob @param {About} about @param {number} seconds @returns {Promise<{name:string, sha:string}>} */
export async function keepSound(blob, about, seconds) {
  const bytes = await blob.arrayBuffer();
  const sha = await sha256(bytes);
  const body = { sha, size: bytes.byteLength, mediaType: blob.type || 'audio/webm', seconds, ...where(about, false) };
  const [name] = await write(about.insp, [{ type: 'sound.taken', body }], [{ bytes, type: body.mediaType, sha }]);
  return { name, sha };
}

/** @param {About} about @param {boolean} [withFor] */
function where(about, withFor = true) {
  return {
    ...(about.place ? { place: about.place } : {}),
    ...(about.component ? { component: about.component } : {}),
    ...(withFor && about.for ? { for: about.for } : {}),
  };
}

/** Width and height from the header, without decoding. @param {ArrayBuffer} bytes @param {string} type @returns {Promise<{width:number, height:number}|{}>} */
export async function dimensions(bytes, type) {
  const view = new DataView(bytes);
  if (type === 'image/png' && bytes.byteLength > 24) return { width: view.getUint32(16), height: view.getUint32(20) };
  if (type !== 'image/jpeg') return {};
  for (let at = 2; at + 9 < bytes.byteLength;) {
    if (view.getUint8(at) !== 0xff) return {};
    const marker = view.getUint8(at + 1);
    if (marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker)) return { width: view.getUint16(at + 7), height: view.getUint16(at + 5) };
    at += 2 + view.getUint16(at + 2);
  }
  return {};
}
