/** The suggestion beside an unknown word. */

/** ` (did you mean read?)` when one of the known words is near enough to be meant, otherwise nothing. */
export function didYouMean(word: string, known: readonly string[]): string {
  const near = nearest(word, known);
  return near === null ? "" : ` (did you mean ${near}?)`;
}

/**
 * The known word with the fewest letters added, left out, changed or swapped; null when even the nearest differs in
 * more than a third of its letters (at least one).
 */
export function nearest(word: string, known: readonly string[]): string | null {
  let best: string | null = null;
  let bestEdits = Number.POSITIVE_INFINITY;
  for (const candidate of known) {
    const edits = editsBetween(word.toLowerCase(), candidate.toLowerCase());
    if (edits < bestEdits && edits <= Math.max(1, Math.floor(candidate.length / 3))) {
      best = candidate;
      bestEdits = edits;
    }
  }
  return best;
}

/** Optimal string alignment distance: insertions, deletions, substitutions and swaps of neighbours. */
function editsBetween(a: string, b: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let row = 1; row <= a.length; row++) {
    const current = [row];
    for (let column = 1; column <= b.length; column++) {
      const same = a[row - 1] === b[column - 1];
      let edits = Math.min(
        at(last, column) + 1,
        at(current, column - 1) + 1,
        at(last, column - 1) + (same ? 0 : 1),
      );
      const swapped = row > 1 && column > 1 && a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1];
      if (swapped) edits = Math.min(edits, at(beforeLast, column - 2) + 1);
      current.push(edits);
    }
    beforeLast = last;
    last = current;
  }
  return at(last, b.length);
}

const at = (row: readonly number[], column: number): number => row[column] ?? Number.POSITIVE_INFINITY;
