// Lets brew day open with no network at all: the page and what it is made of are asked of the book first, and of the last copy
// where the book does not answer. Only a secure address has such a worker; it sees what lies under gyles/ and nothing else.
const kept = 'gylebook-brew-1';

self.addEventListener('install', () => self.skipWaiting());
self.addEventListener('activate', event => event.waitUntil(self.clients.claim()));
self.addEventListener('fetch', event => {
  const { request } = event, url = new URL(request.url);
  const isBrewDay = request.mode === 'navigate' && url.pathname.endsWith('/brew');
  const isPart = ['style', 'script', 'image', 'font'].includes(request.destination);
  if (request.method === 'GET' && url.origin === location.origin && (isBrewDay || isPart)) {
    event.respondWith(freshOrKept(request));
  }
});

// A page that has the network says what a visit without one needs, whenever the way is open again.
self.addEventListener('message', event => event.waitUntil(Promise.allSettled(event.data.keep.map(path => freshOrKept(path)))));

async function freshOrKept(request) {
  const cache = await caches.open(kept);
  try {
    const fresh = await fetch(request);
    if (!fresh.ok || fresh.redirected) {
      return fresh;
    }
    // The whole of it first: a copy that breaks off on its way would take the place of a whole one.
    const body = await fresh.blob();
    const whole = () => new Response(body, { headers: fresh.headers });
    await cache.put(request, whole());
    return whole();
  } catch (gone) {
    const copy = await cache.match(request, { ignoreVary: true });
    if (copy) {
      return copy;
    }
    throw gone;
  }
}
