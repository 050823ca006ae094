/**
 * All that a learner has answered, in the order it happened, and what follows from it: where each skill stands, and what is to be reviewed.
 * Only the answers are kept; everything else is worked out anew from them. Plain data, no clock: days and instants come in as arguments.
 */

import {
  afterReview,
  afterSkillAnswer,
  type Confidence,
  clearedSlipCard,
  FORMS,
  type FormId,
  fires,
  type ItemAnswer,
  type ItemEvidence,
  isRight,
  median,
  NEW_SKILL_RECORD,
  newCard,
  type ProblemCode,
  type ReviewCard,
  ratingOf,
  type SkillId,
  type SkillRecord,
  SLIPS,
  type SlipId,
  slipOf,
} from "../../practice/index.ts";

/** One answer. */
export interface Answered {
  readonly kind: "answer";
  /** ISO instant: it orders what several browsers have kept. */
  readonly at: string;
  /** ISO date of the learner's calendar. */
  readonly day: string;
  readonly code: ProblemCode;
  readonly form: FormId;
  readonly item: ItemEvidence<SlipId>;
  readonly pick: number | "dont-know";
  readonly confidence: Confidence | null;
  readonly timeS: number;
  /** The idea whose remedy was seen just before: this was the second prediction. Null for any other. */
  readonly followUp: SlipId | null;
}

/** An idea was cleared; from then on it is watched. */
export interface Cleared {
  readonly kind: "cleared";
  readonly at: string;
  readonly day: string;
  readonly slip: SlipId;
}

export type PracticeEvent = Answered | Cleared;

export interface Learnt {
  readonly events: readonly PracticeEvent[];
  readonly skills: Readonly<Partial<Record<SkillId, SkillRecord>>>;
  readonly cards: readonly ReviewCard[];
}

export const NOTHING_LEARNT: Learnt = { events: [], skills: {}, cards: [] };

/** Answers over which the learner's own usual time is taken. */
const TIMES_LOOKED_BACK = 30;

export const itemAnswer = ({ pick, confidence }: Answered): ItemAnswer => ({ pick, confidence });

/** Whole days since 1970 of an ISO date. */
export const dayNumber = (day: string): number => Math.round(Date.parse(`${day}T00:00:00Z`) / 86_400_000);

export const slipsOfSkill = (skill: SkillId): readonly SlipId[] =>
  SLIPS.filter(({ skills }) => (skills as readonly SkillId[]).includes(skill)).map(({ id }) => id);

/** None where this edition does not have the form. */
const skillsOfForm = (form: FormId): readonly SkillId[] => FORMS.find(({ id }) => id === form)?.skills ?? [];

/** A second prediction that is right speaks to the idea just refuted, and is no evidence of a skill. */
const isEvidence = (event: Answered): boolean => event.followUp === null || !isRight(itemAnswer(event));

/** The learner's usual time for a problem, seconds; null before the first. */
export function usualTimeS(events: readonly PracticeEvent[]): number | null {
  const times = events.flatMap((event) => (event.kind === "answer" ? [event.timeS] : []));
  return median(times.slice(-TIMES_LOOKED_BACK));
}

/** What is learnt after one more event. */
export function learntAfter(before: Learnt, event: PracticeEvent): Learnt {
  const events = [...before.events, event];
  if (event.kind === "cleared") {
    const skill = slipOf(event.slip).skills[0] ?? event.slip;
    if (before.cards.some(({ id }) => id === event.slip)) return { ...before, events };
    const card = clearedSlipCard({ id: event.slip, skill }, { day: dayNumber(event.day), seed: 0 });
    return { ...before, events, cards: [...before.cards, card] };
  }
  if (!isEvidence(event)) return { ...before, events };
  const skills: Partial<Record<SkillId, SkillRecord>> = { ...before.skills };
  let cards = before.cards;
  for (const skill of skillsOfForm(event.form)) {
    const attached = slipsOfSkill(skill);
    if (attached.length > 0 && !attached.some((slip) => fires(event.item, slip))) continue;
    skills[skill] = afterSkillAnswer(skills[skill] ?? NEW_SKILL_RECORD, attached, {
      form: event.form,
      item: event.item,
      answer: itemAnswer(event),
      day: event.day,
    });
    cards = afterCard(cards, { kind: "skill", id: `${skill}/${event.form}`, skill }, event, before.events);
  }
  for (const { kind, id, skill } of cards)
    if (kind === "slip" && fires(event.item, id as SlipId))
      cards = afterCard(cards, { kind, id, skill }, event, before.events);
  return { events, skills, cards };
}

/** A right answer before its day is practice, no review; a wrong one always counts. */
function afterCard(
  cards: readonly ReviewCard[],
  named: Pick<ReviewCard, "kind" | "id" | "skill">,
  event: Answered,
  before: readonly PracticeEvent[],
): readonly ReviewCard[] {
  const day = dayNumber(event.day);
  const known = cards.find(({ id }) => id === named.id);
  const answer = itemAnswer(event);
  if (known !== undefined && known.dueDay > day && isRight(answer)) return cards;
  const rating = ratingOf({
    answer,
    hintSeen: false,
    timeS: event.timeS,
    medianTimeS: usualTimeS(before),
  });
  const next = afterReview(known ?? newCard(named, day), { day, rating, seed: 0 });
  return known === undefined ? [...cards, next] : cards.map((card) => (card === known ? next : card));
}

/** What follows from all events together. */
export const learntFrom = (events: readonly PracticeEvent[]): Learnt =>
  events.reduce(learntAfter, NOTHING_LEARNT);

const keyOf = (event: PracticeEvent): string =>
  event.kind === "answer" ? `${event.at} ${event.code}` : `${event.at} ${event.slip}`;

/** Two records of one learner as one: every event once, in the order it happened. */
export function merged(
  one: readonly PracticeEvent[],
  other: readonly PracticeEvent[],
): readonly PracticeEvent[] {
  const known = new Set(one.map(keyOf));
  const all = [...one, ...other.filter((event) => !known.has(keyOf(event)))];
  return all.sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0));
}
