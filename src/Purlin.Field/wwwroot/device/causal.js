// The order in which lines were written, by what each device had in hand, and which of them stand. The rules are those of the rooms, held
// to the same vectors; the capture screen needs them before the rooms have started.

/** @typedef {import('./chain.js').Envelope} Envelope */
/** @typedef {{name:string, envelope:Envelope, names:string[], knew:Record<string, number>, position:number, stands:boolean}} Ordered */

/** Members of a body that hold the name of an entry, or a list of them. */
const NAMES = ['about', 'component', 'entry', 'evidence', 'for', 'joins', 'limitation', 'note', 'of', 'origin', 'parent', 'part', 'photo', 'place', 'proposal', 'replaces', 'sound', 'under'];
const NAME = /^([a-z0-9]{1,20}(?:~[0-9]{1,2})?)\.([1-9][0-9]{0,6})$/;

/** Each after everything its device had in hand; where cause does not decide, by clock, device and sequence. @param {Envelope[]} envelopes @returns {Ordered[]} */
export function inOrder(envelopes) {
  /** @type {Map<string, Ordered[]>} */
  const strands = new Map();
  for (const envelope of [...envelopes].sort((a, b) => a.dev < b.dev ? -1 : a.dev > b.dev ? 1 : a.seq - b.seq)) {
    const strand = strands.get(envelope.dev) ?? [];
    strand.push(lineAfter(strand.at(-1), envelope));
    strands.set(envelope.dev, strand);
  }
  /** @type {Map<string, number>} */
  const next = new Map([...strands.keys()].map(dev => [dev, 0]));
  /** @type {Ordered[]} */
  const order = [];
  while (order.length < envelopes.length) {
    // Only forged lines can each claim to have seen the other; then time alone decides.
    const dev = least(strands, next, true) ?? /** @type {string} */ (least(strands, next, false));
    const at = next.get(dev) ?? 0;
    const line = /** @type {Ordered[]} */ (strands.get(dev))[at];
    next.set(dev, at + 1);
    line.position = order.length;
    order.push(line);
  }
  return order;
}

/** @param {Ordered|undefined} before @param {Envelope} envelope @returns {Ordered} */
function lineAfter(before, envelope) {
  const names = namesIn(envelope.body);
  let knew = before?.knew ?? {};
  const learned = [...Object.entries(envelope.seen ?? {}), ...names.map(name => /** @type {[string, number]} */ ([deviceOf(name), sequenceOf(name)]))];
  for (const [dev, seq] of learned) {
    if (dev === envelope.dev || (knew[dev] ?? 0) >= seq) continue;
    if (knew === before?.knew) knew = { ...knew };
    knew[dev] = seq;
  }
  return { name: `${envelope.dev}.${envelope.seq}`, envelope, names, knew, position: -1, stands: true };
}

/** @param {any} body @returns {string[]} */
function namesIn(body) {
  return NAMES.flatMap(member => Array.isArray(body[member]) ? body[member] : [body[member]]).filter(name => typeof name === 'string' && NAME.test(name));
}

/** @param {string} name */
const deviceOf = name => name.slice(0, name.lastIndexOf('.'));
/** @param {string} name */
const sequenceOf = name => Number(name.slice(name.lastIndexOf('.') + 1));

/** @param {Map<string, Ordered[]>} strands @param {Map<string, number>} next @param {boolean} mustBeReady @returns {string|null} */
function least(strands, next, mustBeReady) {
  let found = null;
  for (const [dev, lines] of strands) {
    const line = lines[next.get(dev) ?? 0];
    if (!line || mustBeReady && !isReady(line, strands, next)) continue;
    if (!found || isEarlier(line, found)) found = line;
  }
  return found?.envelope.dev ?? null;
}

/** @param {Ordered} line @param {Map<string, Ordered[]>} strands @param {Map<string, number>} next */
function isReady(line, strands, next) {
  return Object.entries(line.knew).every(([dev, seq]) => {
    const awaited = strands.get(dev)?.[next.get(dev) ?? 0];
    return !awaited || awaited.envelope.seq > seq;
  });
}

/** @param {Ordered} a @param {Ordered} b */
function isEarlier(a, b) {
  if (a.envelope.hlc !== b.envelope.hlc) return a.envelope.hlc < b.envelope.hlc;
  return a.envelope.dev !== b.envelope.dev ? a.envelope.dev < b.envelope.dev : a.envelope.seq < b.envelope.seq;
}

/**
 * Says of each line whether it stands. A withdrawal takes effect unless something that stands builds on its target, or restores it, which
 * the withdrawer had not in hand: keep wins. A device whose lines forked hides nothing here; the rooms tell its branches apart.
 * @param {Ordered[]} order
 */
export function settle(order) {
  const byName = new Map(order.map(line => [line.name, line]));
  const forked = new Set(order.filter(line => byName.get(line.name) !== line).map(line => line.envelope.dev));
  /** @type {Map<string, Ordered[]>} */
  const acts = new Map();
  for (const line of order) {
    for (const name of new Set(line.names)) {
      const target = byName.get(name);
      if (target && target.position < line.position) acts.set(name, [...acts.get(name) ?? [], line]);
    }
  }
  for (const line of [...order].reverse()) {
    if (line.envelope.type === 'edition.sealed' || forked.has(line.envelope.dev)) continue;
    const on = (acts.get(line.name) ?? []).filter(act => act.stands);
    const kept = on.filter(act => act.envelope.type !== 'entry.withdrawn');
    line.stands = !on.some(act => act.envelope.type === 'entry.withdrawn' && !forked.has(act.envelope.dev) && kept.every(one => saw(act, one)));
  }
  return order;
}

/** @param {Ordered} line @param {Ordered} other */
function saw(line, other) {
  return other.envelope.dev === line.envelope.dev ? other.envelope.seq < line.envelope.seq : (line.knew[other.envelope.dev] ?? 0) >= other.envelope.seq;
}
