import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { errorDeg, heard, measured, signalOf } from "../../test/signal.ts";
import { spread } from "../../test/spread.ts";
import { composite } from "./composite.ts";
import { vorDemodulator } from "./demodulate.ts";
import { SIGNAL_KINDS } from "./vor-modulation.ts";

/** Degrees. What the receiver promises without noise. */
const EXACT_DEG = 0.01;

describe("without noise the radial is measured to a hundredth of a degree", () => {
  const cases = SIGNAL_KINDS.flatMap((kind) =>
    (
      [
        [24_000, 1],
        [44_100, 1],
        [48_000, 1],
        [96_000, 4],
        [192_000, 9],
      ] as const
    ).map(([sampleRateHz, stepDeg]) => ({ kind, sampleRateHz, stepDeg })),
  );
  test.each(cases)("$kind station, $sampleRateHz samples a second, every $stepDeg degrees", (each) => {
    const { kind, sampleRateHz, stepDeg } = each;
    for (let radialDeg = 0; radialDeg < 360; radialDeg += stepDeg) {
      const taken = { sampleRateHz, durationS: 0.26, carrierOffsetHz: 1000 - radialDeg * 5 };
      const error = errorDeg(measured({ radialDeg, modulation: { kind } }, taken), radialDeg);
      expect(Math.abs(error), `radial ${radialDeg}`).toBeLessThan(EXACT_DEG);
    }
  });

  // ICAO Annex 10 Vol I, 3.3.5: tones and sub-carrier within 1 %, ratio 15 to 17; depths 0.28 to 0.32 from memory.
  test("over the standard's tolerances, any rate, start, carrier offset and form", () => {
    fc.assert(
      fc.property(
        fc.record({
          kind: fc.constantFrom(...SIGNAL_KINDS),
          toneHz: spread(29.7, 30.3),
          subcarrierHz: spread(9860.4, 10_059.6),
          deviationRatio: spread(15, 17),
          toneDepth: spread(0.28, 0.32),
          subcarrierDepth: spread(0.28, 0.32),
        }),
        fc.record({
          sampleRateHz: fc.integer({ min: 24_000, max: 192_000 }),
          carrierOffsetHz: spread(-1000, 1000),
          startS: spread(0, 100),
          form: fc.constantFrom("audio" as const, "baseband" as const),
        }),
        spread(0, 360),
        (modulation, taken, radialDeg) => {
          const found = measured({ radialDeg, modulation }, { ...taken, durationS: 0.3 });
          expect(Math.abs(errorDeg(found, radialDeg))).toBeLessThan(EXACT_DEG);
          expect(found.toneHz).toBeCloseTo(modulation.toneHz, 2);
          expect(found.subcarrierHz).toBeCloseTo(modulation.subcarrierHz, 1);
          expect(found.deviationRatio).toBeCloseTo(modulation.deviationRatio, 2);
          expect(found.toneAmplitude / found.carrier).toBeCloseTo(modulation.toneDepth, 3);
          expect(found.subcarrierAmplitude / found.carrier).toBeCloseTo(modulation.subcarrierDepth, 3);
        },
      ),
      { numRuns: 60 },
    );
  });

  test("the ident, voice-like keying and all, does not move it", () => {
    const modulation = { ident: { kind: "code", text: "TXJ", shared: false } } as const;
    const found = measured({ radialDeg: 246, modulation }, { sampleRateHz: 24_000, durationS: 4 });
    expect(Math.abs(errorDeg(found, 246))).toBeLessThan(EXACT_DEG);
  });
});

test("blocks of any length give what one block gives", () => {
  const sampleRateHz = 44_100;
  const samples = new Float64Array(sampleRateHz);
  composite(signalOf({ radialDeg: 123, carrierToNoiseDbHz: 70 }), { sampleRateHz }).audio(samples);
  const whole = vorDemodulator({ sampleRateHz });
  whole.pushAudio(samples);
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 0, max: 9000 }), { maxLength: 12 }), (lengths) => {
      const inParts = vorDemodulator({ sampleRateHz });
      let at = 0;
      for (const length of lengths) {
        inParts.pushAudio(samples.subarray(at, at + length));
        at += length;
      }
      inParts.pushAudio(samples.subarray(at));
      expect(inParts.measured()).toEqual(whole.measured());
      expect(inParts.ident.loudness()).toEqual(whole.ident.loudness());
    }),
    { numRuns: 25 },
  );
});

test("what has been heard fades where an averaging time is given", () => {
  const sampleRateHz = 24_000;
  const receiver = vorDemodulator({ sampleRateHz, averagingS: 0.3 });
  const second = new Float64Array(sampleRateHz);
  for (const [radialDeg, startS] of [
    [10, 0],
    [20, 1],
    [20, 2],
  ] as const) {
    composite(signalOf({ radialDeg }), { sampleRateHz, startS }).audio(second);
    receiver.pushAudio(second);
  }
  // Two seconds are more than six averaging times: 10 degrees have faded to a fiftieth.
  expect(errorDeg(receiver.measured(), 20)).toBeLessThan(0);
  expect(errorDeg(receiver.measured(), 20)).toBeGreaterThan(-0.2);
});

test("before a whole look there is no radial, and a rate below 24 kHz is refused", () => {
  expect(measured({}, { sampleRateHz: 48_000, durationS: 0.15 }).radial).toBeNull();
  expect(measured({}, { sampleRateHz: 48_000, durationS: 0.23 }).radial).not.toBeNull();
  expect(() => vorDemodulator({ sampleRateHz: 22_050 })).toThrow(
    "demodulation needs 24000 samples a second or more, got 22050",
  );
});

test("noise that has ended is forgotten as the radial is", () => {
  const sampleRateHz = 24_000;
  const receiver = vorDemodulator({ sampleRateHz, averagingS: 0.3 });
  const samples = new Float64Array(3 * sampleRateHz);
  composite(signalOf({ carrierToNoiseDbHz: 50 }), { sampleRateHz }).audio(samples);
  receiver.pushAudio(samples);
  expect(receiver.measured().carrierToNoiseDbHz).toBeCloseTo(50, -0.7);
  composite(signalOf({ carrierToNoiseDbHz: 80 }), { sampleRateHz, startS: 3 }).audio(samples);
  receiver.pushAudio(samples);
  // Ten averaging times: what is left of the noise is 43 dB down.
  expect(receiver.measured().carrierToNoiseDbHz).toBeCloseTo(80, -0.7);
});

test("a sample that is no number is refused and leaves no trace", () => {
  const sampleRateHz = 24_000;
  const samples = new Float64Array(sampleRateHz);
  composite(signalOf({ radialDeg: 50 }), { sampleRateHz }).audio(samples);
  const receiver = vorDemodulator({ sampleRateHz });
  receiver.pushAudio(samples.subarray(0, 12_000));
  for (const strange of [Number.NaN, Number.POSITIVE_INFINITY, -1e31]) {
    const place = `samples are numbers below 1e30 in size, got ${strange} at place 1 of a block`;
    expect(() => receiver.pushAudio([1, strange])).toThrow(place);
    expect(() => receiver.pushBaseband([1, 1], [0, strange])).toThrow(place);
  }
  expect(() => receiver.pushBaseband([1, 1], [0])).toThrow("equally long, got 2 and 1");
  receiver.pushAudio(samples.subarray(12_000));
  const untouched = vorDemodulator({ sampleRateHz });
  untouched.pushAudio(samples);
  expect(receiver.measured()).toEqual(untouched.measured());
});

test("silence has no radial, no carrier, and no figure that is no number", () => {
  const receiver = vorDemodulator({ sampleRateHz: 48_000 });
  for (const heardS of [0, 1]) {
    receiver.pushAudio(new Float64Array(48_000 * heardS));
    const { radial, ...figures } = receiver.measured();
    expect(radial).toBeNull();
    expect(Object.values(figures).filter(Number.isNaN)).toEqual([]);
    expect(figures).toMatchObject({ carrier: 0, toneAmplitude: 0, carrierToNoiseDbHz: -Infinity });
  }
});

test("a rate or an averaging time that is none is refused", () => {
  expect(() => vorDemodulator({ sampleRateHz: Number.POSITIVE_INFINITY })).toThrow("got Infinity");
  for (const averagingS of [0, -1, Number.NaN])
    expect(() => vorDemodulator({ sampleRateHz: 48_000, averagingS })).toThrow(
      `an averaging time is above 0 seconds, got ${averagingS}`,
    );
});

test("a localizer's 90 and 150 Hz are seen for what they are", () => {
  const sampleRateHz = 48_000;
  const samples = Float64Array.from({ length: sampleRateHz }, (_, index) => {
    const turn = (2 * Math.PI * index) / sampleRateHz;
    // Depth 20 % each on the course line: ICAO Annex 10 Vol I, 3.1.3.5 (from memory).
    return 1 + 0.2 * Math.sin(90 * turn) + 0.2 * Math.sin(150 * turn);
  });
  const receiver = vorDemodulator({ sampleRateHz });
  receiver.pushAudio(samples);
  const found = receiver.measured();
  expect(found.amplitude90Hz).toBeCloseTo(0.2, 4);
  expect(found.amplitude150Hz).toBeCloseTo(0.2, 4);
  expect(found.toneAmplitude).toBeLessThan(1e-3);
  expect(heard({}, { sampleRateHz, durationS: 1 }).measured().amplitude90Hz).toBeLessThan(1e-4);
});
