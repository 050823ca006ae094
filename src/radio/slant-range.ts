/**
 * Slant range: what a DME measures is the straight line from the aircraft down to the station, not the distance on the
 * map. Right triangle on a flat earth, exact to 0.1 % of the height within DME range.
 * Heights are feet above the station's antenna, distances NM.
 */

import { FT_PER_NM } from "../earth/index.ts";

/** Squared height in NM of 1000 ft, as PANS-OPS rounds it (exact: 0.02709). */
const PANS_OPS_FACTOR = 0.027;

/** Slant range, NM, from ground distance (NM) and height above the station (feet; below counts the same). */
export const slantRangeNm = (groundNm: number, heightAboveFt: number): number =>
  Math.hypot(groundNm, heightAboveFt / FT_PER_NM);

/**
 * Ground distance, NM, from slant range (NM) and height above the station (feet). Null where the slant range is less
 * than the height: no such place exists.
 */
export function groundRangeNm(slantNm: number, heightAboveFt: number): number | null {
  const heightNm = Math.abs(heightAboveFt) / FT_PER_NM;
  // (s - h)(s + h) keeps its figures where s is close to h.
  return slantNm < heightNm ? null : Math.sqrt((slantNm - heightNm) * (slantNm + heightNm));
}

/**
 * Ground distance, NM, by the working formula: sqrt(slant squared - 0.027 h squared), h in thousands of feet.
 * Null where that is negative. Source: ICAO Doc 8168 PANS-OPS Vol II, Part I, Section 4, chapter 3, Appendix C.
 */
export function groundRangeByPansOpsNm(slantNm: number, heightAboveFt: number): number | null {
  const squared = slantNm ** 2 - PANS_OPS_FACTOR * (heightAboveFt / 1000) ** 2;
  return squared < 0 ? null : Math.sqrt(squared);
}

/**
 * Whether the slant error may be neglected: at least one NM away for each 1000 ft above the station. On the edge the
 * error is 1.3 % of the distance. Source: FAA Instrument Flying Handbook FAA-H-8083-15B, chapter 9, "DME Errors".
 */
export const slantErrorIsNegligible = (groundNm: number, heightAboveFt: number): boolean =>
  groundNm >= Math.abs(heightAboveFt) / 1000;
