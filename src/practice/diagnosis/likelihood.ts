/**
 * How likely each option is for a learner of whom it is known which slips he holds. In the family of models that diagnose by
 * misconception: Junker and Sijtsma 2001; Kuo, Chen and de la Torre 2018. The figures are our own judgement.
 */

import type { Confidence } from "./item-evidence.ts";

export interface AnsweringHabits {
  /** Share of items on which a learner follows a slip that fires, 0..1. */
  readonly followsSlip: number;
  /** Share of wrong answers where no slip held fires, 0..1. */
  readonly careless: number;
  /** Where a slip fires but is not followed: share of blind guesses, the rest being right, 0..1. */
  readonly guesses: number;
}

const SETTLED: AnsweringHabits = { followsSlip: 0.8, careless: 0.08, guesses: 0.3 };
const SETTLED_AND_SURE: AnsweringHabits = { followsSlip: 0.9, careless: 0.04, guesses: 0.3 };
const SETTLED_BUT_GUESSING: AnsweringHabits = { followsSlip: 0.5, careless: 0.08, guesses: 0.3 };
/** Nearly as a blind guesser whatever he says of it: confidence changes nothing here. */
export const UNSETTLED: AnsweringHabits = { followsSlip: 0.35, careless: 0.6, guesses: 0.8 };

/** How a settled learner answers who has said how sure he is. */
export function settledHabits(confidence: Confidence | null): AnsweringHabits {
  if (confidence === "sure") return SETTLED_AND_SURE;
  if (confidence === "guess") return SETTLED_BUT_GUESSING;
  return SETTLED;
}

/** "I don't know yet" says little of slips: factors by kind of learner, and by whether a slip of his fires. */
export const DONT_KNOW_FACTOR = { unsettled: 1.3, settledFired: 1, settledSilent: 0.5 } as const;

/**
 * The chance of one option, 0..1; over all options of the item they sum to 1.
 * @param fired the options of the slips held that differ from the truth here, `optionCount` for one not on offer; none when empty
 */
export function optionChance(
  habits: AnsweringHabits,
  optionCount: number,
  fired: readonly number[],
  option: number,
): number {
  const { followsSlip, careless, guesses } = habits;
  if (fired.length === 0) return option === 0 ? 1 - careless : careless / (optionCount - 1);
  let followed = 0;
  for (const slipOption of fired) {
    if (slipOption === option) followed += 1;
    else if (slipOption === optionCount) followed += option === 0 ? 0.5 : 0.5 / (optionCount - 1);
  }
  const unfollowed = (option === 0 ? 1 - guesses : 0) + guesses / optionCount;
  return (followsSlip * followed) / fired.length + (1 - followsSlip) * unfollowed;
}
