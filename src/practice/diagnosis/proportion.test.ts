import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { spread } from "../../../test/spread.ts";
import { median, pointBiserial, wilsonInterval } from "./proportion.ts";

describe("Wilson's interval", () => {
  // Newcombe, "Two-sided confidence intervals for the single proportion: comparison of seven methods", Statistics in Medicine 17
  // (1998), table I, method 3 (score, no correction), four decimals; the figures from memory.
  it.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
  ])("of %i in %i is as published", (count, n, low, high) => {
    const interval = wilsonInterval(count, n);
    expect(Number(interval.low.toFixed(4))).toBe(low);
    expect(Number(interval.high.toFixed(4))).toBe(high);
  });

  it("has the ends at which the score test just rejects, and holds the share", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), spread(0, 1), (n, part) => {
        const count = Math.round(part * n);
        const { low, high } = wilsonInterval(count, n);
        expect(low).toBeLessThanOrEqual(count / n);
        expect(high).toBeGreaterThanOrEqual(count / n);
        for (const end of [low, high])
          if (end > 1e-9 && end < 1 - 1e-9)
            expect(Math.abs(count / n - end) / Math.sqrt((end * (1 - end)) / n)).toBeCloseTo(1.96, 3);
      }),
    );
  });

  it("mirrors when right and wrong are exchanged", () => {
    const right = wilsonInterval(7, 20);
    const wrong = wilsonInterval(13, 20);
    expect(right.low).toBeCloseTo(1 - wrong.high, 12);
    expect(right.high).toBeCloseTo(1 - wrong.low, 12);
  });

  it.each([
    [1, 0],
    [3, 2],
    [-1, 5],
    [Number.NaN, 5],
  ])("refuses %s of %s", (count, n) => expect(() => wilsonInterval(count, n)).toThrow("no share"));
});

/** Pearson's product-moment correlation, term by term. */
function pearson(pairs: readonly (readonly [number, number])[]): number {
  const meanOf = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  const meanX = meanOf(pairs.map(([x]) => x));
  const meanY = meanOf(pairs.map(([, y]) => y));
  const sum = (of: (x: number, y: number) => number) =>
    pairs.reduce((so, [x, y]) => so + of(x - meanX, y - meanY), 0);
  return sum((x, y) => x * y) / Math.sqrt(sum((x) => x * x) * sum((_, y) => y * y));
}

describe("the point-biserial correlation", () => {
  it("is Pearson's with yes as 1 and no as 0", () => {
    const rows = fc.array(fc.record({ did: fc.boolean(), score: spread(0, 1) }), {
      minLength: 2,
      maxLength: 60,
    });
    fc.assert(
      fc.property(rows, (some) => {
        // One of each, so that there is something to correlate.
        const all = [{ did: true, score: 0.25 }, { did: false, score: 0.75 }, ...some];
        const value = pointBiserial(all);
        expect(value).toBeCloseTo(pearson(all.map(({ did, score }) => [did ? 1 : 0, score])), 10);
      }),
    );
  });

  it("is none where all or none did, or all scores are the same", () => {
    expect(pointBiserial([])).toBeNull();
    expect(
      pointBiserial([
        { did: true, score: 1 },
        { did: true, score: 0 },
      ]),
    ).toBeNull();
    expect(
      pointBiserial([
        { did: true, score: 1 },
        { did: false, score: 1 },
      ]),
    ).toBeNull();
  });
});

describe("the median", () => {
  it.each([
    [[3, 1, 2], 2],
    [[4, 1, 3, 2], 2.5],
    [[7], 7],
    [[], null],
  ])("of %j is %s", (values, wanted) => expect(median(values)).toBe(wanted));
});
