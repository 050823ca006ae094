/**
 * Which problem comes next: of some dozens of fresh ones, that whose answer is expected to tell most, less penalties for monotony and
 * for length; one in five is a problem the learner most likely gets right, and one in five a review that is due. The sizes of the
 * penalties and the shares are our own judgement.
 */

import type { Belief } from "./belief.ts";
import { forecaster } from "./information.ts";
import type { ItemEvidence } from "./item-evidence.ts";

/** Per use of the same form among the last five problems. */
const SAME_FORM_PENALTY = 0.15;
const FORMS_LOOKED_BACK = 5;
/** For the same station and the same octant of its compass rose as the last problem's. */
const SAME_PLACE_PENALTY = 0.1;
const LONG_PENALTY = 0.2;
/** A problem is long when it takes over three times the median of the session. */
const LONG_MEDIANS = 3;
/** A confidence builder is right with at least this chance. */
export const BUILDER_RIGHT_CHANCE = 0.85;
/** Of every five problems, counted from 0, the third builds confidence and the fifth reviews. */
const TURNS = ["diagnose", "diagnose", "build-confidence", "diagnose", "review"] as const;

export type Turn = (typeof TURNS)[number];

export interface Candidate<Slip extends string = string> {
  readonly problemId: string;
  readonly form: string;
  readonly skills: readonly string[];
  /** The station and the octant of its rose in which the scene plays, in any spelling that is the same for the same. */
  readonly place: string;
  /** As it would be shown: choose its options by what is believed of this learner. */
  readonly item: ItemEvidence<Slip>;
  /** Seconds that such a problem usually takes; null when not known. */
  readonly usualTimeS: number | null;
  readonly dueForReview: boolean;
}

export interface SessionSoFar {
  /** Forms of the problems answered, the last one last. */
  readonly forms: readonly string[];
  readonly lastPlace: string | null;
  /** Median seconds of this session's answers; null before the first. */
  readonly medianTimeS: number | null;
}

export interface NextProblem<C extends Candidate> {
  readonly candidate: C;
  /** What it was chosen for. A turn for which no candidate qualifies falls back to "diagnose". */
  readonly turn: Turn;
  readonly rightChance: number;
  readonly informationBits: number;
}

/**
 * The next problem, or null when there is no candidate. Equal candidates: the first. Throws RangeError as `optionsOfScope` does.
 */
export function nextProblem<Slip extends string, C extends Candidate<Slip>>(
  belief: Belief<Slip>,
  candidates: readonly C[],
  session: SessionSoFar,
): NextProblem<C> | null {
  const foretell = forecaster(belief);
  const rated = candidates.map((candidate) => {
    const { optionChances, informationBits } = foretell(candidate.item);
    const score = informationBits - penalty(candidate, session);
    return { candidate, rightChance: optionChances[0] ?? 0, informationBits, score };
  });
  const wanted = TURNS[session.forms.length % TURNS.length] ?? "diagnose";
  const fitting = rated.filter(
    ({ candidate, rightChance }) =>
      (wanted === "build-confidence" && rightChance >= BUILDER_RIGHT_CHANCE) ||
      (wanted === "review" && candidate.dueForReview),
  );
  const [turn, among] = fitting.length > 0 ? ([wanted, fitting] as const) : (["diagnose", rated] as const);
  const best = among.reduce<(typeof rated)[number] | null>(
    (so, one) => (so === null || one.score > so.score ? one : so),
    null,
  );
  if (best === null) return null;
  const { candidate, rightChance, informationBits } = best;
  return { candidate, turn, rightChance, informationBits };
}

function penalty(candidate: Candidate, { forms, lastPlace, medianTimeS }: SessionSoFar): number {
  const uses = forms.slice(-FORMS_LOOKED_BACK).filter((form) => form === candidate.form).length;
  const long =
    candidate.usualTimeS !== null &&
    medianTimeS !== null &&
    candidate.usualTimeS > LONG_MEDIANS * medianTimeS;
  return (
    SAME_FORM_PENALTY * uses +
    (candidate.place === lastPlace ? SAME_PLACE_PENALTY : 0) +
    (long ? LONG_PENALTY : 0)
  );
}

const LONGEST_RUN = 20;
const ITEMS_LOOKED_BACK = 4;
const SETTLED_CHANGE = 0.05;

/**
 * Whether a diagnostic run should end: after twenty answers, or when over the last four no slip's belief has ranged over .05 or more.
 * @param history the beliefs of all slips before the first answer and after each, as `slipBeliefs` gives them
 */
export function diagnosisIsDone(history: readonly Readonly<Float64Array>[]): boolean {
  const answers = history.length - 1;
  if (answers >= LONGEST_RUN) return true;
  if (answers < ITEMS_LOOKED_BACK) return false;
  const recent = history.slice(-ITEMS_LOOKED_BACK - 1);
  return (recent[0] ?? []).every((_, slip) => {
    const values = recent.map((beliefs) => beliefs[slip] ?? 0);
    return Math.max(...values) - Math.min(...values) < SETTLED_CHANGE;
  });
}
