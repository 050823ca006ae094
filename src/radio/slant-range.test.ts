import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { dmeAccuracyFaaNm, dmeToleranceIcaoNm } from "./dme-accuracy.ts";
import {
  groundRangeByPansOpsNm,
  groundRangeNm,
  slantErrorIsNegligible,
  slantRangeNm,
} from "./slant-range.ts";

const ground = fc.double({ min: 0, max: 200, noNaN: true });
const height = fc.double({ min: -2000, max: 60_000, noNaN: true });

describe("slant and ground", () => {
  test("go there and back", () => {
    fc.assert(
      fc.property(ground, height, (groundNm, heightFt) => {
        const back = groundRangeNm(slantRangeNm(groundNm, heightFt), heightFt);
        // Straight overhead the root of a difference of nearly equal numbers keeps half the figures.
        expect(Math.abs((back ?? 0) - groundNm)).toBeLessThan(1e-6);
      }),
    );
  });

  test("slant is never the shorter, and grows with both", () => {
    fc.assert(
      fc.property(ground, fc.double({ min: 0, max: 60_000, noNaN: true }), (groundNm, heightFt) => {
        const slantNm = slantRangeNm(groundNm, heightFt);
        expect(slantNm).toBeGreaterThanOrEqual(groundNm);
        expect(slantRangeNm(groundNm + 1, heightFt)).toBeGreaterThan(slantNm);
        expect(slantRangeNm(groundNm, heightFt + 1000)).toBeGreaterThan(slantNm);
      }),
    );
  });

  test("no ground distance belongs to a slant range shorter than the height", () => {
    expect(groundRangeNm(1, 10_000)).toBeNull();
    expect(groundRangeByPansOpsNm(1, 10_000)).toBeNull();
  });

  test("overhead the DME reads the height", () => {
    expect(slantRangeNm(0, 6076.1155)).toBeCloseTo(1, 6);
    expect(groundRangeNm(slantRangeNm(0, 6000), 6000)).toBe(0);
  });

  test("the PANS-OPS formula is within 0.02 NM of the triangle from two heights out", () => {
    fc.assert(
      fc.property(fc.double({ min: 1000, max: 40_000, noNaN: true }), (heightFt) => {
        const slantNm = (2 * heightFt) / 6076.12;
        const exact = groundRangeNm(slantNm, heightFt) ?? Number.NaN;
        const worked = groundRangeByPansOpsNm(slantNm, heightFt) ?? Number.NaN;
        expect(Math.abs(worked - exact)).toBeLessThan(0.02);
      }),
    );
  });

  test("on the edge of the rule the error is 1.3 % of the distance", () => {
    expect(slantErrorIsNegligible(10, 10_000)).toBe(true);
    expect((slantRangeNm(10, 10_000) - 10) / 10).toBeCloseTo(0.0135, 3);
    expect(slantErrorIsNegligible(9.99, 10_000)).toBe(false);
  });
});

test("the two accuracy rules cross near 11 NM", () => {
  expect(dmeAccuracyFaaNm(0)).toBe(0.5);
  expect(dmeAccuracyFaaNm(16.7)).toBeGreaterThan(0.5);
  expect(dmeToleranceIcaoNm(0)).toBe(0.25);
  expect(dmeToleranceIcaoNm(20)).toBeCloseTo(0.5, 12);
});
