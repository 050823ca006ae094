/**
 * What the learner is to be asked next, and what may be said of him: diagnosis over fresh problems. Pure: everything comes in as plain data,
 * so that it runs beside the page as well as in it.
 */

import {
  afterAnswer,
  afterRemedy,
  atNextSession,
  type Belief,
  type Candidate,
  chance,
  diagnosisIsDone,
  evidenceOf,
  FORMS,
  type Form,
  type FormId,
  firedSlips,
  fires,
  hypothesisSpace,
  isRight,
  MOST_SEED,
  type Mode,
  makeProblem,
  median,
  nextProblem,
  openProblem,
  type Problem,
  type ProblemCode,
  priorBelief,
  SKILL_IDS,
  type SkillId,
  type SlipId,
  type Standing,
  slipBeliefs,
  slipOf,
  standing,
  unsettledBelief,
  type World,
  withNeeds,
} from "../../practice/index.ts";
import { itemAnswer, type Learnt, type PracticeEvent, slipsOfSkill } from "./learner-record.ts";
import { type Believed, optionsShown, type Plan, placeOf, type Run } from "./run.ts";
import { MOST_SLIPS_IN_SCOPE, scopeOf, slipsOf } from "./scopes.ts";

type KnownForm = Form & { readonly id: FormId };

/** Fresh problems among which the next is chosen. */
const CANDIDATES = 30;
/** Seeds tried for one of them. */
const MOST_TRIES = 12;
const GUESSING_FROM = 0.5;
/** Answers older than these say little of today. */
const EVENTS_LOOKED_BACK = 400;

/** The ideas told apart in a run. */
export function scopeSlips(plan: Plan, formsAsked: readonly FormId[] = []): readonly SlipId[] {
  switch (plan.kind) {
    case "find":
      return scopeOf(plan.scope)?.slips ?? [];
    case "skill": {
      const own = slipsOfSkill(plan.skill);
      const needed = slipsOf(withNeeds([plan.skill])).filter((slip) => !own.includes(slip));
      return [...own, ...needed].slice(0, MOST_SLIPS_IN_SCOPE);
    }
    case "review":
    case "set":
      return slipsOf(FORMS.filter(({ id }) => formsAsked.includes(id)).flatMap(({ skills }) => skills));
  }
}

const baseOf = (slips: readonly SlipId[]) => slips.map((id) => ({ id, base: slipOf(id).base }));

/** What is believed before and after each event that speaks of the scope; the last is the present. */
export function beliefsThrough(
  events: readonly PracticeEvent[],
  slips: readonly SlipId[],
): readonly { readonly event: PracticeEvent | null; readonly belief: Belief<SlipId> }[] {
  let belief = priorBelief(hypothesisSpace(baseOf(slips)));
  const through: { event: PracticeEvent | null; belief: Belief<SlipId> }[] = [{ event: null, belief }];
  let day: string | null = null;
  for (const event of events.slice(-EVENTS_LOOKED_BACK)) {
    if (event.kind !== "answer" || !slips.some((slip) => fires(event.item, slip))) continue;
    if (day !== null && event.day !== day) belief = atNextSession(belief);
    day = event.day;
    const answer = itemAnswer(event);
    if (event.followUp !== null && isRight(answer))
      belief = slips.includes(event.followUp) ? afterRemedy(belief, event.followUp) : belief;
    else belief = afterAnswer(belief, event.item, answer);
    through.push({ event, belief });
  }
  return through;
}

const presentOf = (events: readonly PracticeEvent[], slips: readonly SlipId[]): Belief<SlipId> =>
  beliefsThrough(events, slips).at(-1)?.belief ?? priorBelief(hypothesisSpace(baseOf(slips)));

function believedOf(belief: Belief<SlipId>): Believed {
  const held = slipBeliefs(belief);
  const slips: Partial<Record<SlipId, number>> = {};
  belief.space.slips.forEach((slip, at) => {
    slips[slip] = Math.round((held[at] ?? 0) * 1000) / 1000;
  });
  return { slips, guessing: unsettledBelief(belief) >= GUESSING_FROM };
}

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
function isKnownEnough(
  run: Run,
  through: readonly { readonly event: PracticeEvent | null; readonly belief: Belief<SlipId> }[],
): boolean {
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

/** How likely the ideas in the way of a skill are held, by skill; a skill that was never asked has none. */
export type Path = Readonly<Partial<Record<SkillId, Readonly<Partial<Record<SlipId, number>>>>>>;

/** Each skill judged over its own ideas alone: few, so that right answers clear them soon. */
export function pathOf({ learnt }: Pick<SumWish, "learnt">): Path {
  const path: Partial<Record<SkillId, Readonly<Partial<Record<SlipId, number>>>>> = {};
  for (const skill of SKILL_IDS)
    if (learnt.skills[skill] !== undefined) {
      const slips = slipsOfSkill(skill);
      path[skill] = slips.length === 0 ? {} : believedOf(presentOf(learnt.events, slips)).slips;
    }
  return path;
}

/** What may be said of the learner over the ideas of a run. */
export interface Sum {
  readonly standing: Standing<SlipId>;
  readonly path: Path;
}

export interface SumWish {
  readonly run: Run;
  readonly learnt: Learnt;
}

/** An idea is named only where some answer has followed it: what is merely common is nobody's yet. */
export function sumUp({ run, learnt }: SumWish): Sum {
  const slips = scopeSlips(
    run.plan,
    run.turns.map(({ form }) => form),
  );
  const answers = learnt.events.flatMap((event) =>
    event.kind === "answer" && (event.followUp === null || !isRight(itemAnswer(event))) ? [event] : [],
  );
  const history = answers.map((event) => ({ form: event.form, item: event.item, answer: itemAnswer(event) }));
  const stands = standing(presentOf(learnt.events, slips), history);
  const followed = (slip: SlipId): boolean =>
    answers.some(({ item, pick }) => pick !== 0 && item.slipOptions[slip] === pick);
  return {
    path: pathOf({ learnt }),
    standing:
      stands.kind === "just-guessing"
        ? stands
        : {
            kind: "slips",
            slips: stands.slips.map((one) =>
              (one.standing === "likely" || one.standing === "maybe") && !followed(one.slip)
                ? { slip: one.slip, standing: "open" }
                : one,
            ),
          },
  };
}
