import { describe, expect, it } from "vitest";
import {
  afterReview,
  clearedSlipCard,
  newCard,
  type ReviewCard,
  type ReviewRating,
  ratingOf,
  reviewsOfDay,
} from "./review.ts";

const DAY = 20_000;
const CARD = newCard({ kind: "skill", id: "side-of-line/side-call", skill: "side-of-line" }, DAY);

/** Reviews a card whenever it is due; gives the intervals. */
function intervals(ratings: readonly ReviewRating[], card: ReviewCard = CARD, seed: number | null = null) {
  let now = card;
  return ratings.map((rating) => {
    const day = now.dueDay;
    now = afterReview(now, { day, rating, seed });
    return now.dueDay - day;
  });
}

describe("the intervals", () => {
  // From the scheduler's own default weights at retention .90, longest interval aside: 3, 14, 57, 196 and 1, 3, 8, 22 days.
  it("of four goods are 3, 14 and 57 days, then the longest allowed", () =>
    expect(intervals(["good", "good", "good", "good"])).toEqual([3, 14, 57, 120]));
  it("after a lapse begin at a day", () =>
    expect(intervals(["again", "good", "good", "good"])).toEqual([1, 3, 8, 22]));
  it("of a slip that was cleared are shorter", () => {
    const slip = newCard({ kind: "slip", id: "page-left-right", skill: "side-of-line" }, DAY);
    const ordinary = intervals(["good", "good", "good"]);
    const shorter = intervals(["good", "good", "good"], slip);
    // The first is the same: a good answer's interval is kept at least two days over a wrong one's.
    expect(shorter[0]).toBe(ordinary[0]);
    expect(shorter[1]).toBeLessThan(ordinary[1]!);
    expect(shorter[2]).toBeLessThan(ordinary[2]!);
    const watched = clearedSlipCard(slip, { day: DAY, seed: null });
    expect([watched.kind, watched.dueDay - DAY, watched.lastDay]).toEqual(["slip", shorter[0], DAY]);
  });

  it("spread by the seed near the unspread ones, and the same for the same seed", () => {
    const spreads = Array.from({ length: 30 }, (_, seed) => intervals(["good", "good", "good"], CARD, seed));
    expect(new Set(spreads.map(([, , third]) => third)).size).toBeGreaterThan(3);
    for (const [first, second, third] of spreads) {
      expect(first).toBeGreaterThanOrEqual(2);
      expect(first).toBeLessThanOrEqual(4);
      expect(second).toBeGreaterThanOrEqual(10);
      expect(second).toBeLessThanOrEqual(19);
      expect(third).toBeLessThanOrEqual(90);
    }
    expect(intervals(["good", "good", "good"], CARD, 7)).toEqual(spreads[7]);
  });

  it("are not lengthened by repeats on the same day", () => {
    const once = afterReview(CARD, { day: DAY, rating: "good", seed: null });
    expect(afterReview(once, { day: DAY, rating: "easy", seed: null })).toBe(once);
  });

  it("keep a card a plain value that survives being stored", () => {
    const once = afterReview(CARD, { day: DAY, rating: "good", seed: 3 });
    const stored: ReviewCard = JSON.parse(JSON.stringify(once));
    expect(stored).toEqual(once);
    const next = { day: once.dueDay, rating: "hard", seed: 3 } as const;
    expect(afterReview(stored, next)).toEqual(afterReview(once, next));
  });
});

describe("the rating", () => {
  const rated = (
    parts: Partial<Parameters<typeof ratingOf>[0]> & { pick?: number | "dont-know"; sure?: boolean },
  ) =>
    ratingOf({
      answer: { pick: parts.pick ?? 0, confidence: parts.sure ? "sure" : null },
      hintSeen: false,
      timeS: 20,
      medianTimeS: 20,
      ...parts,
    });

  it.each<[string, Parameters<typeof rated>[0], ReviewRating]>([
    ["wrong", { pick: 2 }, "again"],
    ["wrong and sure", { pick: 2, sure: true, timeS: 5 }, "again"],
    ["don't know", { pick: "dont-know" }, "again"],
    ["right", {}, "good"],
    ["right with a hint", { hintSeen: true, sure: true, timeS: 5 }, "hard"],
    ["right by a guess", { answer: { pick: 0, confidence: "guess" } }, "hard"],
    ["right at twice the median", { timeS: 40 }, "good"],
    ["right at over twice the median", { timeS: 40.1 }, "hard"],
    ["right, sure and quick", { sure: true, timeS: 13.9 }, "easy"],
    ["right and quick, not sure", { timeS: 13.9 }, "good"],
    ["right and sure at .7 of the median", { sure: true, timeS: 14 }, "good"],
    ["right and quick before there is a median", { sure: true, timeS: 1, medianTimeS: null }, "good"],
  ])("of %s", (_, parts, wanted) => expect(rated(parts)).toBe(wanted));
});

describe("a day's reviews", () => {
  const cards = (skill: string, count: number, dueDay: number) =>
    Array.from({ length: count }, (_, at) => ({ ...CARD, id: `${skill}/${at}`, skill, dueDay }));

  it("are those due, at most twenty less those done, the most overdue first", () => {
    const due = [...cards("late", 5, DAY - 3), ...cards("today", 30, DAY), ...cards("tomorrow", 5, DAY + 1)];
    const set = reviewsOfDay(due, DAY);
    expect(set.length).toBe(20);
    expect(set.filter(({ skill }) => skill === "late").length).toBe(5);
    expect(set.some(({ skill }) => skill === "tomorrow")).toBe(false);
    expect(reviewsOfDay(due, DAY, 18).map(({ skill }) => skill)).toEqual(["late", "late"]);
    expect(reviewsOfDay(due, DAY, 25)).toEqual([]);
  });

  it("mix the skills so that none follows itself while others are left", () => {
    const set = reviewsOfDay([...cards("a", 6, DAY), ...cards("b", 3, DAY), ...cards("c", 4, DAY)], DAY);
    expect(set.length).toBe(13);
    const repeats = set.filter(({ skill }, at) => set[at - 1]?.skill === skill);
    expect(repeats).toEqual([]);
    expect(new Set(set.map(({ id }) => id)).size).toBe(13);
  });
});
