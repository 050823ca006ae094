/**
 * Whether a skill is mastered. Knowledge tracing in the manner of Corbett and Anderson 1995 (from memory), with figures of our own
 * judgement, and beside it what tracing alone cannot see: more than one form, more than one day, no slip left.
 *
 * The traced probability is for the machine. What a learner is shown is the standing and the next thing to do, never a percentage.
 */

import { fires, type ItemAnswer, type ItemEvidence, isRight } from "./item-evidence.ts";

const KNOWN_AT_FIRST = 0.2;
const LEARNT_BY_AN_ITEM = 0.15;
const CARELESS = 0.1;
/** Chance to be right without knowing, where the answer is typed; in choose mode it is one in the options. */
const GUESSED_WHEN_TOLD = 0.03;

const MASTERED_FROM = 0.95;
const LEAST_RIGHTS = 3;
const LEAST_FORMS = 2;
const LEAST_DAYS = 2;
/** A slip attached to the skill that is still likelier than this stands in the way. */
const SLIP_LEFT_ABOVE = 0.15;

/** What has been seen of a learner in one skill. A plain value, to be stored. */
export interface SkillRecord {
  /** Probability that the skill is known, 0..1. Not for the learner's eyes. */
  readonly known: number;
  /** Rights on items that discriminate: how many, in which forms, on which days (ISO dates of the learner's calendar). */
  readonly rights: number;
  readonly forms: readonly string[];
  readonly days: readonly string[];
}

export const NEW_SKILL_RECORD: SkillRecord = { known: KNOWN_AT_FIRST, rights: 0, forms: [], days: [] };

/**
 * The record after an answer. An item on which no slip of the skill would be wrong proves nothing and changes nothing, unless the
 * skill has no slips at all. "I don't know yet" counts as not right, no worse.
 * @param skillSlips the slips attached to the skill
 */
export function afterSkillAnswer<Slip extends string>(
  record: SkillRecord,
  skillSlips: readonly Slip[],
  given: {
    readonly form: string;
    readonly item: ItemEvidence<Slip>;
    readonly answer: ItemAnswer;
    /** ISO date of the learner's calendar. */
    readonly day: string;
  },
): SkillRecord {
  const { form, item, answer, day } = given;
  if (skillSlips.length > 0 && !skillSlips.some((slip) => fires(item, slip))) return record;
  const right = isRight(answer);
  const guessed = item.mode === "tell" ? GUESSED_WHEN_TOLD : 1 / item.optionCount;
  const ifKnown = right ? 1 - CARELESS : CARELESS;
  const ifNot = right ? guessed : 1 - guessed;
  const seen = (record.known * ifKnown) / (record.known * ifKnown + (1 - record.known) * ifNot);
  const known = seen + (1 - seen) * LEARNT_BY_AN_ITEM;
  if (!right) return { ...record, known };
  return {
    known,
    rights: record.rights + 1,
    forms: withOne(record.forms, form),
    days: withOne(record.days, day),
  };
}

const withOne = (list: readonly string[], one: string): readonly string[] =>
  list.includes(one) ? list : [...list, one];

export type SkillStanding = "mastered" | "secure-today" | "not-yet";

export type NextThing<Slip extends string = string> =
  | { readonly kind: "answer-another" }
  /** In a form that is not among these. */
  | { readonly kind: "answer-in-another-form"; readonly formsDone: readonly string[] }
  /** See its remedy, then answer an item on which it would be wrong. */
  | { readonly kind: "clear-up"; readonly slip: Slip }
  | { readonly kind: "fly-an-exercise" }
  | { readonly kind: "come-back-another-day" }
  | { readonly kind: "review-when-due" };

/**
 * Where a learner stands in a skill, and the one thing to do next.
 * @param slipsLeft the probability of each slip attached to the skill
 * @param flown for a skill that is flown: whether one exercise was flown within the published limits; null for others
 */
export function skillStanding<Slip extends string>(
  { known, rights, forms, days }: SkillRecord,
  slipsLeft: readonly { readonly slip: Slip; readonly belief: number }[],
  flown: boolean | null,
): { readonly standing: SkillStanding; readonly next: NextThing<Slip> } {
  const worst = slipsLeft.reduce<{ readonly slip: Slip; readonly belief: number } | null>(
    (so, one) => (one.belief > SLIP_LEFT_ABOVE && one.belief > (so?.belief ?? 0) ? one : so),
    null,
  );
  if (worst !== null) return { standing: "not-yet", next: { kind: "clear-up", slip: worst.slip } };
  // Forms before number: another form also counts as another right.
  if (rights > 0 && forms.length < LEAST_FORMS)
    return { standing: "not-yet", next: { kind: "answer-in-another-form", formsDone: forms } };
  if (known < MASTERED_FROM || rights < LEAST_RIGHTS)
    return { standing: "not-yet", next: { kind: "answer-another" } };
  if (flown === false) return { standing: "not-yet", next: { kind: "fly-an-exercise" } };
  if (days.length < LEAST_DAYS) return { standing: "secure-today", next: { kind: "come-back-another-day" } };
  return { standing: "mastered", next: { kind: "review-when-due" } };
}
