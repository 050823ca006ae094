/** What an instructor wants to know of a pile first: the idea to reteach, who is stuck or guessing, whether the class may go on. */

import { firedSlips, type ProblemSet } from "../problem-set.ts";
import { SLIPS, type SlipId } from "../slips.ts";
import type { MarkedLearner } from "./mark-pile.ts";
import { type LearnerEvidence, type Readiness, readinessOf } from "./readiness.ts";

export interface ClassSlip {
  readonly slip: SlipId;
  /** Learners, in the order of the pile. */
  readonly likely: readonly string[];
  readonly maybe: readonly string[];
  /** Numbers of the set's problems that tell it from the truth. */
  readonly problems: readonly number[];
}

export interface ClassView {
  readonly learnerCount: number;
  /** Ideas that anyone likely or maybe holds, the one to reteach first at the head. */
  readonly slips: readonly ClassSlip[];
  readonly justGuessing: readonly string[];
  readonly stuck: readonly string[];
  readonly readiness: Readiness | null;
  /** Every learner with a named idea once, under the one of his that most of the class share. */
  readonly groups: readonly { readonly slip: SlipId; readonly learners: readonly string[] }[];
}

export function classView(
  set: ProblemSet,
  learners: readonly MarkedLearner[],
  evidence: readonly LearnerEvidence[],
): ClassView {
  const slips = classSlips(set, learners);
  const named = (isOne: (learner: MarkedLearner) => boolean): readonly string[] =>
    learners.filter(isOne).map(({ learner }) => learner);
  return {
    learnerCount: learners.length,
    slips,
    justGuessing: named(({ standing }) => standing.kind === "just-guessing"),
    stuck: named(({ isStuck }) => isStuck),
    readiness: readinessOf(set, evidence),
    groups: groupsOf(slips),
  };
}

/** Most learners who likely hold it first, then most who may; in the slips' order where equal. */
function classSlips(set: ProblemSet, learners: readonly MarkedLearner[]): readonly ClassSlip[] {
  const holding = (slip: SlipId, word: "likely" | "maybe"): readonly string[] =>
    learners
      .filter(
        ({ standing }) =>
          standing.kind === "slips" &&
          standing.slips.some((one) => one.slip === slip && one.standing === word),
      )
      .map(({ learner }) => learner);
  return SLIPS.map(({ id }) => ({
    slip: id,
    likely: holding(id, "likely"),
    maybe: holding(id, "maybe"),
    problems: set.problems.flatMap((problem, at) => (firedSlips(problem).includes(id) ? [at + 1] : [])),
  }))
    .filter(({ likely, maybe }) => likely.length + maybe.length > 0)
    .sort((one, other) => other.likely.length - one.likely.length || other.maybe.length - one.maybe.length);
}

/** Who likely holds an idea goes before who may. */
function groupsOf(slips: readonly ClassSlip[]): ClassView["groups"] {
  const placed = new Set<string>();
  const groups = new Map<SlipId, string[]>(slips.map(({ slip }) => [slip, []]));
  for (const word of ["likely", "maybe"] as const)
    for (const one of slips)
      for (const learner of one[word]) {
        if (placed.has(learner)) continue;
        placed.add(learner);
        groups.get(one.slip)?.push(learner);
      }
  return [...groups]
    .map(([slip, learners]) => ({ slip, learners }))
    .filter(({ learners }) => learners.length > 0);
}
