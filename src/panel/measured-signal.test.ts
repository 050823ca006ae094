/** What the panel shows where a scene has a signal of its own, against the computed radial and the closed formula of a bend. */

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CORVANE, HJL, onRadial, readingOf, type Setup, TXJ } from "../../test/isles.ts";
import { spread } from "../../test/spread.ts";
import { inverse, type LatLon, stationDeg, turnBetween } from "../earth/index.ts";
import { bendDeg, SIGNAL_KINDS, type SignalKind, type Station } from "../radio/index.ts";
import type { SignalConditions } from "./signal-conditions.ts";

const CLEAN: SignalConditions = { kind: "conventional", noiseDb: null, reflectors: [], propeller: null };

/** The measured radial less the true one, degrees clockwise; NaN where none is shown. */
function errorDeg(setup: Setup): number {
  const { radial, geometry } = readingOf(setup);
  return radial === null || geometry === null ? Number.NaN : turnBetween(geometry.trueRadial, radial);
}

const standardDeviation = (values: readonly number[]): number => {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1));
};

describe.each(SIGNAL_KINDS)("a clean %s signal", (kind) => {
  it("gives the computed radial within a hundredth of a degree, anywhere and at any time", () => {
    fc.assert(
      fc.property(spread(0, 360), spread(3, 60), spread(0, 7200), (radialDeg, distanceNm, atS) => {
        const at = onRadial(TXJ, radialDeg, distanceNm);
        const off = errorDeg({ at, altitudeFt: 9000, signal: { ...CLEAN, kind }, atS });
        expect(Math.abs(off)).toBeLessThan(0.01);
      }),
      { numRuns: 60 },
    );
  });

  it("moves needle and flag as the computed radial does", () => {
    for (const courseDeg of [70, 246, 156, 250]) {
      const setup = { at: onRadial(TXJ, 246, 18), courseDeg };
      const computed = readingOf(setup);
      const measured = readingOf({ ...setup, signal: { ...CLEAN, kind } });
      expect(measured.flag).toBe(computed.flag);
      expect(measured.deviationDeg).toBeCloseTo(computed.deviationDeg ?? Number.NaN, 2);
    }
  });
});

describe("a reflector", () => {
  const bent = (kind: SignalKind, azimuthDeg = 300): SignalConditions => ({
    ...CLEAN,
    kind,
    reflectors: [{ ident: "TXJ", position: onRadial(TXJ, azimuthDeg, 2), amplitude: 0.1 }],
  });

  /** The way by the hangar along the ground and up, less the straight slant way, metres; worked out here anew. */
  function extraPathM(station: Station, hangar: LatLon, at: LatLon, altitudeFt: number): number {
    const upM = (altitudeFt - station.elevationFt) * 0.3048;
    const out = inverse(station.position, hangar).distanceM;
    const onward = Math.hypot(inverse(hangar, at).distanceM, upM);
    return out + onward - Math.hypot(inverse(station.position, at).distanceM, upM);
  }

  it.each(SIGNAL_KINDS)("bends the needle of a %s station as the closed formula says", (kind) => {
    // A Doppler station is bent most, and then little, by what stands near the radial.
    const azimuthDeg = kind === "doppler" ? 253 : 300;
    const rows = Array.from({ length: 40 }, (_, index) => {
      const radialDeg = kind === "doppler" ? 240 + 0.3 * index : 246;
      const at = onRadial(TXJ, radialDeg, 18 + index * 0.013);
      const formulaDeg = bendDeg({
        kind,
        radial: stationDeg(radialDeg),
        azimuth: stationDeg(azimuthDeg),
        amplitude: 0.1,
        extraPathM: extraPathM(TXJ, onRadial(TXJ, azimuthDeg, 2), at, 3500),
        frequencyMhz: TXJ.frequencyMhz,
      });
      return { foundDeg: errorDeg({ at, signal: bent(kind, azimuthDeg) }), formulaDeg };
    });
    const greatestDeg = Math.max(...rows.map(({ formulaDeg }) => Math.abs(formulaDeg)));
    for (const { foundDeg, formulaDeg } of rows)
      expect(Math.abs(foundDeg - formulaDeg)).toBeLessThan(0.05 * greatestDeg);
    // A Doppler station's course hardly bends, a conventional one's by degrees.
    if (kind === "doppler") expect(greatestDeg).toBeLessThan(0.5);
    else expect(greatestDeg).toBeGreaterThan(4);
  });

  it("scallops: along a path across the radials the needle goes from one side to the other and back", () => {
    const errors = Array.from({ length: 60 }, (_, index) =>
      errorDeg({ at: onRadial(TXJ, 246 + index * 0.02, 10), signal: bent("conventional"), atS: index }),
    );
    const turns = errors.filter((error, index) => index > 0 && error * (errors[index - 1] ?? 0) < 0).length;
    expect(turns).toBeGreaterThan(4);
    expect(Math.max(...errors)).toBeGreaterThan(3);
    expect(Math.min(...errors)).toBeLessThan(-3);
  });

  it("of one station bends no other", () => {
    const setup = { at: onRadial(HJL, 90, 20), tune: HJL.frequencyMhz, signal: bent("conventional") };
    expect(Math.abs(errorDeg(setup))).toBeLessThan(0.01);
  });

  it("bends no test station, which sends the same all around", () => {
    const vot: Station = { ...TXJ, kind: "VOT", vorClass: null, dmeChannel: null };
    const setup = { at: onRadial(TXJ, 246, 3), stations: [vot], courseDeg: 0, altitudeFt: 100 };
    const reading = readingOf({ ...setup, signal: bent("conventional") });
    expect(reading.flag).toBe("FROM");
    expect(Math.abs(reading.deviationDeg ?? Number.NaN)).toBeLessThan(0.01);
    expect(reading.ident).toEqual({ kind: "test-signal" });
    expect(readingOf({ ...setup, courseDeg: 180, signal: CLEAN }).flag).toBe("TO");
  });
});

describe("noise", () => {
  const noisy = (noiseDb: number): SignalConditions => ({ ...CLEAN, noiseDb });
  const errorsAt = (noiseDb: number) =>
    Array.from({ length: 40 }, (_, index) =>
      errorDeg({ at: onRadial(TXJ, 246, 40), signal: noisy(noiseDb), atS: index }),
    );

  it("makes the needle wander, ten times as far for each 20 dB", () => {
    const [quiet, loud] = [standardDeviation(errorsAt(25)), standardDeviation(errorsAt(45))];
    expect(quiet).toBeLessThan(0.1);
    expect(loud / quiet).toBeGreaterThan(6);
    expect(loud / quiet).toBeLessThan(16);
  });

  it("pulls the flag before the bearing goes astray, and the panel says OFF and why", () => {
    let seen = 0;
    for (let noiseDb = 40; noiseDb <= 70; noiseDb++)
      for (const atS of [0, 10, 20]) {
        const at = onRadial(TXJ, 246, 40);
        const reading = readingOf({ at, courseDeg: 246, signal: noisy(noiseDb), atS });
        if (reading.signal.kind !== "none") {
          expect(Math.abs(errorDeg({ at, signal: noisy(noiseDb), atS }))).toBeLessThan(3);
          continue;
        }
        seen++;
        expect(reading.signal.why).toMatchObject({ kind: "flagged", cause: "noisy" });
        expect([reading.flag, reading.deviationDeg, reading.radial]).toEqual(["OFF", null, null]);
        expect(reading.measured?.flagCause).toBe("noisy");
      }
    expect(seen).toBeGreaterThan(10);
  });

  it("goes on with the clock: the same place and moment read the same, another moment not", () => {
    const at = onRadial(TXJ, 246, 40);
    const first = readingOf({ at, signal: noisy(40), atS: 3 });
    expect(readingOf({ at, signal: noisy(40), atS: 3 })).toEqual(first);
    expect(readingOf({ at, signal: noisy(40), atS: 4 }).radial).not.toBe(first.radial);
  });
});

describe("a propeller", () => {
  const chopped = { ...CLEAN, propeller: { speedRpm: 1810, blades: 2 } };
  const errors = Array.from({ length: 60 }, (_, index) =>
    errorDeg({ at: onRadial(TXJ, 246, 18), signal: chopped, atS: index / 10 }),
  );

  // FAA AIM 1-1-3: certain propeller speeds swing the needle by as much as 6 degrees.
  it("near twice 30 Hz swings the needle by nearly six degrees to either side, and no farther", () => {
    for (const most of [Math.max(...errors), -Math.min(...errors)]) {
      expect(most).toBeGreaterThan(5);
      expect(most).toBeLessThanOrEqual(6.05);
    }
  });

  // 1810 turns of two blades are 60.33 a second: a third of a turn a second off 60 Hz, so once round in three seconds.
  it("swings it once round in three seconds", () => {
    for (let index = 0; index < 30; index++)
      expect(Math.abs((errors[index] ?? 0) - (errors[index + 30] ?? Number.NaN))).toBeLessThan(0.05);
    const turns = errors.filter((error, index) => index > 0 && error * (errors[index - 1] ?? 0) < 0).length;
    expect(turns).toBe(4);
  });
});

describe("what arrives of a station", () => {
  const identOf = (station: Station) =>
    readingOf({ at: onRadial(TXJ, 246, 3), stations: [station], signal: CLEAN }).measured?.arriving.modulation
      .ident;

  it("has its ident, alone or shared with a DME's, or the word of a station on test, or a row of dots, or none", () => {
    expect(identOf(TXJ)).toEqual({ kind: "code", text: "TXJ", shared: true });
    expect(identOf({ ...TXJ, kind: "VOR", dmeChannel: null })).toEqual({
      kind: "code",
      text: "TXJ",
      shared: false,
    });
    expect(identOf({ ...TXJ, status: "test" })).toEqual({ kind: "code", text: "TEST", shared: true });
    expect(identOf({ ...TXJ, kind: "VOT", vorClass: null, dmeChannel: null })).toEqual({ kind: "dots" });
    expect(identOf({ ...TXJ, status: "no-ident" })).toEqual({ kind: "none" });
  });

  it("on two channels has two noises", () => {
    const at = onRadial(TXJ, 246, 18);
    const signal: SignalConditions = { ...CLEAN, noiseDb: 62 };
    const offs = [115.6, 113.2].map((frequencyMhz) => {
      const stations = [{ ...TXJ, frequencyMhz }];
      return [0, 1, 2, 3].map((atS) => errorDeg({ at, stations, tune: frequencyMhz, signal, atS }));
    });
    // The same noise would put both off by the same, but for the last few hundredths of a decibel.
    const apart = (offs[0] ?? []).map((off, index) => Math.abs(off - (offs[1]?.[index] ?? Number.NaN)));
    expect(Math.max(...apart)).toBeGreaterThan(0.3);
  });
});

describe("what is measured once", () => {
  it("is not measured again for a turned course, and is for a moved aircraft or a later clock", () => {
    const signal: SignalConditions = { ...CLEAN, noiseDb: 30 };
    const setup: Setup = { at: onRadial(TXJ, 246, 18), signal };
    const first = readingOf(setup).measured;
    expect(readingOf({ ...setup, courseDeg: 90, errorDeg: 2, face: "hsi" }).measured).toBe(first);
    expect(readingOf({ ...setup, at: onRadial(TXJ, 247, 18) }).measured).not.toBe(first);
    // Along the meridian, and along the parallel: each by itself is a move.
    const { latDeg, lonDeg } = setup.at;
    expect(readingOf({ ...setup, at: { latDeg: latDeg + 0.01, lonDeg } }).measured).not.toBe(first);
    expect(readingOf({ ...setup, at: { latDeg, lonDeg: lonDeg + 0.01 } }).measured).not.toBe(first);
    expect(readingOf({ ...setup, altitudeFt: 4000 }).measured).not.toBe(first);
    expect(readingOf({ ...setup, atS: 0.2 }).measured).not.toBe(first);
    expect(readingOf({ ...setup, signal: { ...signal } }).measured).not.toBe(first);
  });
});

it("the receiver's own error is added to what it measures, and is no part of the measurement", () => {
  const reading = readingOf({ at: onRadial(TXJ, 246, 18), signal: CLEAN, errorDeg: -3 });
  expect(reading.radial).toBeCloseTo(243, 1);
  expect(reading.measured?.measurement.radial).toBeCloseTo(246, 1);
});

it("a signal too weak by its field alone is left to the receiver's own monitors: read without noise, flagged in it", () => {
  const setup: Setup = { at: onRadial(TXJ, 246, 18), stations: [{ ...TXJ, eirpW: 0.01 }] };
  expect(readingOf(setup).signal).toMatchObject({ kind: "none", why: { kind: "too-weak" } });
  expect(readingOf({ ...setup, signal: CLEAN }).signal.kind).toBe("weak");
  expect(Math.abs(errorDeg({ ...setup, signal: CLEAN }))).toBeLessThan(0.01);
  expect(readingOf({ ...setup, signal: { ...CLEAN, noiseDb: 40 } }).signal).toMatchObject({
    kind: "none",
    why: { kind: "flagged", cause: "noisy" },
  });
});

describe("where nothing arrives, nothing is measured", () => {
  it.each<[string, Setup]>([
    ["behind a hill", { at: onRadial(HJL, 223, 30), tune: 113.9, land: CORVANE }],
    ["in the cone", { at: onRadial(TXJ, 246, 0.3), altitudeFt: 9000 }],
    ["from a silent station", { at: onRadial(TXJ, 246, 18), stations: [{ ...TXJ, status: "silent" }] }],
    ["on an empty channel", { at: onRadial(TXJ, 246, 18), tune: 112.3 }],
  ])("%s", (_, setup) => {
    const plain = readingOf(setup);
    expect(readingOf({ ...setup, signal: CLEAN })).toEqual({ ...plain, measured: null });
  });

  it("has the plain reading without a signal of its own", () => {
    expect(readingOf({ at: onRadial(TXJ, 246, 18) }).measured).toBeNull();
  });
});
