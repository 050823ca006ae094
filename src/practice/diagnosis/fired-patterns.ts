/**
 * Hypotheses grouped by what they say of one item. All that counts of a set of slips is which options its firing slips pick, so the
 * thousands of sets fall into a few dozen patterns, and sums over hypotheses become sums over patterns.
 *
 * A pattern's key has a digit for every slip of the set, base `digitCount`: digit 0 for a silent slip, otherwise 1 + its option's
 * place in `firedOptions`.
 */

import type { HeldTogether } from "./held-together.ts";
import { type HypothesisSpace, MOST_SLIPS_HELD } from "./hypotheses.ts";
import { type ItemEvidence, optionsOfScope } from "./item-evidence.ts";

export interface FiredPatterns {
  readonly optionCount: number;
  /** The different options that slips in scope pick, `optionCount` among them when an answer is not on offer. */
  readonly firedOptions: readonly number[];
  /** Places in the scope of the slips that fire. */
  readonly firing: readonly number[];
  /** Of each slip of the scope, and one more for "no further slip", which is 0. */
  readonly digits: Uint32Array;
  readonly digitCount: number;
  /** Keys lie in 0 .. keyCount - 1. */
  readonly keyCount: number;
}

/** How the slips of a scope fall on an item's options. Throws RangeError as `optionsOfScope` does. */
export function firedPatterns<Slip extends string>(
  slips: readonly Slip[],
  item: ItemEvidence<Slip>,
): FiredPatterns {
  const firedOptions: number[] = [];
  const firing: number[] = [];
  const digits = new Uint32Array(slips.length + 1);
  optionsOfScope(slips, item).forEach((option, slip) => {
    if (option === 0) return;
    firing.push(slip);
    const place = firedOptions.indexOf(option);
    digits[slip] = place >= 0 ? place + 1 : firedOptions.push(option);
  });
  const digitCount = firedOptions.length + 1;
  const { optionCount } = item;
  return { optionCount, firedOptions, firing, digits, digitCount, keyCount: digitCount ** MOST_SLIPS_HELD };
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

/** Each set's key, in the order of the space. */
export function keysOfSets(
  { setCount, members }: HypothesisSpace,
  { digits, digitCount }: FiredPatterns,
): Uint32Array {
  const keys = new Uint32Array(setCount);
  for (let set = 0, at = 0; set < setCount; set++, at += MOST_SLIPS_HELD) {
    const first = digits[members[at] as number] as number;
    const second = digits[members[at + 1] as number] as number;
    const third = digits[members[at + 2] as number] as number;
    keys[set] = (first * digitCount + second) * digitCount + third;
  }
  return keys;
}

/**
 * The mass of every pattern, by key. Of the firing slips a set holds none, one, two or three: what holds just those is what holds
 * them at all, less what holds a further firing slip.
 */
export function massByPattern(
  space: HypothesisSpace,
  { firing, digits, digitCount, keyCount }: FiredPatterns,
  { total, one, two, mass }: HeldTogether,
): Float64Array {
  const sums = new Float64Array(keyCount);
  const slipCount = space.slips.length;
  const justOne = firing.map((slip) => one[slip] as number);
  let none = total;
  const give = (key: number, value: number): void => {
    // Where nothing is left, rounding may leave less than nothing.
    const given = Math.max(0, value);
    sums[key] = (sums[key] as number) + given;
    none -= given;
  };
  const justTwo = new Float64Array(firing.length ** 2);
  for (let i = 0; i < firing.length; i++)
    for (let j = i + 1; j < firing.length; j++) {
      const pair = (firing[i] as number) * slipCount + (firing[j] as number);
      justTwo[i * firing.length + j] = two[pair] as number;
    }
  for (let i = 0; i < firing.length; i++)
    for (let j = i + 1; j < firing.length; j++) {
      const a = firing[i] as number;
      const b = firing[j] as number;
      const firstThree = (space.firstThree[a * slipCount + b] as number) - b - 1;
      const keyAb = ((digits[a] as number) * digitCount + (digits[b] as number)) * digitCount;
      for (let k = j + 1; k < firing.length; k++) {
        const c = firing[k] as number;
        const value = mass[firstThree + c] as number;
        give(keyAb + (digits[c] as number), value);
        take(justTwo, i * firing.length + j, value);
        take(justTwo, i * firing.length + k, value);
        take(justTwo, j * firing.length + k, value);
        take(justOne, i, value);
        take(justOne, j, value);
        take(justOne, k, value);
      }
    }
  for (let i = 0; i < firing.length; i++)
    for (let j = i + 1; j < firing.length; j++) {
      const value = justTwo[i * firing.length + j] as number;
      give(
        (digits[firing[i] as number] as number) * digitCount + (digits[firing[j] as number] as number),
        value,
      );
      take(justOne, i, value);
      take(justOne, j, value);
    }
  for (let i = 0; i < firing.length; i++) give(digits[firing[i] as number] as number, justOne[i] as number);
  sums[0] = Math.max(0, none);
  return sums;
}

const take = (from: number[] | Float64Array, at: number, value: number): void => {
  from[at] = (from[at] as number) - value;
};
