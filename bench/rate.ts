/** How often a second something can be done, measured so that one slow moment of the machine does not decide. */

const ROUNDS = 5;
const ROUND_MS = 250;

/** Times a second, the best of five rounds. `work` does `count` of them at once. */
export function perSecond(count: number, work: () => void): number {
  work();
  let best = 0;
  for (let round = 0; round < ROUNDS; round++) {
    const began = performance.now();
    let done = 0;
    while (performance.now() - began < ROUND_MS) {
      work();
      done += count;
    }
    best = Math.max(best, (done * 1000) / (performance.now() - began));
  }
  return best;
}

/** Milliseconds of the quickest of some runs. */
export function quickestMs(runs: number, work: () => void): number {
  let quickest = Number.POSITIVE_INFINITY;
  for (let run = 0; run < runs; run++) {
    const began = performance.now();
    work();
    quickest = Math.min(quickest, performance.now() - began);
  }
  return quickest;
}

/** `1,234,567` or `12.3`. */
export function figure(value: number): string {
  if (value < 100) return value.toFixed(1);
  return Math.round(value)
    .toString()
    .replace(/\B(?=(\d{3})+$)/g, ",");
}
