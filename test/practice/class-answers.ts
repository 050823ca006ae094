/** A class on paper: learners who hold known ideas answer a set, as an instructor would type it in. */

import { chance } from "../../src/practice/chance.ts";
import {
  answerText,
  apart,
  functionsWith,
  letteredOptions,
  type Problem,
  type ProblemSet,
  type SlipId,
  sheetProblem,
  slipOf,
} from "../../src/practice/index.ts";

export interface PaperLearner {
  readonly name: string;
  readonly holds: readonly SlipId[];
  /** Picks by chance alone. */
  readonly guesses?: true;
}

/** What a learner writes for a problem: the letter of an option, or the answer itself. */
function written(
  problem: Problem,
  { holds, guesses }: PaperLearner,
  random: ReturnType<typeof chance>,
): string {
  // As on the sheet: words that may be told have letters too.
  const options = sheetProblem(problem, 1).answer.kind === "options" ? letteredOptions(problem) : null;
  if (guesses) return options === null ? "?" : random.pick(options).letter;
  // The first idea that bears on the problem answers it.
  const answer =
    holds
      .map((slip) => problem.case.answer(functionsWith([slipOf(slip).patch])))
      .find((own) => own !== null && apart(own, problem.truth, problem.case.tolerance) > 1) ?? problem.truth;
  if (options === null) return answerText(answer);
  const option = options.find((one) => apart(answer, one.answer, problem.case.tolerance) <= 1);
  return option?.letter ?? "?";
}

/** The rows of a pile, header first. */
export function classAnswers(set: ProblemSet, learners: readonly PaperLearner[], seed = 1): string {
  const random = chance(seed);
  return [
    "learner,problem,answer",
    ...learners.flatMap((learner) =>
      set.problems.map(
        (problem, at) =>
          `"${learner.name}",${at % 2 === 0 ? at + 1 : problem.code},"${written(problem, learner, random)}"`,
      ),
    ),
  ].join("\r\n");
}
