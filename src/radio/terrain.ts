/**
 * Whether high ground stands between antenna and aircraft. Rays are straight over the 4/3 earth of `line-of-sight.ts`;
 * the ground is the cones of `land.ts`, taken whole, flanks and all, not only their summits.
 * An antenna or aircraft that the file puts below a cone's surface is taken to stand on that surface, so it is hidden
 * by the rest of the hill but never by the ground under it.
 * Heights are feet above mean sea level, distances NM along the ground from the antenna.
 */

import { FT_PER_NM, inverse, type LatLon, type TrueDeg, turnBetween } from "../earth/index.ts";
import type { Peak } from "./land.ts";
import { EARTH_RADIUS_NM, EFFECTIVE_EARTH_RADIUS_NM } from "./line-of-sight.ts";

/** A place and a height above mean sea level, feet. */
export interface Aloft {
  readonly position: LatLon;
  readonly altitudeFt: number;
}

/** Where the aircraft is as the antenna sees it. */
export interface FromAntenna {
  readonly azimuth: TrueDeg;
  readonly distanceNm: number;
  readonly altitudeFt: number;
}

/** The peaks around one antenna, with all that does not depend on the aircraft worked out. */
export interface TerrainAround {
  /** The antenna's height, or the ground's where a cone's surface stands above it, feet. */
  readonly antennaFt: number;
  readonly peaks: readonly PeakSeen[];
}

interface PeakSeen {
  readonly peak: Peak;
  /** Null: the antenna stands on the summit. */
  readonly azimuth: TrueDeg | null;
  readonly distanceNm: number;
}

export interface TerrainVerdict {
  /** The peak that hides the aircraft, the one that asks for most height; null when the path is clear. */
  readonly blockedBy: Peak | null;
  /**
   * Height of the ray over the ground where a cone stands highest as the antenna sees it, the least of all cones on the
   * path, feet; negative when blocked; null: no cone on it.
   */
  readonly clearanceFt: number | null;
  /** Least altitude at the aircraft's place that clears every cone on the path, feet; null: no cone on it. */
  readonly leastAltitudeFt: number | null;
}

const NOTHING_IN_THE_WAY: TerrainVerdict = { blockedBy: null, clearanceFt: null, leastAltitudeFt: null };
/** A ray that grazes the ground, as from an antenna standing on a slope, is clear; this much is rounding. */
const ROUNDING_FT = 0.01;
/** Nearer to the antenna than this the ground is the ground it stands on, NM (about 2 m). */
const NEAREST_NM = 0.001;
/** The tightest place is found this closely, NM: on a sharp summit a hundredth of a foot. */
const NARROW_NM = 1e-5;
/** What stands around an antenna. Work it out once for a station, then ask `terrainToward` for each aircraft. */
export function terrainAround(antenna: Aloft, peaks: readonly Peak[]): TerrainAround {
  const seen = peaks.map((peak): PeakSeen => {
    const line = inverse(antenna.position, peak.position);
    return { peak, azimuth: line.kind === "line" ? line.azimuth : null, distanceNm: line.distanceNm };
  });
  const grounds = seen.map(({ peak, distanceNm }) => coneSurfaceFt(peak, distanceNm));
  return { antennaFt: Math.max(antenna.altitudeFt, ...grounds), peaks: seen };
}

/** Whether the ground hides an aircraft from the antenna, by how much, and the altitude that would clear it. */
export function terrainToward(terrain: TerrainAround, aircraft: FromAntenna): TerrainVerdict {
  let verdict = NOTHING_IN_THE_WAY;
  for (const seen of terrain.peaks) {
    const path = pathOverCone(seen, aircraft);
    if (path === null) continue;
    const ray: Ray = {
      fromFt: terrain.antennaFt,
      toFt: Math.max(aircraft.altitudeFt, groundFt(path, aircraft.distanceNm)),
      distanceNm: aircraft.distanceNm,
    };
    const skylineNm = skyline(path, ray.fromFt);
    const skylineFt = groundFt(path, skylineNm);
    const steepest = slopeTo(ray.fromFt, skylineFt, skylineNm);
    const leastAltitudeFt = Math.max(0, heightOnSlopeFt(ray.fromFt, steepest, ray.distanceNm));
    const clearanceFt = rayHeightFt(ray, skylineNm) - skylineFt;
    const isHighest = verdict.leastAltitudeFt === null || leastAltitudeFt > verdict.leastAltitudeFt;
    const blocks = ray.toFt < leastAltitudeFt - ROUNDING_FT;
    verdict = {
      blockedBy: blocks && (verdict.blockedBy === null || isHighest) ? seen.peak : verdict.blockedBy,
      clearanceFt: Math.min(clearanceFt, verdict.clearanceFt ?? Number.POSITIVE_INFINITY),
      leastAltitudeFt: isHighest ? leastAltitudeFt : verdict.leastAltitudeFt,
    };
  }
  return verdict;
}

/** The same for one antenna and one aircraft. Straight overhead nothing is in the way. */
export function terrainBetween(antenna: Aloft, aircraft: Aloft, peaks: readonly Peak[]): TerrainVerdict {
  const line = inverse(antenna.position, aircraft.position);
  if (line.kind === "same-place") return NOTHING_IN_THE_WAY;
  return terrainToward(terrainAround(antenna, peaks), {
    azimuth: line.azimuth,
    distanceNm: line.distanceNm,
    altitudeFt: aircraft.altitudeFt,
  });
}

/** Height of a cone's surface at a distance from its summit, feet: 0 at its base and beyond. */
export const coneSurfaceFt = (peak: Peak, fromSummitNm: number): number =>
  Math.max(0, peak.elevationFt * (1 - fromSummitNm / peak.baseRadiusNm));

/** The stretch of a path over a cone's base. */
interface ConePath {
  readonly peak: Peak;
  /** Where the path enters the base, or leaves the antenna; NM from the antenna. */
  readonly startNm: number;
  /** Where it leaves the base, or reaches the aircraft. */
  readonly endNm: number;
  /** Where it passes nearest to the summit, and how far aside. */
  readonly footNm: number;
  readonly acrossNm: number;
}

/** Null when the path passes beside the base. Right spherical triangles: summit, foot of the perpendicular, antenna. */
function pathOverCone(seen: PeakSeen, aircraft: FromAntenna): ConePath | null {
  const { peak, distanceNm } = seen;
  const offDeg = seen.azimuth === null ? 0 : turnBetween(aircraft.azimuth, seen.azimuth);
  const off = (offDeg * Math.PI) / 180;
  const angle = distanceNm / EARTH_RADIUS_NM;
  const acrossNm = Math.asin(Math.sin(angle) * Math.abs(Math.sin(off))) * EARTH_RADIUS_NM;
  if (acrossNm >= peak.baseRadiusNm) return null;
  const footNm = Math.atan2(Math.sin(angle) * Math.cos(off), Math.cos(angle)) * EARTH_RADIUS_NM;
  const halfNm = Math.sqrt(peak.baseRadiusNm ** 2 - acrossNm ** 2);
  const startNm = Math.max(NEAREST_NM, footNm - halfNm);
  const endNm = Math.min(aircraft.distanceNm, footNm + halfNm);
  return startNm < endNm ? { peak, startNm, endNm, footNm, acrossNm } : null;
}

/** Height of the cone's surface under the path, feet. Within a base the earth is flat to a hundredth of a foot. */
const groundFt = (path: ConePath, alongNm: number): number =>
  coneSurfaceFt(path.peak, Math.sqrt(path.acrossNm ** 2 + (alongNm - path.footNm) ** 2));

interface Ray {
  readonly fromFt: number;
  readonly toFt: number;
  readonly distanceNm: number;
}

const radiusNm = (heightFt: number): number => EFFECTIVE_EARTH_RADIUS_NM + heightFt / FT_PER_NM;

/** Height of the straight ray over the 4/3 earth, feet, at a distance along it. */
function rayHeightFt(ray: Ray, alongNm: number): number {
  const from = radiusNm(ray.fromFt);
  const to = radiusNm(ray.toFt);
  const whole = ray.distanceNm / EFFECTIVE_EARTH_RADIUS_NM;
  const part = alongNm / EFFECTIVE_EARTH_RADIUS_NM;
  const radius = (from * to * Math.sin(whole)) / (from * Math.sin(part) + to * Math.sin(whole - part));
  return (radius - EFFECTIVE_EARTH_RADIUS_NM) * FT_PER_NM;
}

/** Tangent of the angle above the antenna's horizontal at which a point of the ground appears. */
function slopeTo(antennaFt: number, groundFt: number, alongNm: number): number {
  const angle = alongNm / EFFECTIVE_EARTH_RADIUS_NM;
  const ground = radiusNm(groundFt);
  return (ground * Math.cos(angle) - radiusNm(antennaFt)) / (ground * Math.sin(angle));
}

/** Height of a ray that leaves the antenna at such a tangent, feet, at a distance. */
function heightOnSlopeFt(antennaFt: number, slope: number, distanceNm: number): number {
  const angle = distanceNm / EFFECTIVE_EARTH_RADIUS_NM;
  const radius = radiusNm(antennaFt) / (Math.cos(angle) - slope * Math.sin(angle));
  return (radius - EFFECTIVE_EARTH_RADIUS_NM) * FT_PER_NM;
}

/**
 * How far along the path the cone stands highest as the antenna sees it. The view rises to there and falls beyond, so
 * golden sections find it; the ends of the stretch count too.
 */
function skyline(path: ConePath, antennaFt: number): number {
  const slope = (alongNm: number): number => slopeTo(antennaFt, groundFt(path, alongNm), alongNm);
  const section = (Math.sqrt(5) - 1) / 2;
  let low = path.startNm;
  let high = path.endNm;
  let left = high - section * (high - low);
  let right = low + section * (high - low);
  let atLeft = slope(left);
  let atRight = slope(right);
  while (high - low > NARROW_NM) {
    if (atLeft > atRight) {
      high = right;
      right = left;
      atRight = atLeft;
      left = high - section * (high - low);
      atLeft = slope(left);
    } else {
      low = left;
      left = right;
      atLeft = atRight;
      right = low + section * (high - low);
      atRight = slope(right);
    }
  }
  const candidates = [left, path.startNm, path.endNm];
  return candidates.reduce((best, next) => (slope(next) > slope(best) ? next : best));
}
