/**
 * Hypotheses grouped by what they say of one item. All that counts of a set of slips is which options its firing slips pick, so the
 * thousands of sets fall into a few dozen patterns, and sums over hypotheses become sums over patterns.
 *
 * A pattern's key has a digit for every slip of the set, base `digitCount`: digit 0 for a silent slip, otherwise 1 + its option's
 * place in `firedOptions`.
 */

import { type HypothesisSpace, MOST_SLIPS_HELD } from "./hypotheses.ts";
import { type ItemEvidence, optionsOfScope } from "./item-evidence.ts";

export interface FiredPatterns {
  readonly optionCount: number;
  /** The different options that slips in scope pick, `optionCount` among them when an answer is not on offer. */
  readonly firedOptions: readonly number[];
  readonly digitCount: number;
  /** Keys lie in 0 .. keyCount - 1. */
  readonly keyCount: number;
  /** Each set's key. */
  readonly keys: Uint32Array;
}

/** How the hypotheses of a space fall on an item's options. Throws RangeError as `optionsOfScope` does. */
export function firedPatterns<Slip extends string>(
  { slips, setCount, members }: HypothesisSpace<Slip>,
  item: ItemEvidence<Slip>,
): FiredPatterns {
  const firedOptions: number[] = [];
  // One digit more than there are slips, 0 for "no further slip".
  const digits = new Uint32Array(slips.length + 1);
  optionsOfScope(slips, item).forEach((option, slip) => {
    if (option === 0) return;
    const place = firedOptions.indexOf(option);
    digits[slip] = place >= 0 ? place + 1 : firedOptions.push(option);
  });
  const digitCount = firedOptions.length + 1;
  const keys = new Uint32Array(setCount);
  for (let set = 0, at = 0; set < setCount; set++, at += MOST_SLIPS_HELD) {
    const first = digits[members[at] as number] as number;
    const second = digits[members[at + 1] as number] as number;
    const third = digits[members[at + 2] as number] as number;
    keys[set] = (first * digitCount + second) * digitCount + third;
  }
  return { optionCount: item.optionCount, firedOptions, digitCount, keyCount: digitCount ** 3, keys };
}

/** The options that the firing slips of a pattern pick, none for a pattern in which all are silent. */
export function firedOptionsOf({ firedOptions, digitCount }: FiredPatterns, key: number): number[] {
  const fired: number[] = [];
  for (let rest = key; rest > 0; rest = Math.floor(rest / digitCount)) {
    const digit = rest % digitCount;
    if (digit > 0) fired.push(firedOptions[digit - 1] ?? 0);
  }
  return fired;
}

/** The mass of the settled and of the unsettled hypotheses of every pattern, by key. */
export function massByPattern({ keys, keyCount }: FiredPatterns, mass: Readonly<Float64Array>) {
  const settled = new Float64Array(keyCount);
  const unsettled = new Float64Array(keyCount);
  const setCount = keys.length;
  for (let set = 0; set < setCount; set++) {
    const key = keys[set] as number;
    settled[key] = (settled[key] as number) + (mass[set] as number);
    unsettled[key] = (unsettled[key] as number) + (mass[setCount + set] as number);
  }
  return { settled, unsettled };
}
