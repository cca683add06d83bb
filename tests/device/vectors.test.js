import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { test } from 'node:test';
import { checks, run } from './checks.js';

const folder = new URL('../../src/Purlin.Field/wwwroot/device', import.meta.url).href;
const atLeast = { lines: 40, chain: 2, hlc: 15, seen: 4, delivery: 12, forks: 1, root: 5, causal: 1, places: 50, archive: 40, limits: 11, pictures: 12 };

for (const name of Object.keys(checks)) {
  test(`the vectors of ${name} hold outside the browser`, async () => {
    const vectors = JSON.parse(await readFile(new URL(`../vectors/${name}.json`, import.meta.url), 'utf8'));
    const { wrong, ran } = await run(name, vectors, folder);
    assert.deepEqual(wrong, []);
    assert.ok(ran >= atLeast[name], `only ${ran} comparisons were made`);
  });
}
