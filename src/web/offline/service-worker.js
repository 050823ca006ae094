// @ts-nocheck
// Keeps the bench after its first load, so that it opens with no network: a classroom's, or none in the air. The build puts the list of
// the bench's own files and their digest in place of the two names below; nothing else is ever kept or sent.

const FILES = __FILES__;
const CACHE = "needlework-__DIGEST__";

self.addEventListener("install", (event) => {
  event.waitUntil(
    caches
      .open(CACHE)
      .then((cache) => cache.addAll(FILES))
      .then(() => self.skipWaiting()),
  );
});

self.addEventListener("activate", (event) => {
  event.waitUntil(
    caches
      .keys()
      .then((names) => Promise.all(names.filter((name) => name !== CACHE).map((name) => caches.delete(name))))
      .then(() => self.clients.claim()),
  );
});

self.addEventListener("fetch", (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (request.method !== "GET" || url.origin !== self.location.origin) return;
  // The scene of the command line is the server's to tell; without it there is none.
  if (url.pathname.startsWith("/api/")) {
    event.respondWith(fetch(request).catch(() => new Response(null, { status: 204 })));
    return;
  }
  // The page itself is asked for anew, so that a newer bench is seen at once; what carries its digest in its name never changes.
  if (request.mode === "navigate") {
    event.respondWith(fetch(request).catch(() => caches.match("/")));
    return;
  }
  event.respondWith(caches.match(request).then((kept) => kept ?? fetch(request)));
});
