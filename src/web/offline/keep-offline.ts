/** Has the browser keep the bench's own files after the first load, so that it opens without a network. */

/** Called when the bench stands, so that keeping does not slow its coming. Where browsers allow no service worker (a private window, a plain address) the bench works as before, with the network. */
export function keepOffline(): void {
  if (!import.meta.env.PROD || !("serviceWorker" in navigator)) return;
  navigator.serviceWorker.register("/service-worker.js").catch(() => undefined);
}
