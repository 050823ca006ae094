import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { sphereCrossing } from "../../test/second-route.ts";
import { spread } from "../../test/spread.ts";
import { reciprocal, stationDeg, trueDeg, trueFromStation, turnBetween } from "./direction.ts";
import { direct, geodesicDistanceNm, inverse } from "./geodesic.ts";
import { latLon } from "./position.ts";
import { twoLineFix } from "./two-line-fix.ts";

const azimuthTo = (from: ReturnType<typeof latLon>, to: ReturnType<typeof latLon>) => {
  const line = inverse(from, to);
  if (line.kind !== "line") throw new Error("one place");
  return line.azimuth;
};

/** Two stations and a place that their lines cut at 5 to 175 degrees. */
const geometry = fc
  .record({
    latDeg: spread(-75, 75),
    lonDeg: spread(-180, 180),
    to1: spread(0, 360),
    distance1Nm: spread(0.5, 400),
    cutDeg: spread(5, 175),
    left: fc.boolean(),
    distance2Nm: spread(0.5, 400),
  })
  .map((g) => {
    const place = latLon(g.latDeg, g.lonDeg);
    const station1 = direct(place, trueDeg(g.to1), g.distance1Nm);
    const station2 = direct(place, trueDeg(g.to1 + (g.left ? -g.cutDeg : g.cutDeg)), g.distance2Nm);
    return { place, station1, station2, cutDeg: g.cutDeg };
  });

test("finds the place that the two azimuths were measured to, everywhere, to a millimetre or the azimuths' rounding", () => {
  fc.assert(
    fc.property(geometry, ({ place, station1, station2, cutDeg }) => {
      const fix = twoLineFix(
        { station: station1, azimuth: azimuthTo(station1, place) },
        { station: station2, azimuth: azimuthTo(station2, place) },
      );
      if (fix.kind !== "fix") throw new Error(fix.kind);
      expect(geodesicDistanceNm(fix.position, place) * 1852).toBeLessThan(0.005);
      expect(fix.cutDeg).toBeCloseTo(cutDeg, 5);
      expect(fix.distance1Nm).toBeCloseTo(geodesicDistanceNm(station1, place), 5);
      expect(fix.distance2Nm).toBeCloseTo(geodesicDistanceNm(station2, place), 5);
    }),
    { numRuns: 500 },
  );
});

test("the order of the stations does not matter", () => {
  fc.assert(
    fc.property(geometry, ({ place, station1, station2 }) => {
      const line1 = { station: station1, azimuth: azimuthTo(station1, place) };
      const line2 = { station: station2, azimuth: azimuthTo(station2, place) };
      const [a, b] = [twoLineFix(line1, line2), twoLineFix(line2, line1)];
      if (a.kind !== "fix" || b.kind !== "fix") throw new Error("no fix");
      expect(geodesicDistanceNm(a.position, b.position) * 1852).toBeLessThan(0.005);
      expect(b.cutDeg).toBeCloseTo(a.cutDeg, 5);
    }),
  );
});

test("agrees with plain spherical trigonometry within 2 percent of the way", () => {
  fc.assert(
    fc.property(geometry, ({ place, station1, station2, cutDeg }) => {
      const [azimuth1, azimuth2] = [azimuthTo(station1, place), azimuthTo(station2, place)];
      // A triangle with no flat corner, else the sphere's 0.2 degree of azimuth moves the crossing without bound.
      const at1 = Math.abs(turnBetween(azimuth1, azimuthTo(station1, station2)));
      const at2 = Math.abs(turnBetween(azimuth2, azimuthTo(station2, station1)));
      fc.pre([cutDeg, at1, at2].every((corner) => corner > 20 && corner < 160));
      const sphere = sphereCrossing(station1, azimuth1, station2, azimuth2);
      if (!sphere) throw new Error("the sphere finds no crossing");
      const fix = twoLineFix(
        { station: station1, azimuth: azimuth1 },
        { station: station2, azimuth: azimuth2 },
      );
      if (fix.kind !== "fix") throw new Error(fix.kind);
      const allowedNm = 0.02 * (fix.distance1Nm + fix.distance2Nm);
      expect(geodesicDistanceNm(fix.position, latLon(sphere.latDeg, sphere.lonDeg))).toBeLessThan(allowedNm);
    }),
  );
});

test("the isles' two-station fix: HJL R131 and TXJ R233 cut at 103 degrees, 30.0 and 36.7 NM out", () => {
  const haldrey = {
    station: latLon(-10 - 20 / 60, 1 + 27 / 60),
    azimuth: trueFromStation(stationDeg(131), -10),
  };
  const tamsel = {
    station: latLon(-10 - 9 / 60, 2 + 19 / 60),
    azimuth: trueFromStation(stationDeg(233), -9),
  };
  const fix = twoLineFix(haldrey, tamsel);
  if (fix.kind !== "fix") throw new Error(fix.kind);
  expect(fix.cutDeg).toBeCloseTo(103, 0);
  // Worked on a sphere of 3,440 NM and rounded to whole radials: half a mile at this range.
  expect(Math.abs(fix.distance1Nm - 30.0)).toBeLessThan(0.5);
  expect(Math.abs(fix.distance2Nm - 36.7)).toBeLessThan(0.5);
  expect(geodesicDistanceNm(fix.position, latLon(-10 - 35.4 / 60, 1 + 53.1 / 60))).toBeLessThan(0.5);
});

describe("no fix", () => {
  const west = latLon(0, 0);
  const east = latLon(0, 0.5);

  test.each([
    ["lines that part", 315, 45, "no-crossing-ahead"],
    ["lines that meet behind the first", 225, 315, "no-crossing-ahead"],
    ["one line ahead, the other behind", 45, 135, "no-crossing-ahead"],
    ["both along the line between, face to face", 90, 270, "nearly-parallel"],
    ["both along the line between, one after the other", 90, 90, "nearly-parallel"],
    ["parallel", 0, 0, "nearly-parallel"],
    ["almost parallel", 0, 359.5, "nearly-parallel"],
    ["lines that meet beyond any reach", 0, 359, "no-crossing-ahead"],
  ] as const)("%s", (_name, azimuth1, azimuth2, kind) => {
    const fix = twoLineFix(
      { station: west, azimuth: trueDeg(azimuth1) },
      { station: east, azimuth: trueDeg(azimuth2) },
    );
    expect(fix.kind).toBe(kind);
    if (fix.kind === "nearly-parallel") expect(fix.cutDeg >= 0 && fix.cutDeg < 1).toBe(true);
  });

  test("one station", () => {
    const fix = twoLineFix(
      { station: west, azimuth: trueDeg(10) },
      { station: latLon(0, 360), azimuth: trueDeg(80) },
    );
    expect(fix).toEqual({ kind: "same-station" });
  });

  test("turning both lines round makes the fix vanish", () => {
    fc.assert(
      fc.property(geometry, ({ place, station1, station2 }) => {
        const fix = twoLineFix(
          { station: station1, azimuth: reciprocal(azimuthTo(station1, place)) },
          { station: station2, azimuth: reciprocal(azimuthTo(station2, place)) },
        );
        expect(fix.kind).toBe("no-crossing-ahead");
      }),
    );
  });

  test("refuses NaN", () => {
    const bad = { station: { latDeg: Number.NaN, lonDeg: 0 }, azimuth: trueDeg(0) };
    expect(() => twoLineFix(bad, { station: west, azimuth: trueDeg(0) })).toThrow(RangeError);
  });
});

test("lines that cross at a station itself fix it there", () => {
  const first = latLon(-10.33, 1.45);
  const second = latLon(-10.15, 2.32);
  const through = { station: first, azimuth: azimuthTo(first, second) };
  const fix = twoLineFix(through, { station: second, azimuth: trueDeg(10) });
  if (fix.kind !== "fix") throw new Error(fix.kind);
  expect(fix.distance2Nm * 1852).toBeLessThan(0.002);
  const other = twoLineFix({ station: second, azimuth: trueDeg(10) }, through);
  if (other.kind !== "fix") throw new Error(other.kind);
  expect(other.distance1Nm * 1852).toBeLessThan(0.002);
  expect(other.cutDeg).toBeCloseTo(fix.cutDeg, 4);
});

test("works across the antimeridian and over the pole", () => {
  for (const [place, station1, station2] of [
    [latLon(10, 179.9), latLon(10.5, -179.5), latLon(9, 179.5)],
    [latLon(89.5, 170), latLon(87, 0), latLon(88, 90)],
  ] as const) {
    const fix = twoLineFix(
      { station: station1, azimuth: azimuthTo(station1, place) },
      { station: station2, azimuth: azimuthTo(station2, place) },
    );
    if (fix.kind !== "fix") throw new Error(fix.kind);
    expect(geodesicDistanceNm(fix.position, place) * 1852).toBeLessThan(0.005);
    expect(turnBetween(trueDeg(0), trueDeg(fix.cutDeg))).toBeGreaterThan(0);
  }
});
