/**
 * Seconds of a VOR's signal made, and demodulated, in a second of one core at 48 kHz. Beside it the same demodulation put together
 * from general-purpose packages: FIR filters of `fili`, the spectrum of `fft.js`. Both must find the radial.
 */

import FFT from "fft.js";
import fili from "fili";
import { stationDeg, turnBetween } from "../src/earth/index.ts";
import {
  composite,
  STANDARD_MODULATION,
  SUBCARRIER_HZ,
  TONE_HZ,
  type VorSignal,
  vorDemodulator,
} from "../src/radio/index.ts";
import { figure, perSecond } from "./rate.ts";

const RATE_HZ = 48_000;
const SECONDS = 1;
const COUNT = RATE_HZ * SECONDS;
/** A live stream's blocks: a tenth of a second. */
const BLOCK = RATE_HZ / 10;
const RADIAL = stationDeg(246);
const AGREES_DEG = 0.1;

const signal: VorSignal = {
  modulation: { ...STANDARD_MODULATION, ident: { kind: "code", text: "TXJ", shared: false } },
  radial: RADIAL,
  frequencyMhz: 115.6,
  echoes: [],
  propeller: null,
  carrierToNoiseDbHz: null,
  seed: 1,
};

const inPhase = new Float64Array(COUNT);
const quadrature = new Float64Array(COUNT);
const audio = new Float64Array(COUNT);

/** Lines of the report. */
export function signals(): string[] {
  const madeOf = (one: VorSignal, form: "audio" | "baseband"): number => {
    const source = composite(one, { sampleRateHz: RATE_HZ });
    return perSecond(SECONDS, () => {
      for (let at = 0; at < COUNT; at += BLOCK)
        if (form === "audio") source.audio(audio.subarray(at, at + BLOCK));
        else source.baseband(inPhase.subarray(at, at + BLOCK), quadrature.subarray(at, at + BLOCK));
    });
  };
  const made = madeOf(signal, "audio");
  const madeNoisy = madeOf({ ...signal, carrierToNoiseDbHz: 70 }, "baseband");

  composite(signal, { sampleRateHz: RATE_HZ }).audio(audio);
  composite(signal, { sampleRateHz: RATE_HZ, carrierOffsetHz: 400 }).baseband(inPhase, quadrature);
  const fromAudio = vorDemodulator({ sampleRateHz: RATE_HZ });
  const ours = perSecond(SECONDS, () => {
    for (let at = 0; at < COUNT; at += BLOCK) fromAudio.pushAudio(audio.subarray(at, at + BLOCK));
  });
  const fromBaseband = vorDemodulator({ sampleRateHz: RATE_HZ });
  const oursBaseband = perSecond(SECONDS, () => {
    for (let at = 0; at < COUNT; at += BLOCK)
      fromBaseband.pushBaseband(inPhase.subarray(at, at + BLOCK), quadrature.subarray(at, at + BLOCK));
  });
  const once = vorDemodulator({ sampleRateHz: RATE_HZ });
  once.pushAudio(audio);
  mustAgree("ours", once.measured().radial);

  const packages = packageDemodulator();
  mustAgree("the packages'", packages(audio));
  const theirs = perSecond(SECONDS, () => packages(audio));

  const times = (rate: number): string => `${figure(rate)} s a second`;
  return [
    `composite at 48 kHz, with ident                ${times(made)}`,
    `the same with noise, complex                   ${times(madeNoisy)}`,
    `demodulated by fili and fft.js, radial alone   ${times(theirs)}`,
    `demodulated by the receiver, audio             ${times(ours)}   ${(ours / theirs).toFixed(1)} times`,
    `the same, complex with the carrier off         ${times(oursBaseband)}   ${(oursBaseband / theirs).toFixed(1)} times`,
  ];
}

function mustAgree(whose: string, radial: number | null): void {
  if (radial === null || !(Math.abs(turnBetween(RADIAL, stationDeg(radial))) < AGREES_DEG))
    throw new Error(`${whose} radial is ${radial}, sent was ${RADIAL}`);
}

/** As a programmer who knows the signal would write it: what is decimated is filtered first, at every sample, since `fili` knows no other way. */
function packageDemodulator(): (samples: Float64Array) => number {
  const step = 10;
  const slowHz = RATE_HZ / step;
  const taps = new fili.FirCoeffs().kbFilter({ Fs: RATE_HZ, Fa: 0, Fb: 1500, order: 101, Att: 80 });
  const filters = [0, 1, 2].map(() => new fili.FirFilter(taps));
  // A power of two, as the package wants it: 4096 of the second's 4800 samples.
  const size = 4096;
  const fft = new FFT(size);
  const turn = (2 * Math.PI * SUBCARRIER_HZ) / RATE_HZ;
  const cosines = Float64Array.from({ length: COUNT }, (_, index) => Math.cos(turn * index));
  const sines = Float64Array.from({ length: COUNT }, (_, index) => -Math.sin(turn * index));
  const decimated = (
    filter: InstanceType<typeof fili.FirFilter> | undefined,
    samples: Float64Array,
  ): number[] => filter?.simulate(Array.from(samples)).filter((_, index) => index % step === 0) ?? [];
  /** Phase of the tapered 30 Hz in the bin nearest to it: it lies beside the bin's middle by as much in both waves. */
  const tonePhase = (samples: readonly number[]): number => {
    const mean = samples.reduce((sum, value) => sum + value, 0) / samples.length;
    const tapered = Array.from(
      { length: size },
      (_, index) =>
        ((samples[index + SKIPPED] ?? 0) - mean) * 0.5 * (1 - Math.cos((2 * Math.PI * index) / size)),
    );
    const out = fft.createComplexArray();
    fft.realTransform(out, tapered);
    const bin = Math.round((TONE_HZ * size) / slowHz);
    return Math.atan2(out[2 * bin + 1] ?? 0, out[2 * bin] ?? 0);
  };
  return (samples) => {
    const level = decimated(filters[0], samples);
    const cos = decimated(
      filters[1],
      samples.map((value, index) => value * (cosines[index] ?? 0)),
    );
    const sin = decimated(
      filters[2],
      samples.map((value, index) => value * (sines[index] ?? 0)),
    );
    // A step between two samples belongs to the middle of them, and so does their mean level.
    const swing = cos.slice(1).map((real, index) => {
      const before = cos[index] ?? 0;
      const imaginary = sin[index + 1] ?? 0;
      const imaginaryBefore = sin[index] ?? 0;
      return Math.atan2(
        imaginary * before - real * imaginaryBefore,
        real * before + imaginary * imaginaryBefore,
      );
    });
    const between = level.slice(1).map((value, index) => (value + (level[index] ?? 0)) / 2);
    return ((tonePhase(swing) - tonePhase(between)) * 180) / Math.PI;
  };
}

/** Samples in which the filters still fill. */
const SKIPPED = 32;
