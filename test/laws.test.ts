/**
 * The laws of the field, held over random places, courses and headings. Common practice, each; the handbook words stand beside
 * the published rows in test/published.
 */

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  direct,
  type LatLon,
  magneticDeg,
  magneticFromTrue,
  reciprocal,
  stationDeg,
  stationFromTrue,
  trueDeg,
  trueFromMagnetic,
  trueFromStation,
  turnBetween,
  wrap360,
} from "../src/earth/index.ts";
import { indicate, type ReceiverReading } from "../src/panel/index.ts";
import type { Station } from "../src/radio/index.ts";
import { resolveScene, type Scene } from "../src/scene/index.ts";
import { spread } from "./spread.ts";

const direction = spread(0, 360);
const latitude = spread(-70, 70);
const longitude = spread(-180, 180);
const declination = spread(-30, 30);
/** Outside the cone at 6,000 ft above, well inside line of sight. */
const distance = spread(2, 60);
const runs = { seed: 20260701, numRuns: 300 };

function stationAt(position: LatLon, declinationDeg: number): Station {
  return {
    ident: "ABC",
    name: "Somewhere",
    kind: "VOR-DME",
    frequencyMhz: 113.9,
    dmeChannel: "86X",
    position,
    elevationFt: 0,
    dmeSite: null,
    declinationDeg,
    declinationEstimated: false,
    vorClass: null,
    dmeClass: null,
    status: "on-air",
    eirpW: 200,
  };
}

interface Setting {
  readonly station: Station;
  readonly position: LatLon;
  readonly course: number;
  readonly heading: number;
}

function reading({ station, position, course, heading }: Setting): ReceiverReading {
  const scene: Scene = {
    title: "",
    about: "",
    date: "2026-07-01",
    stations: [station],
    land: null,
    aircraft: { position, heading: magneticDeg(heading), altitudeFt: 6000, tasKt: 100 },
    wind: { from: trueDeg(140), speedKt: 18 },
    receivers: [
      { name: "NAV1", frequencyMhz: 113.9, course: stationDeg(course), face: "cdi", bearingErrorDeg: 0 },
    ],
    signal: null,
    covers: [],
    ask: "",
  };
  const [first] = resolveScene(scene).receivers;
  if (first === undefined) throw new Error("one receiver was asked for");
  return first;
}

const setting = fc
  .record({
    latDeg: latitude,
    lonDeg: longitude,
    declination,
    azimuth: direction,
    distance,
    course: direction,
    heading: direction,
  })
  .map(({ latDeg, lonDeg, declination, azimuth, distance, course, heading }): Setting => {
    const station = stationAt({ latDeg, lonDeg }, declination);
    return { station, position: direct(station.position, trueDeg(azimuth), distance), course, heading };
  });

describe("the needle", () => {
  test("does not move when the heading changes", () => {
    fc.assert(
      fc.property(setting, direction, (at, otherHeading) => {
        const one = reading(at);
        const other = reading({ ...at, heading: otherHeading });
        expect(other.deviationDeg).toBe(one.deviationDeg);
        expect(other.flag).toBe(one.flag);
        expect(other.radial).toBe(one.radial);
      }),
      runs,
    );
  });

  test("and the flag mirror when the reciprocal is selected", () => {
    fc.assert(
      fc.property(setting, (at) => {
        const one = reading(at);
        const mirrored = reading({ ...at, course: wrap360(at.course + 180) });
        expect(mirrored.deviationDeg).toBeCloseTo(-(one.deviationDeg ?? Number.NaN), 9);
        const opposite = { TO: "FROM", FROM: "TO", OFF: "OFF" } as const;
        expect(mirrored.flag).toBe(opposite[one.flag]);
      }),
      runs,
    );
  });

  test("lies toward the course: a step square to the course, to the needle's side, brings the line nearer", () => {
    fc.assert(
      fc.property(setting, (at) => {
        const before = reading(at);
        const off = Math.abs(before.deviationDeg ?? 0);
        // On the line a step crosses it; square abeam the distance to the line is the distance to the station.
        fc.pre(off > 1 && off < 89);
        const side = (before.deviationDeg ?? 0) > 0 ? 90 : -90;
        const towards = trueFromStation(stationDeg(at.course + side), at.station.declinationDeg);
        const after = reading({ ...at, position: direct(at.position, towards, 0.005) });
        const lineNm = (r: ReceiverReading) =>
          (r.geometry?.distanceNm ?? Number.NaN) *
          Math.sin((Math.abs(r.deviationDeg ?? Number.NaN) * Math.PI) / 180);
        expect(lineNm(after)).toBeLessThan(lineNm(before));
      }),
      runs,
    );
  });

  test("and flag follow from radial and course alone, for every whole degree of both", () => {
    for (let radial = 0; radial < 360; radial++)
      for (let course = 0; course < 360; course += 1) {
        const shown = indicate(stationDeg(radial), stationDeg(course));
        const rel = ((radial - course) * Math.PI) / 180;
        expect(Math.sin(((shown.deviationDeg ?? 0) * Math.PI) / 180)).toBeCloseTo(Math.sin(-rel), 12);
        if (shown.flag === "FROM") expect(Math.cos(rel)).toBeGreaterThan(0);
        if (shown.flag === "TO") expect(Math.cos(rel)).toBeLessThan(0);
        if (shown.flag === "OFF") expect(Math.abs(Math.cos(rel))).toBeLessThan(0.035);
      }
  });

  test("moves steadily through north: no jump between 359.99 and 0.01", () => {
    fc.assert(
      fc.property(spread(-5, 5), direction, (across, course) => {
        const near = indicate(stationDeg(course + across), stationDeg(course));
        const next = indicate(stationDeg(course + across + 0.01), stationDeg(course));
        expect(Math.abs((near.deviationDeg ?? 0) - (next.deviationDeg ?? 0))).toBeLessThan(0.0101);
        expect(next.flag).toBe(near.flag);
      }),
      runs,
    );
  });
});

describe("directions", () => {
  test("radial and bearing are reciprocal at the station", () => {
    fc.assert(
      fc.property(setting, (at) => {
        const { radial, bearingTo } = reading(at);
        if (radial === null || bearingTo === null) throw new Error("the station is in reach");
        expect(Math.abs(turnBetween(reciprocal(radial), bearingTo))).toBeLessThan(1e-9);
      }),
      runs,
    );
  });

  test("true, magnetic and station go round and come back", () => {
    fc.assert(
      fc.property(direction, spread(-180, 180), (deg, turn) => {
        const start = trueDeg(deg);
        expect(
          Math.abs(turnBetween(start, trueFromMagnetic(magneticFromTrue(start, turn), turn))),
        ).toBeLessThan(1e-9);
        expect(
          Math.abs(turnBetween(start, trueFromStation(stationFromTrue(start, turn), turn))),
        ).toBeLessThan(1e-9);
      }),
      runs,
    );
  });

  test("reversed means more than 90 degrees between heading and course, while a flag shows", () => {
    fc.assert(
      fc.property(setting, (at) => {
        const shown = reading(at);
        const apart = Math.abs(turnBetween(stationDeg(at.course), stationDeg(at.heading)));
        expect(shown.reversed).toBe(shown.flag !== "OFF" && apart > 90);
      }),
      runs,
    );
  });
});
