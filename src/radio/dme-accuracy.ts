/** How far a DME distance may be from the truth, by two published rules. Distances are slant ranges in NM. */

/** The greater of half a mile and 3 % of the distance. Source: FAA AIM 1-1-7 b. */
export const dmeAccuracyFaaNm = (distanceNm: number): number => Math.max(0.5, 0.03 * distanceNm);

/** A quarter mile plus 1.25 % of the distance. Source: ICAO Doc 8168 PANS-OPS Vol I, Part I, Section 2, 2.4.2. */
export const dmeToleranceIcaoNm = (distanceNm: number): number => 0.25 + 0.0125 * distanceNm;

/** Farthest distance a DME is meant for, in line of sight. Source: FAA AIM 1-1-7 b. */
export const DME_MAX_RANGE_NM = 199;
