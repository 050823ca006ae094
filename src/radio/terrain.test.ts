import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { direct, FT_PER_NM, geodesicDistanceNm, inverse, type LatLon, trueDeg } from "../earth/index.ts";
import type { Peak } from "./land.ts";
import { EFFECTIVE_EARTH_RADIUS_NM } from "./line-of-sight.ts";
import { type Aloft, coneSurfaceFt, terrainAround, terrainBetween, terrainToward } from "./terrain.ts";

const place = (latMin: number, lonMin: number): LatLon => ({ latDeg: -latMin / 60, lonDeg: lonMin / 60 });
/** The Haldrey station and Mount Corvane of the Ostrelle Isles. */
const HALDREY: Aloft = { position: place(620, 87), altitudeFt: 1240 };
const CORVANE: Peak = {
  name: "Mount Corvane",
  position: place(627.5, 82),
  elevationFt: 4260,
  baseRadiusNm: 6,
};
const BEHIND = place(645.1, 70.4);

/**
 * Second route: walk the path on the ellipsoid in small steps, draw antenna, ground and aircraft on a circle of 4/3 the
 * earth's radius in plain x and y, and take the steepest line of sight.
 */
function leastAltitudeByWalking(antenna: Aloft, aircraft: LatLon, peak: Peak): number {
  const line = inverse(antenna.position, aircraft);
  if (line.kind === "same-place") throw new Error("no path");
  const radiusFt = EFFECTIVE_EARTH_RADIUS_NM * FT_PER_NM;
  const at = (heightFt: number, alongNm: number): [number, number] => {
    const angle = alongNm / EFFECTIVE_EARTH_RADIUS_NM;
    return [(radiusFt + heightFt) * Math.sin(angle), (radiusFt + heightFt) * Math.cos(angle) - radiusFt];
  };
  const toPeakNm = geodesicDistanceNm(antenna.position, peak.position);
  const steepestOf = (fromNm: number, toNm: number): { slope: number; atNm: number } => {
    let best = { slope: Number.NEGATIVE_INFINITY, atNm: fromNm };
    for (let step = 1; step <= 400; step++) {
      const alongNm = fromNm + ((toNm - fromNm) * step) / 400;
      const under = direct(antenna.position, line.azimuth, alongNm);
      const fromSummitNm = geodesicDistanceNm(under, peak.position);
      if (fromSummitNm > peak.baseRadiusNm) continue;
      const [x, y] = at(peak.elevationFt * (1 - fromSummitNm / peak.baseRadiusNm), alongNm);
      const slope = (y - antenna.altitudeFt) / x;
      if (slope > best.slope) best = { slope, atNm: alongNm };
    }
    return best;
  };
  const fromNm = Math.max(0, toPeakNm - 2 * peak.baseRadiusNm);
  const toNm = Math.min(line.distanceNm, toPeakNm + peak.baseRadiusNm);
  const coarse = steepestOf(fromNm, toNm).atNm;
  const stepNm = (toNm - fromNm) / 400;
  // Once more in small steps, as the summit is sharp.
  const steepest = steepestOf(Math.max(0, coarse - stepNm), Math.min(line.distanceNm, coarse + stepNm)).slope;
  const [x] = at(0, line.distanceNm);
  const angle = line.distanceNm / EFFECTIVE_EARTH_RADIUS_NM;
  // On the ray y = h + m x; the aircraft stands on it where it crosses its own radius, x = tan(angle) (y + R).
  const crossingX = ((radiusFt + antenna.altitudeFt) * Math.tan(angle)) / (1 - steepest * Math.tan(angle));
  expect(crossingX).toBeGreaterThan(x * 0.99);
  return crossingX / Math.sin(angle) - radiusFt;
}

describe("Mount Corvane seen from Haldrey", () => {
  test("hides an aircraft at 3500 ft behind it, which would need about 11,700 ft", () => {
    const verdict = terrainBetween(HALDREY, { position: BEHIND, altitudeFt: 3500 }, [CORVANE]);
    expect(verdict.blockedBy).toBe(CORVANE);
    expect(verdict.clearanceFt).toBeLessThan(-2000);
    expect(Math.abs((verdict.leastAltitudeFt ?? 0) - 11_700)).toBeLessThan(50);
  });

  test("asks for the altitude that a walk along the path finds too", () => {
    const verdict = terrainBetween(HALDREY, { position: BEHIND, altitudeFt: 3500 }, [CORVANE]);
    const walked = leastAltitudeByWalking(HALDREY, BEHIND, CORVANE);
    expect(Math.abs((verdict.leastAltitudeFt ?? 0) - walked)).toBeLessThan(5);
  });

  test("hides nothing in front of it, beside it or above it", () => {
    const see = (position: LatLon, altitudeFt: number) =>
      terrainBetween(HALDREY, { position, altitudeFt }, [CORVANE]);
    expect(see(place(622, 85.7), 1300)).toEqual({
      blockedBy: null,
      clearanceFt: null,
      leastAltitudeFt: null,
    });
    expect(see(place(645, 100), 1500).blockedBy).toBeNull();
    expect(see(BEHIND, 12_000).blockedBy).toBeNull();
  });
});

const azimuth = fc.double({ min: 0, max: 359.9, noNaN: true });
const setting = fc.record({
  antennaFt: fc.double({ min: 0, max: 3000, noNaN: true }),
  peakAzimuth: azimuth,
  peakNm: fc.double({ min: 0.5, max: 60, noNaN: true }),
  peakFt: fc.double({ min: 500, max: 9000, noNaN: true }),
  baseNm: fc.double({ min: 1, max: 8, noNaN: true }),
  aside: fc.double({ min: -8, max: 8, noNaN: true }),
  beyondNm: fc.double({ min: 0.5, max: 60, noNaN: true }),
});

describe("any cone", () => {
  test("asks for the altitude that walking along the path finds, as long as the antenna is not under ground", () => {
    fc.assert(
      fc.property(setting, (drawn) => {
        const position = direct(HALDREY.position, trueDeg(drawn.peakAzimuth), drawn.peakNm);
        const peak: Peak = { name: "P", position, elevationFt: drawn.peakFt, baseRadiusNm: drawn.baseNm };
        const antenna: Aloft = {
          position: HALDREY.position,
          altitudeFt: Math.max(drawn.antennaFt, coneSurfaceFt(peak, drawn.peakNm) + 30),
        };
        const asideDeg = (drawn.aside / drawn.peakNm) * 20;
        const aircraft = direct(
          antenna.position,
          trueDeg(drawn.peakAzimuth + asideDeg),
          drawn.peakNm + drawn.beyondNm,
        );
        const { leastAltitudeFt } = terrainBetween(antenna, { position: aircraft, altitudeFt: 20_000 }, [
          peak,
        ]);
        if (leastAltitudeFt === null || leastAltitudeFt === 0) return;
        const walked = leastAltitudeByWalking(antenna, aircraft, peak);
        // The walk's steps may miss a sharp summit by half a foot, seen a hundred times as far out.
        expect(Math.abs(walked - leastAltitudeFt)).toBeLessThan(1 + 0.001 * leastAltitudeFt);
      }),
      { numRuns: 60 },
    );
  });

  test("blocks exactly below the altitude it asks for, and the gap has that sign", () => {
    fc.assert(
      fc.property(setting, azimuth, (drawn, toward) => {
        const position = direct(HALDREY.position, trueDeg(drawn.peakAzimuth), drawn.peakNm);
        const peak: Peak = { name: "P", position, elevationFt: drawn.peakFt, baseRadiusNm: drawn.baseNm };
        const around = terrainAround({ position: HALDREY.position, altitudeFt: drawn.antennaFt }, [peak]);
        const to = { azimuth: trueDeg(toward), distanceNm: drawn.peakNm + drawn.beyondNm };
        const { leastAltitudeFt } = terrainToward(around, { ...to, altitudeFt: 20_000 });
        if (leastAltitudeFt === null) return;
        const above = terrainToward(around, { ...to, altitudeFt: leastAltitudeFt + 1 });
        expect(above.blockedBy).toBeNull();
        expect(above.clearanceFt ?? Number.NaN).toBeGreaterThan(-0.01);
        if (leastAltitudeFt < 10) return;
        const below = terrainToward(around, { ...to, altitudeFt: leastAltitudeFt - 5 });
        const there = direct(HALDREY.position, to.azimuth, to.distanceNm);
        const groundFt = coneSurfaceFt(peak, geodesicDistanceNm(there, position));
        // An aircraft put below the cone's surface stands on it, which may be just as high as is needed.
        if (groundFt > leastAltitudeFt - 4) return;
        expect(below.blockedBy).toBe(peak);
        // From the foot of a slope the tightest place is at the antenna's feet, where the gap itself goes to 0.
        expect(below.clearanceFt).toBeLessThan(0.01);
      }),
      { numRuns: 500 },
    );
  });
});

describe("ground that something stands on", () => {
  const summit = CORVANE.position;
  const onFlank = direct(summit, trueDeg(0), 3);

  test("does not hide an antenna that the file puts below the cone's surface there", () => {
    // The cone's surface stands at 2130 ft here; the station's elevation is given as 1240.
    const antenna: Aloft = { position: onFlank, altitudeFt: 1240 };
    const north = direct(onFlank, trueDeg(0), 20);
    expect(terrainBetween(antenna, { position: north, altitudeFt: 2500 }, [CORVANE]).blockedBy).toBeNull();
    const south = direct(onFlank, trueDeg(180), 20);
    expect(terrainBetween(antenna, { position: south, altitudeFt: 2500 }, [CORVANE]).blockedBy).toBe(CORVANE);
  });

  test("does not hide an aircraft on its own side of the hill, even below the surface", () => {
    const northern: Aloft = { position: direct(summit, trueDeg(0), 20), altitudeFt: 100 };
    expect(terrainBetween(northern, { position: onFlank, altitudeFt: 900 }, [CORVANE]).blockedBy).toBeNull();
    const southern: Aloft = { position: direct(summit, trueDeg(180), 20), altitudeFt: 100 };
    expect(terrainBetween(southern, { position: onFlank, altitudeFt: 900 }, [CORVANE]).blockedBy).toBe(
      CORVANE,
    );
  });

  test("lets a station on the summit see all round, down its slopes", () => {
    const onTop: Aloft = { position: summit, altitudeFt: 4260 };
    for (let toward = 0; toward < 360; toward += 15) {
      const position = direct(summit, trueDeg(toward), 15);
      expect(terrainBetween(onTop, { position, altitudeFt: 200 }, [CORVANE]).blockedBy).toBeNull();
    }
  });

  test("is out of the way straight overhead", () => {
    const overhead = terrainBetween(HALDREY, { position: HALDREY.position, altitudeFt: 9000 }, [CORVANE]);
    expect(overhead).toEqual({ blockedBy: null, clearanceFt: null, leastAltitudeFt: null });
  });
});

test("of two peaks the one that asks for most height is named, in either order", () => {
  const hill: Peak = { ...CORVANE, name: "Hill", elevationFt: 2500 };
  for (const peaks of [
    [CORVANE, hill],
    [hill, CORVANE],
  ])
    expect(terrainBetween(HALDREY, { position: BEHIND, altitudeFt: 3500 }, peaks).blockedBy?.name).toBe(
      "Mount Corvane",
    );
});
