import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  EFFECTIVE_EARTH_RADIUS_NM,
  leastHeightByRuleFt,
  leastHeightFt,
  lineOfSightByRuleNm,
  lineOfSightNm,
  radioHorizonNm,
} from "./line-of-sight.ts";

const height = fc.double({ min: 0, max: 60_000, noNaN: true });

describe("the horizon", () => {
  test("goes out the higher one is", () => {
    fc.assert(
      fc.property(height, fc.double({ min: 0.01, max: 5000, noNaN: true }), (heightFt, moreFt) => {
        expect(radioHorizonNm(heightFt + moreFt)).toBeGreaterThan(radioHorizonNm(heightFt));
      }),
    );
  });

  test("is where the straight ray touches the 4/3 earth", () => {
    fc.assert(
      fc.property(height, (heightFt) => {
        const radiusFt = EFFECTIVE_EARTH_RADIUS_NM * 6076.1155;
        const angle = radioHorizonNm(heightFt) / EFFECTIVE_EARTH_RADIUS_NM;
        expect(radiusFt / Math.cos(angle) - radiusFt).toBeCloseTo(heightFt, 2);
      }),
    );
  });

  test("of ground below sea level is its own level's", () => {
    expect(radioHorizonNm(-1200)).toBe(0);
    expect(lineOfSightNm(-1200, 5000)).toBe(radioHorizonNm(5000));
  });

  test("is within 0.3 % of the 1.23 rule up to 60,000 ft, and within 0.15 % up to 10,000", () => {
    fc.assert(
      fc.property(height, (heightFt) => {
        const off = Math.abs(lineOfSightByRuleNm(heightFt, 50) / lineOfSightNm(heightFt, 50) - 1);
        expect(off).toBeLessThan(heightFt <= 10_000 ? 0.0015 : 0.003);
      }),
    );
  });

  test.each([Number.NaN, Number.POSITIVE_INFINITY])("is refused for a height of %d", (heightFt) => {
    expect(() => radioHorizonNm(heightFt)).toThrow(RangeError);
  });
});

describe("the least height for a distance", () => {
  test("sees exactly that far", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 8000, noNaN: true }),
        fc.double({ min: 1, max: 250, noNaN: true }),
        (stationFt, beyondNm) => {
          const distanceNm = radioHorizonNm(stationFt) + beyondNm;
          const heightFt = leastHeightFt(distanceNm, stationFt);
          expect(Math.abs(lineOfSightNm(heightFt, stationFt) - distanceNm)).toBeLessThan(1e-6);
          const byRuleFt = leastHeightByRuleFt(lineOfSightByRuleNm(heightFt, stationFt), stationFt);
          expect(Math.abs(byRuleFt - heightFt)).toBeLessThan(1e-6 * Math.max(1, heightFt));
        },
      ),
    );
  });

  test("is 0 inside the station's own horizon", () => {
    expect(leastHeightFt(30, 1240)).toBe(0);
    expect(leastHeightByRuleFt(30, 1240)).toBe(0);
  });

  test.each([-1, Number.NaN, 6000])("is refused for %d NM", (distanceNm) => {
    expect(() => leastHeightFt(distanceNm, 0)).toThrow(RangeError);
  });
});
