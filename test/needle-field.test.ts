/** The needle field against the engine: at any place it must say what `readReceiver` says there. */

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  direct,
  type LatLon,
  magneticDeg,
  placeTable,
  stationDeg,
  trueDeg,
  wrap360,
} from "../src/earth/index.ts";
import {
  airwaves,
  BIN_COUNT,
  binOfCell,
  courseShift,
  fieldCell,
  fillCells,
  indicate,
  NO_BIN,
  needleField,
  type ReceiverReading,
  type ReceiverSettings,
  readReceiver,
  receptionOfCell,
  SHADE_COUNT,
  SHADE_OFF,
  shadeMeaning,
  shadeOf,
  shadesForCourse,
  TEST_SIGNAL_BIN,
  testSignalShade,
} from "../src/panel/index.ts";
import type { Peak, Station } from "../src/radio/index.ts";
import { CORVANE, HJL, OXK, onRadial, TXJ } from "./isles.ts";

const settingsOf = (frequencyMhz: number, courseDeg: number, bearingErrorDeg = 0): ReceiverSettings => ({
  name: "NAV1",
  frequencyMhz,
  course: stationDeg(courseDeg),
  face: "cdi",
  bearingErrorDeg,
});

interface Case {
  readonly stations: readonly Station[];
  readonly peaks: readonly Peak[];
  readonly altitudeFt: number;
  readonly settings: ReceiverSettings;
}

/** What the field says of the places, and what the receiver reads at each. */
function both(setup: Case, places: readonly LatLon[]) {
  const air = airwaves(setup.stations, setup.peaks);
  const { settings, altitudeFt } = setup;
  const field = needleField(air, { ...settings, altitudeFt, room: places.length });
  const cells = new Uint32Array(places.length + 3);
  fillCells(
    field,
    placeTable(
      places.map(({ latDeg }) => latDeg),
      places.map(({ lonDeg }) => lonDeg),
    ),
    cells,
    2,
  );
  const readings = places.map((position) =>
    readReceiver(
      air,
      { position, altitudeFt, heading: magneticDeg(0), track: trueDeg(0), groundspeedKt: 0 },
      settings,
    ),
  );
  return {
    cells: cells.subarray(2, 2 + places.length),
    readings,
    guards: [cells[0], cells[1], cells.at(-1)],
  };
}

/** The same reception; and the same bin, but where the radial is within rounding of the next bin. */
function expectSame(cell: number, reading: ReceiverReading): void {
  const expected = fieldCell(reading);
  if (cell === expected) return;
  expect(receptionOfCell(cell)).toBe(receptionOfCell(expected));
  // Places of the table differ from the engine's by rounding of the sixteenth figure, which may cross an edge.
  expect(awayFromEdge(reading)).toBeLessThan(1e-6);
  const apart = Math.abs(binOfCell(cell) - binOfCell(expected));
  expect(Math.min(apart, BIN_COUNT - apart)).toBe(1);
}

/** How far a radial is from the nearest edge of a bin, in bins. */
function awayFromEdge({ radial }: ReceiverReading): number {
  const bins = (radial ?? Number.NaN) * 182;
  return Math.abs(bins - Math.round(bins));
}

/** Evenly spread; `fc.double` favours numbers near nought. */
const evenly = (least: number, most: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: 100_000 }).map((part) => least + ((most - least) * part) / 100_000);
const bearing = evenly(0, 359.99);
const around = (centre: LatLon, mostNm: number): fc.Arbitrary<LatLon> =>
  fc
    .record({ toward: bearing, nm: evenly(0, mostNm) })
    .map(({ toward, nm }) => direct(centre, trueDeg(toward), nm));

const station = (ident: string, centre: LatLon): fc.Arbitrary<Station> =>
  fc
    .record({
      position: around(centre, 40),
      elevationFt: fc.integer({ min: 0, max: 3000 }),
      declinationDeg: fc.integer({ min: -30, max: 30 }),
      kind: fc.constantFrom("VOR", "VOR-DME", "VORTAC", "VOR", "VOT", "DME", "TACAN"),
      vorClass: fc.constantFrom("T", "L", "H", "VL", "VH", null),
      status: fc.constantFrom("on-air", "on-air", "on-air", "test", "no-ident", "silent"),
      eirpW: fc.constantFrom(200, 200, 50, 1, 0.05, 0.0005),
    })
    .map((part) => ({ ...TXJ, ...part, ident, frequencyMhz: 115.6 }) as Station);

const peak = (centre: LatLon): fc.Arbitrary<Peak> =>
  fc.record({
    name: fc.constant("A hill"),
    position: around(centre, 30),
    elevationFt: fc.integer({ min: 100, max: 9000 }),
    baseRadiusNm: evenly(0.5, 12),
  });

const anyCase = fc
  .constantFrom<LatLon>(
    TXJ.position,
    { latDeg: 0.02, lonDeg: 179.95 },
    { latDeg: 69, lonDeg: -40 },
    { latDeg: 45, lonDeg: 7 },
  )
  .chain((centre) =>
    fc.record({
      places: fc.array(fc.oneof(around(centre, 120), around(centre, 30)), { minLength: 80, maxLength: 80 }),
      stations: fc
        .tuple(
          station("AAA", centre),
          station("BBB", centre),
          station("CCC", centre),
          fc.constantFrom(0, 1, 1, 1, 2, 3),
        )
        .map(([a, b, c, count]) => [a, b, c].slice(0, count)),
      peaks: fc.array(peak(centre), { maxLength: 4 }),
      altitudeFt: fc.constantFrom(0, 300, 1500, 3500, 6000, 9500, 18_000, 35_000),
      course: fc.integer({ min: 0, max: 719 }).map((halves) => halves / 2),
      errorDeg: fc.constantFrom(0, 0, 3.7, -6, -200),
    }),
  );

describe("a field's cells", () => {
  test("say what the receiver reads, at random places among random stations and hills", () => {
    const seen = new Map<string, number>();
    fc.assert(
      fc.property(anyCase, ({ places, stations, peaks, altitudeFt, course, errorDeg }) => {
        const settings = settingsOf(115.6, course, errorDeg);
        const { cells, readings, guards } = both({ stations, peaks, altitudeFt, settings }, places);
        const shades = shadesForCourse(settings.course);
        readings.forEach((reading, index) => {
          const cell = cells[index]!;
          expectSame(cell, reading);
          const bin = binOfCell(cell);
          const shade =
            bin === NO_BIN
              ? SHADE_OFF
              : bin === TEST_SIGNAL_BIN
                ? testSignalShade(settings.course, errorDeg)
                : shades[bin];
          if (shade !== shadeOf(reading)) expect(awayFromEdge(reading)).toBeLessThan(1e-6);
          const reception = receptionOfCell(cell);
          seen.set(reception, (seen.get(reception) ?? 0) + 1);
        });
        expect(guards).toEqual([0, 0, 0]);
      }),
      { seed: 3, numRuns: 200, endOnFailure: true },
    );
    // Nothing was left untried.
    for (const reception of [
      "good-inside",
      "good-outside",
      "good-unknown",
      "weak-inside",
      "weak-outside",
      "overhead",
      "two-at-once",
      "below-horizon",
      "terrain",
      "too-weak",
      "silent",
      "distance-only",
      "no-station",
    ])
      expect(seen.get(reception) ?? 0, reception).toBeGreaterThan(20);
  }, 120_000);

  test.each([
    ["beside the hill", HJL, 3500],
    ["low behind the hill", HJL, 1500],
    ["above the hill", HJL, 6000],
    ["on the hill's flank", { ...OXK, position: direct(CORVANE.peaks[0]!.position, trueDeg(20), 4) }, 3000],
    ["on its summit", { ...OXK, position: CORVANE.peaks[0]!.position, elevationFt: 4260 }, 2500],
    ["on another hill, looking down", { ...OXK, elevationFt: 8000, position: onRadial(HJL, 20, 4) }, 3000],
  ])("keep to the shadow's very edge: %s", (_name, tuned, altitudeFt) => {
    // Densely over the hill and its shadow, where the quick way and the engine are likeliest to part.
    const summit = CORVANE.peaks[0]!.position;
    const places: LatLon[] = [];
    for (let toward = 0; toward < 360; toward += 3.7)
      for (const nm of [0.05, 0.9, 2.1, 3.3, 4.4, 5.2, 5.9, 6.02, 6.6, 8, 11, 17, 30])
        places.push(direct(summit, trueDeg(toward), nm));
    const settings = settingsOf(tuned.frequencyMhz, 60);
    const { cells, readings } = both(
      { stations: [tuned as Station], peaks: CORVANE.peaks, altitudeFt, settings },
      places,
    );
    for (const [index, reading] of readings.entries()) expectSame(cells[index]!, reading);
  });

  test("keep to the shadow's edge of any hill, wherever the antenna stands on it or off it", () => {
    let hidden = 0;
    const summit = CORVANE.peaks[0]!.position;
    const hill = fc.record({
      elevationFt: fc.integer({ min: 50, max: 9000 }),
      baseRadiusNm: evenly(0.5, 12),
      away: evenly(0, 3),
      toward: bearing,
      antennaFt: fc.integer({ min: 0, max: 6000 }),
      altitudeFt: fc.integer({ min: 0, max: 12_000 }),
      aside: fc.array(fc.tuple(bearing, evenly(0, 4)), {
        minLength: 150,
        maxLength: 150,
      }),
    });
    fc.assert(
      fc.property(hill, ({ elevationFt, baseRadiusNm, away, toward, antennaFt, altitudeFt, aside }) => {
        const tuned: Station = {
          ...OXK,
          position: direct(summit, trueDeg(toward), away * baseRadiusNm),
          elevationFt: antennaFt,
        };
        const places = aside.map(([bearingDeg, radii]) =>
          direct(summit, trueDeg(bearingDeg), radii * baseRadiusNm),
        );
        const peaks = [{ ...CORVANE.peaks[0]!, elevationFt, baseRadiusNm }];
        const settings = settingsOf(tuned.frequencyMhz, 60);
        const { cells, readings } = both({ stations: [tuned], peaks, altitudeFt, settings }, places);
        for (const [index, reading] of readings.entries()) {
          expectSame(cells[index]!, reading);
          if (receptionOfCell(cells[index]!) === "terrain") hidden++;
        }
      }),
      { seed: 8, numRuns: 300, endOnFailure: true },
    );
    expect(hidden).toBeGreaterThan(2500);
  }, 120_000);

  test("tell a localizer's channel from one that nobody uses", () => {
    const { cells } = both({ stations: [], peaks: [], altitudeFt: 3000, settings: settingsOf(108.1, 0) }, [
      TXJ.position,
    ]);
    expect(receptionOfCell(cells[0]!)).toBe("localizer-channel");
  });
});

describe("shades", () => {
  test("read the deviation indicator at every bin for a course in half degrees", () => {
    for (const course of [0, 70, 123.5, 359.5]) {
      const shades = shadesForCourse(stationDeg(course));
      // Whatever radial of the bin is taken, the shade is the same.
      for (let bin = 0; bin < BIN_COUNT; bin += 7)
        for (const part of [0.001, 0.5, 0.999])
          expect(shades[bin]).toBe(shadeOf(indicate(stationDeg((bin + part) / 182), stationDeg(course))));
    }
  });

  test("of another course are those of its rest, shifted by whole bins", () => {
    for (const course of [0, 1, 70, 210.5, 359, 33.337]) {
      const { bins, restDeg } = courseShift(stationDeg(course));
      expect(restDeg).toBeGreaterThanOrEqual(0);
      expect(restDeg).toBeLessThan(1 / 182);
      if (course * 2 === Math.round(course * 2)) expect(restDeg).toBe(0);
      const base = shadesForCourse(stationDeg(restDeg));
      const shades = shadesForCourse(stationDeg(course));
      for (let bin = 0; bin < BIN_COUNT; bin++)
        if (shades[(bin + bins) % BIN_COUNT] !== base[bin]) expect.fail(`course ${course}, bin ${bin}`);
    }
  });

  test("name the flag and the needle in quarters of a dot, right positive", () => {
    const meaning = (radial: number, course: number) =>
      shadeMeaning(shadeOf(indicate(stationDeg(radial), stationDeg(course))));
    expect(meaning(246, 66)).toEqual({ flag: "TO", step: 0 });
    expect(meaning(246, 70)).toEqual({ flag: "TO", step: -8 });
    expect(meaning(70.6, 70)).toEqual({ flag: "FROM", step: -1 });
    expect(meaning(69.1, 70)).toEqual({ flag: "FROM", step: 1 });
    expect(meaning(60, 70)).toEqual({ flag: "FROM", step: 20 });
    expect(meaning(60.3, 70)).toEqual({ flag: "FROM", step: 19 });
    expect(meaning(160, 70)).toBeNull();
    expect(SHADE_COUNT).toBeLessThan(256);
  });

  test("mirror when the course is turned by 180", () => {
    fc.assert(
      fc.property(bearing, bearing, (radial, course) => {
        const one = shadeMeaning(shadeOf(indicate(stationDeg(radial), stationDeg(course))));
        const other = shadeMeaning(shadeOf(indicate(stationDeg(radial), stationDeg(wrap360(course + 180)))));
        if (one === null || other === null) return;
        expect(other.flag).not.toBe(one.flag);
        expect(Math.abs(other.step + one.step)).toBeLessThanOrEqual(1);
      }),
    );
  });
});
