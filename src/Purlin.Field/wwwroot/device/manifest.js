// What an archive holds, with the hash of everything in it. Pure: the same lines and pictures give the manifest that the rooms would write.

import { checkLine, headsOf, joinLines, rootOf, sha256 } from './chain.js';
import { inOrder } from './causal.js';
import { nameOfBlob } from './names.js';

/** @typedef {{dev:string, seq:number, hash:string, line:Uint8Array}} Row */
/** @typedef {{sha:string, type:string, size:number}} Kept */

/** The lines as an archive has them: readable ones in causal order, then the others by hash. @param {Row[]} rows */
export function linesOf(rows) {
  /** @type {Map<object, Row>} */
  const readable = new Map();
  const held = [];
  for (const row of rows) {
    const { envelope } = checkLine(row.line);
    if (envelope) readable.set(envelope, row);
    else held.push(row);
  }
  const order = inOrder(/** @type {any} */ ([...readable.keys()])).map(line => /** @type {Row} */ (readable.get(line.envelope)));
  held.sort((a, b) => a.hash < b.hash ? -1 : 1);
  return { journal: joinLines([...order, ...held].map(row => row.line)), entries: order.length, held: held.length };
}

/**
 * @param {string} insp @param {Row[]} rows @param {string[]} named hashes that the lines name @param {Kept[]} kept what is here of them
 * @param {{name:string, sha256:string, size:number, mediaType:string}[]} [issued] papers of editions and what vouches for them
 */
export async function manifestOf(insp, rows, named, kept, issued = []) {
  const { journal, entries, held } = linesOf(rows);
  const files = kept.map(one => ({ name: nameOfBlob(one.sha, one.type), sha256: one.sha, size: one.size, mediaType: one.type.split(';')[0].trim() }))
    .filter(file => file.name !== null).sort((a, b) => a.sha256 < b.sha256 ? -1 : 1);
  const here = new Set(files.map(file => file.sha256));
  const listed = [...files, ...issued];
  const heads = Object.fromEntries(Object.entries(headsOf(rows)).sort(([a], [b]) => a < b ? -1 : 1));
  return {
    format: 'purlin-archive', version: 1, inspection: insp, heads, entries, held, journal: await sha256(journal), linesRoot: await rootOf(rows.map(row => row.hash)),
    files: listed, missing: [...new Set(named)].filter(sha => !here.has(sha)).sort(),
  };
}
