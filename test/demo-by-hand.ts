/**
 * The second route for the demo and the real stations: what a panel must show, worked without the engine from geographiclib, plain
 * spherical trigonometry and the published rules, so that nothing here can agree with the engine by sharing its mistakes.
 *
 *   radial     azimuth station to aircraft, less the station's declination
 *   deviation  asin(sin(course - radial)), right positive; a dot is 2 degrees, five dots full scale
 *   centred    less than half a degree either way, our own rule
 *   flag       FROM where cos(course - radial) > 0, TO where < 0, neither within 2 degrees of square
 *   DME        sqrt(ground distance^2 + (height above the antenna / 6076.1155 ft)^2)
 *   horizon    1.23 (sqrt h1 + sqrt h2) NM, heights in feet                              planning rule, EASA 062
 *   cone       more than 40 degrees above the antenna's horizon                          ICAO Doc 8168 Vol I, I-2-2, 2.4.4.1
 *   ground     ray from antenna to aircraft less the earth's bulge of 0.6623 d1 d2 ft (4/3 earth), against cones
 *   echo       k = (r cos p + r^2) / (1 + r cos p), tan(off) = k sin(B - A) / (1 + k cos(B - A))      docs/model.md
 *   volume     T, VL, VH below 14,500 ft above the transmitter                           FAA AIM 1-1-8, TBL 1-1-1
 */

import geographiclib from "geographiclib-geodesic";
import { sphereAzimuthDeg, sphereDistanceNm } from "./second-route.ts";

const WGS84 = geographiclib.Geodesic.WGS84;
const M_PER_NM = 1852;
const FT_PER_NM = 6076.1155;
/** Radius of the golden table's sphere. */
const SPHERE_NM = 3440.065;
const RAD = Math.PI / 180;

export type Place = readonly [latDeg: number, lonDeg: number];
export interface Polar {
  readonly azimuthDeg: number;
  readonly distanceNm: number;
}

const in360 = (deg: number): number => ((deg % 360) + 360) % 360;

/** Degrees and minutes as the tables print them: `dm(-10, 20.0)` is 10 degrees 20 minutes south. */
export const dm = (degrees: number, minutes: number): number =>
  (degrees < 0 || Object.is(degrees, -0) ? -1 : 1) * (Math.abs(degrees) + minutes / 60);

export function onEllipsoid(from: Place, to: Place): Polar {
  const line = WGS84.Inverse(from[0], from[1], to[0], to[1]);
  return { azimuthDeg: in360(line.azi1 ?? Number.NaN), distanceNm: (line.s12 ?? Number.NaN) / M_PER_NM };
}

export function alongEllipsoid(from: Place, azimuthDeg: number, distanceNm: number): Place {
  const line = WGS84.Direct(from[0], from[1], azimuthDeg, distanceNm * M_PER_NM);
  return [line.lat2 ?? Number.NaN, line.lon2 ?? Number.NaN];
}

/** Plain spherical trigonometry, on the golden table's sphere. */
export function onSphere(from: Place, to: Place): Polar {
  const [a, b] = [from, to].map(([latDeg, lonDeg]) => ({ latDeg, lonDeg }));
  if (a === undefined || b === undefined) throw new Error("two places were given");
  return {
    azimuthDeg: sphereAzimuthDeg(a, b),
    distanceNm: (sphereDistanceNm(a, b) * SPHERE_NM * RAD) / 60,
  };
}

/** The least turn between two directions, without sign. */
export const apartDeg = (one: number, other: number): number => {
  const turn = in360(one - other);
  return Math.min(turn, 360 - turn);
};

export interface HandStation {
  readonly at: Place;
  readonly elevationFt: number;
  readonly declinationDeg: number;
  /** T, VL, VH, or none where no volume is published. */
  readonly vorClass: "T" | "VL" | "VH" | null;
}
export interface HandPeak {
  readonly at: Place;
  readonly elevationFt: number;
  readonly baseRadiusNm: number;
}
export interface HandAircraft {
  readonly at: Place;
  readonly altitudeFt: number;
  readonly headingDeg: number;
}

export function radialOf(station: HandStation, at: Place, polar = onEllipsoid): number {
  return in360(polar(station.at, at).azimuthDeg - station.declinationDeg);
}

export function slantNm(station: HandStation, aircraft: HandAircraft): number {
  const heightNm = (aircraft.altitudeFt - station.elevationFt) / FT_PER_NM;
  return Math.hypot(onEllipsoid(station.at, aircraft.at).distanceNm, heightNm);
}

export const elevationDeg = (station: HandStation, aircraft: HandAircraft): number =>
  Math.atan2(
    (aircraft.altitudeFt - station.elevationFt) / FT_PER_NM,
    onEllipsoid(station.at, aircraft.at).distanceNm,
  ) / RAD;

export const horizonNm = (station: HandStation, aircraft: HandAircraft): number =>
  1.23 * (Math.sqrt(station.elevationFt) + Math.sqrt(aircraft.altitudeFt));

/** Radius of the published volume, NM; 0 below its floor, null where none is published. */
export function publishedRadiusNm(station: HandStation, aircraft: HandAircraft): number | null {
  const aboveFt = aircraft.altitudeFt - station.elevationFt;
  if (station.vorClass === null) return null;
  if (aboveFt < 1000) return 0;
  if (station.vorClass === "T") return aboveFt <= 12_000 ? 25 : 0;
  return aboveFt < 5000 ? 40 : 70;
}

export interface HandNeedle {
  readonly deviationDeg: number;
  readonly dots: number;
  readonly fullScale: boolean;
  readonly flag: "TO" | "FROM" | "OFF";
}

export function needle(radialDeg: number, courseDeg: number): HandNeedle {
  const deviationDeg = Math.asin(Math.sin((courseDeg - radialDeg) * RAD)) / RAD;
  const cosine = Math.cos((courseDeg - radialDeg) * RAD);
  const square = Math.abs(cosine) <= Math.sin(2 * RAD);
  return {
    deviationDeg,
    dots: Math.min(5, Math.abs(deviationDeg) / 2),
    fullScale: Math.abs(deviationDeg) >= 10,
    flag: square ? "OFF" : cosine > 0 ? "FROM" : "TO",
  };
}

/** How far an echo turns a conventional station's radial, degrees clockwise: the way along the ground to the reflector, then up the slope. */
export function echoOffDeg(
  station: HandStation,
  aircraft: HandAircraft,
  reflector: { readonly at: Place; readonly amplitude: number; readonly frequencyMhz: number },
): number {
  const { at, amplitude, frequencyMhz } = reflector;
  const heightNm = (aircraft.altitudeFt - station.elevationFt) / FT_PER_NM;
  const onwardNm = Math.hypot(onEllipsoid(at, aircraft.at).distanceNm, heightNm);
  const longerM = (onEllipsoid(station.at, at).distanceNm + onwardNm - slantNm(station, aircraft)) * M_PER_NM;
  const waves = longerM / (299.792458 / frequencyMhz);
  const inPhase = amplitude * Math.cos(2 * Math.PI * waves);
  const k = (inPhase + amplitude ** 2) / (1 + inPhase);
  const across = (radialOf(station, at) - radialOf(station, aircraft.at)) * RAD;
  return Math.atan2(k * Math.sin(across), 1 + k * Math.cos(across)) / RAD;
}

/** Least height of the ray above the cones on its way, feet, stepping every twentieth of a mile; Infinity over open ground. */
export function clearanceFt(
  station: HandStation,
  aircraft: HandAircraft,
  peaks: readonly HandPeak[],
): number {
  const { azimuthDeg, distanceNm } = onEllipsoid(station.at, aircraft.at);
  const stepNm = 0.05;
  let least = Number.POSITIVE_INFINITY;
  for (let along = stepNm; along < distanceNm; along += stepNm) {
    const rayFt =
      station.elevationFt +
      ((aircraft.altitudeFt - station.elevationFt) * along) / distanceNm -
      0.6623 * along * (distanceNm - along);
    const under = alongEllipsoid(station.at, azimuthDeg, along);
    for (const peak of peaks) {
      const groundFt = peak.elevationFt * (1 - onEllipsoid(peak.at, under).distanceNm / peak.baseRadiusNm);
      if (groundFt > 0) least = Math.min(least, rayFt - groundFt);
    }
  }
  return least;
}
