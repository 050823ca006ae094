import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { sphereAzimuthDeg, sphereDistanceNm } from "../../test/second-route.ts";
import { spread } from "../../test/spread.ts";
import { reciprocal, trueDeg, turnBetween } from "./direction.ts";
import { direct, geodesicDistanceNm, inverse } from "./geodesic.ts";
import { latLon, wrapLongitude } from "./position.ts";

const place = fc.tuple(spread(-89, 89), spread(-180, 180)).map(([latDeg, lonDeg]) => latLon(latDeg, lonDeg));

/** Quarter meridian of WGS 84, 10,001,965.729 m (NGA). */
const QUARTER_MERIDIAN_NM = 10_001_965.729 / 1852;

describe("edges", () => {
  test.each([
    ["pole to equator", latLon(90, 0), latLon(0, 0), QUARTER_MERIDIAN_NM, 180],
    ["equator to pole", latLon(0, 77), latLon(90, -12), QUARTER_MERIDIAN_NM, 0],
    ["south pole, counted from its longitude", latLon(-90, 0), latLon(0, 30), QUARTER_MERIDIAN_NM, 30],
    ["pole to pole", latLon(90, 0), latLon(-90, 0), 2 * QUARTER_MERIDIAN_NM, 180],
    ["across the antimeridian", latLon(0, 179.5), latLon(0, -179.5), 60.1077, 90],
    ["due north", latLon(0, 0), latLon(1, 0), 59.7053, 0],
  ])("%s", (_name, from, to, distanceNm, azimuthDeg) => {
    const line = inverse(from, to);
    if (line.kind !== "line") throw new Error("no line");
    expect(line.distanceNm).toBeCloseTo(distanceNm, 3);
    expect(Math.abs(turnBetween(line.azimuth, trueDeg(azimuthDeg)))).toBeLessThan(1e-9);
    expect(Object.is(line.azimuth, -0) || line.azimuth >= 360).toBe(false);
  });

  test("one place has no azimuth, also by another name", () => {
    for (const [from, to] of [
      [latLon(10, 20), latLon(10, 20)],
      [latLon(0, 180), latLon(0, -180)],
      [latLon(90, 0), latLon(90, 120)],
      [latLon(0, 0), latLon(4e-9, 0)],
    ] as const)
      expect(inverse(from, to)).toEqual({ kind: "same-place", distanceNm: 0, distanceM: 0 });
    expect(inverse(latLon(0, 0), latLon(2e-8, 0)).kind).toBe("line");
  });

  test("antipodes have a line of half the meridian", () => {
    const line = inverse(latLon(30, 0), latLon(-30, 180));
    expect(line.distanceNm).toBeCloseTo(2 * QUARTER_MERIDIAN_NM, 3);
  });

  test.each([
    [{ latDeg: 95, lonDeg: 0 }],
    [{ latDeg: Number.NaN, lonDeg: 0 }],
    [{ latDeg: 0, lonDeg: Number.NaN }],
  ])("refuses %o", (bad) => {
    expect(() => inverse(bad, latLon(0, 0))).toThrow(RangeError);
    expect(() => inverse(latLon(0, 0), bad)).toThrow(RangeError);
    expect(() => direct(bad, trueDeg(0), 1)).toThrow(RangeError);
  });

  test.each([Number.NaN, Number.POSITIVE_INFINITY])("refuses a distance of %d", (distanceNm) => {
    expect(() => direct(latLon(0, 0), trueDeg(0), distanceNm)).toThrow(/finite/);
  });

  test("going nowhere stays, and past the pole comes down the other side", () => {
    expect(inverse(latLon(12, 34), direct(latLon(12, 34), trueDeg(56), 0)).kind).toBe("same-place");
    const beyond = direct(latLon(89, 0), trueDeg(0), 120);
    expect(beyond.latDeg).toBeCloseTo(89, 1);
    expect(Math.abs(beyond.lonDeg)).toBe(180);
  });
});

describe("laws", () => {
  test("direct undoes inverse", () => {
    fc.assert(
      fc.property(place, place, (from, to) => {
        const line = inverse(from, to);
        if (line.kind !== "line") return;
        const end = direct(from, line.azimuth, line.distanceNm);
        expect(geodesicDistanceNm(end, to) * 1852).toBeLessThan(0.001);
      }),
    );
  });

  test("the way back has the same length and arrives as it left", () => {
    fc.assert(
      fc.property(place, spread(0, 360), spread(0.01, 5000), (from, azimuthDeg, distanceNm) => {
        const to = direct(from, trueDeg(azimuthDeg), distanceNm);
        const out = inverse(from, to);
        const back = inverse(to, from);
        if (out.kind !== "line" || back.kind !== "line") throw new Error("no line");
        expect(back.distanceM).toBeCloseTo(out.distanceM, 5);
        expect(Math.abs(turnBetween(back.azimuth, reciprocal(out.arrivalAzimuth)))).toBeLessThan(1e-6);
      }),
    );
  });

  test("a place a little west and a little east of the meridian lie as far, on mirrored azimuths", () => {
    fc.assert(
      fc.property(place, place, (from, to) => {
        const mirrored = latLon(to.latDeg, wrapLongitude(2 * from.lonDeg - to.lonDeg));
        const [line, mirror] = [inverse(from, to), inverse(from, mirrored)];
        if (line.kind !== "line" || mirror.kind !== "line") return;
        expect(mirror.distanceM).toBeCloseTo(line.distanceM, 4);
      }),
    );
  });

  test("agrees with plain spherical trigonometry as closely as a sphere can: 0.6 %, 0.2 degree", () => {
    fc.assert(
      fc.property(place, spread(0, 360), spread(1, 400), (from, azimuthDeg, distanceNm) => {
        if (Math.abs(from.latDeg) > 75) return;
        const to = direct(from, trueDeg(azimuthDeg), distanceNm);
        expect(Math.abs(sphereDistanceNm(from, to) / distanceNm - 1)).toBeLessThan(0.006);
        const apart = turnBetween(trueDeg(sphereAzimuthDeg(from, to)), trueDeg(azimuthDeg));
        expect(Math.abs(apart)).toBeLessThan(0.2);
      }),
    );
  });
});
