/**
 * Shortest lines on the WGS 84 ellipsoid, by Karney's method (Algorithms for geodesics, J. Geodesy 87, 2013) through
 * geographiclib-geodesic: good to nanometres anywhere. For many places around one station see station-frame.ts.
 */

import geographiclib from "geographiclib-geodesic";
import { type TrueDeg, trueDeg } from "./direction.ts";
import { type LatLon, latLon, refuseBadPlace } from "./position.ts";
import { M_PER_NM } from "./units.ts";

const { WGS84, DISTANCE, AZIMUTH, LATITUDE, LONGITUDE } = geographiclib.Geodesic;

/** Closer than this, in metres, two places count as one: a direction between them would be noise. */
export const SAME_PLACE_M = 0.001;

/** The shortest line between two places. */
export interface GeodesicLine {
  readonly kind: "line";
  readonly distanceNm: number;
  readonly distanceM: number;
  /** Direction of the line where it starts. */
  readonly azimuth: TrueDeg;
  /** Direction of the line, onward, where it arrives; its reciprocal leads back. */
  readonly arrivalAzimuth: TrueDeg;
}

/** The two places are one (within `SAME_PLACE_M`), so no direction leads from one to the other. */
export interface SamePlace {
  readonly kind: "same-place";
  readonly distanceNm: 0;
  readonly distanceM: 0;
}

/**
 * Distance and true azimuths from one place to another. Places within a millimetre are `same-place`, which has no
 * azimuth. Between antipodes more than one shortest line exists and one of them is given; at a pole the azimuth is
 * counted from the meridian of the longitude given. Throws RangeError on a latitude outside [-90, 90] or NaN.
 */
export function inverse(from: LatLon, to: LatLon): GeodesicLine | SamePlace {
  refuseBadPlace(from.latDeg, from.lonDeg);
  refuseBadPlace(to.latDeg, to.lonDeg);
  const line = WGS84.Inverse(from.latDeg, from.lonDeg, to.latDeg, to.lonDeg, DISTANCE | AZIMUTH);
  const { s12: distanceM = 0, azi1 = 0, azi2 = 0 } = line;
  if (distanceM < SAME_PLACE_M) return { kind: "same-place", distanceNm: 0, distanceM: 0 };
  return {
    kind: "line",
    distanceNm: distanceM / M_PER_NM,
    distanceM,
    azimuth: trueDeg(azi1),
    arrivalAzimuth: trueDeg(azi2),
  };
}

/** Distance between two places, NM; 0 for the same place. Throws RangeError as `inverse` does. */
export const geodesicDistanceNm = (from: LatLon, to: LatLon): number => inverse(from, to).distanceNm;

/**
 * The place reached from another along a true azimuth after a distance in NM (negative: the opposite way).
 * Longitude in [-180, 180). Throws RangeError on a latitude outside [-90, 90], NaN or an infinite distance.
 */
export function direct(from: LatLon, azimuth: TrueDeg, distanceNm: number): LatLon {
  refuseBadPlace(from.latDeg, from.lonDeg);
  if (!Number.isFinite(distanceNm) || !Number.isFinite(azimuth))
    throw new RangeError(`azimuth and distance must be finite, got ${azimuth} degrees and ${distanceNm} NM`);
  const end = WGS84.Direct(from.latDeg, from.lonDeg, azimuth, distanceNm * M_PER_NM, LATITUDE | LONGITUDE);
  const { lat2 = from.latDeg, lon2 = from.lonDeg } = end;
  return latLon(lat2, lon2);
}
