/**
 * What one learner gets back of a marked pile: his own answers and the next thing to do, and nothing of anybody else. Ideas are named only
 * where the diagnosis has foretold this class's last answers better than plain difficulty does.
 */

import { formOf } from "../forms/index.ts";
import type { ProblemSet } from "../problem-set.ts";
import { keyProblem } from "../sheet-key.ts";
import { skillOf } from "../skills.ts";
import { type SlipId, slipOf } from "../slips.ts";
import type { MarkedLearner, MarkedPile } from "./mark-pile.ts";
import { type MarkedAnswer, sheetItems } from "./mark-row.ts";
import { stepBack } from "./next-thing.ts";

export interface LearnerSheet {
  readonly title: string;
  readonly learner: string;
  readonly marks: number;
  /** Problems of the set. */
  readonly of: number;
  readonly answers: readonly {
    /** Number in the set, or the code of a problem that is not of it. */
    readonly problem: string;
    readonly title: string;
    readonly written: string;
    readonly right: string;
    readonly marks: 0 | 0.5 | 1;
    readonly isDontKnow: boolean;
    /** Names of the ideas that lead to a wrong answer; empty where they may not be named. */
    readonly ideas: readonly string[];
  }[];
  /** Numbers of the set's problems without an answer. */
  readonly unanswered: readonly number[];
  readonly next: string;
}

/** Of the learner of this name, without regard to case; null where there is none. */
export function learnerSheet(set: ProblemSet, pile: MarkedPile, name: string): LearnerSheet | null {
  const wanted = name.trim().replace(/\s+/g, " ").toLowerCase();
  const found = pile.learners.find(({ learner }) => learner.toLowerCase() === wanted);
  if (found === undefined) return null;
  const mayName = pile.foretells?.mayNameSlips === true && found.standing.kind === "slips";
  const itemNamed = sheetItems(set);
  const answers = found.answers.flatMap((answer) => {
    const item = itemNamed(answer.code);
    if (typeof item === "string") return [];
    const { form } = item.problem;
    return [
      {
        problem: problemName(answer),
        title: formOf(form.id).title,
        written: answer.written,
        right: keyProblem(item.problem, answer.number ?? 0).right,
        marks: answer.marks,
        isDontKnow: answer.verdict === "dont-know",
        ideas: mayName ? answer.slips.map((slip) => slipOf(slip).name) : [],
      },
    ];
  });
  const answered = new Set(found.answers.map(({ number }) => number));
  return {
    title: set.title,
    learner: found.learner,
    marks: found.marks,
    of: set.problems.length,
    answers,
    unanswered: set.problems.map((_, at) => at + 1).filter((number) => !answered.has(number)),
    next: nextForLearner(set, found),
  };
}

const problemName = ({ number, code }: MarkedAnswer): string => (number === null ? code : String(number));

/** As said to the learner: what is so, without the name of what he may have in mind. */
function nextForLearner(set: ProblemSet, { standing, answers, next }: MarkedLearner): string {
  if (standing.kind === "just-guessing") {
    const back = stepBack(set);
    return back === null ? "Go through worked problems together." : `Go back to “${skillOf(back).title}”.`;
  }
  const held = (word: "likely" | "maybe"): SlipId | undefined =>
    standing.slips.find((slip) => slip.standing === word)?.slip;
  const likely = held("likely");
  if (likely !== undefined) return slipOf(likely).refutation;
  const maybe = held("maybe");
  const followed = answers.find(({ slips }) => maybe !== undefined && slips.includes(maybe));
  if (followed !== undefined) return `Try another problem like ${problemName(followed)}.`;
  return next;
}
