/**
 * A fix from two lines of position: the place where the true azimuths from two stations cross on the WGS 84 ellipsoid.
 * The crossing of the two great circles on a sphere is the first guess; Newton's steps along the first geodesic, each
 * as long as the guess lies beside the second, bring it onto both.
 */

import geographiclib from "geographiclib-geodesic";
import { type TrueDeg, trueDeg, turnBetween } from "./direction.ts";
import { inverse } from "./geodesic.ts";
import { type LatLon, latLon } from "./position.ts";
import { M_PER_NM } from "./units.ts";

const { WGS84, DISTANCE, AZIMUTH, LATITUDE, LONGITUDE, REDUCEDLENGTH } = geographiclib.Geodesic;
const RAD_PER_DEG = Math.PI / 180;

/** Lines that meet at a sharper angle than this fix nothing: a degree of error moves the place without bound. */
export const LEAST_CUT_DEG = 1;
const LEAST_SIN_CUT = Math.sin(LEAST_CUT_DEG * RAD_PER_DEG);
/** Beyond this no crossing is looked for: it is out of any station's reach, and lines that part meet again far away. */
export const FIX_LIMIT_NM = 1000;
/** The sphere's distances are within half a percent; the rest is for flat cuts. */
const SPHERE_MARGIN = 1.1;
const SETTLED_M = 1e-6;
const MOST_STEPS = 20;

export interface LineFromStation {
  readonly station: LatLon;
  readonly azimuth: TrueDeg;
}

export type TwoLineFix =
  | {
      readonly kind: "fix";
      readonly position: LatLon;
      /** Angle at the fix between the two outward lines, (0, 180); best near 90, poor under 30 or over 150 (common practice). */
      readonly cutDeg: number;
      readonly distance1Nm: number;
      readonly distance2Nm: number;
    }
  /** The lines part, meet only behind a station, or meet beyond `FIX_LIMIT_NM` of one. */
  | { readonly kind: "no-crossing-ahead" }
  /** They run within a degree of each other, or of opposite ways, where they would meet; `cutDeg` in [0, 1). */
  | { readonly kind: "nearly-parallel"; readonly cutDeg: number }
  /** Both stations stand in one place: their lines meet there and fix nothing. */
  | { readonly kind: "same-station" };

/**
 * Where two true azimuths from two stations cross, to a millimetre along both lines. Throws RangeError on a latitude
 * outside [-90, 90] or NaN.
 */
export function twoLineFix(first: LineFromStation, second: LineFromStation): TwoLineFix {
  if (inverse(first.station, second.station).kind === "same-place") return { kind: "same-station" };
  const guess = crossingOnSphere(first, second);
  if (guess.kind !== "crossing") return guess;

  let distance1M = guess.distance1M;
  for (let step = 0; step < MOST_STEPS; step++) {
    const { position, outward: outward1 } = alongLine(first, distance1M);
    const { rightM, ahead, outward: outward2, distanceM: distance2M } = besideLine(position, second);
    const cutDeg = turnBetween(outward2, outward1);
    const sinCut = Math.sin(cutDeg * RAD_PER_DEG);
    if (Math.abs(sinCut) < LEAST_SIN_CUT) return { kind: "nearly-parallel", cutDeg: acuteDeg(sinCut) };
    if (Math.abs(rightM) < SETTLED_M) {
      const beyond = Math.max(distance1M, distance2M) > FIX_LIMIT_NM * M_PER_NM;
      if (!ahead || distance1M < -SETTLED_M || beyond) return { kind: "no-crossing-ahead" };
      return {
        kind: "fix",
        position,
        cutDeg: Math.abs(cutDeg),
        distance1Nm: Math.max(0, distance1M / M_PER_NM),
        distance2Nm: distance2M / M_PER_NM,
      };
    }
    distance1M -= rightM / sinCut;
  }
  // Every crossing in reach settles within a few steps; what wanders for twenty meets nowhere near.
  return { kind: "no-crossing-ahead" };
}

const acuteDeg = (sinCut: number): number => Math.asin(Math.abs(sinCut)) / RAD_PER_DEG;

/** The place so many metres along a line (negative: behind its station), and the line's direction there. */
function alongLine({ station, azimuth }: LineFromStation, distanceM: number) {
  const end = WGS84.Direct(
    station.latDeg,
    station.lonDeg,
    azimuth,
    distanceM,
    LATITUDE | LONGITUDE | AZIMUTH,
  );
  const { lat2 = station.latDeg, lon2 = station.lonDeg, azi2 = azimuth } = end;
  return { position: latLon(lat2, lon2), outward: trueDeg(azi2) };
}

/** How far a place lies right of a line, measured across it at the place, and the line's direction there. */
function besideLine(place: LatLon, line: LineFromStation) {
  const {
    s12 = 0,
    azi1 = 0,
    azi2 = 0,
    m12 = 0,
  } = WGS84.Inverse(
    line.station.latDeg,
    line.station.lonDeg,
    place.latDeg,
    place.lonDeg,
    DISTANCE | AZIMUTH | REDUCEDLENGTH,
  );
  const offDeg = azi1 - line.azimuth;
  const offRad = offDeg * RAD_PER_DEG;
  return {
    distanceM: s12,
    rightM: m12 * Math.sin(offRad),
    ahead: s12 < SETTLED_M || Math.cos(offRad) > 0,
    // The sight line at the place, turned back by as much as it was turned off the line at the station.
    outward: trueDeg(azi2 - offDeg),
  };
}

type Vector = readonly [number, number, number];

/**
 * Crossing of two great circles, as metres along the first: of the two antipodal points, the one within a quarter circle
 * of its station, ahead or (negative) behind. Only the ellipsoid can say which when it lies at the station itself.
 */
function crossingOnSphere(first: LineFromStation, second: LineFromStation) {
  const [here1, ahead1] = pointAndHeading(first);
  const [here2, ahead2] = pointAndHeading(second);
  const line = cross(cross(here1, ahead1), cross(here2, ahead2));
  const sinCut = Math.hypot(...line);
  if (sinCut < LEAST_SIN_CUT) return { kind: "nearly-parallel" as const, cutDeg: acuteDeg(sinCut) };
  const nearSide = dot(line, here1) >= 0 ? 1 : -1;
  const angleRad = Math.atan2(nearSide * dot(line, ahead1), nearSide * dot(line, here1));
  const distance1Nm = (angleRad / RAD_PER_DEG) * 60;
  if (Math.abs(distance1Nm) > FIX_LIMIT_NM * SPHERE_MARGIN) return { kind: "no-crossing-ahead" as const };
  return { kind: "crossing" as const, distance1M: distance1Nm * M_PER_NM };
}

function pointAndHeading({ station, azimuth }: LineFromStation): [Vector, Vector] {
  const lat = station.latDeg * RAD_PER_DEG;
  const lon = station.lonDeg * RAD_PER_DEG;
  const az = azimuth * RAD_PER_DEG;
  const here: Vector = [Math.cos(lat) * Math.cos(lon), Math.cos(lat) * Math.sin(lon), Math.sin(lat)];
  const north: Vector = [-Math.sin(lat) * Math.cos(lon), -Math.sin(lat) * Math.sin(lon), Math.cos(lat)];
  const east: Vector = [-Math.sin(lon), Math.cos(lon), 0];
  const [e, n] = [Math.sin(az), Math.cos(az)];
  return [here, [north[0] * n + east[0] * e, north[1] * n + east[1] * e, north[2] * n + east[2] * e]];
}

const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
