/**
 * The spectrum of what an AM detector gives, measured from samples that the engine makes. The rate is a multiple of the signal's 30 Hz,
 * so that every line of it falls in the middle of a bin.
 */

import FFT from "fft.js";
import { composite, type VorSignal } from "../../radio/index.ts";

const SAMPLES = 8192;
const SAMPLE_RATE_HZ = 30_720;
/** From bin to bin: eight bins to a turn of the pattern. */
const BIN_HZ = SAMPLE_RATE_HZ / SAMPLES;

export interface Spectrum {
  readonly binHz: number;
  /** By bin: amplitude of a tone there, as a part of the carrier's. */
  readonly amplitudes: Float64Array;
}

/** Seen through a Hann window: a tone stands in three bins, its amplitude in the middle one. */
export function spectrumOf(signal: VorSignal): Spectrum {
  const samples = new Float64Array(SAMPLES);
  composite(signal, { sampleRateHz: SAMPLE_RATE_HZ }).audio(samples);
  const mean = samples.reduce((sum, sample) => sum + sample, 0) / SAMPLES;
  for (let at = 0; at < SAMPLES; at++)
    samples[at] = ((samples[at] as number) - mean) * (1 - Math.cos((2 * Math.PI * at) / SAMPLES));
  const fft = new FFT(SAMPLES);
  const lines = fft.createComplexArray();
  fft.realTransform(lines, samples);
  const amplitudes = new Float64Array(SAMPLES / 2);
  for (let bin = 0; bin < amplitudes.length; bin++)
    amplitudes[bin] =
      (2 * Math.hypot(lines[2 * bin] as number, lines[2 * bin + 1] as number)) / SAMPLES / mean;
  return { binHz: BIN_HZ, amplitudes };
}
