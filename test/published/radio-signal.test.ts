/** Published constants of the VOR's signal, beside ours and beside what a spectrum shows of our samples. */

import FFT from "fft.js";
import { expect, test } from "vitest";
import {
  composite,
  DEVIATION_RATIO,
  DEVIATION_RATIO_TOLERANCE,
  frequencyDeviationHz,
  IDENT_DEPTH,
  IDENT_PERIOD_S,
  IDENT_WORDS_PER_MINUTE,
  MODULATION_DEPTH,
  MODULATION_DEPTH_TOLERANCE,
  STANDARD_MODULATION,
  SUBCARRIER_HZ,
  TONE_HZ,
  TONE_TOLERANCE,
} from "../../src/radio/index.ts";
import { errorDeg, heard, measured, signalOf } from "../signal.ts";

/** A second of it, so that a bin is a hertz. */
const SIZE = 32_768;

function strongestHz(fromHz: number, toHz: number, samples: Float64Array): number {
  const fft = new FFT(SIZE);
  const out = fft.createComplexArray();
  fft.realTransform(out, samples);
  const size = (hz: number): number => Math.hypot(out[2 * hz] ?? 0, out[2 * hz + 1] ?? 0);
  let best = fromHz;
  for (let hz = fromHz; hz <= toHz; hz++) if (size(hz) > size(best)) best = hz;
  return best;
}

test("30 and 9960 Hz to 1 %, ratio 16 to 1, swing 480 Hz (vor-signal-c005, ICAO Annex 10 Vol I, 3.3.5)", () => {
  expect([TONE_HZ, SUBCARRIER_HZ, TONE_TOLERANCE]).toEqual([30, 9960, 0.01]);
  expect([DEVIATION_RATIO, DEVIATION_RATIO_TOLERANCE]).toEqual([16, 1]);
  expect(frequencyDeviationHz(DEVIATION_RATIO, TONE_HZ)).toBe(480);
  const found = measured({}, { sampleRateHz: 48_000, durationS: 1 });
  expect(found.toneHz).toBeCloseTo(30, 3);
  expect(found.subcarrierHz).toBeCloseTo(9960, 2);
  expect(found.deviationRatio * found.toneHz).toBeCloseTo(480, 1);
});

test("each part modulates the carrier by 30 %, 28 to 32 (vor-signal-c006, from memory: ICAO Annex 10 Vol I, 3.3.5.3)", () => {
  const percent = (share: number): number => Math.round(100 * share);
  expect([
    percent(MODULATION_DEPTH),
    percent(MODULATION_DEPTH - MODULATION_DEPTH_TOLERANCE),
    percent(MODULATION_DEPTH + MODULATION_DEPTH_TOLERANCE),
  ]).toEqual([30, 28, 32]);
  const found = measured({}, { sampleRateHz: 48_000, durationS: 1 });
  expect(found.toneAmplitude / found.carrier).toBeCloseTo(0.3, 4);
  expect(found.subcarrierAmplitude / found.carrier).toBeCloseTo(0.3, 3);
});

test("no AM on the sub-carrier, where 5 % is allowed (vor-signal-c007, ICAO Annex 10 Vol I, 3.3.5)", () => {
  // The two side lines of any order are equally strong where the sub-carrier is frequency modulated alone; AM would upset that.
  const samples = new Float64Array(SIZE);
  composite(signalOf({ radialDeg: 40 }), { sampleRateHz: SIZE }).audio(samples);
  const fft = new FFT(SIZE);
  const out = fft.createComplexArray();
  fft.realTransform(out, samples);
  const size = (hz: number): number => Math.hypot(out[2 * hz] ?? 0, out[2 * hz + 1] ?? 0);
  for (let order = 1; order < 20; order++)
    expect((size(9960 + 30 * order) - size(9960 - 30 * order)) / size(9960)).toBeCloseTo(0, 8);
});

test("the ident's tone is 1020 Hz, within 50 (vor-signal-c008, tolerance from memory: ICAO Annex 10 Vol I, 3.3.6)", () => {
  const samples = new Float64Array(SIZE);
  composite(signalOf({ modulation: { ident: { kind: "steady" } } }), { sampleRateHz: SIZE }).audio(samples);
  expect(strongestHz(200, 8000, samples)).toBe(1020);
});

test("seven words a minute, at least every 30 s, three times preferred (vor-signal-c009, from memory: ICAO Annex 10 Vol I, 3.3.6)", () => {
  expect(IDENT_WORDS_PER_MINUTE).toBe(7);
  expect(30 / IDENT_PERIOD_S).toBe(3);
});

test("the ident modulates the carrier by a tenth at most (vor-signal-c010, from memory: ICAO Annex 10 Vol I, 3.3.6)", () => {
  expect(IDENT_DEPTH).toBeLessThanOrEqual(0.1);
  const receiver = heard(
    { modulation: { ident: { kind: "steady" } } },
    { sampleRateHz: 24_000, durationS: 1, form: "audio" },
  );
  expect(Math.max(...receiver.ident.loudness().amplitudes)).toBeCloseTo(STANDARD_MODULATION.identDepth, 3);
});

test("in phase on station north, behind by the radial clockwise of it (vor-signal-c017, ICAO Annex 10 Vol I, 3.3.1)", () => {
  for (const radialDeg of [0, 90, 180, 270, 360])
    expect(
      errorDeg(measured({ radialDeg }, { sampleRateHz: 24_000, durationS: 0.3 }), radialDeg % 360),
    ).toBeCloseTo(0, 3);
});
