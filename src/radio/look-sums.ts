/**
 * Looks at the signal, about thirty a second, added up. A look holds the mean level, the 30 Hz of level and of swing as phasors, and
 * what a localizer would send. The radial is the angle of the sum of (swing phasor times level phasor conjugated): the moment at
 * which a look was taken falls out of the product, and looks in which the signal is strong count more.
 */

import { stationDeg } from "../earth/index.ts";
import type { SignalMeasurement } from "./demodulate.ts";
import { SUBCARRIER_HZ, TONE_HZ } from "./vor-modulation.ts";

const TURN = 2 * Math.PI;
const DEG = 180 / Math.PI;
/**
 * Looks overlap, so they share noise. One in so many seconds counts as fresh: the length of the look, 0.2 s, over the noise
 * bandwidth of its window, 2.0 bins (Harris, 1978, table 1).
 */
const FRESH_LOOK_S = 0.1;

export interface LookSums {
  /** Adds the look that stands in the outputs. */
  readonly add: () => void;
  /** What the looks come to, beside a noise of this power a hertz. */
  measured(noiseDensity: number): SignalMeasurement;
}

/**
 * Over outputs in this order: level, its 30 Hz (cosine, sine), its 90 Hz, its 150 Hz; swing, its 30 Hz; size of the sub-carrier.
 * `lookHz` and `sampleHz`: looks, and samples that a look is made of, a second. `gainAt`: what a look leaves of a tone so
 * many hertz off 30. An old look fades to 1/e in `averagingS`.
 */
export function lookSums(
  outputs: Float64Array,
  rates: {
    readonly lookHz: number;
    readonly sampleHz: number;
    readonly gainAt: (offsetHz: number) => number;
  },
  averagingS: number,
): LookSums {
  const { lookHz, sampleHz, gainAt } = rates;
  const keep = Math.exp(-1 / (averagingS * lookHz));
  const sums = new Float64Array(SUMS);
  let looks = 0;
  let swingCosBefore = 0;
  let swingSinBefore = 0;
  const into = (index: number, value: number): void => {
    sums[index] = (sums[index] as number) * keep + value;
  };
  const add = (): void => {
    const at = (index: number): number => outputs[index] as number;
    const swingCos = at(8);
    const swingSin = at(9);
    const cos = swingCos * at(1) + swingSin * at(2);
    const sin = swingSin * at(1) - swingCos * at(2);
    sums[WEIGHT_SQUARES] = (sums[WEIGHT_SQUARES] as number) * keep * keep + 1;
    into(WEIGHT, 1);
    into(LEVEL, at(0));
    into(SWING, at(7));
    into(SIZE, at(10));
    into(CROSS_COS, cos);
    into(CROSS_SIN, sin);
    into(COS_COS, cos * cos);
    into(COS_SIN, cos * sin);
    into(SIN_SIN, sin * sin);
    into(SWING_SQUARES, swingCos * swingCos + swingSin * swingSin);
    into(SQUARES_90, at(3) * at(3) + at(4) * at(4));
    into(SQUARES_150, at(5) * at(5) + at(6) * at(6));
    into(TURN_COS, looks === 0 ? 0 : swingCos * swingCosBefore + swingSin * swingSinBefore);
    into(TURN_SIN, looks === 0 ? 0 : swingSin * swingCosBefore - swingCos * swingSinBefore);
    swingCosBefore = swingCos;
    swingSinBefore = swingSin;
    looks++;
  };
  const measured = (noiseDensity: number): SignalMeasurement => {
    const sum = (index: number): number => sums[index] as number;
    const mean = (index: number): number => (looks === 0 ? 0 : sum(index) / sum(WEIGHT));
    const cross = Math.hypot(mean(CROSS_COS), mean(CROSS_SIN));
    const swingSize = Math.sqrt(mean(SWING_SQUARES));
    // By how much more than a whole 30 Hz the tone turned from look to look.
    const turned = Math.atan2(sum(TURN_SIN), sum(TURN_COS)) - (TURN * TONE_HZ) / lookHz;
    const toneHz = TONE_HZ + (wrapped(turned) * lookHz) / TURN;
    // The swing is a difference over one sample, so of a tone it shows the chord and not the arc; the level a mean of two.
    const gain = gainAt(toneHz - TONE_HZ);
    const half = (Math.PI * toneHz) / sampleHz;
    return {
      radial:
        looks === 0 || cross === 0 ? null : stationDeg(Math.atan2(sum(CROSS_SIN), sum(CROSS_COS)) * DEG),
      radialDeviationDeg: deviationDeg(sum, lookHz),
      carrier: mean(LEVEL),
      toneAmplitude: swingSize === 0 ? 0 : (2 * cross) / swingSize / gain / Math.cos(half),
      subcarrierAmplitude: 2 * mean(SIZE),
      amplitude90Hz: (2 * Math.sqrt(mean(SQUARES_90))) / Math.cos((Math.PI * 90) / sampleHz),
      amplitude150Hz: (2 * Math.sqrt(mean(SQUARES_150))) / Math.cos((Math.PI * 150) / sampleHz),
      toneHz,
      subcarrierHz: SUBCARRIER_HZ + (mean(SWING) * sampleHz) / TURN,
      deviationRatio: swingSize / gain / Math.sin(half),
      // The detector sees half of the noise, that in phase with the carrier.
      carrierToNoiseDbHz:
        mean(LEVEL) === 0 ? Number.NEGATIVE_INFINITY : 10 * Math.log10(mean(LEVEL) ** 2 / (2 * noiseDensity)),
      looks,
    };
  };
  return { add, measured };
}

const [WEIGHT, WEIGHT_SQUARES, LEVEL, SWING, SIZE, CROSS_COS, CROSS_SIN, COS_COS, COS_SIN, SIN_SIN] = [
  0, 1, 2, 3, 4, 5, 6, 7, 8, 9,
] as const;
const [SWING_SQUARES, SQUARES_90, SQUARES_150, TURN_COS, TURN_SIN] = [10, 11, 12, 13, 14] as const;
const SUMS = 15;

/** Standard deviation of the mean radial, degrees, from the scatter of the products across their mean; infinite before two fresh looks. */
function deviationDeg(sum: (index: number) => number, lookHz: number): number {
  const weight = sum(WEIGHT);
  const cos = sum(CROSS_COS) / weight;
  const sin = sum(CROSS_SIN) / weight;
  const square = cos * cos + sin * sin;
  const fresh = weight ** 2 / sum(WEIGHT_SQUARES) / (FRESH_LOOK_S * lookHz);
  if (!(square > 0) || fresh < 2) return Number.POSITIVE_INFINITY;
  const across =
    (sin * sin * sum(COS_COS) - 2 * cos * sin * sum(COS_SIN) + cos * cos * sum(SIN_SIN)) / weight / square;
  return Math.sqrt(Math.max(0, across) / square / (fresh - 1)) * DEG;
}

const wrapped = (angle: number): number => angle - TURN * Math.round(angle / TURN);
