/** A problem set: problems in the order they are put, the stations and the day they are set on, and what the instructor says of them. */

import { type Answer, apart } from "./answer.ts";
import { MODES, type Mode } from "./form.ts";
import { makeProblem, type Problem } from "./problem.ts";
import { readProblemCode } from "./problem-code.ts";
import type { SkillId } from "./skills.ts";
import { SLIPS, type SlipId } from "./slips.ts";
import type { World } from "./world.ts";

export const MOST_PROBLEMS = 200;

/** The day of problems on the isles unless another is chosen: a code holds its day's mark, so one day lets codes be opened anywhere. */
export const ISLES_DATE = "2026-07-01";

export interface ProblemSet {
  readonly title: string;
  /** For whoever sets it; empty for none. */
  readonly note: string;
  /** Stations, land and day. */
  readonly world: World;
  /** One to `MOST_PROBLEMS`, no code twice. */
  readonly problems: readonly Problem[];
}

export type ProblemOpened =
  | { readonly kind: "problem"; readonly problem: Problem }
  /** What is wrong with the code, or with these stations for it. One sentence, without a full stop. */
  | {
      readonly kind: "fault";
      readonly code: "bad-code" | "other-stations" | "unfit-stations";
      readonly says: string;
    };

/** The problem of a code, as typed, on these stations. Never throws. */
export function openProblem(world: World, typed: string): ProblemOpened {
  const fault = (code: "bad-code" | "other-stations" | "unfit-stations", says: string): ProblemOpened => ({
    kind: "fault",
    code,
    says: says.replace(/\.$/, ""),
  });
  const read = readProblemCode(typed);
  if (read.kind === "fault") return fault("bad-code", read.says);
  if (read.mark !== world.mark)
    return fault(
      "other-stations",
      `${read.code} was made on other stations, another land or another date than ${world.name} on ${world.date}; give those it was made on`,
    );
  let made: ReturnType<typeof makeProblem>;
  try {
    made = makeProblem(world, read.form, read.mode, read.seed);
  } catch (error) {
    // A code of a form, or of a mode of it, that this edition does not have.
    if (error instanceof RangeError)
      return fault("bad-code", `${read.code} asks for a problem that this edition does not have`);
    throw error;
  }
  return made.kind === "problem" ? made : fault("unfit-stations", made.says);
}

/** In the order of `MODES`. */
export const modesOf = ({ problems }: Pick<ProblemSet, "problems">): readonly Mode[] =>
  MODES.filter((mode) => problems.some((problem) => problem.mode === mode));

/** Every skill that the set practises, in the order they are met. */
export const skillsOf = ({ problems }: Pick<ProblemSet, "problems">): readonly SkillId[] => [
  ...new Set(problems.flatMap(({ form }) => form.skills)),
];

/** The ideas that answer a problem plainly wrong, in the slips' order. */
export const firedSlips = ({ slipAnswers }: Problem): readonly SlipId[] => {
  const fired = new Set(slipAnswers.map(({ slip }) => slip));
  return SLIPS.map(({ id }) => id).filter((id) => fired.has(id));
};

/**
 * Whether a learner who did one of two problems would find the other the same: one form, and the same task, or the same station with
 * answers that could not stand beside each other as options.
 */
export function areAlike(one: Problem, other: Problem): boolean {
  if (one.form.id !== other.form.id) return false;
  if (taskOf(one) === taskOf(other)) return true;
  if (!isMeasured(one.truth) || tunedOf(one) !== tunedOf(other)) return false;
  return apart(one.truth, other.truth, other.case.tolerance) < 2;
}

/** Answers of which there are many; of words and panels there are few, and they must come again. */
const isMeasured = ({ kind }: Answer): boolean =>
  kind === "direction" || kind === "quantity" || kind === "place";

const tunedOf = ({ case: { scene } }: Problem): string =>
  scene.receivers.map(({ frequencyMhz }) => frequencyMhz).join();

/** All that tells one task from another, the title and the day apart. */
function taskOf({ case: { scene, given, items } }: Problem): string {
  const { aircraft, wind, receivers, ask } = scene;
  return JSON.stringify([ask, given, items ?? [], aircraft, wind, receivers]);
}
