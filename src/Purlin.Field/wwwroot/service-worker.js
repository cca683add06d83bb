// Keeps the whole program on the phone. A version is installed whole or not at all, each file checked by its hash; it takes over at the
// next start, or when the person says so, never by itself. Journals, pictures and pages of the office are never answered from here.

self.importScripts('./service-worker-assets.js');

const PREFIX = 'purlin-program-';
const NAME = `${PREFIX}${self.assetsManifest.version}`;
const WANTED = [/\.dll$/, /\.wasm$/, /\.dat$/, /\.html$/, /\.js$/, /\.json$/, /\.css$/, /\.ttf$/, /\.woff2?$/, /\.png$/, /\.svg$/, /\.webmanifest$/];
const UNWANTED = [/^service-worker\.js$/, /\.gz$/, /\.br$/];
const OFFICE = [/^\/sync\//, /^\/blobs\//, /^\/office(\/|$)/, /^\/r\//, /^\/api\//, /^\/account(\/|$)/, /^\/health$/];

self.addEventListener('install', event => event.waitUntil(install()));
self.addEventListener('activate', event => event.waitUntil(activate()));
self.addEventListener('fetch', event => {
  const url = new URL(event.request.url);
  if (event.request.method !== 'GET' || url.origin !== self.location.origin || OFFICE.some(route => route.test(url.pathname))) return;
  event.respondWith(answer(event.request, url));
});
self.addEventListener('message', event => {
  if (event.data === 'take over') self.skipWaiting();
});

async function install() {
  const wanted = self.assetsManifest.assets.filter(asset => WANTED.some(kind => kind.test(asset.url)) && !UNWANTED.some(kind => kind.test(asset.url)));
  const cache = await caches.open(NAME);
  try {
    // addAll fails as a whole, and a wrong hash is a failure.
    await cache.addAll(wanted.map(asset => new Request(asset.url, { integrity: asset.hash, cache: 'no-cache' })));
  } catch (error) {
    await caches.delete(NAME);
    throw error;
  }
}

async function activate() {
  const names = await caches.keys();
  await Promise.all(names.filter(name => name.startsWith(PREFIX) && name !== NAME).map(name => caches.delete(name)));
}

async function answer(request, url) {
  const cache = await caches.open(NAME);
  const page = url.pathname === '/capture.html' ? 'capture.html' : 'index.html';
  const kept = await cache.match(request.mode === 'navigate' ? page : request, { ignoreSearch: true });
  return kept ?? fetch(request);
}
