// The line format: what one entry looks like as bytes, and how a device's lines hang together. Pure functions; the same test vectors
// are run against this file and against the program that reads the lines.

/** @typedef {{v:number, insp:string, dev:string, seq:number, hlc:string, prev?:string, seen?:Record<string, number>, type:string, body:any}} Envelope */

const ALPHABET = '0123456789abcdefghjkmnpqrstvwxyz';
const FUTURE_MS = 5 * 60 * 1000;
export const LINE_BYTES = 64 * 1024;

const encoder = new TextEncoder();
const decoder = new TextDecoder('utf-8', { fatal: true });

/** Ten characters of 32: 50 random bits. @returns {string} */
export function mint() {
  return Array.from(crypto.getRandomValues(new Uint8Array(10)), value => ALPHABET[value & 31]).join('');
}

/** @param {BufferSource} bytes @returns {Promise<string>} */
export async function sha256(bytes) {
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return Array.from(digest, value => value.toString(16).padStart(2, '0')).join('');
}

/** @param {number} ms @param {number} counter */
export function hlcText(ms, counter) {
  return `${Math.max(0, Math.floor(ms)).toString(16).padStart(12, '0').slice(-12)}-${counter.toString(16).padStart(4, '0')}`;
}

/** @param {string|undefined} text @returns {{ms:number, counter:number}} */
export function hlcOf(text) {
  if (!text || !/^[0-9a-f]{12}-[0-9a-f]{4}$/.test(text)) return { ms: 0, counter: 0 };
  return { ms: parseInt(text.slice(0, 12), 16), counter: parseInt(text.slice(13), 16) };
}

/** The next reading of the hybrid clock: never behind the last one, even when the phone's clock was set back. @param {string|undefined} last @param {number} now */
export function hlcNext(last, now) {
  const before = hlcOf(last);
  if (now > before.ms) return hlcText(now, 0);
  return before.counter < 0xffff ? hlcText(before.ms, before.counter + 1) : hlcText(before.ms + 1, 0);
}

/** A remote time is taken up only when it is not far ahead of our own. @param {string|undefined} own @param {string} remote @param {number} now */
export function hlcMeet(own, remote, now) {
  const theirs = hlcOf(remote);
  if (theirs.ms > now + FUTURE_MS) return own;
  return !own || remote > own ? remote : own;
}

/** The bytes of an entry. They are written once and never again. @param {Envelope} envelope @returns {Uint8Array<ArrayBuffer>} */
export function lineOf(envelope) {
  const { v, insp, dev, seq, hlc, prev, seen, type, body } = envelope;
  const members = { v, insp, dev, seq, hlc, ...(prev ? { prev } : {}), ...(seen && Object.keys(seen).length ? { seen } : {}), type, body };
  const line = encoder.encode(JSON.stringify(members, wellFormed));
  if (line.length > LINE_BYTES) throw new RangeError(`This entry is ${Math.ceil(line.length / 1024)} KB long; 64 KB is the most. Split the text in two.`);
  return line;
}

/** Half a character, left by a cut emoji, would make the line unreadable elsewhere. @param {string} _ @param {unknown} value */
function wellFormed(_, value) {
  return typeof value === 'string' ? value.replace(/[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/g, '\uFFFD') : value;
}

/** Reads the envelope of a line; null when it is not one. @param {Uint8Array} line @returns {Envelope|null} */
export function readLine(line) {
  try {
    const read = JSON.parse(decoder.decode(line));
    const good = read && typeof read === 'object' && Number.isSafeInteger(read.seq) && read.seq > 0
      && typeof read.insp === 'string' && typeof read.dev === 'string' && /^[a-z0-9]{1,20}$/.test(read.dev) && typeof read.type === 'string';
    return good ? read : null;
  } catch {
    return null;
  }
}

/** Cuts newline-delimited bytes into lines; a last line without its end is torn and is given apart. @param {Uint8Array} bytes */
export function cutLines(bytes) {
  /** @type {Uint8Array<ArrayBuffer>[]} */
  const lines = [];
  let from = 0;
  for (let at = bytes.indexOf(10); at >= 0; at = bytes.indexOf(10, from)) {
    if (at > from) lines.push(bytes.slice(from, at));
    from = at + 1;
  }
  return { lines, torn: bytes.slice(from) };
}

/** Joins lines, each with its end. @param {Uint8Array[]} lines @returns {Uint8Array<ArrayBuffer>} */
export function joinLines(lines) {
  const whole = new Uint8Array(lines.reduce((sum, line) => sum + line.length + 1, 0));
  let at = 0;
  for (const line of lines) {
    whole.set(line, at);
    at += line.length + 1;
    whole[at - 1] = 10;
  }
  return whole;
}

/** Follows one device's lines by the hash of the line before: names the first that does not fit, or null. @param {Uint8Array<ArrayBuffer>[]} lines @returns {Promise<string|null>} */
export async function brokenAt(lines) {
  let previous = '';
  for (const line of lines) {
    const envelope = readLine(line);
    if (!envelope) return 'unreadable';
    if ((envelope.prev ?? '') !== previous) return `${envelope.dev}.${envelope.seq}`;
    previous = await sha256(line);
  }
  return null;
}
