/**
 * At which rate a recording was really taken, when its own word for it is wrong: the sub-carrier stands at 9960 Hz, so where its lines are
 * found in the spectrum says how many samples a second there were.
 */

import FFT from "fft.js";
import { hann } from "./low-pass.ts";
import { DEVIATION_RATIO, SUBCARRIER_HZ, TONE_HZ } from "./vor-modulation.ts";

/** Fine enough to part the sub-carrier's lines at 192 kHz, 30 Hz apart. */
const SIZE = 32_768;
const MOST_PIECES = 16;
/** The swing to either side with the first lines beyond it, as a share of the sub-carrier's frequency. */
const HALF_BAND = (1.15 * DEVIATION_RATIO * TONE_HZ) / SUBCARRIER_HZ;
/** Rates that a sub-carrier is looked for at. */
const [LEAST_HZ, MOST_HZ] = [24_000, 400_000];
/** A rate nearer than this to a usual one is taken for it; a station's sub-carrier may be one part in a hundred off. */
const SNAP = 0.012;
const USUAL_HZ = [
  24_000, 32_000, 44_100, 48_000, 64_000, 88_200, 96_000, 128_000, 176_400, 192_000, 240_000, 250_000,
  256_000,
];

/** The rate at which the strongest band shaped like a sub-carrier would stand at 9960 Hz; null where the samples are too few. */
export function probableRateHz(envelope: Float64Array): number | null {
  const power = spectrum(envelope);
  if (power === null) return null;
  const sums = new Float64Array(power.length + 1);
  power.forEach((value, bin) => {
    sums[bin + 1] = (sums[bin] as number) + value;
  });
  let best = { bin: 0, power: 0 };
  const most = Math.min(SIZE / 2 - 1, (SUBCARRIER_HZ / LEAST_HZ) * SIZE);
  for (let bin = Math.ceil((SUBCARRIER_HZ / MOST_HZ) * SIZE); bin <= most; bin++) {
    const [from, to] = bandOf(bin);
    const inside = (sums[to + 1] ?? 0) - (sums[from] ?? 0);
    if (inside > best.power) best = { bin, power: inside };
  }
  if (best.power === 0) return null;
  const [from, to] = bandOf(best.bin);
  let moment = 0;
  for (let bin = from; bin <= to; bin++) moment += bin * (power[bin] ?? 0);
  const rateHz = (SUBCARRIER_HZ * SIZE) / (moment / best.power);
  return USUAL_HZ.find((usualHz) => Math.abs(rateHz / usualHz - 1) < SNAP) ?? Math.round(rateHz / 10) * 10;
}

/** The first and last bin of the band around a middle one. */
const bandOf = (bin: number): [number, number] => [
  Math.round(bin * (1 - HALF_BAND)),
  Math.min(SIZE / 2 - 1, Math.round(bin * (1 + HALF_BAND))),
];

/** Power by bin, averaged over pieces; null where there is not one whole piece. */
function spectrum(samples: Float64Array): Float64Array | null {
  const pieces = Math.min(MOST_PIECES, Math.floor(samples.length / SIZE));
  if (pieces === 0) return null;
  const window = hann(SIZE);
  const fft = new FFT(SIZE);
  const out = fft.createComplexArray();
  const windowed = new Float64Array(SIZE);
  const power = new Float64Array(SIZE / 2);
  for (let piece = 0; piece < pieces; piece++) {
    for (let at = 0; at < SIZE; at++)
      windowed[at] = (samples[piece * SIZE + at] as number) * (window[at] as number);
    fft.realTransform(out, windowed);
    for (let bin = 0; bin < SIZE / 2; bin++)
      power[bin] = (power[bin] as number) + (out[2 * bin] ?? 0) ** 2 + (out[2 * bin + 1] ?? 0) ** 2;
  }
  return power;
}
