// The places of a visit, read off its lines without the program that judges them: enough to take a photograph in the right room.

import { rows } from './writing.js';
import { readLine } from './chain.js';

/** @typedef {{name:string, kind:string, words:string}} Spot */

/** @param {string} insp @returns {Promise<Spot[]>} */
export async function placesOf(insp) {
  const envelopes = (await rows(insp)).map(row => readLine(row.line)).filter(one => one !== null);
  envelopes.sort((a, b) => a.hlc < b.hlc ? -1 : 1);
  /** @type {Map<string, Spot>} */
  const spots = new Map();
  const withdrawn = new Set();
  for (const { dev, seq, type, body } of envelopes) {
    if (type === 'place.added') spots.set(`${dev}.${seq}`, { name: `${dev}.${seq}`, kind: String(body.kind), words: String(body.name) });
    if (type === 'place.named') { const spot = spots.get(body.place); if (spot) spot.words = String(body.name); }
    if (type === 'entry.withdrawn') withdrawn.add(body.entry);
    if (type === 'entry.restored') withdrawn.delete(body.entry);
  }
  return [...spots.values()].filter(spot => !withdrawn.has(spot.name));
}
