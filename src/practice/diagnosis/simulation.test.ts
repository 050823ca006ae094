import { describe, expect, it } from "vitest";
import { syntheticSource } from "../../../test/synthetic-problems.ts";
import { chance } from "../chance.ts";
import { ACCEPTANCE_CASES, missedDemands, runCase } from "./acceptance.ts";
import { afterAnswers, priorBelief, slipBeliefs } from "./belief.ts";
import { hypothesisSpace } from "./hypotheses.ts";
import type { SlipOption } from "./item-evidence.ts";
import { type SimulatedLearner, type SimulatedProblem, simulatedPick } from "./simulated-learner.ts";
import { simulate } from "./simulation.ts";

const problem = (
  slipOptions: Readonly<Record<string, SlipOption>>,
  composed: SlipOption = 0,
): SimulatedProblem => ({
  problemId: "p",
  form: "f",
  skills: [],
  place: "HJL 3",
  item: { mode: "choose", optionCount: 4, slipOptions },
  usualTimeS: null,
  dueForReview: false,
  composedOption: () => composed,
});
const settled = (slips: readonly string[], composes = 0): SimulatedLearner => ({
  kind: "settled",
  slips,
  followsSlip: 0.8,
  careless: 0.08,
  guesses: 0.3,
  composes,
});
const rights = (count: number) =>
  Array.from(
    { length: count },
    () => ({ item: problem({}).item, answer: { pick: 0, confidence: null } }) as const,
  );
const DRAWS = 20_000;

describe("a made-up learner", () => {
  it.each<[string, SimulatedLearner, SimulatedProblem, readonly number[]]>([
    [
      "without a slip is careless now and then",
      settled([]),
      problem({ a: 1 }),
      [0.92, 0.08 / 3, 0.08 / 3, 0.08 / 3],
    ],
    ["answers by the slip that fires", settled(["a"]), problem({ a: 2 }), [0.155, 0.015, 0.815, 0.015]],
    [
      "is careless where his slip is silent",
      settled(["b"]),
      problem({ a: 1 }),
      [0.92, 0.08 / 3, 0.08 / 3, 0.08 / 3],
    ],
    ["answers by either of two", settled(["a", "b"]), problem({ a: 1, b: 2 }), [0.155, 0.415, 0.415, 0.015]],
    [
      "answers by both at once",
      settled(["a", "b"], 1),
      problem({ a: 1, b: 2 }, 3),
      [0.155, 0.015, 0.015, 0.815],
    ],
    [
      "is half right where his answer is not on offer",
      settled(["a"]),
      problem({ a: "not-on-offer" }),
      [0.555, 0.4 / 3 + 0.015, 0.4 / 3 + 0.015, 0.4 / 3 + 0.015],
    ],
    ["guesses evenly", { kind: "guesser" }, problem({ a: 1 }), [0.25, 0.25, 0.25, 0.25]],
  ])("%s", (_, learner, one, shares) => {
    const luck = chance(11);
    const picks = [0, 0, 0, 0];
    for (let draw = 0; draw < DRAWS; draw++) {
      const pick = simulatedPick(learner, one, luck);
      picks[pick] = (picks[pick] ?? 0) + 1;
    }
    expect(picks.length).toBe(4);
    // Four standard errors.
    shares.forEach((share, option) => {
      expect(Math.abs(picks[option]! / DRAWS - share)).toBeLessThan(
        4 * Math.sqrt((share * (1 - share)) / DRAWS),
      );
    });
  });
});

describe("the outcome", () => {
  // Items that tell nothing: beliefs stay at the prior, in the order of the bases.
  const dull = { candidates: () => [problem({})] };
  const scope = ["a", "b", "c", "d"].map((id, at) => ({ id, base: 0.12 - 0.03 * at }));
  const of = (...slips: readonly string[]) =>
    simulate(dull, {
      scope,
      learners: 3,
      items: 6,
      endsWhenDone: false,
      candidates: 1,
      learner: () => ({ ...settled(slips), careless: 0 }),
      seed: 1,
    });

  it.each<[readonly string[], number | null, number | null]>([
    [["a"], 1, 1],
    [["c"], 0, 1],
    [["d"], 0, 0],
    [["b", "d"], 0, 0.5],
    [[], null, null],
  ])("of learners who hold %j counts the likeliest and the three likeliest", (slips, top, three) => {
    expect(of(...slips)).toMatchObject({
      topHeld: top,
      heldInTopThree: three,
      meanItems: 6,
      justGuessing: 0,
    });
  });

  it("gives the mean square of belief less truth", () => {
    const held = slipBeliefs(afterAnswers(priorBelief(hypothesisSpace(scope)), rights(6)));
    const squares = [...held].map((belief, at) => (at === 1 ? 1 - belief : belief) ** 2);
    expect(of("b").brier).toBeCloseTo(squares.reduce((sum, one) => sum + one, 0) / 4, 12);
  });

  it("lets a learner go when his diagnosis is done", () => {
    const setup = { scope, learners: 3, items: 20, candidates: 1, learner: () => settled([]), seed: 1 };
    expect(simulate(dull, { ...setup, endsWhenDone: true }).meanItems).toBe(4);
    expect(simulate(dull, { ...setup, endsWhenDone: false }).meanItems).toBe(20);
  });
});

const SCOPE = Array.from({ length: 12 }, (_, at) => ({
  id: `slip-${at}`,
  base: [0.12, 0.07, 0.03][at % 3]!,
}));
const SOURCE = syntheticSource(SCOPE.map(({ id }) => id));
const LESSON_CASES = ACCEPTANCE_CASES.filter(
  ({ scope, demands }) => scope === "lesson" && demands.length > 0,
);
const run = (one: (typeof ACCEPTANCE_CASES)[number], seed = 4, learners = 20) =>
  runCase(one, { scope: SCOPE, source: SOURCE, learners, seed });

describe("the diagnosis, on problems without scenes", () => {
  it.each(LESSON_CASES.map((one) => [one.name, one] as const))("meets the demands: %s", (_, one) => {
    expect(missedDemands(run(one, 4, 100), one.demands)).toEqual([]);
  });

  it("comes to the same by the same seed, and to something else by another", () => {
    const [first] = LESSON_CASES;
    expect(run(first!)).toEqual(run(first!));
    expect(run(first!, 5)).not.toEqual(run(first!));
  });

  it("says which demands are missed, by how much", () => {
    const outcome = run(LESSON_CASES[0]!);
    const impossible = [
      { measure: "brier", sense: "at-most", limit: 0 },
      { measure: "topHeld", sense: "at-least", limit: 0 },
    ] as const;
    expect(missedDemands(outcome, impossible)).toEqual([
      `brier is ${outcome.brier.toFixed(3)}, not at most 0`,
    ]);
    const guessers = run(LESSON_CASES.find(({ kind }) => kind === "guessers")!);
    expect(missedDemands(guessers, [impossible[1]])).toEqual(["topHeld is none, not at least 0"]);
  });
});
