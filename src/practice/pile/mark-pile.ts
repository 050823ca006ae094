/** Marking a pile: every learner's answers to a set, what each most likely has in mind, and what the class needs first. */

import {
  afterAnswers,
  heldOut,
  hypothesisSpace,
  priorBelief,
  type Standing,
  slipBeliefs,
} from "../diagnosis/index.ts";
import type { Verdict } from "../mark.ts";
import type { ProblemSet } from "../problem-set.ts";
import { SLIPS, type SlipId, slipOf } from "../slips.ts";
import type { AnswerRow, AnswerSheet, RefusedRow } from "./answer-sheet.ts";
import { type ClassView, classView } from "./class-view.ts";
import { followedStanding } from "./followed-standing.ts";
import {
  type AnsweredRow,
  itemName,
  type MarkedAnswer,
  markRow,
  type SheetItem,
  sheetItems,
} from "./mark-row.ts";
import { nextThing } from "./next-thing.ts";
import { type PileItem, pileItems } from "./pile-items.ts";

export interface MarkedLearner {
  readonly learner: string;
  /** In the set's order, then those that are not of the set. */
  readonly answers: readonly MarkedAnswer[];
  readonly marks: number;
  readonly right: number;
  readonly half: number;
  readonly wrong: number;
  readonly dontKnow: number;
  /** Problems of the set without an answer from this learner. */
  readonly unanswered: number;
  readonly standing: Standing<SlipId>;
  /** Eight answers or more in a row, in the set's order, of which none is right. */
  readonly isStuck: boolean;
  /** What to do next, one or two sentences. */
  readonly next: string;
}

export interface MarkedPile {
  readonly title: string;
  readonly problemCount: number;
  readonly answerCount: number;
  /** Ideas that some problem of the pile tells from the truth. */
  readonly scope: readonly SlipId[];
  readonly classView: ClassView;
  /** In the order of the pile: no ranking. */
  readonly learners: readonly MarkedLearner[];
  readonly items: readonly PileItem[];
  /** Whether the diagnosis foretold each learner's last answers better than plain difficulty; null where there are too few to tell. */
  readonly foretells: ReturnType<typeof heldOut>;
  /** Answers taken for right by the marker. */
  readonly accepted: readonly { readonly learner: string; readonly answer: MarkedAnswer }[];
  readonly refused: readonly RefusedRow[];
}

const STUCK_AFTER = 8;

/**
 * Marks a pile. Rows that name no problem, hold no answer or answer a second time join those refused before, so that every row is either
 * marked or listed. Names are matched without regard to case and spaces.
 */
export function markPile(set: ProblemSet, { rows, refused: unread }: AnswerSheet): MarkedPile {
  const refused: RefusedRow[] = [...unread];
  const itemNamed = sheetItems(set);
  const asked = new Map<string, SheetItem>();
  const piles = new Map<string, { readonly name: string; readonly answered: Map<string, AnsweredRow> }>();
  for (const row of rows) {
    const item = itemNamed(row.problem);
    const own = piles.get(row.learner.toLowerCase()) ?? { name: row.learner, answered: new Map() };
    const read = typeof item === "string" ? item : markOnce(item, row, own);
    if (typeof read === "string") {
      refused.push({ line: row.line, reason: `${row.learner}: ${read}` });
      continue;
    }
    piles.set(row.learner.toLowerCase(), own);
    own.answered.set(read.item.problem.code, read);
    asked.set(read.item.problem.code, read.item);
  }
  const scope = scopeOf([...asked.values()]);
  const space = hypothesisSpace(scope.map((id) => ({ id, base: slipOf(id).base })));
  const evidence = [...piles.values()].map(({ name, answered }) => {
    const own = inSetOrder([...answered.values()]);
    const history = own.map(({ logged }) => logged);
    const belief = afterAnswers(priorBelief(space), history);
    const held = slipBeliefs(belief);
    return {
      name,
      answered: own,
      beliefs: new Map(scope.map((slip, at) => [slip, held[at] ?? 0])),
      standing: followedStanding(belief, history),
    };
  });
  const learners = evidence.map(
    ({ name, answered, standing }): MarkedLearner => ({
      ...counted(name, answered, set),
      standing,
      next: nextThing(set, answered, standing),
    }),
  );
  const answered = evidence.flatMap((one) => one.answered);
  const log = answered.map(({ logged }) => logged);
  return {
    title: set.title,
    problemCount: set.problems.length,
    answerCount: answered.length,
    scope,
    classView: classView(set, learners, evidence),
    learners,
    items: pileItems(space, answered),
    foretells: heldOut(space, log),
    accepted: learners.flatMap(({ learner, answers }) =>
      answers
        .filter(({ acceptedBecause }) => acceptedBecause !== null)
        .map((answer) => ({ learner, answer })),
    ),
    refused: refused.sort((one, other) => one.line - other.line),
  };
}

function markOnce(
  item: SheetItem,
  row: AnswerRow,
  { name, answered }: { readonly name: string; readonly answered: ReadonlyMap<string, AnsweredRow> },
): AnsweredRow | string {
  const first = answered.get(item.problem.code);
  if (first !== undefined)
    return `a second answer to ${itemName(item)}, “${row.answer}”; the first counts, on line ${first.marked.line}`;
  return markRow(item, row, name);
}

/** Every idea that some problem asked tells from the truth, in the slips' order. */
function scopeOf(items: readonly SheetItem[]): readonly SlipId[] {
  const fired = new Set(items.flatMap(({ problem }) => problem.slipAnswers.map(({ slip }) => slip)));
  return SLIPS.map(({ id }) => id).filter((id) => fired.has(id));
}

const inSetOrder = (answered: readonly AnsweredRow[]): readonly AnsweredRow[] =>
  [...answered].sort((one, other) => placeOf(one) - placeOf(other));

const placeOf = ({ item: { number } }: AnsweredRow): number => number ?? Number.MAX_SAFE_INTEGER;

function counted(
  learner: string,
  answered: readonly AnsweredRow[],
  { problems }: ProblemSet,
): Omit<MarkedLearner, "standing" | "next"> {
  const answers = answered.map(({ marked }) => marked);
  const count = (verdict: Verdict): number => answers.filter((one) => one.verdict === verdict).length;
  const half = answers.filter(({ marks }) => marks === 0.5).length;
  return {
    learner,
    answers,
    marks: answers.reduce((sum, { marks }) => sum + marks, 0),
    right: count("right"),
    half,
    wrong: count("wrong") - half,
    dontKnow: count("dont-know"),
    unanswered: problems.length - answers.filter(({ number }) => number !== null).length,
    isStuck: longestWithoutRight(answers) >= STUCK_AFTER,
  };
}

function longestWithoutRight(answers: readonly MarkedAnswer[]): number {
  let longest = 0;
  let run = 0;
  for (const { verdict } of answers) {
    run = verdict === "right" ? 0 : run + 1;
    longest = Math.max(longest, run);
  }
  return longest;
}
