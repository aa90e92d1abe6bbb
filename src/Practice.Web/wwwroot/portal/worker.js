// Opens the phone pages without signal: what was last seen, from the phone. With signal the network always comes first.

const store = "phone-2";
const shell = ["/portal/phone.css", "/portal/phone.js", "/portal/race.js", "/mark.svg"];
const patience = 4000; // ms on a bad line before the kept page is shown

self.addEventListener("install", (event) =>
  event.waitUntil(
    caches
      .open(store)
      .then((cache) => cache.addAll(shell))
      .then(() => self.skipWaiting()),
  ),
);

self.addEventListener("activate", (event) =>
  event.waitUntil(
    caches
      .keys()
      .then((names) => Promise.all(names.filter((name) => name !== store).map((name) => caches.delete(name))))
      .then(() => self.clients.claim())
      .then(keepOpenPages),
  ),
);

self.addEventListener("fetch", (event) => {
  const { pathname, origin } = new URL(event.request.url);
  const isOurs = pathname.startsWith("/p/") || shell.includes(pathname);
  if (event.request.method === "GET" && origin === location.origin && isOurs && pathname !== "/p/worker.js")
    event.respondWith(answer(event));
});

async function answer(event) {
  const cache = await caches.open(store);
  const keptAnswer = await cache.match(event.request, { ignoreSearch: true });
  const fresh = fetch(event.request).then((response) => keep(cache, event.request, response));
  if (!keptAnswer) return fresh;
  event.waitUntil(fresh.catch(() => {}));
  const slow = new Promise((resolve) => setTimeout(resolve, patience, keptAnswer));
  return Promise.race([fresh.catch(() => keptAnswer), slow]);
}

async function keep(cache, request, response) {
  const address = new URL(request.url);
  const place = address.origin + address.pathname;
  if (response.ok && !response.redirected) await cache.put(place, response.clone());
  // a closed link leaves nothing behind on the phone: neither this page nor those below it
  if (response.status === 404)
    for (const kept of await cache.keys()) if (kept.url.startsWith(place)) await cache.delete(kept);
  return response;
}

// the very first page was fetched before there was anybody to keep it
async function keepOpenPages() {
  const pages = await self.clients.matchAll({ type: "window" });
  await keepAll(pages.map((page) => new URL(page.url)).map(({ origin, pathname }) => origin + pathname));
}

self.addEventListener("message", (event) => event.waitUntil(keepAll(event.data)));

async function keepAll(addresses) {
  const cache = await caches.open(store);
  for (const address of addresses) {
    // nobody looks: not counted as an opening
    const response = await fetch(address, { headers: { "X-Keeping": "yes" } }).catch(() => null);
    if (response) await keep(cache, new Request(address), response);
  }
}
