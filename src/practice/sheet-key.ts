/** The key of a problem set, apart from what the learner sees: the right answer, what each other one tells, and why. */

import { answerText } from "./answer.ts";
import type { Given } from "./form.ts";
import type { Problem } from "./problem.ts";
import type { ProblemCode } from "./problem-code.ts";
import type { ProblemSet } from "./problem-set.ts";
import { heard, letteredOptions, sheetAnswer } from "./sheet.ts";
import { slipOf } from "./slips.ts";

/** An answer in a key, with what it tells. */
export interface KeyAnswer {
  /** Null where there are no options. */
  readonly letter: string | null;
  readonly text: string;
  readonly isRight: boolean;
  /** The mistaken ideas that lead here, as learners hold them. */
  readonly ideas: readonly string[];
}

export interface KeyProblem {
  readonly number: number;
  readonly code: ProblemCode;
  readonly title: string;
  readonly question: string;
  readonly given: readonly Given[];
  /** The letter too where there are options. */
  readonly right: string;
  readonly answers: readonly KeyAnswer[];
  /** How the truth is reached. */
  readonly steps: readonly string[];
}

/** The key of a problem: the right answer, what each other answer tells, and why. */
export function keyProblem(problem: Problem, number: number): KeyProblem {
  const { code, form, truth } = problem;
  const { scene, given, steps } = problem.case;
  const answers = sheetAnswer(problem).kind === "options" ? optionAnswers(problem) : toldAnswers(problem);
  const letter = answers.find(({ isRight }) => isRight)?.letter ?? null;
  const text = answerText(truth);
  return {
    number,
    code,
    title: form.title,
    question: scene.ask,
    given: [...given, ...heard(problem)],
    right: letter === null ? text : `${letter}  ${text}`,
    answers,
    steps: steps(),
  };
}

export const keyProblems = ({ problems }: Pick<ProblemSet, "problems">): readonly KeyProblem[] =>
  problems.map((problem, at) => keyProblem(problem, at + 1));

const optionAnswers = (problem: Problem): readonly KeyAnswer[] =>
  letteredOptions(problem).map(({ letter, text, answer, slips }) => ({
    letter,
    text,
    isRight: answer === problem.truth,
    ideas: slips.map((slip) => slipOf(slip).name),
  }));

/** Without options: every wrong answer that an idea leads to, ideas with one answer together. */
function toldAnswers({ truth, slipAnswers }: Problem): readonly KeyAnswer[] {
  const ideas = new Map<string, string[]>();
  for (const { slip, answer } of slipAnswers) {
    const text = answerText(answer);
    ideas.set(text, [...(ideas.get(text) ?? []), slipOf(slip).name]);
  }
  return [
    { letter: null, text: answerText(truth), isRight: true, ideas: [] },
    ...[...ideas].map(([text, names]) => ({ letter: null, text, isRight: false, ideas: names })),
  ];
}
