/**
 * Half a mark: the right rule with a digit carried wrongly. Common practice among markers; not evidence of any mistaken idea. Only where an
 * answer is told, since who picks an option works nothing out in writing.
 */

import { type Answer, apart, type Tolerance } from "../answer.ts";

/** A ten or a hundred carried wrongly, on the reciprocal's way (add 200, take 20 off) too: 236 or 346 for 246. */
const MISCARRIED_DEG = [10, 20, 100, 200] as const;
const MISCARRIED_VALUE = [10, 100] as const;
/** In tolerances: nearer, an answer that is merely inexact could not be told from a carried digit. */
const LEAST_APART = 3;

/** Whether a wrong answer is the right one but for a digit carried wrongly. */
export function isMiscarried(answer: Answer, truth: Answer, tolerance: Tolerance): boolean {
  const sizes = truth.kind === "direction" ? MISCARRIED_DEG : MISCARRIED_VALUE;
  return sizes
    .flatMap((size) => [size, -size])
    .some((by) => {
      const carried = shifted(truth, by);
      return (
        carried !== null &&
        apart(carried, truth, tolerance) >= LEAST_APART &&
        apart(answer, carried, tolerance) <= 1
      );
    });
}

function shifted(truth: Answer, by: number): Answer | null {
  if (truth.kind === "direction") return { ...truth, deg: truth.deg + by };
  return truth.kind === "quantity" ? { ...truth, value: truth.value + by } : null;
}
