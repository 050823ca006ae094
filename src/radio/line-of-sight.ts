/**
 * Radio line of sight over a smooth earth. Refraction in the standard atmosphere bends a VHF ray down about as if the
 * earth's radius were 4/3 of its own and rays straight (US Federal Standard 1037C, "effective Earth radius"; ITU-R P.310).
 * Two ways are given. The rule a pilot works with, d = 1.23 (sqrt h1 + sqrt h2), is the 4/3 earth rounded
 * and cut off at its first term. The engine uses the exact 4/3 earth: it agrees with the terrain and the elevation
 * angles, which stand on the same earth, and the two differ by 0.1 % at 10,000 ft.
 * Heights are feet above the smooth earth (sea level), distances NM along the ground.
 */

import { FT_PER_NM } from "../earth/index.ts";

/** Mean radius of the earth, 6371 km in NM. */
export const EARTH_RADIUS_NM = 6371 / 1.852;
/** 8495 km in NM. */
export const EFFECTIVE_EARTH_RADIUS_NM = (4 / 3) * EARTH_RADIUS_NM;
const EFFECTIVE_EARTH_RADIUS_FT = EFFECTIVE_EARTH_RADIUS_NM * FT_PER_NM;

/** NM per square root of a foot, the rule's rounded figure; the 4/3 earth gives 1.2287. */
const RULE_NM_PER_SQRT_FT = 1.23;

function heightAboveSea(heightFt: number): number {
  if (!Number.isFinite(heightFt))
    throw new RangeError(`a height must be a finite number of feet, got ${heightFt}`);
  // Ground below sea level has its horizon at its own level; there is no smooth earth above it.
  return Math.max(0, heightFt);
}

/**
 * Distance to the 4/3-earth horizon, NM, from a height above the smooth earth, feet (0 at and below it).
 * Exact: R acos(R / (R + h)).
 */
export function radioHorizonNm(heightFt: number): number {
  const ratio = heightAboveSea(heightFt) / EFFECTIVE_EARTH_RADIUS_FT;
  // acos(1/(1+x)) loses half its figures near x = 0; atan of the tangent's length does not.
  return EFFECTIVE_EARTH_RADIUS_NM * Math.atan(Math.sqrt(ratio * (2 + ratio)));
}

/** Farthest distance, NM, at which two antennas at these heights (feet) see each other over a smooth 4/3 earth. */
export const lineOfSightNm = (oneHeightFt: number, otherHeightFt: number): number =>
  radioHorizonNm(oneHeightFt) + radioHorizonNm(otherHeightFt);

/** The same by the pilot's rule, 1.23 (sqrt h1 + sqrt h2). Source: the planning formula as taught for EASA ATPL 062. */
export const lineOfSightByRuleNm = (oneHeightFt: number, otherHeightFt: number): number =>
  RULE_NM_PER_SQRT_FT * (Math.sqrt(heightAboveSea(oneHeightFt)) + Math.sqrt(heightAboveSea(otherHeightFt)));

/**
 * Least height of the aircraft, feet, that sees a station at `stationHeightFt` from `distanceNm` away, 4/3 earth.
 * 0 where even the surface sees it. Throws RangeError on a negative or endless distance, or one past a quarter turn.
 */
export function leastHeightFt(distanceNm: number, stationHeightFt: number): number {
  if (!(distanceNm >= 0) || distanceNm > EFFECTIVE_EARTH_RADIUS_NM)
    throw new RangeError(
      `a distance must be 0 to ${Math.round(EFFECTIVE_EARTH_RADIUS_NM)} NM, got ${distanceNm}`,
    );
  const beyondNm = distanceNm - radioHorizonNm(stationHeightFt);
  if (beyondNm <= 0) return 0;
  // 1/cos x - 1 = 2 sin(x/2)^2 / cos x keeps its figures for small x.
  const angle = beyondNm / EFFECTIVE_EARTH_RADIUS_NM;
  return (EFFECTIVE_EARTH_RADIUS_FT * 2 * Math.sin(angle / 2) ** 2) / Math.cos(angle);
}

/** The same by the pilot's rule: ((d - 1.23 sqrt h station) / 1.23) squared. */
export function leastHeightByRuleFt(distanceNm: number, stationHeightFt: number): number {
  const beyondNm = distanceNm - lineOfSightByRuleNm(stationHeightFt, 0);
  return beyondNm <= 0 ? 0 : (beyondNm / RULE_NM_PER_SQRT_FT) ** 2;
}
