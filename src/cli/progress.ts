/** Progress of work that takes longer than a second, on a terminal only. */

const QUIET_MS = 1000;
const EVERY_MS = 200;

export interface Progress {
  /** Shows the share done, 0 to 1, once the work has taken a second. */
  show(share: number): void;
  /** Clears what was shown. */
  end(): void;
}

/** Progress under a word such as "listening". */
export function progress(word: string): Progress {
  const began = performance.now();
  let shownAt = began + QUIET_MS - EVERY_MS;
  let shown = false;
  return {
    show(share) {
      const now = performance.now();
      if (process.stderr.isTTY !== true || now - shownAt < EVERY_MS) return;
      shownAt = now;
      shown = true;
      process.stderr.write(`\r${word} ... ${Math.floor(100 * share)} %`);
    },
    end() {
      if (shown) process.stderr.write("\r\x1b[K");
      shown = false;
    },
  };
}
