/** The known word a mistyped one was most likely meant to be. */

/**
 * The nearest of the known words by number of letters wrong, missing, added or swapped with their neighbour (optimal
 * string alignment), case aside; null when none lies within a third of the word's length. The first wins a tie.
 */
export function nearMatch(word: string, known: readonly string[]): string | null {
  const allowed = Math.max(1, Math.floor(word.length / 3));
  let best: string | null = null;
  let bestSlips = allowed + 1;
  for (const candidate of known) {
    if (Math.abs(candidate.length - word.length) >= bestSlips) continue;
    const slips = slipsBetween(word.toLowerCase(), candidate.toLowerCase());
    if (slips < bestSlips) {
      best = candidate;
      bestSlips = slips;
    }
  }
  return best;
}

function slipsBetween(one: string, other: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: other.length + 1 }, (_, column) => column);
  for (let row = 1; row <= one.length; row++) {
    const current = [row];
    for (let column = 1; column <= other.length; column++) {
      const same = one[row - 1] === other[column - 1];
      let slips = Math.min(
        (last[column] ?? 0) + 1,
        (current[column - 1] ?? 0) + 1,
        (last[column - 1] ?? 0) + (same ? 0 : 1),
      );
      const swapped =
        row > 1 && column > 1 && one[row - 1] === other[column - 2] && one[row - 2] === other[column - 1];
      if (swapped) slips = Math.min(slips, (beforeLast[column - 2] ?? 0) + 1);
      current.push(slips);
    }
    beforeLast = last;
    last = current;
  }
  return last[other.length] ?? 0;
}
