/**
 * What the learner is to be asked next: diagnosis over fresh problems. Pure: everything comes in as plain data,
 * so that it runs beside the page as well as in it.
 */

import {
  type Candidate,
  chance,
  diagnosisIsDone,
  evidenceOf,
  FORMS,
  type Form,
  type FormId,
  firedSlips,
  MOST_SEED,
  type Mode,
  makeProblem,
  median,
  nextProblem,
  openProblem,
  type Problem,
  type ProblemCode,
  type SkillId,
  type SlipId,
  slipBeliefs,
  slipOf,
  type World,
} from "../../practice/index.ts";
import { type BeliefAfter, beliefsThrough, believedOf, presentOf, scopeSlips } from "./beliefs.ts";
import { type Learnt, slipsOfSkill } from "./learner-record.ts";
import { type Believed, optionsShown, placeOf, type Run } from "./run.ts";
import { scopeOf, slipsOf } from "./scopes.ts";

type KnownForm = Form & { readonly id: FormId };

/** Fresh problems among which the next is chosen. */
const CANDIDATES = 30;
/** Seeds tried for one of them. */
const MOST_TRIES = 12;
export type Next =
  | {
      readonly kind: "problem";
      readonly code: ProblemCode;
      readonly believed: Believed;
      readonly followUp: SlipId | null;
    }
  /** Enough is known, or nothing is left to be asked. */
  | { readonly kind: "over" };

export interface NextWish {
  readonly run: Run;
  readonly learnt: Learnt;
  /** 0 to 4,294,967,295. */
  readonly seed: number;
  readonly today: number;
}

/** The next problem of a run, or its end. */
export function chooseNext(world: World, wish: NextWish): Next {
  const { run, learnt } = wish;
  const done = run.turns.filter(({ followUp }) => followUp === null).length;
  const { plan } = run;
  const slips = scopeSlips(plan, [...run.turns.map(({ form }) => form)]);
  switch (plan.kind) {
    case "set": {
      const code = plan.codes[done];
      if (code === undefined) return { kind: "over" };
      const opened = openProblem(world, code);
      const form = opened.kind === "problem" ? [opened.problem.form.id] : [];
      const scope = scopeSlips(plan, [...run.turns.map((turn) => turn.form), ...form]);
      // An instructor's set shows everyone the same options.
      const { guessing } = believedOf(presentOf(learnt.events, scope));
      return { kind: "problem", code, believed: { slips: {}, guessing }, followUp: null };
    }
    case "review": {
      const card = learnt.cards.find(({ id }) => id === plan.cards[done]);
      const problem = card === undefined ? null : problemForCard(world, card, wish);
      if (problem === null) return { kind: "over" };
      const scope = slipsOf(problem.form.skills);
      const believed = believedOf(presentOf(learnt.events, scope));
      return { kind: "problem", code: problem.code, believed, followUp: null };
    }
    case "find":
    case "skill":
      return chooseTelling(world, wish, slips);
  }
}

/** By what it is expected to tell. */
function chooseTelling(world: World, { run, learnt, seed, today }: NextWish, slips: readonly SlipId[]): Next {
  const { plan, turns } = run;
  const skills: readonly SkillId[] =
    plan.kind === "skill" ? [plan.skill] : plan.kind === "find" ? (scopeOf(plan.scope)?.skills ?? []) : [];
  const through = beliefsThrough(learnt.events, slips);
  const present = through.at(-1)?.belief;
  if (present === undefined) return { kind: "over" };
  if (plan.kind === "find" && isKnownEnough(run, through)) return { kind: "over" };
  const believed = believedOf(present);
  const used = usedCodes(learnt);
  const due = new Set(learnt.cards.filter(({ dueDay }) => dueDay <= today).map(({ id }) => id));
  const candidates = freshProblems(world, {
    forms: FORMS.filter((form) => form.skills.some((skill) => skills.includes(skill))),
    seed,
    slips: plan.kind === "skill" ? slipsOfSkill(plan.skill) : slips,
    mode: (form) => modeFor(form, learnt),
    used,
  }).map((problem) => ({ ...candidateOf(problem, believed, due), problem }));
  const next = nextProblem(present, candidates, {
    forms: turns.map(({ form }) => form),
    lastPlace: turns.at(-1)?.place ?? null,
    medianTimeS: median(turns.map(({ timeS }) => timeS)),
  });
  if (next === null) return { kind: "over" };
  return { kind: "problem", code: next.candidate.problem.code, believed, followUp: null };
}

const usedCodes = ({ events }: Learnt): ReadonlySet<string> =>
  new Set(events.flatMap((event) => (event.kind === "answer" ? [event.code] : [])));

const candidateOf = (problem: Problem, believed: Believed, due: ReadonlySet<string>): Candidate<SlipId> => ({
  problemId: problem.code,
  form: problem.form.id,
  skills: problem.form.skills,
  place: placeOf(problem),
  item: evidenceOf(problem, optionsShown(problem, believed)).item,
  usualTimeS: problem.form.minutes * 60,
  dueForReview: problem.form.skills.some((skill) => due.has(`${skill}/${problem.form.id}`)),
});

/** Typing once a skill's first problem was right: it leaves nothing to be eliminated. */
function modeFor(form: KnownForm, { skills }: Learnt): Mode {
  const begun = form.skills.some((skill) => (skills[skill]?.rights ?? 0) > 0);
  const wanted: Mode = begun ? "tell" : "choose";
  return form.modes.includes(wanted) ? wanted : (form.modes[0] ?? "choose");
}

/** Whether the answers of this run have settled what is believed. */
function isKnownEnough(run: Run, through: readonly BeliefAfter[]): boolean {
  const first = through.findIndex(({ event }) => event !== null && event.at >= run.startedAt);
  if (first < 0) return false;
  return diagnosisIsDone(through.slice(first - 1).map(({ belief }) => slipBeliefs(belief)));
}

interface Wanted {
  readonly forms: readonly KnownForm[];
  readonly seed: number;
  /** Each problem tells at least one of them, where any of the form's does. */
  readonly slips: readonly SlipId[];
  readonly mode: (form: KnownForm) => Mode;
  readonly used: ReadonlySet<string>;
}

/** Problems never seen, of every form in turn. */
function freshProblems(world: World, { forms, seed, slips, mode, used }: Wanted): readonly Problem[] {
  const luck = chance(seed);
  const problems: Problem[] = [];
  const open = [...forms];
  for (let at = 0; problems.length < CANDIDATES && open.length > 0; at += 1) {
    const form = open[at % open.length];
    if (form === undefined) break;
    const problem = freshOf(world, form, { luck, slips, mode: mode(form), used });
    if (problem === null) open.splice(at % open.length, 1);
    else if (!problems.some(({ code }) => code === problem.code)) problems.push(problem);
    if (at > 4 * CANDIDATES) break;
  }
  return problems;
}

function freshOf(
  world: World,
  form: KnownForm,
  {
    luck,
    slips,
    mode,
    used,
  }: {
    readonly luck: ReturnType<typeof chance>;
    readonly slips: readonly SlipId[];
    readonly mode: Mode;
    readonly used: ReadonlySet<string>;
  },
): Problem | null {
  for (let tried = 0; tried < MOST_TRIES; tried += 1) {
    const made = makeProblem(world, form.id, mode, luck.integer(0, MOST_SEED));
    if (made.kind === "none") return null;
    const { problem } = made;
    if (used.has(problem.code)) continue;
    // A skill or a form that no idea stands in the way of: any problem serves.
    if (
      form.leastSlipAnswers === 0 ||
      (slips.length === 0 && practisesFreely(problem)) ||
      firedSlips(problem).some((slip) => slips.includes(slip))
    )
      return problem;
  }
  return null;
}

/** Whether it practises a skill that no idea stands in the way of, where the case says which it practises. */
const practisesFreely = ({ case: { skills } }: Problem): boolean =>
  skills === undefined || skills.some((skill) => slipsOfSkill(skill).length === 0);

/** A fresh problem for a card that is due: of its form, or one on which its idea would be wrong. */
function problemForCard(
  world: World,
  card: Learnt["cards"][number],
  { learnt, seed }: NextWish,
): Problem | null {
  const luck = chance(seed);
  const used = usedCodes(learnt);
  const wanted = card.kind === "slip" ? slipOf(card.id as SlipId) : null;
  const forms =
    wanted === null
      ? FORMS.filter(({ id }) => card.id === `${card.skill}/${id}`)
      : FORMS.filter((form) =>
          form.skills.some((skill) => (wanted.skills as readonly SkillId[]).includes(skill)),
        );
  const slips = wanted === null ? slipsOfSkill(card.skill as SkillId) : [wanted.id as SlipId];
  const order = [...forms].sort(() => luck.integer(0, 1) - 0.5);
  for (const form of order) {
    const problem = freshOf(world, form, { luck, slips, mode: modeFor(form, learnt), used });
    if (problem !== null) return problem;
  }
  return null;
}

export interface SecondWish {
  readonly like: ProblemCode;
  readonly slip: SlipId;
  readonly run: Run;
  readonly learnt: Learnt;
  /** 0 to 4,294,967,295. */
  readonly seed: number;
}

/** A problem of the same form on which the idea just refuted would be wrong again; null when none was found. */
export function secondPrediction(world: World, { like, slip, run, learnt, seed }: SecondWish): Next {
  const opened = openProblem(world, like);
  if (opened.kind === "fault") return { kind: "over" };
  const { form, mode } = opened.problem;
  const problem = freshOf(world, form, {
    luck: chance(seed),
    slips: [slip],
    mode,
    used: usedCodes(learnt),
  });
  if (problem === null) return { kind: "over" };
  const scope = [...new Set([...scopeSlips(run.plan, [form.id]), slip])];
  const believed = believedOf(presentOf(learnt.events, scope));
  return { kind: "problem", code: problem.code, believed, followUp: slip };
}
