/** Choosing the next problem: the learner waits for it. Problems of every form, with their options chosen for the learner anew. */

import {
  afterAnswer,
  chance,
  generatedSource,
  hypothesisSpace,
  nextProblem,
  priorBelief,
  SLIPS,
  slipBeliefs,
} from "../src/practice/index.ts";
import { islesWorld } from "./isles-world.ts";
import { quickestMs } from "./rate.ts";

const RUNS = 30;
const PROBLEMS_OF_A_FORM = 20;
/** So many items answered before, so that the belief is a learner's, not the prior. */
const ANSWERED = 8;
const SESSION = { forms: [], lastPlace: null, medianTimeS: null };

/** Lines of the report. */
export const diagnosis = (): string[] => [
  line("the next of 24 problems, 12 slips in scope     ", 12, 24),
  line("the next of 40 problems, 40 slips in scope     ", 40, 40),
];

function line(words: string, slipCount: number, candidateCount: number): string {
  const scope = SLIPS.slice(0, slipCount).map(({ id, base }) => ({ id, base }));
  const space = hypothesisSpace(scope);
  const ids = scope.map(({ id }) => id);
  const source = generatedSource(islesWorld(), ids, {
    mode: "choose",
    perForm: PROBLEMS_OF_A_FORM,
    seed: 1,
  });
  const luck = chance(1);
  let belief = priorBelief(space);
  const fresh = () => {
    const beliefs = slipBeliefs(belief);
    return source.candidates(candidateCount, luck, (slip) => beliefs[ids.indexOf(slip)] ?? 0);
  };
  for (const { item } of fresh().slice(0, ANSWERED))
    belief = afterAnswer(belief, item, { pick: luck.integer(0, item.optionCount - 1), confidence: null });
  const candidates = fresh();
  const chooseMs = quickestMs(RUNS, () => nextProblem(belief, candidates, SESSION));
  const [first] = candidates;
  if (first === undefined) throw new Error("the source of problems gave none");
  const updateMs = quickestMs(RUNS, () =>
    slipBeliefs(afterAnswer(belief, first.item, { pick: 0, confidence: null })),
  );
  return `${words}${chooseMs.toFixed(2)} ms, and an answer taken in ${updateMs.toFixed(2)} ms`;
}
