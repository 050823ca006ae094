/** The composite's spectrum, by a general FFT, against where the standard puts its lines. */

import fc from "fast-check";
import FFT from "fft.js";
import { describe, expect, test } from "vitest";
import { errorDeg, measured, signalOf, type TestSignal } from "../../test/signal.ts";
import { composite } from "./composite.ts";
import { frequencyDeviationHz, SIGNAL_KINDS } from "./vor-modulation.ts";

/** One second at so many samples: a bin is a hertz, and every line of a standard station falls on one. */
const SIZE = 32_768;

/** Amplitude of every line, by hertz. */
function lines(signal: TestSignal, startS = 0): Float64Array {
  const samples = new Float64Array(SIZE);
  composite(signalOf(signal), { sampleRateHz: SIZE, startS }).audio(samples);
  const fft = new FFT(SIZE);
  const out = fft.createComplexArray();
  fft.realTransform(out, samples);
  return Float64Array.from(
    { length: SIZE / 2 },
    (_, hz) => (Math.hypot(out[2 * hz] ?? 0, out[2 * hz + 1] ?? 0) / SIZE) * (hz === 0 ? 1 : 2),
  );
}

// Abramowitz and Stegun, Handbook of Mathematical Functions, tables 9.1 and 9.2 (from memory): J0, J1, J2 of 16.
const BESSEL_OF_16 = [-0.1748990739, 0.0903971757, 0.1861987209];

describe.each(SIGNAL_KINDS)("the lines of a %s station", (kind) => {
  const found = lines({ radialDeg: 77, modulation: { kind } });

  test("the carrier, 30 Hz at the depth asked for, and nothing between", () => {
    expect(found[0]).toBeCloseTo(1, 9);
    expect(found[30]).toBeCloseTo(0.3, 9);
    expect(Math.max(...found.subarray(31, 8800))).toBeLessThan(1e-9);
  });

  // ICAO Annex 10 Vol I, 3.3.5: 9960 Hz, frequency modulated by 30 Hz, ratio 16: lines 30 Hz apart by the Bessel functions of 16.
  test("9960 Hz and its side lines 30 Hz apart", () => {
    BESSEL_OF_16.forEach((bessel, order) => {
      expect(found[9960 + 30 * order]).toBeCloseTo(0.3 * Math.abs(bessel), 9);
      expect(found[9960 - 30 * order]).toBeCloseTo(0.3 * Math.abs(bessel), 9);
    });
    let power = 0;
    for (let hz = 9000; hz < 11_000; hz++) power += (found[hz] ?? 0) ** 2;
    expect(power).toBeCloseTo(0.3 ** 2, 9);
  });

  test("half of the sub-carrier's power and more lies within its swing of 480 Hz, hardly any beyond 700", () => {
    const powerWithin = (hz: number): number =>
      found.subarray(9960 - hz, 9961 + hz).reduce((sum, line) => sum + line ** 2, 0) / 0.3 ** 2;
    expect(powerWithin(480)).toBeGreaterThan(0.9);
    expect(powerWithin(700)).toBeGreaterThan(0.9999);
  });
});

test("the ident stands at 1020 Hz at its depth while the key is down", () => {
  const found = lines({ modulation: { ident: { kind: "steady" } } });
  expect(found[1020]).toBeCloseTo(0.1, 9);
});

test("depths that are asked for are sent", () => {
  const found = lines({ modulation: { toneDepth: 0.28, subcarrierDepth: 0.32 } });
  expect(found[30]).toBeCloseTo(0.28, 9);
  expect(Math.sqrt(found.subarray(9000, 11_000).reduce((sum, line) => sum + line ** 2, 0))).toBeCloseTo(
    0.32,
    9,
  );
});

test("the swing is the ratio times the tone: 480 Hz, 450 to 510 at the limits of 15 and 17", () => {
  // ICAO Annex 10 Vol I, 3.3.5.
  expect([15, 16, 17].map((ratio) => frequencyDeviationHz(ratio, 30))).toEqual([450, 480, 510]);
});

test("noise has the power asked for", () => {
  const count = 200_000;
  const inPhase = new Float64Array(count);
  const quadrature = new Float64Array(count);
  const quiet = { modulation: { toneDepth: 0, subcarrierDepth: 0 }, carrierToNoiseDbHz: 50 };
  composite(signalOf(quiet), { sampleRateHz: 48_000 }).baseband(inPhase, quadrature);
  let power = 0;
  inPhase.forEach((value, at) => {
    power += ((value - 1) ** 2 + (quadrature[at] ?? 0) ** 2) / count;
  });
  // Density times the rate: -50 dB/Hz over 48 kHz. 200,000 draws tell a power to a quarter of a per cent.
  expect(power / (1e-5 * 48_000)).toBeCloseTo(1, 1.7);
});

test("blocks go on where the last one ended", () => {
  const signal = signalOf({
    radialDeg: 200,
    carrierToNoiseDbHz: 60,
    modulation: { ident: { kind: "code", text: "HJL", shared: true } },
  });
  const options = { sampleRateHz: 24_000, startS: 3, carrierOffsetHz: 400 };
  const whole = new Float64Array(6000);
  composite(signal, options).audio(whole);
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 6000 }), (at) => {
      const parts = composite(signal, options);
      const joined = new Float64Array(6000);
      parts.audio(joined.subarray(0, at));
      parts.audio(joined.subarray(at));
      expect(joined).toEqual(whole);
    }),
    { numRuns: 20 },
  );
});

/** Greatest and least error over 12 s, in looks of 0.4 s. */
function swingDeg(bladePassHz: number): number {
  const errors = Array.from({ length: 30 }, (_, index) =>
    errorDeg(
      measured(
        { radialDeg: 60, propeller: { bladePassHz, depth: 0.21 } },
        { sampleRateHz: 24_000, durationS: 0.4, startS: 0.4 * index },
      ),
      60,
    ),
  );
  return (Math.max(...errors) - Math.min(...errors)) / 2;
}

test("blades that pass at near twice 30 Hz swing the needle by up to 6 degrees; another speed smooths it", () => {
  // FAA AIM 1-1-3: certain propeller speeds make the needle fluctuate as much as plus or minus 6 degrees, and a slight change of
  // speed will normally smooth it out. A depth of 0.21 gives the 6 degrees: half of it, in radians.
  expect(swingDeg(60.3)).toBeGreaterThan(5);
  expect(swingDeg(60.3)).toBeLessThan(6.2);
  expect(swingDeg(75)).toBeLessThan(0.1);
});

test("a block of unequal parts, a start or an offset that is no number are refused", () => {
  const made = composite(signalOf({}), { sampleRateHz: 24_000 });
  expect(() => made.baseband(new Float64Array(2), new Float64Array(3))).toThrow("got 2 and 3");
  for (const options of [{ startS: Number.NaN }, { carrierOffsetHz: Number.POSITIVE_INFINITY }])
    expect(() => composite(signalOf({}), { sampleRateHz: 24_000, ...options })).toThrow(
      "numbers of seconds and hertz",
    );
});

test("a minute on, the samples are still those of the formula", () => {
  const [sampleRateHz, startS, radialDeg] = [44_100, 7.25, 77];
  const made = composite(signalOf({ radialDeg }), { sampleRateHz, startS });
  const block = new Float64Array(sampleRateHz);
  for (let second = 0; second < 60; second++) made.audio(block);
  const turn = 2 * Math.PI;
  block.slice(0, 300).forEach((value, at) => {
    // Whole seconds are whole turns of 30 and of 9960 Hz, so the last block repeats the first.
    const atS = startS + at / sampleRateHz;
    const tone = Math.cos(turn * 30 * atS - (radialDeg * Math.PI) / 180);
    const subcarrier = Math.cos(turn * 9960 * atS + 16 * Math.sin(turn * 30 * atS));
    expect(Math.abs(value - (1 + 0.3 * tone + 0.3 * subcarrier))).toBeLessThan(1e-9);
  });
});

test("a rate too low for the sub-carrier is refused", () => {
  expect(() => composite(signalOf({}), { sampleRateHz: 22_050 })).toThrow(
    "a VOR's composite needs 24000 samples a second or more, got 22050",
  );
});
