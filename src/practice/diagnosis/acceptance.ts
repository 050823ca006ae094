/**
 * What the diagnosis must do with made-up learners before it is trusted with real ones: set-ups, most of them with demands. The made-up
 * learners hold only slips that the program knows, so the figures are an upper bound: they show that the method can work.
 */

import type { Chance } from "../chance.ts";
import type { Mode } from "../form.ts";
import type { SlipInScope } from "./hypotheses.ts";
import type { SimulatedLearner } from "./simulated-learner.ts";
import { type ProblemSource, type SimulationOutcome, simulate } from "./simulation.ts";

const CANDIDATES = 24;
/** Share of double firings that a made-up learner answers by both slips at once, which the model does not know. */
const COMPOSES = 0.3;

export type Measure = Exclude<keyof SimulationOutcome, "learners" | "meanItems" | "heldOut">;

export interface Demand {
  readonly measure: Measure;
  readonly sense: "at-least" | "at-most";
  readonly limit: number;
}

const atLeast = (measure: Measure, limit: number): Demand => ({ measure, sense: "at-least", limit });
const atMost = (measure: Measure, limit: number): Demand => ({ measure, sense: "at-most", limit });

export interface AcceptanceCase {
  readonly name: string;
  readonly scope: "lesson" | "course";
  readonly mode: Mode;
  readonly items: number;
  readonly endsWhenDone: boolean;
  readonly candidates: number;
  readonly kind: "holders" | "noisy-holders" | "no-slips" | "guessers";
  readonly demands: readonly Demand[];
}

const LESSON: Omit<AcceptanceCase, "name" | "demands"> = {
  scope: "lesson",
  mode: "choose",
  items: 20,
  endsWhenDone: false,
  candidates: CANDIDATES,
  kind: "holders",
};
const COURSE = { ...LESSON, scope: "course" } as const;

export const ACCEPTANCE_CASES: readonly AcceptanceCase[] = [
  {
    ...LESSON,
    name: "lesson, 20 items chosen",
    demands: [
      atLeast("topHeld", 0.95),
      atLeast("heldInTopThree", 0.9),
      atLeast("likelyPrecision", 0.95),
      atMost("falseLikely", 0.05),
      atLeast("heldWhenSure", 0.85),
      atMost("brier", 0.03),
    ],
  },
  {
    ...LESSON,
    name: "lesson, 10 items chosen",
    items: 10,
    demands: [atLeast("topHeld", 0.9), atLeast("heldInTopThree", 0.8)],
  },
  {
    ...LESSON,
    name: "lesson, 20 items at random",
    candidates: 1,
    demands: [atLeast("topHeld", 0.85), atLeast("heldInTopThree", 0.8)],
  },
  {
    ...LESSON,
    name: "lesson, 20 items chosen, noisy learners",
    kind: "noisy-holders",
    demands: [atLeast("topHeld", 0.9), atLeast("heldInTopThree", 0.8)],
  },
  {
    ...COURSE,
    name: "whole course, 20 items chosen",
    demands: [atLeast("topHeld", 0.75), atLeast("heldInTopThree", 0.55)],
  },
  {
    ...COURSE,
    name: "whole course, 40 items chosen",
    items: 40,
    demands: [atLeast("topHeld", 0.85), atLeast("heldInTopThree", 0.8)],
  },
  {
    ...LESSON,
    name: "lesson, 20 items chosen, learners without a slip",
    kind: "no-slips",
    demands: [atMost("falseLikely", 0.05)],
  },
  {
    ...LESSON,
    name: "lesson, 20 items chosen, learners who guess",
    kind: "guessers",
    demands: [atLeast("justGuessing", 0.95), atMost("falseLikely", 0.05)],
  },
  { ...LESSON, name: "lesson, 20 items chosen, answers typed", mode: "tell", demands: [] },
  { ...LESSON, name: "lesson, until the diagnosis is done", endsWhenDone: true, demands: [] },
];

/** Items chosen must find so many more of the slips held than items at random. */
export const GAIN_BY_CHOOSING = 0.05;

/** Runs one case with so many learners. The same seed gives the same outcome. */
export function runCase<Slip extends string>(
  { items, endsWhenDone, candidates, kind }: AcceptanceCase,
  given: {
    readonly scope: readonly SlipInScope<Slip>[];
    readonly source: ProblemSource<Slip>;
    readonly learners: number;
    readonly seed: number;
  },
): SimulationOutcome {
  const { scope, source, learners, seed } = given;
  const learner = (luck: Chance) => learnerOf(kind, scope, luck);
  return simulate(source, { scope, learners, items, endsWhenDone, candidates, learner, seed });
}

function learnerOf<Slip extends string>(
  kind: AcceptanceCase["kind"],
  scope: readonly SlipInScope<Slip>[],
  luck: Chance,
): SimulatedLearner<Slip> {
  if (kind === "guessers") return { kind: "guesser" };
  const noisy = kind === "noisy-holders";
  const left = scope.map(({ id }) => id);
  const count = kind === "no-slips" ? 0 : luck.integer(1, 3);
  return {
    kind: "settled",
    slips: Array.from({ length: count }, () => left.splice(luck.integer(0, left.length - 1), 1)).flat(),
    followsSlip: noisy ? 0.6 : 0.8,
    careless: noisy ? 0.15 : 0.08,
    guesses: 0.3,
    composes: COMPOSES,
  };
}

/** The demands that an outcome misses, each as a sentence; none when it meets all. */
export const missedDemands = (outcome: SimulationOutcome, demands: readonly Demand[]): string[] =>
  demands.flatMap(({ measure, sense, limit }) => {
    const value = outcome[measure];
    const met = value !== null && (sense === "at-least" ? value >= limit : value <= limit);
    return met
      ? []
      : [
          `${measure} is ${value === null ? "none" : value.toFixed(3)}, not ${sense === "at-least" ? "at least" : "at most"} ${limit}`,
        ];
  });
