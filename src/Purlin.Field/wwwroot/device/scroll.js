// Where the page stands: put back after the program was ended, and kept steady when an act makes it shorter.

import { lastWhere } from './drafts.js';

// A slow phone may take this long to read and judge a large visit; a touch ends it at once.
const PATIENCE_MS = 60_000;

let isOver = false;
for (const event of ['pointerdown', 'wheel', 'keydown']) addEventListener(event, rest, { passive: true });

/** The person has moved on: nothing is put back any more. */
export function rest() { isOver = true; }

/**
 * Puts the page where it was when the program ended. The screen grows as it is read and judged, above the place too, so it is put right
 * at each growth until the person touches it.
 * @param {string} url
 */
export async function scrollBack(url) {
  const where = await lastWhere();
  if (isOver || where?.url !== url || where.scroll <= 0) { rest(); return; }
  const until = performance.now() + PATIENCE_MS;
  let height = 0;
  const again = () => {
    if (isOver || performance.now() > until) { rest(); return; }
    const now = document.documentElement.scrollHeight;
    if (now !== height && now >= where.scroll + innerHeight) scrollTo(0, where.scroll);
    height = now;
    setTimeout(again, 100);
  };
  again();
}

/** Brings a part below the bars that stay at the top, when it is out of sight. @param {Element|null} element */
export function show(element) {
  if (!element?.isConnected) return;
  const top = [...document.querySelectorAll('.head')].filter(bar => ['sticky', 'fixed'].includes(getComputedStyle(bar).position))
    .reduce((lowest, bar) => Math.max(lowest, bar.getBoundingClientRect().bottom), 0);
  const foot = document.querySelector('.foot')?.getBoundingClientRect().top ?? innerHeight;
  const { top: from, height } = element.getBoundingClientRect();
  if (from < top || from + Math.min(height, 120) > foot) scrollBy({ top: from - top - 8, behavior: 'instant' });
}

/** Brings the page to its top, after what changed on it was drawn. */
export function toTop() { requestAnimationFrame(() => scrollTo({ top: 0, behavior: 'instant' })); }
