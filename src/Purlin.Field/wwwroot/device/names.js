// The only names a file in an archive may bear: made from hashes and numbers, never from anything a person or another program wrote.

import { ARCHIVE_FILE_BYTES, JOURNAL_BYTES, PHOTO_BYTES } from './limits.js';

export const MANIFEST = 'manifest.json';
export const JOURNAL = 'journal.jsonl';

/** @type {Record<string, string>} */
const SINGLE = { [MANIFEST]: 'application/json', [JOURNAL]: 'application/x-ndjson', 'receipts.jsonl': 'application/x-ndjson', 'office-key.pem': 'application/x-pem-file' };
/** @type {Record<string, string>} */
const BLOBS = { 'image/jpeg': 'photos/jpg', 'image/png': 'photos/png', 'image/webp': 'photos/webp', 'audio/webm': 'sounds/webm', 'audio/ogg': 'sounds/ogg', 'audio/mp4': 'sounds/m4a', 'audio/wav': 'sounds/wav' };
/** @type {Record<string, string>} */
const EDITIONS = { html: 'text/html', pdf: 'application/pdf' };

/** The name of a photograph or sound; none for a kind of file that an archive does not carry. @param {string} sha @param {string} mediaType @returns {string|null} */
export function nameOfBlob(sha, mediaType) {
  // A recorder adds its codec: audio/webm;codecs=opus.
  const plain = mediaType.split(';')[0].trim();
  if (!Object.hasOwn(BLOBS, plain) || !isSha(sha)) return null;
  const [folder, ending] = BLOBS[plain].split('/');
  return `${folder}/${sha}.${ending}`;
}

/** @param {string} name @returns {string|null} none for a name that is not allowed */
export function mediaTypeOf(name) {
  if (Object.hasOwn(SINGLE, name)) return SINGLE[name];
  const [, folder, stem, ending] = /^([a-z]+)\/([0-9a-f]+)\.([0-9a-z]+)$/.exec(name) ?? [];
  if (!stem) return null;
  if (folder === 'editions') return /^[1-9][0-9]{0,3}$/.test(stem) && Object.hasOwn(EDITIONS, ending) ? EDITIONS[ending] : null;
  return isSha(stem) ? Object.keys(BLOBS).find(type => BLOBS[type] === `${folder}/${ending}`) ?? null : null;
}

/** The hash in the name of a photograph or sound; none for other files. @param {string} name @returns {string|null} */
export function blobOf(name) {
  return /^(image|audio)\//.test(mediaTypeOf(name) ?? '') ? name.slice(7, 71) : null;
}

/** The most bytes a file of this name may hold. @param {string} name */
export function mostBytes(name) {
  if (name === MANIFEST || name === 'office-key.pem') return 4 * 1024 * 1024;
  if (name === JOURNAL || name === 'receipts.jsonl') return JOURNAL_BYTES;
  return blobOf(name) ? PHOTO_BYTES : ARCHIVE_FILE_BYTES;
}

/** @param {string} text */
function isSha(text) { return /^[0-9a-f]{64}$/.test(text); }
