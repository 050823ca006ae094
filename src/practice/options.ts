/** What is offered to choose from, and which mistaken ideas each answer tells of. */

import { type Answer, apart } from "./answer.ts";
import { chance } from "./chance.ts";
import type { Problem } from "./problem.ts";
import { type SlipId, slipOf } from "./slips.ts";

/** Wrong options at most, where the form has no vocabulary of its own. */
const MOST_WRONG = 4;
/** Fewer than this are made up to it from what the form offers besides. */
const LEAST_WRONG = 3;

export interface Option {
  readonly answer: Answer;
  /** The ideas that lead here; empty for the truth, and for a word that no idea leads to. */
  readonly slips: readonly SlipId[];
}

/** The options of a problem, the truth first; to be shown in `shownOrder`. */
export interface Options {
  readonly options: readonly Option[];
  /** Ideas that differ from the truth here and whose answer is not offered. */
  readonly notOffered: readonly SlipId[];
}

/**
 * Truth and the wrong answers with the greatest weight of ideas behind them, each at least two tolerances from every other, made up from
 * what the form offers besides; or the form's whole vocabulary. `weight`: how likely each idea is, by default before anything is known of the learner.
 */
export function optionsOf(
  problem: Problem,
  weight: (slip: SlipId) => number = (slip) => slipOf(slip).base,
): Options {
  const { truth, slipAnswers } = problem;
  const { tolerance, words } = problem.case;
  if (words !== undefined) {
    const rest = words.filter((word) => truth.kind !== "word" || word !== truth.word);
    const options = rest.map((word) => ({
      answer: { kind: "word", word } as const,
      slips: slipAnswers
        .filter(({ answer }) => answer.kind === "word" && answer.word === word)
        .map(({ slip }) => slip),
    }));
    const offered = new Set(options.flatMap(({ slips }) => slips));
    return {
      options: [{ answer: truth, slips: [] }, ...options],
      notOffered: slipAnswers.map(({ slip }) => slip).filter((slip) => !offered.has(slip)),
    };
  }
  const groups: { readonly answer: Answer; readonly slips: SlipId[] }[] = [];
  for (const { slip, answer } of slipAnswers) {
    const same = groups.find((group) => apart(answer, group.answer, tolerance) <= 1);
    if (same) same.slips.push(slip);
    else groups.push({ answer, slips: [slip] });
  }
  const heaviest = groups
    .map((group) => ({ ...group, weight: group.slips.reduce((sum, slip) => sum + weight(slip), 0) }))
    .sort((one, other) => other.weight - one.weight);
  const kept: Option[] = [{ answer: truth, slips: [] }];
  const notOffered: SlipId[] = [];
  for (const { answer, slips } of heaviest) {
    const stands = kept.every((option) => apart(answer, option.answer, tolerance) >= 2);
    if (stands && kept.length <= MOST_WRONG) kept.push({ answer, slips });
    else notOffered.push(...slips);
  }
  for (const answer of problem.case.also ?? []) {
    const stands = kept.every((option) => apart(answer, option.answer, tolerance) >= 2);
    if (stands && kept.length <= LEAST_WRONG) kept.push({ answer, slips: [] });
  }
  return { options: kept, notOffered };
}

/**
 * The order in which options are shown: their indices, directions and quantities from small to large, words as the form has them, the
 * rest shuffled by the problem's seed. The truth's place says nothing.
 */
export function shownOrder(problem: Problem, { options }: Options): readonly number[] {
  const indices = options.map((_, at) => at);
  const { words } = problem.case;
  const rank = (at: number): number | null => {
    const answer = options[at]?.answer;
    if (answer === undefined) return null;
    if (answer.kind === "direction") return answer.deg;
    if (answer.kind === "quantity") return answer.value;
    if (answer.kind === "word" && words !== undefined) return words.indexOf(answer.word);
    return null;
  };
  if (indices.every((at) => rank(at) !== null))
    return indices.sort((one, other) => (rank(one) ?? 0) - (rank(other) ?? 0));
  const luck = chance(problem.seed + 1);
  for (let at = indices.length - 1; at > 0; at -= 1) {
    const other = luck.integer(0, at);
    const [here, there] = [indices[at], indices[other]];
    if (here === undefined || there === undefined) continue;
    indices[at] = there;
    indices[other] = here;
  }
  return indices;
}

/** The ideas that explain an answer: those whose own answer lies within the tolerance of it. None for a right one. */
export function slipsBehind(problem: Problem, answer: Answer): readonly SlipId[] {
  const { tolerance } = problem.case;
  if (apart(answer, problem.truth, tolerance) <= 1) return [];
  return problem.slipAnswers
    .filter((slip) => apart(answer, slip.answer, tolerance) <= 1)
    .map(({ slip }) => slip);
}
