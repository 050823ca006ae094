/** One row of a pile: the problem it names, what was written, and what that is worth. */

import { type Answer, apart } from "../answer.ts";
import type { ItemAnswer, LoggedAnswer } from "../diagnosis/index.ts";
import { type Evidence, evidenceOf, mark, type Verdict } from "../mark.ts";
import { type Options, optionsOf } from "../options.ts";
import type { Problem } from "../problem.ts";
import { openProblem, type ProblemSet } from "../problem-set.ts";
import { sheetAnswer } from "../sheet.ts";
import type { SlipId } from "../slips.ts";
import { OPTION_LETTERS, readTypedAnswer } from "../typed-answer.ts";
import type { AnswerRow } from "./answer-sheet.ts";
import { isMiscarried } from "./half-mark.ts";

/** A problem as it stood on the sheet. */
export interface SheetItem {
  /** In the set, from 1; null for a problem that is not of the set but was made on its stations. */
  readonly number: number | null;
  readonly problem: Problem;
  /** Those with letters on the sheet; null where the answer is written. */
  readonly options: Options | null;
  readonly evidence: Evidence;
}

export interface MarkedAnswer {
  readonly line: number;
  readonly number: number | null;
  readonly code: string;
  readonly written: string;
  readonly verdict: Verdict;
  /** 1, or half for a digit carried wrongly, or 0. */
  readonly marks: 0 | 0.5 | 1;
  /** The ideas that explain a wrong answer. */
  readonly slips: readonly SlipId[];
  /** Why it was accepted whatever it says; null where it was not. */
  readonly acceptedBecause: string | null;
}

export interface AnsweredRow {
  readonly marked: MarkedAnswer;
  readonly logged: LoggedAnswer<SlipId>;
  readonly item: SheetItem;
  /** Null where none was given, or none could be read and it was accepted. */
  readonly answer: Answer | null;
}

/** Finds problems by number or code, each made once. A sentence where there is none. */
export function sheetItems(set: ProblemSet): (named: string) => SheetItem | string {
  const byName = new Map<string, SheetItem | string>();
  const byCode = new Map<string, SheetItem>();
  const itemOf = (problem: Problem, number: number | null): SheetItem => {
    const known = byCode.get(problem.code);
    if (known !== undefined) return known;
    // As printed: words that may be told stand on the sheet with letters too.
    const options = sheetAnswer(problem).kind === "options" ? optionsOf(problem) : null;
    const item = { number, problem, options, evidence: evidenceOf(problem, options) };
    byCode.set(problem.code, item);
    return item;
  };
  set.problems.forEach((problem, at) => {
    byName.set(String(at + 1), itemOf(problem, at + 1));
    byName.set(problem.code, itemOf(problem, at + 1));
  });
  return (named) => {
    const known = byName.get(named);
    if (known !== undefined) return known;
    const found = problemNamedBy(set, named);
    const item = typeof found === "string" ? found : itemOf(found, null);
    byName.set(named, item);
    return item;
  };
}

function problemNamedBy(set: ProblemSet, named: string): Problem | string {
  if (/^\d{1,3}$/.test(named))
    return `the set has no problem ${named}; it has ${set.problems.length === 1 ? "one" : `1 to ${set.problems.length}`}`;
  const opened = openProblem(set.world, named);
  return opened.kind === "fault" ? opened.says : opened.problem;
}

/** How a problem is called in a sentence. */
export const itemName = ({ number, problem }: SheetItem): string =>
  number === null ? `problem ${problem.code}` : `problem ${number}`;

/** A row marked, or why it cannot be, in a sentence. `learner`: his name in the log. */
export function markRow(item: SheetItem, row: AnswerRow, learner: string): AnsweredRow | string {
  const { problem, options, evidence, number } = item;
  const typed = readTypedAnswer(problem, options, row.answer);
  const common = {
    line: row.line,
    number,
    code: problem.code,
    written: row.answer,
    acceptedBecause: row.acceptedBecause,
  };
  const answered = (
    marked: Pick<MarkedAnswer, "verdict" | "marks" | "slips">,
    pick: ItemAnswer["pick"],
    answer: Answer | null,
  ): AnsweredRow => ({
    item,
    answer,
    marked: { ...common, ...marked },
    logged: {
      learner,
      form: problem.form.id,
      item: evidence.item,
      answer: { pick, confidence: pick === "dont-know" ? null : row.confidence },
      timeS: row.timeS,
    },
  });
  if (row.acceptedBecause !== null) {
    if (row.answer === "") return `${itemName(item)}: nothing is written that could be accepted`;
    const answer = typed.kind === "answer" ? typed.answer : null;
    return answered({ verdict: "right", marks: 1, slips: [] }, 0, answer);
  }
  if (typed.kind === "dont-know")
    return answered({ verdict: "dont-know", marks: 0, slips: [] }, "dont-know", null);
  if (typed.kind === "unready")
    return `${itemName(item)}: ${options === null || row.answer === "" ? unreadyText(typed.says) : noOption(options, row.answer)}`;
  const { answer } = typed;
  if (options !== null && !isOffered(problem, options, answer))
    return `${itemName(item)}: ${noOption(options, row.answer)}`;
  const { verdict, slips } = mark(problem, { kind: "answer", answer, confidence: row.confidence });
  const isHalf =
    verdict === "wrong" &&
    options === null &&
    slips.length === 0 &&
    isMiscarried(answer, problem.truth, problem.case.tolerance);
  const marks = verdict === "right" ? 1 : isHalf ? 0.5 : 0;
  return answered({ verdict, marks, slips }, evidence.pickOf(answer), answer);
}

const isOffered = ({ case: { tolerance } }: Problem, { options }: Options, answer: Answer): boolean =>
  options.some((option) => apart(answer, option.answer, tolerance) <= 1);

const noOption = ({ options }: Options, written: string): string =>
  `“${written}” is none of the options; write A ${options.length > 2 ? "to" : "or"} ${OPTION_LETTERS[options.length - 1]}, or ? for “I don't know yet”`;

const unreadyText = (says: string): string => says.replace(/\.$/, "").replace(/^N/, "n");
