// The places of a visit, read off its lines without the program that judges them: enough to take a photograph in the right room.

import { inOrder, settle } from './causal.js';

/** @typedef {{name:string, kind:string, words:string}} Spot */

/** @param {import('./chain.js').Envelope[]} envelopes @returns {Spot[]} */
export function placesIn(envelopes) {
  const standing = settle(inOrder(envelopes)).filter(line => line.stands);
  return standing.filter(line => line.envelope.type === 'place.added')
    .map(({ name, envelope }) => ({ name, kind: String(envelope.body.kind), words: namedIn(standing, name) ?? String(envelope.body.name) }));
}

/** The first name that stands and that no later standing one replaces. @param {import('./causal.js').Ordered[]} standing @param {string} place */
function namedIn(standing, place) {
  const named = standing.filter(line => line.envelope.type === 'place.named' && line.envelope.body.place === place);
  const first = named.find(line => !named.some(later => later.position > line.position && later.envelope.body.replaces?.includes(line.name)));
  return first ? String(first.envelope.body.name) : null;
}
