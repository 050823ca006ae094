/**
 * When a receiver pulls its flag: each part of the signal is watched, and the first that falls short is named. The levels are half of
 * the standard ones (common practice of airborne receivers, from memory); the noise at which the flag falls is our choice: there the
 * bound of `leastRadialDeviationDeg` is 0.57 degree for half a second of listening, a fifth of the 3 degrees that must not be shown.
 */

import type { SignalMeasurement } from "./demodulate.ts";
import { DEVIATION_RATIO, MODULATION_DEPTH } from "./vor-modulation.ts";

/** What is wrong with the signal. */
export type FlagCause =
  | "no-carrier"
  /** The 90 and 150 Hz of a localizer stand where 30 Hz should. */
  | "localizer"
  | "tone-low"
  | "subcarrier-low"
  | "swing-wrong"
  | "noisy";

export const LEAST_DEPTH = MODULATION_DEPTH / 2;
/** The sub-carrier's ratio may be this far from 16 before the receiver mistrusts it; the standard allows the station 1. */
const RATIO_SLACK = 4;
export const LEAST_CARRIER_TO_NOISE_DB_HZ = 53.5;
/** Below this the detector gives nothing that could be a carrier. */
const LEAST_CARRIER = 1e-4;

/** Why the flag falls; null while the bearing may be used. */
export function flagCause(measured: SignalMeasurement): FlagCause | null {
  const { carrier, toneAmplitude, subcarrierAmplitude, amplitude90Hz, amplitude150Hz, deviationRatio } =
    measured;
  if (measured.radial === null || !(carrier > LEAST_CARRIER)) return "no-carrier";
  if (
    Math.max(amplitude90Hz, amplitude150Hz) > LEAST_DEPTH * carrier &&
    subcarrierAmplitude < LEAST_DEPTH * carrier
  )
    return "localizer";
  if (measured.carrierToNoiseDbHz < LEAST_CARRIER_TO_NOISE_DB_HZ) return "noisy";
  if (toneAmplitude < LEAST_DEPTH * carrier) return "tone-low";
  if (subcarrierAmplitude < LEAST_DEPTH * carrier) return "subcarrier-low";
  if (Math.abs(deviationRatio - DEVIATION_RATIO) > RATIO_SLACK) return "swing-wrong";
  return null;
}
