/** Cross fixes: their error against crossings worked out on the ellipsoid, and the field of them against the engine. */

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  convergenceDeg,
  direct,
  inverse,
  type LatLon,
  magneticDeg,
  placeTable,
  stationDeg,
  trueDeg,
  turnBetween,
  twoLineFix,
} from "../src/earth/index.ts";
import {
  airwaves,
  crossFixAt,
  crossFixErrorNm,
  FIX_BANDS_NM,
  fieldCell,
  fillFixCells,
  fixBand,
  fixBandOfCell,
  fixStations,
  GROUND_CHECK_ERROR_DEG,
  type NeedleField,
  NO_FIX,
  needleField,
  type ReceiverReading,
  type ReceiverSettings,
  readReceiver,
  withFixBand,
} from "../src/panel/index.ts";
import type { Station } from "../src/radio/index.ts";
import { CORVANE, HJL, OXK, onRadial, TXJ } from "./isles.ts";

const tuned = (frequencyMhz: number): ReceiverSettings => ({
  name: "NAV1",
  frequencyMhz,
  course: stationDeg(0),
  face: "cdi",
  bearingErrorDeg: 0,
});

const evenly = (least: number, most: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: 100_000 }).map((part) => least + ((most - least) * part) / 100_000);

describe("the error of a cross fix", () => {
  const square = { distance1Nm: 30, distance2Nm: 30, cutDeg: 90 };

  test("at a right angle is the corner of a square, by hand", () => {
    // Both lines 4 degrees out: 30 sin 4 = 2.093 NM across each, at right angles; the farther corners lie 2.093 root 2 away,
    // and the lines that spread apart meet a little farther still.
    const errorNm = crossFixErrorNm({ ...square, error1Deg: 4, error2Deg: 4 });
    const acrossNm = 30 * Math.sin((4 * Math.PI) / 180);
    expect(errorNm).toBeGreaterThan(acrossNm * Math.SQRT2);
    // Lines that lean apart, 90 - 8 = 82 degrees: root(2 a^2 (1 + cos 82)) / sin 82.
    const lean = (82 * Math.PI) / 180;
    expect(errorNm).toBeCloseTo((acrossNm * Math.sqrt(2 + 2 * Math.cos(lean))) / Math.sin(lean), 9);
  });

  test("is the rule of thumb at small errors: a mile across at 60 NM for a degree", () => {
    const errorNm = crossFixErrorNm({
      distance1Nm: 60,
      distance2Nm: 60,
      cutDeg: 90,
      error1Deg: 0.01,
      error2Deg: 0.01,
    });
    expect(errorNm * 100).toBeCloseTo(1.0472 * Math.SQRT2, 2);
  });

  test("grows without bound as the cut closes to both errors", () => {
    const at = (cutDeg: number) => crossFixErrorNm({ ...square, cutDeg, error1Deg: 4, error2Deg: 4 });
    expect(at(8.1)).toBeGreaterThan(100);
    expect(at(8)).toBe(Number.POSITIVE_INFINITY);
    expect(at(0)).toBe(Number.POSITIVE_INFINITY);
    for (let cutDeg = 9; cutDeg < 90; cutDeg++) expect(at(cutDeg)).toBeGreaterThan(at(cutDeg + 1));
  });

  test("between two stations reaches to the farther of them", () => {
    expect(
      crossFixErrorNm({ distance1Nm: 10, distance2Nm: 40, cutDeg: 180, error1Deg: 4, error2Deg: 4 }),
    ).toBe(40);
  });

  test("is not changed by naming the stations the other way round", () => {
    const any = fc.tuple(evenly(1, 100), evenly(1, 100), evenly(0, 180), evenly(0.5, 8), evenly(0.5, 8));
    fc.assert(
      fc.property(any, ([distance1Nm, distance2Nm, cutDeg, error1Deg, error2Deg]) => {
        const one = crossFixErrorNm({ distance1Nm, distance2Nm, cutDeg, error1Deg, error2Deg });
        const other = crossFixErrorNm({
          distance1Nm: distance2Nm,
          distance2Nm: distance1Nm,
          cutDeg,
          error1Deg: error2Deg,
          error2Deg: error1Deg,
        });
        if (Number.isFinite(one)) expect(other).toBeCloseTo(one, 6);
        else expect(other).toBe(one);
      }),
    );
  });

  test("is that of the farthest crossing on the ellipsoid, within one per cent to 100 NM", () => {
    let compared = 0;
    const place: LatLon = { latDeg: -10.6, lonDeg: 1.5 };
    const any = fc.tuple(
      fc.constantFrom<LatLon>(place, { latDeg: 62, lonDeg: 25 }, { latDeg: 0, lonDeg: 180 }),
      evenly(0, 360),
      evenly(25, 155),
      evenly(5, 100),
      evenly(5, 100),
      fc.constantFrom(1, 4, 6),
    );
    fc.assert(
      fc.property(any, ([aircraft, toward, cutDeg, distance1Nm, distance2Nm, errorDeg]) => {
        const station1 = direct(aircraft, trueDeg(toward), distance1Nm);
        const station2 = direct(aircraft, trueDeg(toward + cutDeg), distance2Nm);
        const errorNm = crossFixErrorNm({
          distance1Nm,
          distance2Nm,
          cutDeg,
          error1Deg: errorDeg,
          error2Deg: errorDeg,
        });
        let farthest = 0;
        for (const e1 of [-errorDeg, errorDeg])
          for (const e2 of [-errorDeg, errorDeg]) {
            const fix = twoLineFix(lineFrom(station1, aircraft, e1), lineFrom(station2, aircraft, e2));
            if (fix.kind === "fix") farthest = Math.max(farthest, inverse(aircraft, fix.position).distanceNm);
          }
        expect(Math.abs(errorNm / farthest - 1)).toBeLessThan(0.01);
        compared++;
      }),
      { seed: 5, numRuns: 400 },
    );
    expect(compared).toBe(400);
  });

  const lineFrom = (station: LatLon, aircraft: LatLon, errorDeg: number) => {
    const line = inverse(station, aircraft);
    if (line.kind !== "line") throw new Error("the two places are apart");
    return { station, azimuth: trueDeg(line.azimuth + errorDeg) };
  };
});

describe("the field of a cross fix", () => {
  const convergences = (field: NeedleField, places: readonly LatLon[]) =>
    fixStations(field).map((station) => Float64Array.from(places, (place) => convergenceDeg(station, place)));
  const readings = (
    stations: readonly Station[],
    position: LatLon,
    altitudeFt: number,
    tunings: readonly number[],
  ) => {
    const air = airwaves(stations, CORVANE.peaks);
    const flight = { position, altitudeFt, heading: magneticDeg(0), track: trueDeg(0), groundspeedKt: 0 };
    return tunings.map((frequencyMhz) => readReceiver(air, flight, tuned(frequencyMhz))) as [
      ReceiverReading,
      ReceiverReading,
    ];
  };

  test("says at every place what the two receivers come to", () => {
    const stations: Station[] = [HJL, TXJ, OXK, { ...OXK, ident: "ZZZ", position: onRadial(HJL, 200, 60) }];
    const air = airwaves(stations, CORVANE.peaks);
    const bands = new Map<number, number>();
    const places = Array.from({ length: 3000 }, (_, index) =>
      direct(HJL.position, trueDeg(index * 137.507764), 90 * Math.sqrt((index + 1) / 3000)),
    );
    const latDeg = Float64Array.from(places, (place) => place.latDeg);
    const lonDeg = Float64Array.from(places, (place) => place.lonDeg);
    for (const [tunings, allowedErrorDeg] of [
      [[HJL.frequencyMhz, TXJ.frequencyMhz], GROUND_CHECK_ERROR_DEG],
      [[HJL.frequencyMhz, OXK.frequencyMhz], 0.5],
    ] as const) {
      const [first, second] = tunings.map((frequencyMhz) =>
        needleField(air, { ...tuned(frequencyMhz), altitudeFt: 3500, room: places.length }),
      );
      const cells = new Uint32Array(places.length);
      const spare = new Uint32Array(places.length);
      fillFixCells(
        { first: first!, second: second!, allowedErrorDeg },
        {
          table: placeTable(latDeg, lonDeg),
          convergences1Deg: convergences(first!, places),
          convergences2Deg: convergences(second!, places),
        },
        cells,
        0,
        spare,
      );
      places.forEach((place, index) => {
        const [one, other] = readings(stations, place, 3500, tunings);
        const errorNm = crossFixAt(place, one, other, allowedErrorDeg);
        const band = errorNm === null ? NO_FIX : fixBand(errorNm);
        expect(fixBandOfCell(cells[index]!)).toBe(band);
        expect(cells[index]).toBe(withFixBand(fieldCell(one), band));
        bands.set(band, (bands.get(band) ?? 0) + 1);
      });
    }
    for (let band = 0; band <= FIX_BANDS_NM.length; band++)
      expect(bands.get(band) ?? 0, `band ${band}`).toBeGreaterThan(10);
    expect(bands.get(NO_FIX) ?? 0).toBeGreaterThan(50);
  });

  test("is blank where one is not received, and with a test signal", () => {
    const at = onRadial(HJL, 90, 20);
    const mute = readings([HJL, { ...TXJ, status: "silent" }], at, 4000, [113.9, 115.6]);
    expect(crossFixAt(at, ...mute, 4)).toBeNull();
    const vot = readings(
      [HJL, { ...TXJ, kind: "VOT", position: onRadial(HJL, 90, 21) }],
      at,
      4000,
      [113.9, 115.6],
    );
    expect(vot[1].radial).toBe(0);
    expect(crossFixAt(at, ...vot, 4)).toBeNull();
    const good = readings([HJL, TXJ], at, 4000, [113.9, 115.6]);
    expect(crossFixAt(at, ...good, 4)).not.toBeNull();
  });

  test("takes the cut between the bearings at the aircraft", () => {
    const at = onRadial(HJL, 90, 30);
    const [one, other] = readings([HJL, TXJ], at, 4000, [113.9, 115.6]);
    const to1 = inverse(at, HJL.position);
    const to2 = inverse(at, TXJ.position);
    if (to1.kind !== "line" || to2.kind !== "line") throw new Error("the places are apart");
    const expected = crossFixErrorNm({
      distance1Nm: to1.distanceNm,
      distance2Nm: to2.distanceNm,
      cutDeg: Math.abs(turnBetween(to1.azimuth, to2.azimuth)),
      error1Deg: 4,
      error2Deg: 4,
    });
    expect(Math.abs(crossFixAt(at, one, other, 4)! / expected - 1)).toBeLessThan(0.001);
  });
});
