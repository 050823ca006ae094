import { describe, expect, test } from "vitest";
import { identCalls, identDurationS, keying } from "./ident.ts";
import { callSamples, identSamples } from "./ident-sound.ts";

const RATE_HZ = 8000;

/** Amplitude of one frequency in a stretch of samples, by the discrete Fourier sum. */
function amplitudeAt(samples: Float32Array, toneHz: number): number {
  let [re, im] = [0, 0];
  samples.forEach((sample, index) => {
    re += sample * Math.cos((2 * Math.PI * toneHz * index) / RATE_HZ);
    im += sample * Math.sin((2 * Math.PI * toneHz * index) / RATE_HZ);
  });
  return (2 * Math.hypot(re, im)) / samples.length;
}

const stretch = (samples: Float32Array, fromS: number, toS: number): Float32Array =>
  samples.subarray(Math.round(fromS * RATE_HZ), Math.round(toS * RATE_HZ));

describe("the ident as samples", () => {
  test("lasts as long as its keying", () => {
    expect(identSamples("TXJ", { sampleRateHz: RATE_HZ })).toHaveLength(
      Math.round(identDurationS("TXJ") * RATE_HZ),
    );
  });

  test("holds the tone in every stroke and silence in every gap", () => {
    const samples = identSamples("TXJ", { sampleRateHz: RATE_HZ, toneHz: 1350, amplitude: 0.4 });
    let end = 0;
    for (const { startS, durationS } of keying("TXJ")) {
      // One sample in from either side, for the rounding of the cut.
      const gap = stretch(samples, end + 1 / RATE_HZ, Math.max(end, startS - 1 / RATE_HZ));
      expect(gap.every((sample) => Math.abs(sample) < 1e-6)).toBe(true);
      const inside = stretch(samples, startS + 0.01, startS + durationS - 0.01);
      expect(Math.abs(amplitudeAt(inside, 1350) - 0.4)).toBeLessThan(0.01);
      expect(amplitudeAt(inside, 1020)).toBeLessThan(0.02);
      end = startS + durationS;
    }
  });

  test("rises and falls over 5 ms, so that it does not click", () => {
    const samples = identSamples("E", { sampleRateHz: RATE_HZ, amplitude: 1 });
    const peak = (part: Float32Array): number => Math.max(...[...part].map(Math.abs));
    const durationS = identDurationS("E");
    expect(peak(stretch(samples, 0, 0.001))).toBeLessThan(0.11);
    expect(peak(stretch(samples, durationS - 0.001, durationS))).toBeLessThan(0.11);
    expect(peak(stretch(samples, 0.005, 0.015))).toBeGreaterThan(0.98);
    // Without soft edges the first millisecond would already reach full height.
    expect(peak(stretch(samples, 0.0015, 0.0035))).toBeGreaterThan(0.2);
  });

  test("of two stations on one channel holds both tones, within full scale", () => {
    const calls = [
      { startS: 0, text: "TXJ", toneHz: 1020 },
      { startS: 0, text: "TXJ", toneHz: 1350 },
    ];
    const samples = callSamples(calls, 1, { sampleRateHz: RATE_HZ, amplitude: 0.5 });
    const dash = stretch(samples, 0.01, 0.5);
    expect(amplitudeAt(dash, 1020)).toBeCloseTo(0.5, 1);
    expect(amplitudeAt(dash, 1350)).toBeCloseTo(0.5, 1);
    expect(samples.every((sample) => Math.abs(sample) <= 1)).toBe(true);
  });

  test("of a paired station in 40 s ends with the DME's tone", () => {
    const samples = callSamples(identCalls({ vorText: "T", dmeText: "T" }, 40), 40, {
      sampleRateHz: RATE_HZ,
    });
    expect(samples).toHaveLength(40 * RATE_HZ);
    expect(amplitudeAt(stretch(samples, 20.01, 20.5), 1020)).toBeCloseTo(0.5, 1);
    expect(amplitudeAt(stretch(samples, 30.01, 30.5), 1350)).toBeCloseTo(0.5, 1);
  });

  test("is cut off at the end of the time asked for", () => {
    const call = { startS: 0.9, text: "T", toneHz: 1020 };
    expect(callSamples([call], 1, { sampleRateHz: RATE_HZ })).toHaveLength(RATE_HZ);
  });

  test("refuses a rate too low for its tone, and an amplitude beyond full scale", () => {
    expect(() => identSamples("E", { sampleRateHz: 2040 })).toThrow(RangeError);
    expect(() => identSamples("E", { amplitude: 1.1 })).toThrow(RangeError);
    expect(() => identSamples("É")).toThrow(RangeError);
  });
});
