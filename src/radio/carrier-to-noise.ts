/**
 * How far the carrier stands above the noise, from the station's power, the distance and what the receiving end adds.
 * Sources: ITU-R P.525 (free-space loss); ITU-R P.372 (external noise as a figure over k T0; man-made noise of a quiet rural, a
 * residential and a city site near 110 MHz: from memory).
 */

import { freeSpaceLossDb } from "./field-strength.ts";

/** k T0 at 290 K, dBW a hertz. */
const THERMAL_DBW_PER_HZ = -203.98;

/**
 * Noise figure of the whole receiving end over thermal noise where a scene names none, dB: residential man-made noise (15), and the
 * receiver, its cable and a horizontally polarised antenna of little gain (10 more, our choice).
 */
export const TYPICAL_NOISE_DB = 25;

/** Carrier power over noise density at the receiver, dB-Hz. EIRP in watts, straight distance in NM (over 0.05), noise over thermal in dB. */
export const carrierToNoiseDbHz = (
  eirpW: number,
  frequencyMhz: number,
  distanceNm: number,
  noiseDb: number,
): number =>
  10 * Math.log10(eirpW) -
  freeSpaceLossDb(frequencyMhz, Math.max(distanceNm, 0.05)) -
  THERMAL_DBW_PER_HZ -
  noiseDb;
