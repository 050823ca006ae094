import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  convergenceDeg,
  direct,
  geodesicDistanceNm,
  inverse,
  type LatLon,
  latLon,
  M_PER_NM,
  magneticDeg,
  STANDARD_RATE_DEG_PER_S,
  trackForHeading,
  trueDeg,
  trueFromMagnetic,
  turnBetween,
  turnRadiusAtRateNm,
  variation,
  type Wind,
} from "../earth/index.ts";
import type { Aircraft } from "../scene/index.ts";
import { type Air, CLIMB_FT_PER_MIN, type Flight, flyOn, levelFlight } from "./fly-on.ts";

const ISLES = latLon(-10.3, 2.06);
const DATE = "2026-07-01";
const CALM: Wind = { from: trueDeg(0), speedKt: 0 };
const BREEZE: Wind = { from: trueDeg(140), speedKt: 18 };

const aircraftAt = (position: LatLon, headingDeg: number, change: Partial<Aircraft> = {}): Aircraft => ({
  position,
  heading: magneticDeg(headingDeg),
  altitudeFt: 3500,
  tasKt: 100,
  ...change,
});
const inWind = (wind: Wind): Air => ({ wind, date: DATE });
const metresApart = (one: LatLon, other: LatLon): number => geodesicDistanceNm(one, other) * M_PER_NM;

/** The same flight in pieces of so many seconds. */
function inPieces(flight: Flight, air: Air, totalS: number, pieceS: number): Flight {
  let now = flight;
  for (let leftS = totalS; leftS > 1e-9; leftS -= pieceS) now = flyOn(now, air, Math.min(pieceS, leftS));
  return now;
}

describe("straight flight", () => {
  // Closed form, with north as it is half way: on one heading the leg bends evenly with it.
  it.each([
    ["in still air", CALM],
    ["in a wind", BREEZE],
    ["in a wind as strong as the aircraft", { from: trueDeg(90), speedKt: 100 }],
  ])("makes good the track and distance of the wind triangle (%s)", (_, wind) => {
    const start = aircraftAt(ISLES, 60);
    const { aircraft } = flyOn(levelFlight(start), inWind(wind), 90);
    const halfWay = flyOn(levelFlight(start), inWind(wind), 45).aircraft.position;
    const { variationDeg } = variation({ position: halfWay, altitudeFt: 3500, date: DATE });
    const heading = trueFromMagnetic(start.heading, variationDeg);
    const made = trackForHeading({ heading, tasKt: 100, wind });
    const line = inverse(ISLES, aircraft.position);
    if (made.kind === "standing" || line.kind === "same-place") throw new Error("it has not moved");
    const azimuthHalfWay = trueDeg(line.azimuth + convergenceDeg(ISLES, aircraft.position) / 2);
    const asideM = line.distanceM * Math.abs(turnBetween(azimuthHalfWay, made.track)) * (Math.PI / 180);
    expect(line.distanceM).toBeCloseTo((made.groundspeedKt / 40) * M_PER_NM, 2);
    expect(asideM).toBeLessThan(0.01);
    expect({ ...aircraft, position: ISLES }).toEqual(start);
  });

  it("drifts away from where the wind blows, by its speed and time", () => {
    const air = flyOn(levelFlight(aircraftAt(ISLES, 200)), inWind(CALM), 1200).aircraft.position;
    const carried = flyOn(levelFlight(aircraftAt(ISLES, 200)), inWind(BREEZE), 1200).aircraft.position;
    // 18 kt for 20 minutes: 6 NM. Both were counted over slightly different ground, so a few metres remain.
    expect(metresApart(direct(air, trueDeg(320), 6), carried)).toBeLessThan(15);
  });

  it("stands over the ground where the wind is as strong as it and against it", () => {
    const { variationDeg } = variation({ position: ISLES, altitudeFt: 3500, date: DATE });
    const wind = { from: trueFromMagnetic(magneticDeg(60), variationDeg), speedKt: 100 };
    expect(flyOn(levelFlight(aircraftAt(ISLES, 60)), inWind(wind), 60).aircraft.position).toEqual(ISLES);
    expect(
      flyOn(levelFlight(aircraftAt(ISLES, 60, { tasKt: 0 })), inWind(CALM), 60).aircraft.position,
    ).toEqual(ISLES);
  });

  it("keeps its heading from magnetic north as the variation changes along the way", () => {
    // Over two hours eastward in high latitudes the variation and the meridians both turn by many degrees.
    const north = latLon(65, -20);
    const start = levelFlight(aircraftAt(north, 90, { tasKt: 450 }));
    const end = inPieces(start, inWind(CALM), 7200, 10).aircraft;
    expect(end.heading).toBe(90);
    const [before, after] = [north, end.position].map(
      (position) => variation({ position, altitudeFt: 3500, date: DATE }).variationDeg,
    );
    expect(Math.abs((after ?? 0) - (before ?? 0))).toBeGreaterThan(5);
    const last = inPieces(start, inWind(CALM), 7199, 10).aircraft.position;
    const line = inverse(last, end.position);
    if (line.kind === "same-place") throw new Error("it has not moved");
    expect(Math.abs(turnBetween(line.azimuth, trueDeg(90 + (after ?? 0))))).toBeLessThan(0.02);
  });
});

describe("a turn", () => {
  it("is a circle of the radius of its speed and rate, in the air", () => {
    const tasKt = 120;
    const start = aircraftAt(ISLES, 10, { tasKt });
    const radiusNm = turnRadiusAtRateNm({ tasKt, rateDegPerS: STANDARD_RATE_DEG_PER_S });
    const variationAt = (position: LatLon) =>
      variation({ position, altitudeFt: 3500, date: DATE }).variationDeg;
    const centre = direct(ISLES, trueFromMagnetic(magneticDeg(100), variationAt(ISLES)), radiusNm);
    // North itself turns a little on the way round, and the circle with it, by this much at its far side.
    const farSide = direct(ISLES, trueFromMagnetic(magneticDeg(100), variationAt(ISLES)), 2 * radiusNm);
    const northTurnedDeg = Math.abs(variationAt(farSide) - variationAt(ISLES));
    const bentM = 2 * radiusNm * M_PER_NM * northTurnedDeg * (Math.PI / 180);
    expect(bentM).toBeLessThan(1);
    let flight: Flight = { ...levelFlight(start), turningTo: magneticDeg(180) };
    for (let second = 2; second <= 56; second += 2) {
      flight = flyOn(flight, inWind(CALM), 2);
      const offM = Math.abs(geodesicDistanceNm(centre, flight.aircraft.position) - radiusNm) * M_PER_NM;
      expect(offM).toBeLessThan(bentM + 0.01);
      expect(flight.aircraft.heading).toBeCloseTo(10 + 3 * second, 9);
    }
  });

  it("of a full circle comes back to where it began, carried by the wind of two minutes", () => {
    let flight = levelFlight(aircraftAt(ISLES, 250));
    for (const heading of [40, 150, 250])
      flight = inPieces(
        { ...flight, turningTo: magneticDeg(heading) },
        inWind(BREEZE),
        turnsS(flight, heading),
        1,
      );
    expect(flight.aircraft.heading).toBe(250);
    expect(metresApart(flight.aircraft.position, direct(ISLES, trueDeg(320), 18 / 30))).toBeLessThan(1);
  });
  const turnsS = ({ aircraft }: Flight, heading: number) =>
    Math.abs(turnBetween(aircraft.heading, magneticDeg(heading))) / STANDARD_RATE_DEG_PER_S;

  it.each([
    [350, 20, [353, 356, 359, 2, 5]],
    [20, 350, [17, 14, 11, 8, 5]],
    [2, 350, [359, 356, 353, 350, 350]],
    [90, 270, [93, 96, 99, 102, 105]],
  ])("goes the shorter way round, through north too (from %s to %s)", (from, to, headings) => {
    let flight: Flight = { ...levelFlight(aircraftAt(ISLES, from)), turningTo: magneticDeg(to) };
    const flown = headings.map(() => {
      flight = flyOn(flight, inWind(BREEZE), 1);
      return Number(flight.aircraft.heading.toFixed(9));
    });
    expect(flown).toEqual(headings);
  });

  it("ends on the heading itself, in the middle of a step, and then flies straight on", () => {
    const ordered: Flight = { ...levelFlight(aircraftAt(ISLES, 80)), turningTo: magneticDeg(100) };
    const whole = flyOn(ordered, inWind(BREEZE), 60);
    expect(whole.turningTo).toBeNull();
    expect(whole.aircraft.heading).toBe(100);
    const halves = flyOn(flyOn(ordered, inWind(BREEZE), 20 / 3), inWind(BREEZE), 60 - 20 / 3);
    expect(halves.turningTo).toBeNull();
    expect(metresApart(whole.aircraft.position, halves.aircraft.position)).toBeLessThan(0.01);
  });
});

describe("a climb", () => {
  it.each([
    [3500, 5500, 60, 4000],
    [3500, 5500, 240, 5500],
    [3500, 5500, 1000, 5500],
    [3500, 3400, 6, 3450],
    [3500, 3400, 13, 3400],
  ])(
    "from %s ft to %s ft has reached after %s s what 500 ft a minute reach",
    (from, to, seconds, reached) => {
      const flight = { ...levelFlight(aircraftAt(ISLES, 80, { altitudeFt: from })), climbingToFt: to };
      const after = flyOn(flight, inWind(CALM), seconds);
      expect(after.aircraft.altitudeFt).toBeCloseTo(reached, 6);
      expect(after.climbingToFt).toBe(reached === to ? null : to);
      expect(CLIMB_FT_PER_MIN).toBe(500);
    },
  );
});

const flights = fc.record({
  position: fc
    .tuple(fc.double({ min: -75, max: 75, noNaN: true }), fc.double({ min: -180, max: 180, noNaN: true }))
    .map(([lat, lon]) => latLon(lat, lon)),
  headingDeg: fc.double({ min: 0, max: 360, noNaN: true }),
  tasKt: fc.double({ min: 0, max: 600, noNaN: true }),
  turningTo: fc.option(fc.double({ min: 0, max: 360, noNaN: true }).map(magneticDeg)),
  climbingToFt: fc.option(fc.integer({ min: 0, max: 20_000 })),
  wind: fc.record({
    from: fc.double({ min: 0, max: 360, noNaN: true }).map(trueDeg),
    speedKt: fc.double({ min: 0, max: 120, noNaN: true }),
  }),
});

describe("any flight", () => {
  it("leads to the same place however it is cut into steps", () => {
    let farthestM = 0;
    fc.assert(
      fc.property(flights, fc.double({ min: 0.1, max: 97, noNaN: true }), (made, pieceS) => {
        const { position, headingDeg, tasKt, turningTo, climbingToFt, wind } = made;
        const start = { aircraft: aircraftAt(position, headingDeg, { tasKt }), turningTo, climbingToFt };
        const atOnce = flyOn(start, inWind(wind), 600);
        const cut = inPieces(start, inWind(wind), 600, pieceS);
        expect(Math.abs(turnBetween(atOnce.aircraft.heading, cut.aircraft.heading))).toBeLessThan(1e-6);
        expect(cut.aircraft.altitudeFt).toBeCloseTo(atOnce.aircraft.altitudeFt, 6);
        farthestM = Math.max(farthestM, metresApart(atOnce.aircraft.position, cut.aircraft.position));
        // Ten minutes at up to 720 kt over the ground: 120 NM.
        expect(farthestM).toBeLessThan(0.5);
      }),
      { numRuns: 60 },
    );
  });

  it("is nowhere else after no time at all, and refuses to go back", () => {
    const flight = levelFlight(aircraftAt(ISLES, 80));
    expect(flyOn(flight, inWind(BREEZE), 0)).toBe(flight);
    for (const seconds of [-1, Number.NaN, Number.POSITIVE_INFINITY])
      expect(() => flyOn(flight, inWind(BREEZE), seconds)).toThrow(/0 s or more/);
  });

  it("crosses the antimeridian and turns on through north without a jump", () => {
    let flight: Flight = {
      ...levelFlight(aircraftAt(latLon(-10, 179.99), 300)),
      turningTo: magneticDeg(100),
    };
    let longestM = 0;
    let sharpestDeg = 0;
    for (let step = 0; step < 600; step++) {
      const next = flyOn(flight, inWind(BREEZE), 0.2);
      longestM = Math.max(longestM, metresApart(flight.aircraft.position, next.aircraft.position));
      sharpestDeg = Math.max(
        sharpestDeg,
        Math.abs(turnBetween(flight.aircraft.heading, next.aircraft.heading)),
      );
      flight = next;
    }
    expect(flight.aircraft.position.lonDeg).toBeLessThan(0);
    expect(longestM).toBeLessThan((118 / 3600 / 5) * M_PER_NM * 1.001);
    expect(sharpestDeg).toBeLessThanOrEqual(0.6 + 1e-9);
  });
});
