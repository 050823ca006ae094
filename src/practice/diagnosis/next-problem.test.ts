import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Answered, histories, items, scopes } from "../../../test/diagnosis-arbitraries.ts";
import { afterAnswer, afterAnswers, type Belief, priorBelief, slipBeliefs } from "./belief.ts";
import { hypothesisSpace } from "./hypotheses.ts";
import { forecaster } from "./information.ts";
import type { ItemEvidence, SlipOption } from "./item-evidence.ts";
import { type Candidate, diagnosisIsDone, nextProblem, type SessionSoFar } from "./next-problem.ts";

const entropyBits = (mass: Readonly<Float64Array>) =>
  mass.reduce((sum, one) => sum - (one > 0 ? one * Math.log2(one) : 0), 0);
const answering = (belief: Belief, item: ItemEvidence, pick: number) =>
  afterAnswer(belief, item, { pick, confidence: null });
const choose = (optionCount: number, slipOptions: Readonly<Record<string, SlipOption>>): ItemEvidence => ({
  mode: "choose",
  optionCount,
  slipOptions,
});
const believed = (scope: Parameters<typeof hypothesisSpace>[0], history: readonly Answered[]) =>
  afterAnswers(priorBelief(hypothesisSpace(scope)), history);

describe("the forecast", () => {
  it("is the fall of entropy that the answers bring on average", () => {
    fc.assert(
      fc.property(scopes, histories, items, (scope, history, item) => {
        const belief = believed(scope, history);
        const { optionChances, informationBits } = forecaster(belief)(item);
        // The second route: answer the item every way, and weigh what is then left.
        const left = optionChances.reduce(
          (sum, chance, option) => sum + chance * entropyBits(answering(belief, item, option).mass),
          0,
        );
        expect(optionChances.reduce((sum, chance) => sum + chance, 0)).toBeCloseTo(1, 10);
        expect(informationBits).toBeCloseTo(entropyBits(belief.mass) - left, 8);
      }),
    );
  });

  it("expects the mean of the beliefs to stay where it is", () => {
    fc.assert(
      fc.property(scopes, histories, items, (scope, history, item) => {
        const belief = believed(scope, history);
        const { optionChances } = forecaster(belief)(item);
        slipBeliefs(belief).forEach((now, slip) => {
          const mean = optionChances.reduce(
            (sum, chance, option) => sum + chance * (slipBeliefs(answering(belief, item, option))[slip] ?? 0),
            0,
          );
          expect(mean).toBeCloseTo(now, 10);
        });
      }),
    );
  });
});

const SCOPE = hypothesisSpace(
  ["reads", "selector", "needle", "nose", "page", "mile"].map((id) => ({ id, base: 0.1 })),
);

const candidate = (problemId: string, parts: Partial<Candidate> = {}): Candidate => ({
  problemId,
  form: `form-${problemId}`,
  skills: [],
  place: `place-${problemId}`,
  item: choose(3, { reads: 1, selector: 2 }),
  usualTimeS: null,
  dueForReview: false,
  ...parts,
});
const session = (parts: Partial<SessionSoFar> = {}): SessionSoFar => ({
  forms: [],
  lastPlace: null,
  medianTimeS: null,
  ...parts,
});
const chosen = (candidates: readonly Candidate[], so: SessionSoFar, belief = priorBelief(SCOPE)) => {
  const next = nextProblem(belief, candidates, so);
  return next && [next.candidate.problemId, next.turn];
};
const silent = choose(3, {});

describe("the next problem", () => {
  it("is the one that tells most", () => {
    const telling = candidate("telling", { item: choose(4, { reads: 1, selector: 2, needle: 3 }) });
    expect(chosen([candidate("silent", { item: silent }), telling, candidate("usual")], session())).toEqual([
      "telling",
      "diagnose",
    ]);
  });

  it.each<[string, Partial<Candidate>, Partial<SessionSoFar>]>([
    ["another than the form just used", { form: "side-call" }, { forms: ["side-call"] }],
    ["another than the place just used", { place: "HJL 5" }, { lastPlace: "HJL 5" }],
    ["no long one", { usualTimeS: 61 }, { medianTimeS: 20 }],
  ])("is %s, of two that tell the same", (_, parts, so) => {
    expect(chosen([candidate("first", parts), candidate("second")], session(so))?.[0]).toBe("second");
    expect(chosen([candidate("first", parts), candidate("second")], session())?.[0]).toBe("first");
  });

  it("looks five problems back for forms, and takes three medians as not yet long", () => {
    const first = candidate("first", { form: "side-call", usualTimeS: 60 });
    const forms = ["side-call", "a", "b", "c", "d", "e"];
    expect(chosen([first, candidate("second")], session({ forms, medianTimeS: 20 }))?.[0]).toBe("first");
  });

  it("builds confidence at the third of every five, by one that is right with .85 or more", () => {
    const easy = candidate("easy", { item: silent });
    const hard = candidate("hard", { item: choose(4, { needle: 1, page: 2, mile: 3 }) });
    // After two rights on items that could catch him he is taken as settled: an item on which no slip fires is then right with .88.
    const settled = [1, 2].reduce(
      (so) => answering(so, choose(4, { reads: 1, selector: 2, nose: 3 }), 0),
      priorBelief(SCOPE),
    );
    for (const [count, wanted, turn] of [
      [2, "easy", "build-confidence"],
      [7, "easy", "build-confidence"],
      [3, "hard", "diagnose"],
    ] as const)
      expect(chosen([hard, easy], session({ forms: Array(count).fill("x") }), settled)).toEqual([
        wanted,
        turn,
      ]);
    // Before any answer nothing is as likely right as that.
    expect(chosen([easy, hard], session({ forms: ["x", "x"] }))).toEqual(["hard", "diagnose"]);
  });

  it("reviews at the fifth of every five what is due, and diagnoses when nothing is", () => {
    const due = candidate("due", { item: choose(3, { mile: 1 }), dueForReview: true });
    const fifth = session({ forms: ["a", "b", "c", "d"] });
    expect(chosen([candidate("usual"), due], fifth)).toEqual(["due", "review"]);
    expect(chosen([candidate("usual")], fifth)).toEqual(["usual", "diagnose"]);
  });

  it("is none when there is no candidate", () => expect(chosen([], session())).toBeNull());
});

describe("a diagnostic run", () => {
  const still = (count: number) => Array.from({ length: count }, () => Float64Array.of(0.4, 0.2));

  it("ends when no belief has moved by .05 over four answers", () => {
    expect(diagnosisIsDone(still(5))).toBe(true);
    expect(diagnosisIsDone([...still(2), Float64Array.of(0.4, 0.26), ...still(2)])).toBe(false);
    expect(diagnosisIsDone([Float64Array.of(0.4, 0.26), ...still(5)])).toBe(true);
    expect(diagnosisIsDone([Float64Array.of(0.4, 0.26), ...still(4)])).toBe(false);
  });

  it("goes on before four answers, and ends at twenty however it moves", () => {
    const moving = (count: number) => Array.from({ length: count }, (_, at) => Float64Array.of(at % 2));
    expect(diagnosisIsDone(still(4))).toBe(false);
    expect(diagnosisIsDone(moving(20))).toBe(false);
    expect(diagnosisIsDone(moving(21))).toBe(true);
  });
});
