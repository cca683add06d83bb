// Light, glove and hand, before the first paint. A plain script: modules run too late for that.
(() => {
  /** @param {string} key @param {string} otherwise */
  const kept = (key, otherwise) => {
    try { return localStorage.getItem(key) ?? otherwise; } catch { return otherwise; }
  };
  const root = document.documentElement;
  root.dataset.theme = kept('purlin-theme', 'day');
  root.dataset.glove = kept('purlin-glove', 'no');
  root.dataset.hand = kept('purlin-hand', 'right');
})();
