/** Draws what is near the window one after the other, each when the page has nothing better to do, so that the first paint is quick. */

/** So far beyond the window's edge it is drawn before it is seen, px. */
const AHEAD_PX = 300;
/** A page that is never idle draws all the same, ms. */
const AT_LAST_MS = 400;

const waiting: (() => void)[] = [];
let scheduled = false;

function drawNext(): void {
  scheduled = false;
  waiting.shift()?.();
  schedule();
}

function schedule(): void {
  if (scheduled || waiting.length === 0) return;
  scheduled = true;
  // Not every browser tells when it is idle.
  if ("requestIdleCallback" in globalThis) requestIdleCallback(drawNext, { timeout: AT_LAST_MS });
  else setTimeout(drawNext);
}

/** Calls `draw` once when the element's turn has come; gives what calls it off. */
export function drawnInTurn(element: Element, draw: () => void): () => void {
  const watch = new IntersectionObserver(
    (entries) => {
      if (!entries.some((entry) => entry.isIntersecting)) return;
      watch.disconnect();
      waiting.push(draw);
      schedule();
    },
    { rootMargin: `${AHEAD_PX}px` },
  );
  watch.observe(element);
  return () => {
    watch.disconnect();
    const place = waiting.indexOf(draw);
    if (place >= 0) waiting.splice(place, 1);
  };
}
