import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Answered, histories, scopes } from "../../../test/diagnosis-arbitraries.ts";
import { spread } from "../../../test/spread.ts";
import {
  afterAnswer,
  afterAnswers,
  afterRemedy,
  atNextSession,
  type Belief,
  priorBelief,
  slipBeliefs,
  unsettledBelief,
} from "./belief.ts";
import { hypothesisSpace, type SlipInScope } from "./hypotheses.ts";
import type { ItemAnswer, ItemEvidence, SlipOption } from "./item-evidence.ts";

const even = (...ids: string[]) => hypothesisSpace(ids.map((id) => ({ id, base: 0.1 })));
const item = (optionCount: number, slipOptions: Readonly<Record<string, SlipOption>>): ItemEvidence => ({
  mode: "choose",
  optionCount,
  slipOptions,
});
const picked = (pick: ItemAnswer["pick"], confidence: ItemAnswer["confidence"] = null): ItemAnswer => ({
  pick,
  confidence,
});
const figures = (belief: Belief) =>
  [...slipBeliefs(belief), unsettledBelief(belief)].map((value) => Number(value.toFixed(3)));

const spreadBases = fc.tuple(spread(0.01, 0.3), spread(0.01, 0.3));
const without = ({ "slip-b": _, ...rest }: ItemEvidence["slipOptions"]): ItemEvidence["slipOptions"] => rest;

const READS = "radial-reads-inbound";
const SELECTOR = "selector-is-radial";
const NEEDLE = "needle-is-aircraft";

describe("three answers of the design specification", () => {
  // Our own specification, not published: computed with an earlier program of the same formulas.
  const first = afterAnswer(
    priorBelief(even(READS, SELECTOR, NEEDLE)),
    item(3, { [READS]: 1, [SELECTOR]: 1 }),
    picked(1),
  );
  const second = afterAnswer(first, item(3, { [READS]: 1 }), picked(0));
  const third = afterAnswer(second, item(4, { [READS]: 1, [SELECTOR]: 2, [NEEDLE]: 3 }), picked(2));

  it("begin with even odds", () =>
    expect(figures(priorBelief(even(READS, SELECTOR, NEEDLE)))).toEqual([0.473, 0.473, 0.473, 0.15]));
  it("raise both slips that share an option", () =>
    expect(figures(first)).toEqual([0.661, 0.661, 0.515, 0.122]));
  it("clear the one that alone would have been wrong", () =>
    expect(figures(second)).toEqual([0.29, 0.801, 0.472, 0.107]));
  it("name the one whose own option is picked", () =>
    expect(figures(third)).toEqual([0.121, 0.978, 0.322, 0.059]));
});

/** The same by the formulas as they are written down, set by set, without patterns, arrays or steps. */
function byHand(scope: readonly SlipInScope[], history: readonly Answered[]): number[] {
  const sets = scope
    .reduce<SlipInScope[][]>((so, slip) => so.concat(so.map((set) => set.concat(slip))), [[]])
    .filter((set) => set.length <= 3);
  const weight = (set: readonly SlipInScope[]) => set.reduce((product, { base }) => product * base, 1);
  const sizeShare = [0.2, 0.35, 0.28, 0.17];
  const hypotheses = sets.flatMap((set) => {
    const alike = sets.filter((other) => other.length === set.length);
    const share =
      (sizeShare[set.length]! * weight(set)) / alike.reduce((sum, other) => sum + weight(other), 0);
    return [true, false].map((settled) => {
      let probability = share * (settled ? 0.85 : 0.15);
      for (const { item, answer } of history) probability *= chanceByHand(set, settled, item, answer);
      return { set, settled, probability };
    });
  });
  const total = hypotheses.reduce((sum, { probability }) => sum + probability, 0);
  const share = (fits: (one: (typeof hypotheses)[number]) => boolean) =>
    hypotheses.filter(fits).reduce((sum, { probability }) => sum + probability, 0) / total;
  return [...scope.map((slip) => share(({ set }) => set.includes(slip))), share(({ settled }) => !settled)];
}

function chanceByHand(
  set: readonly SlipInScope[],
  settled: boolean,
  item: ItemEvidence,
  answer: ItemAnswer,
): number {
  const m = item.optionCount;
  const fired = set.map(({ id }) => item.slipOptions[id]).filter((option) => option !== undefined);
  if (answer.pick === "dont-know") return settled ? (fired.length > 0 ? 1 : 0.5) : 1.3;
  const sure = settled && answer.confidence === "sure";
  const guess = settled && answer.confidence === "guess";
  const e = settled ? (sure ? 0.9 : guess ? 0.5 : 0.8) : 0.35;
  const s = settled ? (sure ? 0.04 : 0.08) : 0.6;
  const g = settled ? 0.3 : 0.8;
  if (fired.length === 0) return answer.pick === 0 ? 1 - s : s / (m - 1);
  const of = (option: SlipOption) =>
    option === "not-on-offer" ? (answer.pick === 0 ? 0.5 : 0.5 / (m - 1)) : option === answer.pick ? 1 : 0;
  const followed = fired.reduce<number>((sum, option) => sum + of(option), 0) / fired.length;
  return e * followed + (1 - e) * ((answer.pick === 0 ? 1 - g : 0) + g / m);
}

const believed = (scope: readonly SlipInScope[], history: readonly Answered[]) =>
  afterAnswers(priorBelief(hypothesisSpace(scope)), history);
const numbers = (belief: Belief) => [...slipBeliefs(belief), unsettledBelief(belief)];
const expectSame = (got: readonly number[], wanted: readonly number[]) => {
  expect(got.length).toBe(wanted.length);
  got.forEach((value, at) => {
    expect(value).toBeCloseTo(wanted[at]!, 10);
  });
};

describe("the belief", () => {
  it("is Bayes' rule over every set, as written down", () => {
    fc.assert(
      fc.property(scopes, histories, (scope, history) =>
        expectSame(numbers(believed(scope, history)), byHand(scope, history)),
      ),
    );
  });

  it("sums to 1 and has no negative part, after answers, remedies and sessions", () => {
    fc.assert(
      fc.property(scopes, histories, (scope, history) => {
        const belief = atNextSession(afterRemedy(believed(scope, history), scope[0]!.id));
        expect(belief.mass.reduce((sum, one) => sum + one, 0)).toBeCloseTo(1, 10);
        expect(belief.mass.every((one) => one >= 0)).toBe(true);
      }),
    );
  });

  it("does not depend on the order of the answers", () => {
    fc.assert(
      fc.property(scopes, histories, (scope, history) =>
        expectSame(numbers(believed(scope, history)), numbers(believed(scope, [...history].reverse()))),
      ),
    );
  });

  it("does not depend on the order of the scope", () => {
    fc.assert(
      fc.property(scopes, histories, (scope, history) => {
        const there = slipBeliefs(believed(scope, history));
        const back = slipBeliefs(believed([...scope].reverse(), history)).reverse();
        expectSame([...there], [...back]);
      }),
    );
  });

  it("keeps two slips' odds against each other when they pick the same in everything", () => {
    fc.assert(
      fc.property(spreadBases, histories, ([baseA, baseB], history) => {
        const scope = [
          { id: "slip-a", base: baseA },
          { id: "slip-b", base: baseB },
          { id: "slip-c", base: 0.1 },
        ];
        const twins = history.map(({ item, answer }) => {
          const { "slip-a": asA, ...rest } = item.slipOptions;
          return {
            item: {
              ...item,
              slipOptions: asA === undefined ? without(rest) : { ...rest, "slip-a": asA, "slip-b": asA },
            },
            answer,
          };
        });
        const belief = believed(scope, twins);
        // Sets 1 and 2 are {a} and {b}; 5 and 6 are {a, c} and {b, c}.
        for (const [a, b] of [
          [1, 2],
          [5, 6],
        ] as const)
          expect(belief.mass[a]! / belief.mass[b]!).toBeCloseTo(baseA / baseB, 8);
      }),
    );
  });

  it("of a slip that is alone in firing falls with a right answer and rises with its own", () => {
    const prior = priorBelief(even(READS, SELECTOR, NEEDLE));
    const alone = item(4, { [SELECTOR]: 2 });
    const before = slipBeliefs(prior)[1]!;
    expect(slipBeliefs(afterAnswer(prior, alone, picked(0)))[1]!).toBeLessThan(before);
    expect(slipBeliefs(afterAnswer(prior, alone, picked(2)))[1]!).toBeGreaterThan(before);
  });

  it("moves further for a learner who is sure, less for one who guesses", () => {
    const prior = priorBelief(even(READS, SELECTOR, NEEDLE));
    const believing = (confidence: ItemAnswer["confidence"]) =>
      slipBeliefs(afterAnswer(prior, item(4, { [SELECTOR]: 2 }), picked(2, confidence)))[1]!;
    expect(believing("sure")).toBeGreaterThan(believing("think-so"));
    expect(believing("think-so")).toBe(believing(null));
    expect(believing("guess")).toBeLessThan(believing(null));
  });

  it("halves a slip at its remedy, and leaves whether the learner is settled", () => {
    const before = afterAnswer(
      priorBelief(even(READS, SELECTOR, NEEDLE)),
      item(3, { [READS]: 1 }),
      picked(1),
    );
    const after = afterRemedy(before, READS);
    expect(slipBeliefs(after)[0]!).toBeCloseTo(slipBeliefs(before)[0]! / 2, 12);
    expectSame(numbers(after).slice(1), numbers(before).slice(1));
  });

  it("goes a twentieth of the way back to the prior between sessions", () => {
    const prior = priorBelief(even(READS, SELECTOR, NEEDLE));
    const before = afterAnswer(prior, item(3, { [READS]: 1 }), picked(0));
    expect(slipBeliefs(atNextSession(before))[0]!).toBeCloseTo(
      0.95 * slipBeliefs(before)[0]! + 0.05 * slipBeliefs(prior)[0]!,
      12,
    );
  });

  it("refuses an option that the item does not have, and says which it has", () => {
    const prior = priorBelief(even(READS));
    expect(() => afterAnswer(prior, item(3, {}), picked(3))).toThrow("the item has options 0..2");
    expect(() => afterAnswer(prior, item(3, { [READS]: 3 }), picked(0))).toThrow("must be in 1..2");
    expect(() => afterAnswer(prior, item(1, {}), picked(0))).toThrow("two or more");
    expect(() => afterRemedy(prior, "no-such-slip")).toThrow("not in scope");
  });
});

describe("the hypotheses", () => {
  it.each([
    [3, 16],
    [12, 598],
    [40, 21_402],
  ])("of %i slips are %i", (slips, hypotheses) => {
    const scope = Array.from({ length: slips }, (_, at) => ({ id: `slip-${at}`, base: 0.07 }));
    expect(hypothesisSpace(scope).prior.length).toBe(hypotheses);
  });

  it("refuse a slip named twice and a base that is no odds", () => {
    expect(() =>
      hypothesisSpace([
        { id: "a", base: 0.1 },
        { id: "a", base: 0.1 },
      ]),
    ).toThrow("twice");
    expect(() => hypothesisSpace([{ id: "a", base: 0 }])).toThrow("over 0");
    expect(() => hypothesisSpace([{ id: "a", base: Number.NaN }])).toThrow("over 0");
  });
});
