import fc from "fast-check";
import { expect, test } from "vitest";
import { spread } from "../../test/spread.ts";
import { latLon, wrapLongitude } from "./position.ts";

test.each([
  [0, 0],
  [-0, 0],
  [180, -180],
  [-180, -180],
  [179.999, 179.999],
  [181, -179],
  [-181, 179],
  [539, 179],
  [1048499.9999999999, -180],
  [-360, 0],
  [-180.00000000000003, 179.99999999999997],
])("longitude %d is written %d", (lonDeg, wrapped) => {
  expect(wrapLongitude(lonDeg)).toBeCloseTo(wrapped, 9);
  expect(wrapLongitude(lonDeg)).toBeGreaterThanOrEqual(-180);
  expect(Object.is(wrapLongitude(lonDeg), -0)).toBe(false);
});

test("numbers next to a whole turn stay in range too", () => {
  for (const turns of [-3, -2, -1, 0, 1, 2, 2912])
    for (const side of [-180, 180])
      for (let ulps = -4; ulps <= 4; ulps++) {
        const meridian = turns * 360 + side;
        const wrapped = wrapLongitude(meridian + ulps * Math.abs(meridian) * Number.EPSILON);
        expect(wrapped >= -180 && wrapped < 180).toBe(true);
      }
});

test("longitude stays in [-180, 180)", () => {
  fc.assert(
    fc.property(spread(-1e5, 1e5), (lonDeg) => {
      const wrapped = wrapLongitude(lonDeg);
      expect(wrapped >= -180 && wrapped < 180).toBe(true);
    }),
  );
});

test.each([
  [90.0001, 0, /latitude must lie in \[-90, 90\] degrees, got 90.0001/],
  [-95, 0, /latitude/],
  [Number.NaN, 0, /latitude/],
  [0, Number.NaN, /longitude must be a finite number/],
  [0, Number.POSITIVE_INFINITY, /longitude/],
])("refuses %d, %d", (latDeg, lonDeg, message) => {
  expect(() => latLon(latDeg, lonDeg)).toThrow(message);
});

test("keeps the poles, and no minus zero", () => {
  expect(latLon(90, 10)).toEqual({ latDeg: 90, lonDeg: 10 });
  expect(Object.is(latLon(-0, -0).latDeg, -0)).toBe(false);
});
