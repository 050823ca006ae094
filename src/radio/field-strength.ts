/**
 * How strong the station's signal arrives in free space, and whether that is enough. Effective radiated power (EIRP)
 * in watts, distances NM along the straight ray, field in microvolts per metre.
 * Sources: ITU-R P.525 (loss, field strength); ICAO Annex 10 Vol I, 3.3.4.2 (the least field in a VOR's coverage,
 * 90 microvolts per metre, -107 dB(W/m2): from memory).
 */

import { M_PER_NM } from "../earth/index.ts";
import type { VorClass } from "./station.ts";

/** Speed of light, exact by the definition of the metre. */
export const LIGHT_M_PER_S = 299_792_458;
/** Impedance of free space as ITU-R P.525 writes it, ohm (exact: 376.73). */
const FREE_SPACE_OHM = 120 * Math.PI;

/** The least field promised inside a VOR's coverage. From memory of Annex 10 Vol I, 3.3.4.2. */
export const MINIMUM_FIELD_MICROVOLT_PER_M = 90;
/**
 * Down to this the needle may still work, unpromised. Our choice, 10 dB under the published minimum: 90 uV/m gives an
 * isotropic antenna 25 uV across 50 ohm, and receivers commonly drop their flag near 5 to 8 uV (common practice).
 */
export const WEAKEST_FIELD_MICROVOLT_PER_M = MINIMUM_FIELD_MICROVOLT_PER_M / Math.sqrt(10);

export type FieldVerdict = "good" | "weak" | "too-weak";

/** Free-space loss between isotropic antennas, dB, at a frequency (MHz) over a distance (NM). ITU-R P.525. */
export const freeSpaceLossDb = (frequencyMhz: number, distanceNm: number): number =>
  20 * Math.log10((4 * Math.PI * distanceNm * M_PER_NM * frequencyMhz * 1e6) / LIGHT_M_PER_S);

/**
 * Field strength, microvolts per metre, of a transmitter of so many watts EIRP at a distance in NM: sqrt(30 P)/d,
 * ITU-R P.525-2 eq. (1). At the antenna itself the formula has no bound; nearer than 100 m counts as 100 m.
 */
export const fieldMicrovoltPerM = (eirpW: number, distanceNm: number): number =>
  (Math.sqrt(30 * eirpW) / Math.max(distanceNm * M_PER_NM, 100)) * 1e6;

/** Power flux density, dB(W/m2), of a field in microvolts per metre: E squared over 120 pi. */
export const powerFluxDbwPerM2 = (fieldMicrovolt: number): number =>
  20 * Math.log10(fieldMicrovolt * 1e-6) - 10 * Math.log10(FREE_SPACE_OHM);

/** `good`: at least the published minimum. `weak`: it may work, unpromised. `too-weak`: no bearing. */
export function fieldVerdict(fieldMicrovolt: number): FieldVerdict {
  if (fieldMicrovolt >= MINIMUM_FIELD_MICROVOLT_PER_M) return "good";
  return fieldMicrovolt >= WEAKEST_FIELD_MICROVOLT_PER_M ? "weak" : "too-weak";
}

/** Transmitter power of a station that names none. FAA-H-8083-15B, chapter 9: about 200 W. */
export const TYPICAL_EIRP_W = 200;
/** Of a terminal VOR, from memory of common practice: about 50 W. */
const TERMINAL_EIRP_W = 50;

/** Radiated power of a station whose file names none: 50 W for a terminal station, 200 W else; antenna gain left out. */
export const defaultEirpW = (vorClass: VorClass | null): number =>
  vorClass === "T" ? TERMINAL_EIRP_W : TYPICAL_EIRP_W;
