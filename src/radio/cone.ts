/**
 * The cone of ambiguity straight above a VOR, where needle and flag are not to be trusted: 50 degrees to each side of
 * the vertical, so elevation angles above 40 degrees, the top of the coverage in ICAO Annex 10.
 * Source: ICAO Doc 8168 PANS-OPS Vol I, Part I, Section 2, 2.4.4. Heights are feet above the antenna, distances NM.
 */

import { FT_PER_NM } from "../earth/index.ts";

/** Half angle of a VOR's cone, from the vertical. 2.4.4.1. */
export const VOR_CONE_HALF_ANGLE_DEG = 50;
/** Lateral deviation allowed abeam a VOR, NM for each 1000 ft above it. 2.4.4.1. */
const ABEAM_NM_PER_KFT = 0.033;

const radians = (deg: number): number => (deg * Math.PI) / 180;

/**
 * Radius of the cone, NM, at a height above the antenna, feet (0 at or below it). Another half angle than 50 degrees
 * serves where flight test has shown a lesser one.
 */
export const coneRadiusNm = (heightAboveFt: number, halfAngleDeg = VOR_CONE_HALF_ANGLE_DEG): number =>
  (Math.max(0, heightAboveFt) / FT_PER_NM) * Math.tan(radians(halfAngleDeg));

/**
 * Angle of the aircraft above the antenna's horizon, degrees in [-90, 90], on a flat earth; 0 at the antenna itself.
 * The earth's curve takes off 0.4 degree at 40 NM, where no one asks about the cone.
 */
export const elevationAngleDeg = (heightAboveFt: number, distanceNm: number): number =>
  (Math.atan2(heightAboveFt / FT_PER_NM, distanceNm) * 180) / Math.PI;

/** Whether an aircraft at that height above the antenna (feet) and ground distance (NM) is in the cone; edge excluded. */
export const isInCone = (heightAboveFt: number, distanceNm: number): boolean =>
  distanceNm < coneRadiusNm(heightAboveFt);

/** Seconds to fly straight across the cone through its middle, at a groundspeed in kt. Infinity at rest. */
export const timeAcrossConeS = (heightAboveFt: number, groundspeedKt: number): number =>
  ((2 * coneRadiusNm(heightAboveFt)) / groundspeedKt) * 3600;

/** Lateral deviation allowed abeam a VOR, NM, at a height above it, feet. */
export const abeamToleranceNm = (heightAboveFt: number): number =>
  ABEAM_NM_PER_KFT * (Math.max(0, heightAboveFt) / 1000);
