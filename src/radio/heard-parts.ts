/**
 * The parts of a VOR's signal brought into hearing. Two 30 Hz waves, sixteen times faster: tones of 480 Hz, the reference for the left
 * ear and the variable, later by the radial, for the right one. The 9960 Hz, sixteen times lower: a tone of 622.5 Hz whose pitch swings
 * 30 Hz either way, thirty times a second as it does in truth. Both lengths hold whole cycles, so that they can go round.
 */

import type { StationDeg } from "../earth/index.ts";
import { DEVIATION_RATIO, frequencyDeviationHz, SUBCARRIER_HZ, TONE_HZ } from "./vor-modulation.ts";

/** How much faster the 30 Hz is heard, and how much lower the sub-carrier. */
export const HEARD_FACTOR = 16;
const AMPLITUDE = 0.5;
const TURN = 2 * Math.PI;
const TONES_S = 1;
/** In two seconds the lowered sub-carrier has 1245 whole cycles. */
const SUBCARRIER_S = 2;

/** One second of both tones, samples in [-1, 1]; the right lags by the radial's degrees. */
export function raisedTones(
  radial: StationDeg,
  sampleRateHz: number,
): { readonly left: Float32Array; readonly right: Float32Array } {
  const left = new Float32Array(TONES_S * sampleRateHz);
  const right = new Float32Array(left.length);
  for (let at = 0; at < left.length; at++) {
    const phase = (TURN * TONE_HZ * HEARD_FACTOR * at) / sampleRateHz;
    left[at] = AMPLITUDE * Math.cos(phase);
    right[at] = AMPLITUDE * Math.cos(phase - (radial / 360) * TURN);
  }
  return { left, right };
}

/** Two seconds of the lowered sub-carrier, samples in [-1, 1]. */
export function loweredSubcarrier(sampleRateHz: number): Float32Array {
  const samples = new Float32Array(SUBCARRIER_S * sampleRateHz);
  const swingRatio = frequencyDeviationHz(DEVIATION_RATIO, TONE_HZ) / HEARD_FACTOR / TONE_HZ;
  for (let at = 0; at < samples.length; at++) {
    const timeS = at / sampleRateHz;
    const phase =
      (TURN * SUBCARRIER_HZ * timeS) / HEARD_FACTOR + swingRatio * Math.sin(TURN * TONE_HZ * timeS);
    samples[at] = AMPLITUDE * Math.cos(phase);
  }
  return samples;
}
