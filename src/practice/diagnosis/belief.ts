/**
 * What is held probable of a learner, and how an answer changes it: Bayes' rule over every hypothesis, exactly. A belief is a value;
 * each step gives a new one.
 */

import { firedOptionsOf, firedPatterns, keysOfSets } from "./fired-patterns.ts";
import { type HypothesisSpace, MOST_SLIPS_HELD, placeInScope } from "./hypotheses.ts";
import type { ItemAnswer, ItemEvidence } from "./item-evidence.ts";
import { DONT_KNOW_FACTOR, optionChance, settledHabits, UNSETTLED } from "./likelihood.ts";

/** Share of the prior that comes back between sessions, since beliefs come back. Our own judgement. */
const PRIOR_BACK = 0.05;
/** Share of a slip's mass that a remedy seen, and the right prediction after it, take away. Our own judgement. */
const REMEDY_TAKES = 0.5;

export interface Belief<Slip extends string = string> {
  readonly space: HypothesisSpace<Slip>;
  /** Probability of every hypothesis, in the order of `space`; sums to 1. */
  readonly mass: Readonly<Float64Array>;
}

/** What is believed of a learner who has answered nothing. */
export const priorBelief = <Slip extends string>(space: HypothesisSpace<Slip>): Belief<Slip> => ({
  space,
  mass: space.prior,
});

/**
 * The belief after one answer. Throws RangeError when the pick is not an option of the item.
 *
 * How sure the learner is changes how a settled one is taken to answer; it is no evidence of its own.
 */
export function afterAnswer<Slip extends string>(
  { space, mass }: Belief<Slip>,
  item: ItemEvidence<Slip>,
  answer: ItemAnswer,
): Belief<Slip> {
  const next = answerFactors(space, item, answer);
  for (let at = 0; at < next.length; at++) next[at] = (next[at] as number) * (mass[at] as number);
  return { space, mass: normalised(next) };
}

/**
 * By how much an answer multiplies the probability of every hypothesis, before their sum is brought to 1 again; always over 0. Throws
 * RangeError when the pick is not an option of the item.
 */
export function answerFactors<Slip extends string>(
  space: HypothesisSpace<Slip>,
  item: ItemEvidence<Slip>,
  { pick, confidence }: ItemAnswer,
): Float64Array {
  const patterns = firedPatterns(space.slips, item);
  if (pick !== "dont-know" && !(Number.isInteger(pick) && pick >= 0 && pick < item.optionCount))
    throw new RangeError(`pick is option ${pick}; the item has options 0..${item.optionCount - 1}`);
  const settled = new Float64Array(patterns.keyCount);
  const unsettled = new Float64Array(patterns.keyCount);
  const habits = settledHabits(confidence);
  for (let key = 0; key < patterns.keyCount; key++) {
    const fired = firedOptionsOf(patterns, key);
    if (pick === "dont-know") {
      settled[key] = fired.length > 0 ? DONT_KNOW_FACTOR.settledFired : DONT_KNOW_FACTOR.settledSilent;
      unsettled[key] = DONT_KNOW_FACTOR.unsettled;
    } else {
      settled[key] = optionChance(habits, item.optionCount, fired, pick);
      unsettled[key] = optionChance(UNSETTLED, item.optionCount, fired, pick);
    }
  }
  const keys = keysOfSets(space, patterns);
  const { setCount } = space;
  const factors = new Float64Array(2 * setCount);
  for (let set = 0; set < setCount; set++) {
    const key = keys[set] as number;
    factors[set] = settled[key] as number;
    factors[setCount + set] = unsettled[key] as number;
  }
  return factors;
}

/** The belief after all answers, in any order: evidence commutes. */
export const afterAnswers = <Slip extends string>(
  belief: Belief<Slip>,
  answered: readonly { readonly item: ItemEvidence<Slip>; readonly answer: ItemAnswer }[],
): Belief<Slip> => answered.reduce((so, { item, answer }) => afterAnswer(so, item, answer), belief);

/**
 * The belief after a slip's remedy has been shown and the prediction that followed was right: half of what speaks for each set with
 * the slip goes to the set without it. Throws RangeError for a slip out of scope.
 */
export function afterRemedy<Slip extends string>({ space, mass }: Belief<Slip>, slip: Slip): Belief<Slip> {
  const place = placeInScope(space, slip);
  const { members, setCount } = space;
  const setAt = new Map<string, number>();
  for (let set = 0; set < setCount; set++) setAt.set(membersOf(members, set).join(), set);
  const next = Float64Array.from(mass);
  for (let set = 0; set < setCount; set++) {
    const held = membersOf(members, set);
    if (!held.includes(place)) continue;
    const without = setAt.get([...held.filter((member) => member !== place), space.slips.length].join()) ?? 0;
    for (const half of [0, setCount]) {
      const moved = (mass[half + set] as number) * REMEDY_TAKES;
      next[half + set] = (next[half + set] as number) - moved;
      next[half + without] = (next[half + without] as number) + moved;
    }
  }
  return { space, mass: next };
}

const membersOf = (members: Readonly<Uint8Array>, set: number): number[] =>
  Array.from(members.subarray(set * MOST_SLIPS_HELD, (set + 1) * MOST_SLIPS_HELD));

/** The belief at the next session: a twentieth of the prior comes back. */
export const atNextSession = <Slip extends string>({ space, mass }: Belief<Slip>): Belief<Slip> => ({
  space,
  mass: mass.map((now, at) => (1 - PRIOR_BACK) * now + PRIOR_BACK * (space.prior[at] as number)),
});

/** The probability that each slip of the scope is held, in the scope's order, 0..1. */
export function slipBeliefs({ space, mass }: Belief): Float64Array {
  const { members, setCount, slips } = space;
  const beliefs = new Float64Array(slips.length + 1);
  for (let set = 0; set < setCount; set++) {
    const both = (mass[set] as number) + (mass[setCount + set] as number);
    for (let at = set * MOST_SLIPS_HELD; at < (set + 1) * MOST_SLIPS_HELD; at++) {
      const member = members[at] as number;
      beliefs[member] = (beliefs[member] as number) + both;
    }
  }
  // The last one counted the empty places.
  return beliefs.slice(0, slips.length).map((belief) => Math.min(1, belief));
}

/** The probability that the learner is unsettled, 0..1. */
export function unsettledBelief({ space, mass }: Belief): number {
  let sum = 0;
  for (let at = space.setCount; at < mass.length; at++) sum += mass[at] as number;
  return Math.min(1, sum);
}

function normalised(mass: Float64Array): Float64Array {
  let sum = 0;
  for (const one of mass) sum += one;
  for (let at = 0; at < mass.length; at++) mass[at] = (mass[at] as number) / sum;
  return mass;
}
