/** Generated problems as the diagnosis takes them: each with its evidence, its place and its options chosen for one learner. */

import { apart } from "../answer.ts";
import type { Chance } from "../chance.ts";
import type { Mode } from "../form.ts";
import { FORMS } from "../forms/index.ts";
import { functionsWith } from "../functions.ts";
import { evidenceOf } from "../mark.ts";
import { type Options, optionsOf } from "../options.ts";
import { makeProblem, type Problem } from "../problem.ts";
import { SLIPS, type SlipId } from "../slips.ts";
import type { World } from "../world.ts";
import { fires, type SlipOption } from "./item-evidence.ts";
import type { Candidate } from "./next-problem.ts";
import type { SimulatedProblem } from "./simulated-learner.ts";
import type { ProblemSource } from "./simulation.ts";

const DEG_PER_OCTANT = 45;
const S_PER_MIN = 60;

export interface GeneratedCandidate extends Candidate<SlipId> {
  readonly problem: Problem;
  /** Null in tell mode. */
  readonly options: Options | null;
}

/**
 * A problem as a candidate for a learner. `belief`: how likely each slip is of him; the options of choose mode are those with most
 * belief behind them.
 */
export function candidateOf(
  problem: Problem,
  belief: (slip: SlipId) => number,
  dueForReview = false,
): GeneratedCandidate {
  const options = problem.mode === "choose" ? optionsOf(problem, belief) : null;
  return {
    problem,
    options,
    problemId: problem.code,
    form: problem.form.id,
    skills: problem.form.skills,
    place: placeOf(problem),
    item: evidenceOf(problem, options).item,
    usualTimeS: problem.form.minutes * S_PER_MIN,
    dueForReview,
  };
}

/** The first receiver's station and the octant of true azimuth from it in which the aircraft is. */
function placeOf({ situation }: Problem): string {
  const [first] = situation.receivers;
  const { station = null, geometry = null } = first ?? {};
  if (station === null || geometry === null) return "no station";
  return `${station.ident} ${Math.floor(geometry.azimuthFromStation / DEG_PER_OCTANT)}`;
}

/**
 * The option of someone who holds several slips at once: their patches are applied together, in the order of the slips' table. 0 when
 * they cancel and he is right; "not-on-offer" when his answer is not among the options, or there is none.
 */
export function composedOption(
  { problem, options }: GeneratedCandidate,
  slips: readonly SlipId[],
): SlipOption {
  const patches = SLIPS.filter(({ id }) => slips.includes(id)).map(({ patch }) => patch);
  const answer = problem.case.answer(functionsWith(patches));
  if (answer === null) return "not-on-offer";
  if (options === null) return evidenceOf(problem, options).pickOf(answer);
  const at = options.options.findIndex((option) => apart(answer, option.answer, problem.case.tolerance) <= 1);
  return at >= 0 ? at : "not-on-offer";
}

/**
 * A source for simulation: so many problems of every form that tells slips of the scope apart are made beforehand, and candidates drawn
 * from them, every form as often. A form that does not have the mode is set in its own. The same seed gives the same problems.
 */
export function generatedSource(
  world: World,
  scope: readonly SlipId[],
  given: { readonly mode: Mode; readonly perForm: number; readonly seed: number },
): ProblemSource<SlipId> {
  const { mode, perForm, seed } = given;
  const pools = FORMS.map(({ id, modes }) => {
    const own = modes.includes(mode) ? mode : (modes[0] ?? mode);
    const made = Array.from({ length: perForm }, (_, at) => makeProblem(world, id, own, seed * perForm + at));
    return made
      .flatMap((one) => (one.kind === "problem" ? [one.problem] : []))
      .filter((problem) => tellsApart(problem, scope));
  }).filter((pool) => pool.length > 0);
  const draw = (luck: Chance, belief: (slip: SlipId) => number): SimulatedProblem<SlipId> => {
    const candidate = candidateOf(luck.pick(luck.pick(pools)), belief);
    return { ...candidate, composedOption: (slips) => composedOption(candidate, slips) };
  };
  return {
    candidates: (count, luck, belief) => Array.from({ length: count }, () => draw(luck, belief)),
  };
}

/** Whether a slip of the scope would be wrong. */
const tellsApart = (problem: Problem, scope: readonly SlipId[]): boolean => {
  const { item } = evidenceOf(problem, null);
  return scope.some((slip) => fires(item, slip));
};
