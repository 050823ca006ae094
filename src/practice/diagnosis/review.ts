/**
 * When to ask again. A card is a skill in a family of forms, never a fixed item: each review draws a fresh scene. Intervals are those
 * of FSRS-6 with its authors' default weights, by `ts-fsrs`. That model was fitted to the recall of facts; for skills its intervals are
 * provisional. Days are whole days of the learner's calendar, counted from any fixed day.
 */

import { createEmptyCard, type FSRS, fsrs, type Grade, Rating, State, StrategyMode } from "ts-fsrs";
import { type ItemAnswer, isRight } from "./item-evidence.ts";

const LONGEST_INTERVAL_DAYS = 120;
const MS_PER_DAY = 86_400_000;
/** Chance still to know it at which a card comes due: a cleared slip is watched more closely, so that a relapse is caught. */
const RETENTION = { skill: 0.9, slip: 0.95 } as const;
/** Shares of the learner's own median time above which a right answer was hard, and under which, being sure, it was easy. */
const HARD_ABOVE_MEDIANS = 2;
const EASY_BELOW_MEDIANS = 0.7;

export interface ReviewCard {
  /** `skill`: a skill in a family of forms. `slip`: a slip that was cleared. */
  readonly kind: "skill" | "slip";
  /** Names the card among a learner's, such as `side-of-line/side-call`. */
  readonly id: string;
  /** The skill it exercises, by which a day's reviews are mixed. */
  readonly skill: string;
  readonly dueDay: number;
  readonly lastDay: number | null;
  /** FSRS's two quantities: days until recall falls to .9, and 1..10; both 0 before the first review. */
  readonly stabilityDays: number;
  readonly difficulty: number;
  readonly reviews: number;
  readonly lapses: number;
}

export type ReviewRating = "again" | "hard" | "good" | "easy";

/** A card that has not been reviewed, due at once. */
export const newCard = (
  { kind, id, skill }: Pick<ReviewCard, "kind" | "id" | "skill">,
  day: number,
): ReviewCard => ({
  kind,
  id,
  skill,
  dueDay: day,
  lastDay: null,
  stabilityDays: 0,
  difficulty: 0,
  reviews: 0,
  lapses: 0,
});

/** The card that watches a slip from the day it was cleared: as reviewed on that day, and right. */
export const clearedSlipCard = (
  { id, skill }: Pick<ReviewCard, "id" | "skill">,
  given: { readonly day: number; readonly seed: number | null },
): ReviewCard => afterReview(newCard({ kind: "slip", id, skill }, given.day), { ...given, rating: "good" });

/** What an answer says of a card. `medianTimeS`: the learner's own; null before there is one. */
export function ratingOf(given: {
  readonly answer: ItemAnswer;
  readonly hintSeen: boolean;
  readonly timeS: number;
  readonly medianTimeS: number | null;
}): ReviewRating {
  const { answer, hintSeen, timeS, medianTimeS } = given;
  if (!isRight(answer)) return "again";
  if (hintSeen || answer.confidence === "guess") return "hard";
  if (medianTimeS === null) return "good";
  if (timeS > HARD_ABOVE_MEDIANS * medianTimeS) return "hard";
  return answer.confidence === "sure" && timeS < EASY_BELOW_MEDIANS * medianTimeS ? "easy" : "good";
}

const GRADES: Readonly<Record<ReviewRating, Grade>> = {
  again: Rating.Again,
  hard: Rating.Hard,
  good: Rating.Good,
  easy: Rating.Easy,
};

/**
 * The card after a review on a day: at least a day and at most 120 until the next. Repeats on the same day belong to the lesson, and
 * are not reviews: a card reviewed twice on a day is given back as it was.
 * @param seed spreads the intervals, so that cards learnt together do not fall due together; null for none. The same seed gives the
 * same interval.
 */
export function afterReview(
  card: ReviewCard,
  given: { readonly day: number; readonly rating: ReviewRating; readonly seed: number | null },
): ReviewCard {
  const { day, rating, seed } = given;
  if (card.lastDay !== null && day <= card.lastDay) return card;
  const { card: next } = scheduler(card, seed).next(
    {
      ...createEmptyCard(card.dueDay * MS_PER_DAY),
      stability: card.stabilityDays,
      difficulty: card.difficulty,
      reps: card.reviews,
      lapses: card.lapses,
      scheduled_days: card.lastDay === null ? 0 : card.dueDay - card.lastDay,
      state: card.lastDay === null ? State.New : State.Review,
      ...(card.lastDay === null ? {} : { last_review: card.lastDay * MS_PER_DAY }),
    },
    day * MS_PER_DAY,
    GRADES[rating],
  );
  return {
    ...card,
    // The library keeps the four ratings' intervals a day apart, if need be beyond its own longest.
    dueDay: day + Math.min(LONGEST_INTERVAL_DAYS, next.scheduled_days),
    lastDay: day,
    stabilityDays: next.stability,
    difficulty: next.difficulty,
    reviews: next.reps,
    lapses: next.lapses,
  };
}

function scheduler({ kind, id, reviews }: ReviewCard, seed: number | null): FSRS {
  const made = fsrs({
    request_retention: RETENTION[kind],
    maximum_interval: LONGEST_INTERVAL_DAYS,
    enable_fuzz: seed !== null,
    enable_short_term: false,
  });
  // The library's own seed would hang on the time of day.
  made.useStrategy(StrategyMode.SEED, () => `${seed}/${id}/${reviews}`);
  return made;
}

export const MOST_REVIEWS_A_DAY = 20;

/**
 * The day's reviews: of the cards due the twenty most overdue, mixed so that as few neighbours as possible share a skill. Equally
 * overdue cards come in the order given.
 * @param doneToday reviews already done on this day, which count toward the twenty
 */
export function reviewsOfDay(cards: readonly ReviewCard[], day: number, doneToday = 0): ReviewCard[] {
  const due = cards.filter(({ dueDay }) => dueDay <= day).sort((a, b) => a.dueDay - b.dueDay);
  return mixed(due.slice(0, Math.max(0, MOST_REVIEWS_A_DAY - doneToday)));
}

/** Always the next card of the skill with most cards left, unless that skill was just asked: then of the next such skill. */
function mixed(cards: readonly ReviewCard[]): ReviewCard[] {
  const bySkill = new Map<string, ReviewCard[]>();
  for (const card of cards) bySkill.set(card.skill, [...(bySkill.get(card.skill) ?? []), card]);
  const order: ReviewCard[] = [];
  while (order.length < cards.length) {
    const last = order.at(-1)?.skill;
    const queues = [...bySkill.values()].sort((a, b) => b.length - a.length);
    const queue = queues.find((one) => one.length > 0 && one[0]?.skill !== last) ?? queues[0];
    const card = queue?.shift();
    if (card === undefined) break;
    order.push(card);
  }
  return order;
}
