/** Places on the WGS 84 ellipsoid. Latitude north positive, longitude east positive, in degrees. */

export interface LatLon {
  /** [-90, 90], north positive. */
  readonly latDeg: number;
  /** [-180, 180], east positive. */
  readonly lonDeg: number;
}

/**
 * A place from its numbers: longitude is brought into [-180, 180), minus zero becomes zero.
 * Throws RangeError when a number is not finite or the latitude lies outside [-90, 90].
 */
export function latLon(latDeg: number, lonDeg: number): LatLon {
  refuseBadPlace(latDeg, lonDeg);
  return { latDeg: latDeg + 0, lonDeg: wrapLongitude(lonDeg) };
}

/** Throws RangeError unless latitude is in [-90, 90] and longitude finite. NaN never passes. */
export function refuseBadPlace(latDeg: number, lonDeg: number): void {
  if (!(latDeg >= -90 && latDeg <= 90))
    throw new RangeError(`a latitude must lie in [-90, 90] degrees, got ${latDeg}`);
  if (!Number.isFinite(lonDeg))
    throw new RangeError(`a longitude must be a finite number of degrees, got ${lonDeg}`);
}

/** Longitude in [-180, 180), never minus zero; any finite number of degrees. */
export function wrapLongitude(lonDeg: number): number {
  if (lonDeg >= -180 && lonDeg < 180) return lonDeg + 0;
  const wrapped = lonDeg - 360 * Math.floor((lonDeg + 180) / 360);
  // For a number just short of a whole turn, thousands of turns out, the division rounds up to it; that meridian is -180.
  return wrapped < -180 ? -180 : wrapped + 0;
}
