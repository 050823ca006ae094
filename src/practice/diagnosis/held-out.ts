/**
 * Whether diagnosis may name slips to a real class: only when it foretells answers it has not seen better than plain difficulty does.
 */

import { afterAnswers, priorBelief } from "./belief.ts";
import { groupedBy } from "./grouped-by.ts";
import type { HypothesisSpace } from "./hypotheses.ts";
import { forecaster } from "./information.ts";
import { isRight } from "./item-evidence.ts";
import { type LoggedAnswer, statisticsKey } from "./item-statistics.ts";

/** Of each learner the last answers that are kept from the model. */
const HELD_OUT = 5;

export interface HeldOutResult {
  /** Answers foretold; "I don't know yet" is no pick and is left out. */
  readonly answers: number;
  /** Mean surprise at what was picked, in bits: 0 is foresight, and less is better. */
  readonly modelBits: number;
  /** The same by the share right of each kind of item, its wrong options alike. */
  readonly facilityBits: number;
  readonly mayNameSlips: boolean;
}

/** Foretells the last five answers of each learner from those before. `log` in the order answered. Null when none can be foretold. */
export function heldOut<Slip extends string>(
  space: HypothesisSpace<Slip>,
  log: readonly LoggedAnswer<Slip>[],
): HeldOutResult | null {
  const learners = [...groupedBy(log, ({ learner }) => learner).values()].filter(
    (answers) => answers.length > HELD_OUT,
  );
  const facility = facilities(learners.flatMap((answers) => answers.slice(0, -HELD_OUT)));
  let answers = 0;
  let modelBits = 0;
  let facilityBits = 0;
  for (const own of learners) {
    const belief = afterAnswers(priorBelief(space), own.slice(0, -HELD_OUT));
    const foretell = forecaster(belief);
    for (const one of own.slice(-HELD_OUT)) {
      const { item, answer } = one;
      if (answer.pick === "dont-know") continue;
      const right = facility(one);
      const plain = isRight(answer) ? right : (1 - right) / (item.optionCount - 1);
      answers += 1;
      modelBits -= Math.log2(foretell(item).optionChances[answer.pick] ?? 0);
      facilityBits -= Math.log2(plain);
    }
  }
  if (answers === 0) return null;
  return {
    answers,
    modelBits: modelBits / answers,
    facilityBits: facilityBits / answers,
    mayNameSlips: modelBits < facilityBits,
  };
}

/** The share right of a kind of item among the picks seen, as if one right and one wrong had been seen before (Laplace's rule). */
function facilities(seen: readonly LoggedAnswer[]): (one: LoggedAnswer) => number {
  const picks = groupedBy(
    seen.filter(({ answer }) => answer.pick !== "dont-know"),
    statisticsKey,
  );
  return (one) => {
    const group = picks.get(statisticsKey(one)) ?? [];
    return (group.filter(({ answer }) => isRight(answer)).length + 1) / (group.length + 2);
  };
}
