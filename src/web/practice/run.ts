/**
 * One sitting of practice as a machine of plain data: what is asked, what has been put down, what was answered, what comes next. Nothing that
 * could be worked out again is kept in it, and no answer of a problem: only its code. So it can be stored at any moment and taken up again.
 */

import {
  type Confidence,
  evidenceOf,
  type FormId,
  type Marked,
  mark,
  type Options,
  optionsOf,
  type Problem,
  type ProblemCode,
  type Response,
  readTypedAnswer,
  type SkillId,
  type SlipId,
  slipOf,
  type Verdict,
} from "../../practice/index.ts";
import type { Answered } from "./learner-record.ts";

export type Plan =
  | { readonly kind: "find"; readonly scope: string }
  | { readonly kind: "skill"; readonly skill: SkillId }
  /** Cards by their names. */
  | { readonly kind: "review"; readonly cards: readonly string[] }
  /** `link`: where the set's own stations can be had again; empty on the isles. */
  | {
      readonly kind: "set";
      readonly title: string;
      readonly note: string;
      readonly codes: readonly ProblemCode[];
      readonly link: string;
    };

/** A short set: about five minutes. */
export const SKILL_PROBLEMS = 6;
/** More than this on one problem was a pause, seconds. */
const LONGEST_TIME_S = 1800;

export interface Turn {
  readonly code: ProblemCode;
  readonly form: FormId;
  readonly verdict: Verdict;
  readonly slips: readonly SlipId[];
  readonly followUp: SlipId | null;
  readonly timeS: number;
  /** Station and octant, so that the next is put elsewhere. */
  readonly place: string;
}

/** What was believed of the learner when a problem was chosen. */
export interface Believed {
  /** How likely each idea in scope is; the options are chosen by it. Empty: as for one of whom nothing is known. */
  readonly slips: Readonly<Partial<Record<SlipId, number>>>;
  /** He mostly guesses: no idea is named to him. */
  readonly guessing: boolean;
}

export const NOTHING_BELIEVED: Believed = { slips: {}, guessing: false };

export interface Asked {
  readonly code: ProblemCode;
  readonly believed: Believed;
  /** The idea whose remedy was shown just before; null for any other problem. */
  readonly followUp: SlipId | null;
  readonly draft: string;
  readonly confidence: Confidence | null;
  readonly timeS: number;
  /** How it was given: as drafted, or left open. Null while it is being asked. */
  readonly given: "answer" | "dont-know" | null;
}

export interface Run {
  readonly plan: Plan;
  /** ISO instant. */
  readonly startedAt: string;
  readonly turns: readonly Turn[];
  readonly asked: Asked | null;
  readonly isOver: boolean;
}

export type Stage = "choosing" | "asking" | "answered" | "end";

export const stageOf = ({ asked, isOver }: Run): Stage => {
  if (isOver) return "end";
  if (asked === null) return "choosing";
  return asked.given === null ? "asking" : "answered";
};

export const beginRun = (plan: Plan, startedAt: string): Run => ({
  plan,
  startedAt,
  turns: [],
  asked: null,
  isOver: false,
});

/** Puts a problem. */
export const asking = (
  run: Run,
  put: { readonly code: ProblemCode; readonly believed: Believed; readonly followUp: SlipId | null },
): Run => ({ ...run, asked: { ...put, draft: "", confidence: null, timeS: 0, given: null } });

const changeAsked = (run: Run, change: Partial<Asked>): Run =>
  run.asked === null || run.asked.given !== null ? run : { ...run, asked: { ...run.asked, ...change } };

export const drafted = (run: Run, draft: string): Run => changeAsked(run, { draft });
export const confided = (run: Run, confidence: Confidence | null): Run => changeAsked(run, { confidence });

/** Counts time that the problem lay open. */
export const timed = (run: Run, seconds: number): Run =>
  run.asked === null
    ? run
    : changeAsked(run, { timeS: Math.min(LONGEST_TIME_S, run.asked.timeS + Math.max(0, seconds)) });

/** What is offered to choose from; null where the answer is told. */
export const optionsShown = (problem: Problem, { slips }: Believed): Options | null =>
  problem.mode === "tell" ? null : optionsOf(problem, (slip) => slips[slip] ?? slipOf(slip).base);

/** What was given, once it was: read again from what was put down. */
function responseOf(
  problem: Problem,
  { draft, confidence, believed }: Asked,
  given: "answer" | "dont-know",
): Response | null {
  if (given === "dont-know") return { kind: "dont-know" };
  const read = readTypedAnswer(problem, optionsShown(problem, believed), draft);
  if (read.kind === "unready") return null;
  return read.kind === "dont-know" ? read : { kind: "answer", answer: read.answer, confidence };
}

/** How the answer given is marked; null while none is. */
export function markedOf(problem: Problem, asked: Asked): (Marked & { readonly response: Response }) | null {
  const response = asked.given === null ? null : responseOf(problem, asked, asked.given);
  return response === null ? null : { ...mark(problem, response), response };
}

export type Checked =
  | { readonly kind: "unready" }
  | { readonly kind: "marked"; readonly run: Run; readonly event: Answered };

/** Takes the answer as drafted, or "I don't know yet", at an instant on a day of the learner's calendar. */
export function checked(
  run: Run,
  problem: Problem,
  given: "answer" | "dont-know",
  when: { readonly at: string; readonly day: string },
): Checked {
  const { asked } = run;
  if (asked === null || asked.given !== null) return { kind: "unready" };
  const response = responseOf(problem, asked, given);
  if (response === null) return { kind: "unready" };
  const { verdict, slips } = mark(problem, response);
  const { item, pickOf } = evidenceOf(problem, optionsShown(problem, asked.believed));
  const { code, form } = problem;
  const { followUp, timeS } = asked;
  const event: Answered = {
    kind: "answer",
    ...when,
    code,
    form: form.id,
    item,
    pick: response.kind === "dont-know" ? "dont-know" : pickOf(response.answer),
    confidence: response.kind === "dont-know" ? null : response.confidence,
    timeS: Math.round(timeS),
    followUp,
  };
  const turn: Turn = { code, form: form.id, verdict, slips, followUp, timeS, place: placeOf(problem) };
  return { kind: "marked", event, run: { ...run, turns: [...run.turns, turn], asked: { ...asked, given } } };
}

/** The idea to be refuted after a wrong answer: of those that lead to it the likeliest. Null: none, or none is to be named. */
export function slipToRefute(
  { slips }: Pick<Marked, "slips">,
  { believed }: Pick<Asked, "believed">,
): SlipId | null {
  if (believed.guessing) return null;
  const weight = (slip: SlipId): number => believed.slips[slip] ?? slipOf(slip).base;
  return slips.reduce<SlipId | null>(
    (best, slip) => (best === null || weight(slip) > weight(best) ? slip : best),
    null,
  );
}

/** What comes after an answer was seen. */
export type Onward =
  | { readonly kind: "second-prediction"; readonly like: ProblemCode; readonly slip: SlipId }
  | { readonly kind: "choose" }
  | { readonly kind: "over" };

/** Only turns that were no second predictions count toward the length of a run. */
export const turnsDone = ({ turns }: Pick<Run, "turns">): number =>
  turns.filter(({ followUp }) => followUp === null).length;

/** How many problems a run has; null where that shows only as it goes. */
export function lengthOf({ plan }: Pick<Run, "plan">): number | null {
  switch (plan.kind) {
    case "find":
      return null;
    case "skill":
      return SKILL_PROBLEMS;
    case "review":
      return plan.cards.length;
    case "set":
      return plan.codes.length;
  }
}

/** Where the run goes from an answer that has been seen. */
export function onwardFrom(run: Run, problem: Problem): Onward {
  const { asked } = run;
  const marked = asked === null ? null : markedOf(problem, asked);
  if (asked !== null && marked?.verdict === "wrong" && asked.followUp === null) {
    const slip = slipToRefute(marked, asked);
    if (slip !== null) return { kind: "second-prediction", like: asked.code, slip };
  }
  return isDone(run) ? { kind: "over" } : { kind: "choose" };
}

export const isDone = (run: Run): boolean => {
  const length = lengthOf(run);
  return length !== null && turnsDone(run) >= length;
};

export const putAway = (run: Run): Run => ({ ...run, asked: null });
export const over = (run: Run): Run => ({ ...run, asked: null, isOver: true });

const OCTANT_DEG = 45;

/** The first receiver's station, and the octant of its rose where the aircraft is. */
export function placeOf({ situation }: Pick<Problem, "situation">): string {
  const [reading] = situation.receivers;
  const azimuthDeg = reading?.geometry?.azimuthFromStation;
  if (reading?.station == null || azimuthDeg === undefined) return "";
  return `${reading.station.ident} ${Math.floor(azimuthDeg / OCTANT_DEG) % 8}`;
}
