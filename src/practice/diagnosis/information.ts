/** What an item is expected to tell: the mutual information between the hypotheses and the answer (Wang 2013 chooses by it). */

import type { Belief } from "./belief.ts";
import { firedOptionsOf, firedPatterns, massByPattern } from "./fired-patterns.ts";
import type { ItemEvidence } from "./item-evidence.ts";
import { optionChance, settledHabits, UNSETTLED } from "./likelihood.ts";

export interface Forecast {
  /** The chance of each option, option 0 the truth; they sum to 1. "I don't know yet" is left out. */
  readonly optionChances: Readonly<Float64Array>;
  /** Expected fall of the entropy over all hypotheses, 0 or more, in bits. */
  readonly informationBits: number;
}

/** What the learner is expected to answer, and how much that answer is expected to tell. Throws RangeError as `optionsOfScope` does. */
export function forecast<Slip extends string>(belief: Belief<Slip>, item: ItemEvidence<Slip>): Forecast {
  const patterns = firedPatterns(belief.space, item);
  const mass = massByPattern(patterns, belief.mass);
  const { optionCount, keyCount } = patterns;
  const optionChances = new Float64Array(optionCount);
  let expectedBits = 0;
  const settledLearner = settledHabits(null);
  for (let key = 0; key < keyCount; key++) {
    const settled = mass.settled[key] as number;
    const unsettled = mass.unsettled[key] as number;
    if (settled + unsettled === 0) continue;
    const fired = firedOptionsOf(patterns, key);
    for (let option = 0; option < optionCount; option++) {
      const ifSettled = optionChance(settledLearner, optionCount, fired, option);
      const ifUnsettled = optionChance(UNSETTLED, optionCount, fired, option);
      optionChances[option] =
        (optionChances[option] as number) + settled * ifSettled + unsettled * ifUnsettled;
      expectedBits += settled * surpriseBits(ifSettled) + unsettled * surpriseBits(ifUnsettled);
    }
  }
  const bits = optionChances.reduce((sum, chance) => sum + surpriseBits(chance), 0);
  return { optionChances, informationBits: Math.max(0, bits - expectedBits) };
}

/** One option's part of an entropy, in bits. */
const surpriseBits = (chance: number): number => (chance > 0 ? -chance * Math.log2(chance) : 0);
