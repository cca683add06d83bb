// From bytes to a kept photograph: hashed, written with its entry in one transaction, and only then shown as kept.

import { write } from './writing.js';
import { sha256 } from './chain.js';
import { derive } from './derive.js';
import { dimensionsOf } from './dimensions.js';
import { PHOTO_BYTES } from './limits.js';

/** @typedef {{insp:string, place?:string|null, component?:string|null, for?:string|null}} About */

/**
 * Keeps a picture. The promise settles when the disk has both the bytes and the entry.
 * @param {Blob} blob @param {About} about @returns {Promise<{name:string, sha:string}>}
 */
export async function keepPhoto(blob, about) {
  if (blob.size > PHOTO_BYTES) throw new RangeError(`This picture has ${Math.ceil(blob.size / 1048576)} MB; 25 MB is the most. Nothing else is touched. Take it again at a smaller size.`);
  const bytes = await blob.arrayBuffer();
  const sha = await sha256(bytes);
  const size = dimensionsOf(bytes);
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
