/** Convergence of the meridians: how much a straight line's true direction changes between two places. */

import { type TrueDeg, trueDeg, wrap180 } from "./direction.ts";
import type { LatLon } from "./position.ts";

const RAD_PER_DEG = Math.PI / 180;

/**
 * The turn of a great circle's direction from one place to another, degrees, right positive: tan(c/2) = sin(mean latitude) /
 * cos(half difference of latitude) * tan(half difference of longitude), a Napier analogy of the sphere. On the ellipsoid good to
 * 0.01 degree within DME range up to 80 degrees of latitude.
 */
export function convergenceDeg(from: LatLon, to: LatLon): number {
  const halfLon = (wrap180(to.lonDeg - from.lonDeg) / 2) * RAD_PER_DEG;
  const meanLat = ((from.latDeg + to.latDeg) / 2) * RAD_PER_DEG;
  const halfLat = ((to.latDeg - from.latDeg) / 2) * RAD_PER_DEG;
  return (2 * Math.atan((Math.sin(meanLat) / Math.cos(halfLat)) * Math.tan(halfLon))) / RAD_PER_DEG + 0;
}

/** The true direction from the far end of a line back to where it started, given its azimuth at the start. */
export const directionBack = (from: LatLon, to: LatLon, azimuth: TrueDeg): TrueDeg =>
  trueDeg(azimuth + 180 + convergenceDeg(from, to));
