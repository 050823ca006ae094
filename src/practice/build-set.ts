/**
 * A problem set from wishes: the forms of the skills in turn, and for each place a problem that tells the wished mistaken ideas apart, no two
 * alike. The same wishes on the same stations give the same set.
 */

import { apart } from "./answer.ts";
import { type Chance, chance } from "./chance.ts";
import type { Form, Mode } from "./form.ts";
import { FORMS } from "./forms/index.ts";
import type { FormId } from "./forms/numbers.ts";
import { makeProblem, type Problem } from "./problem.ts";
import { MOST_SEED, type ProblemCode } from "./problem-code.ts";
import { areAlike, firedSlips, MOST_PROBLEMS, type ProblemSet } from "./problem-set.ts";
import { type SkillId, skillOf } from "./skills.ts";
import { SLIPS, type SlipId, slipOf } from "./slips.ts";
import type { World } from "./world.ts";

export interface Wishes {
  readonly title?: string;
  readonly note?: string;
  /** None: those that the slips stand in the way of, or else all. */
  readonly skills: readonly SkillId[];
  /** Every problem tells at least one of them. None: every problem tells some slip of its own skills, where there is one. */
  readonly slips: readonly SlipId[];
  /** 1 to `MOST_PROBLEMS`. */
  readonly count: number;
  /** 0 to 4,294,967,295. */
  readonly seed: number;
  /** A form that does not have it is set in its own. */
  readonly mode: Mode;
}

export type SetBuilt =
  | {
      readonly kind: "set";
      readonly set: ProblemSet;
      /** What could not be granted, one sentence each. */
      readonly notes: readonly string[];
    }
  | { readonly kind: "none"; readonly says: string };

/** Seeds tried for one form and idea before another form is. */
const MOST_SEEDS = 60;
/** Fit problems of which the one that tells most ideas apart is taken. */
const CANDIDATES = 5;

type KnownForm = Form & { readonly id: FormId };

/** A set that grants the wishes as far as the stations allow. Throws RangeError on a count or seed out of range. */
export function buildSet(world: World, wishes: Wishes): SetBuilt {
  const { count, seed, title = "Problems", note = "" } = wishes;
  if (!Number.isInteger(count) || count < 1 || count > MOST_PROBLEMS)
    throw new RangeError(`a set has 1 to ${MOST_PROBLEMS} problems, got ${count}`);
  if (!Number.isInteger(seed) || seed < 0 || seed >= 2 ** 32)
    throw new RangeError(`a set's seed is a whole number from 0 to ${2 ** 32 - 1}, got ${seed}`);
  const forms = formsFor(wishes);
  const luck = chance(seed);
  const problems: Problem[] = [];
  const barren = new Set<string>();
  const turns = { form: new Turns(luck, forms), slip: new Turns(luck, wishes.slips) };
  while (problems.length < count) {
    const target = turns.slip.next() ?? null;
    const problem = nextProblem(world, wishes, { luck, turns: turns.form, target, before: problems, barren });
    if (problem !== null) problems.push(problem);
    else if (target === null || turns.slip.dropped(target) === 0) break;
  }
  if (problems.length === 0)
    return { kind: "none", says: `No problem that is asked for can be set on ${world.name}.` };
  const set = { title, note, world, problems };
  return { kind: "set", set, notes: notesOn(set, wishes) };
}

/**
 * A problem like this one: the same form and mode, and the same ideas answer it wrongly. Null when no seed of the many tried gives one that
 * is none of `but` and not alike to any of them.
 */
export function anotherLike(
  world: World,
  like: Problem,
  { seed, but = [like] }: { readonly seed: number; readonly but?: readonly Problem[] },
): Problem | null {
  const luck = chance(seed);
  const wanted = firedSlips(like).join();
  for (let tried = 0; tried < 40 * MOST_SEEDS; tried += 1) {
    const made = makeProblem(world, like.form.id, like.mode, luck.integer(0, MOST_SEED));
    if (made.kind === "none") return null;
    const { problem } = made;
    if (firedSlips(problem).join() === wanted && !but.some((other) => areAlike(problem, other)))
      return problem;
  }
  return null;
}

/** The forms that practise a wished skill, or a skill that a wished slip stands in the way of; all when nothing is wished. */
function formsFor({ skills, slips }: Wishes): readonly KnownForm[] {
  const wanted = new Set(skills.length > 0 ? skills : slips.flatMap((slip) => slipOf(slip).skills));
  return wanted.size === 0 ? FORMS : FORMS.filter((form) => form.skills.some((skill) => wanted.has(skill)));
}

/** Things in turn, each as often as the others, in an order drawn anew for each round and never one twice running where there are more. */
class Turns<T> {
  private round: T[] = [];
  private last: T | undefined;
  private things: readonly T[];
  private readonly luck: Chance;

  constructor(luck: Chance, things: readonly T[]) {
    this.luck = luck;
    this.things = things;
  }

  next(): T | undefined {
    if (this.round.length === 0) this.round = this.shuffled();
    this.last = this.round.shift();
    return this.last;
  }

  /** Takes a thing out; gives how many are left. */
  dropped(thing: T): number {
    this.things = this.things.filter((other) => other !== thing);
    this.round = this.round.filter((other) => other !== thing);
    return this.things.length;
  }

  get size(): number {
    return this.things.length;
  }

  private shuffled(): T[] {
    const rest = [...this.things];
    const order: T[] = [];
    while (rest.length > 0) order.push(...rest.splice(this.luck.integer(0, rest.length - 1), 1));
    if (order.length > 1 && order[0] === this.last) order.push(...order.splice(0, 1));
    return order;
  }
}

interface Search {
  readonly luck: Chance;
  readonly turns: Turns<KnownForm>;
  readonly target: SlipId | null;
  readonly before: readonly Problem[];
  /** Pairs of form and idea that gave nothing. */
  readonly barren: Set<string>;
}

/** The next problem that tells the target; null when no form gives one. */
function nextProblem(world: World, wishes: Wishes, search: Search): Problem | null {
  const { turns, target, barren } = search;
  for (let tried = 0; tried < 2 * turns.size; tried += 1) {
    const form = turns.next();
    if (form === undefined) return null;
    const pair = `${form.id} ${target ?? ""}`;
    if (barren.has(pair)) continue;
    const problem = bestOf(world, wishes, form, search);
    if (problem !== null) return problem;
    barren.add(pair);
  }
  return null;
}

function bestOf(world: World, wishes: Wishes, form: KnownForm, search: Search): Problem | null {
  const { luck, target, before } = search;
  const mode = form.modes.includes(wishes.mode) ? wishes.mode : (form.modes[0] ?? wishes.mode);
  const wishedSkills = form.skills.filter(
    (skill) => wishes.skills.length === 0 || wishes.skills.includes(skill),
  );
  let best: Problem | null = null;
  let bestTold = -1;
  let candidates = 0;
  for (let tried = 0; tried < MOST_SEEDS && candidates < CANDIDATES; tried += 1) {
    const made = makeProblem(world, form.id, mode, luck.integer(0, MOST_SEED));
    if (made.kind === "none") return null;
    const { problem } = made;
    if (!tells(problem, target, wishedSkills) || before.some((other) => areAlike(problem, other))) continue;
    candidates += 1;
    const told = answersOf(problem, wishes.slips);
    if (told > bestTold) {
      best = problem;
      bestTold = told;
    }
    if (wishes.slips.length < 2) break;
  }
  return best;
}

/** Whether the problem tells the wished idea; without one, whether a right answer to it is evidence of the skill. */
function tells(problem: Problem, target: SlipId | null, skills: readonly SkillId[]): boolean {
  const fired = firedSlips(problem);
  if (target !== null) return fired.includes(target);
  if (problem.case.skills !== undefined && !problem.case.skills.some((skill) => skills.includes(skill)))
    return false;
  const attached = fired.some((slip) => slipOf(slip).skills.some((skill) => skills.includes(skill)));
  return attached || problem.form.leastSlipAnswers === 0 || (problem.case.skills ?? []).some(hasNoSlip);
}

/** Whether no idea stands in the way of a skill, so that any answer says something of it. */
const hasNoSlip = (skill: SkillId): boolean =>
  !SLIPS.some(({ skills }) => (skills as readonly SkillId[]).includes(skill));

/** How many different wrong answers the wished ideas give. */
function answersOf({ slipAnswers, case: { tolerance } }: Problem, slips: readonly SlipId[]): number {
  const kept: Problem["slipAnswers"][number][] = [];
  for (const told of slipAnswers)
    if (slips.includes(told.slip) && kept.every(({ answer }) => apart(told.answer, answer, tolerance) > 1))
      kept.push(told);
  return kept.length;
}

function notesOn({ problems }: ProblemSet, wishes: Wishes): string[] {
  const notes: string[] = [];
  const fired = new Set(problems.flatMap(firedSlips));
  for (const slip of wishes.slips)
    if (!fired.has(slip))
      notes.push(`No problem of these tells “${slipOf(slip).name}”: it shows in problems of other skills.`);
  for (const skill of wishes.skills)
    if (!problems.some(({ form, case: { skills } }) => (skills ?? form.skills).includes(skill)))
      notes.push(`No problem practises “${skillOf(skill).title}” with what else is asked for.`);
  if (problems.length < wishes.count)
    notes.push(
      `Without two alike there are ${problems.length} of the ${wishes.count} problems: ask for fewer, or for more skills.`,
    );
  const others = [
    ...new Set(problems.filter(({ mode }) => mode !== wishes.mode).map(({ form }) => form.title)),
  ];
  if (others.length > 0)
    notes.push(`${others.map((title) => `“${title}”`).join(", ")} cannot be set to ${wishes.mode}.`);
  return notes;
}

/** The codes of a set, in its order. */
export const codesOf = ({ problems }: Pick<ProblemSet, "problems">): readonly ProblemCode[] =>
  problems.map(({ code }) => code);
