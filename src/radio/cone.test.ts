import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { abeamToleranceNm, coneRadiusNm, elevationAngleDeg, isInCone, timeAcrossConeS } from "./cone.ts";

describe("the cone", () => {
  test("holds what is seen more than 40 degrees up, and nothing else", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 60_000, noNaN: true }),
        fc.double({ min: 0, max: 30, noNaN: true }),
        (heightFt, distanceNm) => {
          const elevation = elevationAngleDeg(heightFt, distanceNm);
          fc.pre(Math.abs(elevation - 40) > 1e-6);
          expect(isInCone(heightFt, distanceNm)).toBe(elevation > 40);
        },
      ),
    );
  });

  test.each([0, -300])("has no width at %d ft above the antenna", (heightFt) => {
    expect(coneRadiusNm(heightFt)).toBe(0);
    expect(isInCone(heightFt, 0)).toBe(false);
    expect(abeamToleranceNm(heightFt)).toBe(0);
  });

  test("is crossed in twice its radius, and never at rest", () => {
    expect(timeAcrossConeS(6000, 60)).toBeCloseTo(2 * coneRadiusNm(6000) * 60, 9);
    expect(timeAcrossConeS(6000, 0)).toBe(Number.POSITIVE_INFINITY);
  });
});

test("the elevation angle runs from straight down to straight up, and is 0 at the antenna itself", () => {
  expect(elevationAngleDeg(1000, 0)).toBe(90);
  expect(elevationAngleDeg(-1000, 0)).toBe(-90);
  expect(elevationAngleDeg(0, 0)).toBe(0);
  expect(elevationAngleDeg(6076.1155, 1)).toBeCloseTo(45, 6);
});
