/** Problems as data for other programs. What is asked and what is answered are two things, and are made apart. */

import { type Answer, answerText } from "./answer.ts";
import { opaqueId } from "./opaque-id.ts";
import type { Problem } from "./problem.ts";
import type { ProblemSet } from "./problem-set.ts";
import { DONT_KNOW, letteredOptions, optionText, type SheetAnswer, sheetProblem } from "./sheet.ts";

export interface ProblemData {
  readonly number: number;
  readonly code: string;
  readonly mode: string;
  readonly title: string;
  readonly question: string;
  readonly given: readonly { readonly label: string; readonly value: string }[];
  /** The views that are shown, in words; what they hide is only named as covered. */
  readonly views: readonly { readonly view: string; readonly says: string }[];
  /** Empty where the answer is told; the last is "I don't know yet". */
  readonly options: readonly { readonly id: string; readonly text: string }[];
  /** How the answer is told; null where it is chosen. */
  readonly tell: Exclude<SheetAnswer, { kind: "options" }> | null;
}

/** The problems without their answers. `says` words a view of a problem, with its covers. */
export const problemData = (
  { problems }: Pick<ProblemSet, "problems">,
  says: (problem: Problem, view: Problem["case"]["views"][number]) => string,
): readonly ProblemData[] =>
  problems.map((problem, at) => {
    const { number, code, mode, title, question, given, answer } = sheetProblem(problem, at + 1);
    return {
      number,
      code,
      mode,
      title,
      question,
      given,
      views: problem.case.views.map((view) => ({ view, says: says(problem, view) })),
      options:
        answer.kind === "options"
          ? [...optionIds(problem), { id: opaqueId(code, DONT_KNOW), text: DONT_KNOW }]
          : [],
      tell: answer.kind === "options" ? null : answer,
    };
  });

const optionIds = (problem: Problem) =>
  letteredOptions(problem).map((option) => ({
    id: opaqueId(problem.code, option.letter),
    text: optionText(problem, option),
  }));

export interface KeyData {
  readonly number: number;
  readonly code: string;
  readonly answer: Answer;
  readonly text: string;
  readonly tolerance: Problem["case"]["tolerance"];
  readonly skills: readonly string[];
  /** Of the options: which is right, and which slips each wrong one tells. */
  readonly options: readonly {
    readonly id: string;
    readonly right: boolean;
    readonly slips: readonly string[];
  }[];
  /** Of every slip that answers wrongly here, its answer. */
  readonly slips: readonly { readonly slip: string; readonly answer: Answer; readonly text: string }[];
  readonly steps: readonly string[];
}

/** The key of the same problems. */
export const keyData = ({ problems }: Pick<ProblemSet, "problems">): readonly KeyData[] =>
  problems.map((problem, at) => {
    const { code, truth, form, slipAnswers } = problem;
    const chosen = sheetProblem(problem, at + 1).answer.kind === "options";
    return {
      number: at + 1,
      code,
      answer: truth,
      text: answerText(truth),
      tolerance: problem.case.tolerance,
      skills: form.skills,
      options: chosen
        ? letteredOptions(problem).map(({ letter, answer, slips }) => ({
            id: opaqueId(code, letter),
            right: answer === truth,
            slips,
          }))
        : [],
      slips: slipAnswers.map(({ slip, answer }) => ({ slip, answer, text: answerText(answer) })),
      steps: problem.case.steps(),
    };
  });
