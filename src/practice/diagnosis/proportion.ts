/** A share of answers with how well it is known, and a correlation of a share with a score. */

/** The standard normal's 97.5 % point, for intervals that hold in 95 of 100. */
const Z_95 = 1.959963984540054;

export interface Interval {
  readonly low: number;
  readonly high: number;
}

/**
 * Where the true share lies, 0..1, with 95 % confidence: Wilson's score interval, without correction for continuity (Wilson 1927).
 * Throws RangeError unless 0 <= count <= n and n >= 1.
 */
export function wilsonInterval(count: number, n: number): Interval {
  if (!(n >= 1 && count >= 0 && count <= n))
    throw new RangeError(`${count} of ${n} is no share; it takes 0 <= count <= n and n >= 1`);
  const share = count / n;
  const square = Z_95 ** 2;
  const middle = share + square / (2 * n);
  const half = Z_95 * Math.sqrt((share * (1 - share)) / n + square / (4 * n ** 2));
  const all = 1 + square / n;
  return {
    // None and all give the very end, which rounding would miss.
    low: count === 0 ? 0 : (middle - half) / all,
    high: count === n ? 1 : (middle + half) / all,
  };
}

/**
 * The point-biserial correlation of a yes-or-no with a number, -1..1: positive when those who did have the higher numbers. Null when
 * all or none did, when the numbers are all the same, or when there are fewer than two.
 */
export function pointBiserial(
  rows: readonly { readonly did: boolean; readonly score: number }[],
): number | null {
  const n = rows.length;
  const did = rows.filter((row) => row.did).map(({ score }) => score);
  const not = rows.filter((row) => !row.did).map(({ score }) => score);
  const all = mean(rows.map(({ score }) => score));
  const deviation = Math.sqrt(mean(rows.map(({ score }) => (score - all) ** 2)));
  if (did.length === 0 || not.length === 0 || deviation === 0) return null;
  const share = did.length / n;
  const value = ((mean(did) - mean(not)) / deviation) * Math.sqrt(share * (1 - share));
  return Math.min(1, Math.max(-1, value));
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/** The median; null of none. */
export function median(values: readonly number[]): number | null {
  const sorted = [...values].sort((a, b) => a - b);
  const upper = sorted[Math.floor(sorted.length / 2)];
  const lower = sorted[Math.ceil(sorted.length / 2) - 1];
  return upper === undefined || lower === undefined ? null : (upper + lower) / 2;
}
