/**
 * A problem from a seed: the same form, mode, seed and stations give the same problem for ever within one version of the generator. Its
 * truth is worked out twice, by the reference functions and by the engine, and its wrong answers by executing mistaken ideas.
 */

import type { Situation } from "../scene/index.ts";
import { type Answer, apart } from "./answer.ts";
import { chance } from "./chance.ts";
import type { Case, Form, Mode } from "./form.ts";
import { formOf } from "./forms/index.ts";
import { FORM_NUMBERS, type FormId } from "./forms/numbers.ts";
import { functionsWith, TRUTH } from "./functions.ts";
import { type ProblemCode, problemCode } from "./problem-code.ts";
import { SLIPS, type SlipId } from "./slips.ts";
import type { World } from "./world.ts";

/** Answers this near count as the same; options stand at least this far apart, in tolerances. */
const SAME_WITHIN = 1;
const APART_BY = 2;
/** How well the two routes to the truth must agree, in tolerances. */
const ROUTES_AGREE_WITHIN = 0.25;
/** Draws before a set of stations is said not to serve. */
const MOST_DRAWS = 400;

/** A mistaken idea's answer to this problem, plainly wrong. */
export interface SlipAnswer {
  readonly slip: SlipId;
  readonly answer: Answer;
}

export interface Problem {
  readonly code: ProblemCode;
  readonly form: Form & { readonly id: FormId };
  readonly mode: Mode;
  readonly seed: number;
  readonly case: Case;
  /** The scene resolved. */
  readonly situation: Situation;
  readonly truth: Answer;
  /** Of every slip whose answer differs here, in the slips' order. */
  readonly slipAnswers: readonly SlipAnswer[];
}

export type ProblemMade =
  | { readonly kind: "problem"; readonly problem: Problem }
  /** No draw of this seed came out fit: these stations cannot serve this form. */
  | { readonly kind: "none"; readonly says: string };

const FUNCTIONS_OF_SLIPS = SLIPS.map((slip) => ({ id: slip.id, functions: functionsWith([slip.patch]) }));

/**
 * The problem of a form, mode, seed (0 to 4,194,303) and world. Throws RangeError on a seed outside, or a mode the form does not have, and
 * Error when the two routes to the truth disagree, which is a fault of the program.
 */
export function makeProblem(world: World, id: FormId, mode: Mode, seed: number): ProblemMade {
  const form = formOf(id);
  if (!form.modes.includes(mode)) throw new RangeError(`${form.title} cannot be set to ${mode}`);
  const code = problemCode({ form: id, mode, seed, mark: world.mark });
  const luck = chance(seed * 64 + FORM_NUMBERS[id]);
  for (let draw = 0; draw < MOST_DRAWS; draw += 1) {
    const drawn = form.draw(luck, world);
    if (drawn === null) continue;
    const fit = fitCase(form, drawn, world);
    if (fit !== null) return { kind: "problem", problem: { code, form, mode, seed, case: drawn, ...fit } };
  }
  return { kind: "none", says: `${world.name} has no place for “${form.title}”: other stations may.` };
}

/** Truth, slips' answers and situation of a case that obeys the ground rules; null where it does not. */
function fitCase(
  form: Form,
  drawn: Case,
  world: World,
): Pick<Problem, "situation" | "truth" | "slipAnswers"> | null {
  const truth = drawn.answer(TRUTH);
  if (truth === null) return null;
  const slipAnswers: SlipAnswer[] = [];
  for (const { id, functions } of FUNCTIONS_OF_SLIPS) {
    const answer = drawn.answer(functions);
    if (answer === null) continue;
    const awayBy = apart(answer, truth, drawn.tolerance);
    if (awayBy <= SAME_WITHIN) continue;
    // Neither right nor plainly wrong: such a scene would mark a mistaken idea by a hair.
    if (awayBy < APART_BY) return null;
    slipAnswers.push({ slip: id, answer });
  }
  if (distinct(slipAnswers, drawn) < (drawn.leastSlipAnswers ?? form.leastSlipAnswers)) return null;
  const situation = world.resolve(drawn.scene);
  const again = drawn.check(situation);
  if (again === null) return null;
  const disagree = apart(again, truth, drawn.tolerance);
  if (disagree > ROUTES_AGREE_WITHIN)
    throw new Error(
      `${form.id}: the engine says ${JSON.stringify(again)} and the rule ${JSON.stringify(truth)}, ${disagree} tolerances apart`,
    );
  return { situation, truth, slipAnswers };
}

/** How many answers stand apart from one another. */
function distinct(slipAnswers: readonly SlipAnswer[], { tolerance }: Case): number {
  const kept: Answer[] = [];
  for (const { answer } of slipAnswers)
    if (kept.every((other) => apart(answer, other, tolerance) >= APART_BY)) kept.push(answer);
  return kept.length;
}
