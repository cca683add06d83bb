// The line format: what one entry looks like as bytes, and how a device's lines hang together. Pure functions; the same test vectors
// are run against this file and against the program that reads the lines.

/** @typedef {{v:number, insp:string, dev:string, seq:number, hlc:string, prev?:string, seen?:Record<string, number>, type:string, body:any}} Envelope */

import { ADOPT_AHEAD_MS, JSON_DEPTH, LINE_BYTES, SEQUENCE } from './limits.js';

const ALPHABET = '0123456789abcdefghjkmnpqrstvwxyz';

const encoder = new TextEncoder();
const decoder = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true });
const HLC = /^[0-9a-f]{12}-[0-9a-f]{4}$/;
const LAST_MS = 2 ** 48 - 1;

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
  if (!text || !HLC.test(text)) return { ms: 0, counter: 0 };
  return { ms: parseInt(text.slice(0, 12), 16), counter: parseInt(text.slice(13), 16) };
}

/**
 * The next reading of the hybrid clock. It does not follow a wall that steps a little back; a wall that was put right by more than five
 * minutes is believed, since order comes from `seen` and not from here.
 * @param {string|undefined} last @param {number} wall
 */
export function hlcNext(last, wall) {
  const before = hlcOf(last);
  const now = Math.min(LAST_MS, Math.max(0, wall));
  if (now > before.ms || now < before.ms - ADOPT_AHEAD_MS) return hlcText(now, 0);
  return before.counter < 0xffff ? hlcText(before.ms, before.counter + 1) : hlcText(before.ms + 1, 0);
}

/** A remote time is taken up only when it is not far ahead of our own. @param {string|undefined} own @param {string} remote @param {number} now */
export function hlcMeet(own, remote, now) {
  if (!HLC.test(remote) || hlcOf(remote).ms > now + ADOPT_AHEAD_MS) return own;
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

/** @typedef {{insp:string, dev:string, seq:number, prev?:string, hlc?:string, heads:Record<string, number>, seenWritten:Record<string, number>}} Pen */

/** Writes the next line of a device and moves its pen on. @param {Pen} pen @param {string} type @param {any} body @param {number} now */
export async function nextLine(pen, type, body, now) {
  pen.hlc = hlcNext(pen.hlc, now);
  const seen = Object.fromEntries(Object.entries(pen.heads).filter(([other, seq]) => other !== pen.dev && (pen.seenWritten[other] ?? 0) < seq).sort(([a], [b]) => a < b ? -1 : 1));
  const line = lineOf({ v: 1, insp: pen.insp, dev: pen.dev, seq: pen.seq + 1, hlc: pen.hlc, prev: pen.prev, seen, type, body });
  Object.assign(pen.seenWritten, seen);
  pen.seq++;
  pen.prev = await sha256(line);
  return { line, hash: pen.prev };
}

/** Half a character, left by a cut emoji, would make the line unreadable elsewhere. @param {string} _ @param {unknown} value */
function wellFormed(_, value) {
  return typeof value === 'string' ? value.replace(/[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/g, '\uFFFD') : value;
}

/** Reads the envelope of a line; null when it is none. @param {Uint8Array} line @returns {Envelope|null} */
export function readLine(line) {
  return checkLine(line).envelope;
}

/** The hash of the picture or sound that a line names; none for other lines. @param {Envelope|null} envelope @returns {string|null} */
export function namedBy(envelope) {
  const sha = envelope && (envelope.type === 'photo.taken' || envelope.type === 'sound.taken') ? envelope.body.sha : null;
  return typeof sha === 'string' ? sha : null;
}

/**
 * Reads and checks what stands around the body; the body itself is judged by the rooms. A refused line may still be named, and is then
 * kept and counted in its sequence.
 * @param {Uint8Array} line @returns {{envelope: Envelope|null, refuses: string|null, named: {insp:string, dev:string, seq:number}|null}}
 */
export function checkLine(line) {
  const read = parse(line);
  if (!read) return { envelope: null, refuses: 'line', named: null };
  const refuses = Object.entries(CHECKS).find(([member, check]) => !check(read[member]))?.[0] ?? null;
  const isNamed = CHECKS.insp(read.insp) && CHECKS.dev(read.dev) && CHECKS.seq(read.seq);
  return { envelope: refuses ? null : read, refuses, named: isNamed ? { insp: read.insp, dev: read.dev, seq: read.seq } : null };
}

/** @type {Record<'insp'|'dev'|'seq'|'v'|'hlc'|'prev'|'seen'|'type'|'body', (value: any) => boolean>} */
const CHECKS = {
  insp: value => typeof value === 'string' && /^[A-Za-z0-9_-]{1,64}$/.test(value),
  dev: value => typeof value === 'string' && /^[a-z0-9]{1,20}$/.test(value),
  seq: value => Number.isInteger(value) && value >= 1 && value <= SEQUENCE,
  v: value => Number.isInteger(value) && value >= 1 && value <= SEQUENCE,
  hlc: value => typeof value === 'string' && HLC.test(value),
  prev: value => value === undefined || value === null || typeof value === 'string' && /^[0-9a-f]{64}$/.test(value),
  seen: value => value === undefined || isObject(value) && Object.entries(value).every(([dev, seq]) => /^[a-z0-9]{1,20}(~[0-9]{1,2})?$/.test(dev) && CHECKS.seq(seq)),
  type: value => typeof value === 'string' && value.length > 0 && value.length <= 64,
  body: isObject,
};

/** @param {any} value */
function isObject(value) { return typeof value === 'object' && value !== null && !Array.isArray(value); }

/** @param {Uint8Array} line @returns {any} */
function parse(line) {
  if (line.length > LINE_BYTES || line.includes(10)) return null;
  try {
    const read = JSON.parse(decoder.decode(line));
    return isObject(read) && depth(read) <= JSON_DEPTH ? read : null;
  } catch {
    return null;
  }
}

/** @param {any} value @returns {number} */
function depth(value) {
  if (typeof value !== 'object' || value === null) return 0;
  return 1 + Object.values(value).reduce((deepest, inner) => Math.max(deepest, depth(inner)), 0);
}

/**
 * Cuts newline-delimited bytes into lines. A last line without its end counts when it is whole; else it is torn and lost alone.
 * @param {Uint8Array} bytes
 */
export function cutLines(bytes) {
  /** @type {Uint8Array<ArrayBuffer>[]} */
  const lines = [];
  let from = 0;
  /** @param {number} to */
  const cut = to => {
    const end = to > from && bytes[to - 1] === 13 ? to - 1 : to;
    if (end > from) lines.push(bytes.slice(from, end));
    from = to + 1;
  };
  for (let at = bytes.indexOf(10); at >= 0; at = bytes.indexOf(10, from)) cut(at);
  const isTorn = from < bytes.length && parse(bytes.slice(from)) === null;
  if (from < bytes.length && !isTorn) cut(bytes.length);
  return { lines, isTorn };
}

/** @typedef {{dev:string, seq:number, hash:string}} Known */
/** @typedef {Known & {line:Uint8Array<ArrayBuffer>, envelope:Envelope|null}} Taken */

/**
 * What is taken from a body of lines: each device's run without gaps beyond what is here. A gap stops that device only, and a line
 * that cannot be read stops nothing.
 * @param {string} insp @param {Known[]} here @param {Uint8Array} bytes
 */
export async function take(insp, here, bytes) {
  const { lines, isTorn } = cutLines(bytes);
  const hashes = new Set(here.map(known => known.hash));
  /** @type {Taken[]} */
  const fresh = [];
  let nameless = 0;
  for (const line of lines) {
    const { envelope, named } = checkLine(line);
    if (!named || named.insp !== insp) { nameless++; continue; }
    const hash = await sha256(line);
    if (!hashes.has(hash)) fresh.push({ dev: named.dev, seq: named.seq, hash, line, envelope });
    hashes.add(hash);
  }
  const heads = headsOf([...here, ...fresh]);
  const taken = fresh.filter(one => one.seq <= (heads[one.dev] ?? 0));
  return { taken, waiting: fresh.filter(one => !taken.includes(one)), nameless, isTorn, heads };
}

/** How far each device's lines go without a gap. @param {Known[]} known @returns {Record<string, number>} */
export function headsOf(known) {
  /** @type {Map<string, Set<number>>} */
  const byDevice = new Map();
  for (const { dev, seq } of known) byDevice.set(dev, (byDevice.get(dev) ?? new Set()).add(seq));
  /** @type {Record<string, number>} */
  const heads = {};
  for (const [dev, seqs] of byDevice) {
    let head = 0;
    while (seqs.has(head + 1)) head++;
    if (head > 0) heads[dev] = head;
  }
  return heads;
}

/** Where each forked device split: the first sequence that two lines bear. @param {Known[]} known @returns {Record<string, number>} */
export function splitsOf(known) {
  /** @type {Record<string, number>} */
  const splits = {};
  const seen = new Set();
  for (const { dev, seq } of known) {
    if (seen.has(`${dev}.${seq}`)) splits[dev] = Math.min(splits[dev] ?? seq, seq);
    seen.add(`${dev}.${seq}`);
  }
  return splits;
}

/** The first sequence of a device that another side lacks; a forked device goes out from its split on, whatever is said to be had. @param {string} dev @param {Record<string, number>} have @param {Record<string, number>} splits */
export function fromOf(dev, have, splits) {
  return Math.min(have[dev] ?? 0, (splits[dev] ?? Infinity) - 1) + 1;
}

/** What another side lacks. @template {Known} T @param {T[]} here @param {Record<string, number>} have @returns {T[]} */
export function lacking(here, have) {
  const splits = splitsOf(here);
  return here.filter(one => one.seq >= fromOf(one.dev, have, splits)).sort((a, b) => a.dev < b.dev ? -1 : a.dev > b.dev ? 1 : a.seq - b.seq);
}

/** The Merkle root over line hashes: what an archive and a seal say of all lines at once. @param {string[]} hashes @returns {Promise<string>} */
export async function rootOf(hashes) {
  let level = await Promise.all([...new Set(hashes)].sort().map(hash => node([0], unhex(hash))));
  if (level.length === 0) return sha256(new Uint8Array());
  while (level.length > 1) {
    const next = [];
    for (let at = 0; at < level.length; at += 2) next.push(at + 1 < level.length ? await node([1], level[at], level[at + 1]) : level[at]);
    level = next;
  }
  return Array.from(level[0], value => value.toString(16).padStart(2, '0')).join('');
}

/** @param {ArrayLike<number>[]} parts */
async function node(...parts) {
  const whole = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) { whole.set(part, at); at += part.length; }
  return new Uint8Array(await crypto.subtle.digest('SHA-256', whole));
}

/** @param {string} hex */
function unhex(hex) { return Uint8Array.from(hex.match(/../g) ?? [], pair => parseInt(pair, 16)); }

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

/** The lines whose named predecessor is here and is another one. @param {Uint8Array<ArrayBuffer>[]} lines @returns {Promise<string[]>} their names */
export async function brokenIn(lines) {
  /** @type {Map<string, Set<string>>} */
  const hashes = new Map();
  const read = [];
  for (const line of lines) {
    const envelope = readLine(line);
    if (!envelope) continue;
    read.push(envelope);
    const name = `${envelope.dev}.${envelope.seq}`;
    hashes.set(name, (hashes.get(name) ?? new Set()).add(await sha256(line)));
  }
  return read.filter(one => {
    const before = hashes.get(`${one.dev}.${one.seq - 1}`);
    return one.seq === 1 ? !!one.prev : before !== undefined && !before.has(one.prev ?? '');
  }).map(one => `${one.dev}.${one.seq}`);
}
