/** What an item is expected to tell: the mutual information between the hypotheses and the answer (Wang 2013 chooses by it). */

import type { Belief } from "./belief.ts";
import { firedOptionsOf, firedPatterns, massByPattern } from "./fired-patterns.ts";
import { heldTogether } from "./held-together.ts";
import type { ItemEvidence } from "./item-evidence.ts";
import { optionChance, settledHabits, UNSETTLED } from "./likelihood.ts";

export interface Forecast {
  /** The chance of each option, option 0 the truth; they sum to 1. "I don't know yet" is left out. */
  readonly optionChances: Readonly<Float64Array>;
  /** Expected fall of the entropy over all hypotheses, 0 or more, in bits. */
  readonly informationBits: number;
}

/**
 * Foretells items by a belief: what the learner is expected to answer, and how much that answer is expected to tell. What it gives throws
 * RangeError as `optionsOfScope` does.
 */
export function forecaster<Slip extends string>(
  belief: Belief<Slip>,
): (item: ItemEvidence<Slip>) => Forecast {
  const { space } = belief;
  const held = heldTogether(belief);
  const settledLearner = settledHabits(null);
  return (item) => {
    const patterns = firedPatterns(space.slips, item);
    const settled = massByPattern(space, patterns, held.settled);
    const unsettled = massByPattern(space, patterns, held.unsettled);
    const { optionCount, keyCount } = patterns;
    const optionChances = new Float64Array(optionCount);
    let expectedBits = 0;
    const add = (mass: number, option: number, chance: number): void => {
      optionChances[option] = (optionChances[option] as number) + mass * chance;
      expectedBits += mass * surpriseBits(chance);
    };
    for (let key = 0; key < keyCount; key++) {
      const ifSettled = settled[key] as number;
      const ifUnsettled = unsettled[key] as number;
      if (ifSettled + ifUnsettled === 0) continue;
      const fired = firedOptionsOf(patterns, key);
      for (let option = 0; option < optionCount; option++) {
        add(ifSettled, option, optionChance(settledLearner, optionCount, fired, option));
        add(ifUnsettled, option, optionChance(UNSETTLED, optionCount, fired, option));
      }
    }
    const bits = optionChances.reduce((sum, chance) => sum + surpriseBits(chance), 0);
    return { optionChances, informationBits: Math.max(0, bits - expectedBits) };
  };
}

/** One option's part of an entropy, in bits. */
const surpriseBits = (chance: number): number => (chance > 0 ? -chance * Math.log2(chance) : 0);
