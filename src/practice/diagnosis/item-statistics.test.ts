import { describe, expect, it } from "vitest";
import { answerOffsets } from "./answer-offsets.ts";
import { heldOut } from "./held-out.ts";
import { hypothesisSpace } from "./hypotheses.ts";
import type { ItemAnswer, ItemEvidence } from "./item-evidence.ts";
import { itemStatistics, type LoggedAnswer, statisticsKey } from "./item-statistics.ts";
import { pointBiserial } from "./proportion.ts";
import { slipFidelity } from "./slip-fidelity.ts";

const CHOOSE: ItemEvidence = {
  mode: "choose",
  optionCount: 4,
  slipOptions: { needle: 1, selector: 2, reads: 2, nose: "not-on-offer" },
};
const TELL: ItemEvidence = { mode: "tell", optionCount: 4, slipOptions: { needle: 1, selector: 2 } };
const logged = (
  learner: string,
  pick: ItemAnswer["pick"],
  { form = "read-radial", item = CHOOSE, timeS = 20 }: Partial<LoggedAnswer> = {},
): LoggedAnswer => ({ learner, form, item, answer: { pick, confidence: null }, timeS });
/** One answer each of so many learners. */
const picks = (list: readonly ItemAnswer["pick"][], parts: Partial<LoggedAnswer> = {}) =>
  list.map((pick, at) => logged(`learner-${at}`, pick, parts));
const repeated = (pick: ItemAnswer["pick"], count: number) => Array<ItemAnswer["pick"]>(count).fill(pick);
const only = (log: readonly LoggedAnswer[]) => {
  const [first, ...others] = itemStatistics(log);
  expect(others).toEqual([]);
  return first!;
};

describe("the statistics of an item", () => {
  it("count what was picked, by the slips behind it", () => {
    const log = picks([0, 0, 0, 1, 2, 2, 3, "dont-know"]);
    const { firing, facility, options, dontKnowShare } = only(log);
    expect(firing).toEqual(["needle", "nose", "reads", "selector"]);
    expect(facility?.share).toBe(3 / 8);
    expect(dontKnowShare).toBe(1 / 8);
    expect(options.map(({ kind, slips, picks: count }) => [kind, slips, count])).toEqual([
      ["truth", [], 3],
      ["slips", ["reads", "selector"], 2],
      ["slips", ["needle"], 1],
      ["other", [], 1],
    ]);
    expect(options.reduce((sum, { share }) => sum + share, 0) + dontKnowShare).toBeCloseTo(1, 12);
  });

  it("keep apart what asks or tells apart something else", () => {
    const fewer: ItemEvidence = { ...CHOOSE, slipOptions: { needle: 1 } };
    const log = [
      logged("a", 0),
      logged("a", 0, { form: "place-dot" }),
      logged("a", 0, { item: TELL }),
      logged("a", 0, { item: fewer }),
    ];
    expect(new Set(log.map(statisticsKey)).size).toBe(4);
    expect(itemStatistics(log).length).toBe(4);
    // The order in which slips are written, and the option they have, makes no other item.
    const turned: ItemEvidence = { ...CHOOSE, slipOptions: { nose: 3, reads: 1, selector: 1, needle: 2 } };
    expect(statisticsKey(logged("a", 0, { item: turned }))).toBe(statisticsKey(logged("a", 0)));
  });

  it("give no facility under 8 answers, and trust it from 30", () => {
    expect(only(picks(repeated(0, 7))).facility).toBeNull();
    expect(only(picks(repeated(0, 8))).facility?.trusted).toBe(false);
    expect(only(picks(repeated(0, 29))).facility?.trusted).toBe(false);
    expect(only(picks(repeated(0, 30))).facility?.trusted).toBe(true);
  });

  it("give the median time", () => {
    const log = [12, 40, 18].map((timeS, at) => logged(`learner-${at}`, 0, { timeS }));
    expect(only(log).medianTimeS).toBe(18);
    expect(only([...log, logged("nobody's", 0, { timeS: null })]).medianTimeS).toBe(18);
    expect(only([logged("nobody's", 0, { timeS: null })]).medianTimeS).toBeNull();
  });
});

describe("the discrimination", () => {
  /** So many learners; of each four answers to another item, `strength(at)` of them right. */
  const others = (count: number, strength: (at: number) => number) =>
    Array.from({ length: count }, (_, at) => at).flatMap((at) =>
      [0, 1, 2, 3].map((turn) => logged(`learner-${at}`, turn < strength(at) ? 0 : 1, { form: "place-dot" })),
    );
  const strength = (at: number) => at % 5;
  const item = (count: number, pick: (at: number) => ItemAnswer["pick"]) =>
    Array.from({ length: count }, (_, at) => logged(`learner-${at}`, pick(at)));
  const of = (log: readonly LoggedAnswer[]) =>
    itemStatistics(log).find(({ form }) => form === "read-radial")!;

  it("is the correlation with the share right of the other answers, own ones left out", () => {
    const pick = (at: number) => (at % 5 >= 2 ? 0 : 1 + (at % 3));
    const log = [...others(60, strength), ...item(60, pick)];
    const wanted = pointBiserial(
      Array.from({ length: 60 }, (_, at) => ({ did: pick(at) === 0, score: strength(at) / 4 })),
    );
    expect(of(log).discrimination?.correlation).toBeCloseTo(wanted!, 12);
    expect(of(log).discrimination?.verdict).toBe("keep");
  });

  it("counts a learner's every answer, and his share right of the others only", () => {
    // Learner n answers the item n % 3 + 1 times.
    const times = (at: number) => Array.from({ length: (at % 3) + 1 }, () => at);
    const asked = Array.from({ length: 60 }, (_, at) => at).flatMap(times);
    const pick = (at: number) => (at % 7 >= 3 ? 0 : 1);
    const log = [...others(60, strength), ...asked.map((at) => logged(`learner-${at}`, pick(at)))];
    const wanted = pointBiserial(asked.map((at) => ({ did: pick(at) === 0, score: strength(at) / 4 })));
    expect(of(log).discrimination?.correlation).toBeCloseTo(wanted!, 12);
  });

  it("puts in doubt an item that the weaker get right", () => {
    const log = [...others(50, strength), ...item(50, (at) => (at % 5 < 2 ? 0 : 1))];
    expect(of(log).discrimination?.verdict).toBe("doubtful");
  });

  it("is not given under 50 answers, nor for learners who answered nothing else", () => {
    const half = (at: number) => (at % 5 >= 2 ? 0 : 1);
    expect(of([...others(49, strength), ...item(49, half)]).discrimination).toBeNull();
    expect(of(item(60, half)).discrimination).toBeNull();
  });

  it("says of each wrong option whether it works", () => {
    // Option 1 draws the weak; option 2 the strong; option 3 one learner in a hundred.
    const pick = (at: number) => (at === 0 ? 3 : at % 5 === 0 ? 1 : at % 5 === 4 ? 2 : 0);
    const log = [...others(100, strength), ...item(100, pick)];
    const works = Object.fromEntries(
      of(log).options.map(({ slips, kind, works: word }) => [slips.join("/") || kind, word]),
    );
    expect(works).toEqual({ truth: null, needle: true, "reads/selector": false, other: false });
    const few = of([...others(49, strength), ...item(49, pick)]);
    expect(few.options.every(({ works: word }) => word === null)).toBe(true);
  });
});

describe("what no slip explains", () => {
  it("is the share of other among wrong typed answers, and calls for a new slip from 20 over .3", () => {
    const log = (other: number, slip: number) =>
      only(
        picks(
          [...repeated(0, 40), ...repeated("dont-know", 5), ...repeated(3, other), ...repeated(1, slip)],
          { item: TELL },
        ),
      );
    expect(log(7, 13).unmodelled).toEqual({ wrong: 20, share: 0.35, newSlip: true });
    expect(log(6, 14).unmodelled?.newSlip).toBe(false);
    expect(log(7, 12).unmodelled?.newSlip).toBe(false);
    expect(log(0, 0).unmodelled).toEqual({ wrong: 0, share: 0, newSlip: false });
  });

  it("is not asked of items in choose mode", () => expect(only(picks([0, 3])).unmodelled).toBeNull());

  it("shows as a peak in the offsets from what it was taken from", () => {
    const answers = [
      { answer: 5, references: { truth: 355, heading: 6 } },
      { answer: 350, references: { truth: 170, heading: 350 } },
      { answer: 71, references: { truth: 249, heading: 70 } },
    ];
    const offsets = answerOffsets(answers, "direction", 10);
    expect(offsets.get("heading")).toEqual([{ fromOffset: -5, toOffset: 5, count: 3 }]);
    expect(offsets.get("truth")!.map(({ fromOffset, count }) => [fromOffset, count])).toEqual([
      [-185, 1],
      [5, 1],
      [175, 1],
    ]);
    expect(answerOffsets([{ answer: 12, references: { truth: 10 } }], "quantity", 1).get("truth")).toEqual([
      { fromOffset: 1.5, toOffset: 2.5, count: 1 },
    ]);
    expect(() => answerOffsets([], "direction", 0)).toThrow("over 0");
  });
});

const SPACE = hypothesisSpace(["needle", "selector", "reads", "nose"].map((id) => ({ id, base: 0.1 })));
const telling = (slip: string): ItemEvidence => ({
  mode: "choose",
  optionCount: 4,
  slipOptions: { [slip]: 1 },
});

describe("the fidelity of a slip", () => {
  const elsewhere = (learner: string, slip: string) =>
    Array.from({ length: 4 }, () => logged(learner, 1, { form: "place-dot", item: telling(slip) }));

  it("is the share of its holders, by everything else, who pick its option", () => {
    const log = [
      ...elsewhere("a", "needle"),
      ...elsewhere("b", "needle"),
      ...elsewhere("c", "selector"),
      logged("a", 1),
      logged("b", 0),
      logged("c", 2),
    ];
    const found = slipFidelity(SPACE, log).filter(({ key }) => key.startsWith("read-radial"));
    expect(found.map(({ slip, holders, share }) => [slip, holders, share])).toEqual([
      ["needle", 2, 0.5],
      ["selector", 1, 1],
    ]);
  });

  it("does not take the item's own answers as a sign of holding", () => {
    const log = Array.from({ length: 6 }, () => logged("a", 1, { item: telling("needle") }));
    expect(slipFidelity(SPACE, log)).toEqual([]);
  });

  it("asks only where the option is on offer, and holds out over thousands of answers", () => {
    const log = [...Array.from({ length: 1000 }, () => elsewhere("a", "nose")).flat(), logged("a", 3)];
    expect(slipFidelity(SPACE, log).map(({ key }) => key)).toEqual([]);
    const offered = { ...CHOOSE, slipOptions: { ...CHOOSE.slipOptions, nose: 3 } };
    const found = slipFidelity(SPACE, [...log, logged("a", 3, { item: offered, form: "side-call" })]).filter(
      ({ key }) => key.startsWith("side-call"),
    );
    expect(found.map(({ slip, holders, share }) => [slip, holders, share])).toEqual([["nose", 1, 1]]);
  });
});

describe("the answers held out", () => {
  const run = (learner: string, pick: (turn: number) => ItemAnswer["pick"]) =>
    Array.from({ length: 12 }, (_, turn) =>
      logged(learner, pick(turn), { item: telling(turn % 2 ? "needle" : "reads") }),
    );

  it("are foretold better by slips than by difficulty where learners hold them", () => {
    const log = [
      ...run("a", (turn) => (turn % 2 ? 1 : 0)),
      ...run("b", (turn) => (turn % 2 ? 0 : 1)),
      ...run("c", () => 0),
    ];
    const result = heldOut(SPACE, log)!;
    expect(result.answers).toBe(15);
    expect(result.mayNameSlips).toBe(true);
    expect(result.modelBits).toBeLessThan(result.facilityBits);
    // Of the first seven of each: 6 of 9 right where needle fires, 8 of 12 where reads does; with one right and one wrong more, 7/11
    // and 9/14. Held out: 3 wrong and 6 right of the one, 2 wrong and 4 right of the other, each with three wrong options.
    const bits =
      3 * Math.log2(4 / 33) + 6 * Math.log2(7 / 11) + 2 * Math.log2(5 / 42) + 4 * Math.log2(9 / 14);
    expect(result.facilityBits).toBeCloseTo(-bits / 15, 12);
  });

  it("are foretold no better where answers have nothing to do with slips", () => {
    const log = ["a", "b", "c", "d"].flatMap((learner) =>
      run(learner, (turn) => (turn < 7 ? [0, 0, 1, 0][turn % 4]! : 2)),
    );
    expect(heldOut(SPACE, log)!.mayNameSlips).toBe(false);
  });

  it("are none where nobody has answered more than five", () =>
    expect(heldOut(SPACE, picks([0, 1, 2]))).toBeNull());
});
