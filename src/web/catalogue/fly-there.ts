/** A sensible place to begin from near a station: 20 NM out on a radial, heading for it, clear of the ground. */

import {
  direct,
  geodesicDistanceNm,
  inverse,
  type LatLon,
  type MagneticDeg,
  magneticDeg,
  magneticFromTrue,
  type StationDeg,
  stationDeg,
  stationFromTrue,
  trueFromStation,
  variation,
} from "../../earth/index.ts";
import type { Land, Station } from "../../radio/index.ts";
import type { Scene } from "../../scene/index.ts";

export const BEGIN_AT_NM = 20;
/** The radial taken when the aircraft is at the station already. */
const ANY_RADIAL = stationDeg(180);
const RADIAL_STEP_DEG = 10;

export interface Beginning {
  readonly position: LatLon;
  /** Straight to the station, whole degrees. */
  readonly heading: MagneticDeg;
  readonly altitudeFt: number;
  readonly radial: StationDeg;
}

/** On the radial that the aircraft is on now, to the nearest ten degrees: it comes in from where it was. */
export function beginningNear(station: Station, { aircraft, land, date }: Scene): Beginning {
  const { position, declinationDeg } = station;
  const now = inverse(position, aircraft.position);
  const exact = now.kind === "line" ? stationFromTrue(now.azimuth, declinationDeg) : ANY_RADIAL;
  const radial = stationDeg(Math.round(exact / RADIAL_STEP_DEG) * RADIAL_STEP_DEG);
  const out = trueFromStation(radial, declinationDeg);
  const from = direct(position, out, BEGIN_AT_NM);
  const back = inverse(from, position);
  const { variationDeg } = variation({ position: from, altitudeFt: aircraft.altitudeFt, date });
  const exactHeading = back.kind === "line" ? magneticFromTrue(back.azimuth, variationDeg) : magneticDeg(0);
  const heading = magneticDeg(Math.round(exactHeading));
  return {
    position: from,
    heading,
    altitudeFt: cruisingAltitudeFt(heading, lowestFt(station, land)),
    radial,
  };
}

/** Where the altitudes by magnetic course begin, feet above the surface. 14 CFR 91.159, from memory. */
const RULE_FROM_FT = 3000;
/** Clear of all obstacles around, feet and NM: what a minimum safe altitude gives. AIM 5-4-5, from memory. */
const CLEAR_OF_GROUND_FT = 1000;
const GROUND_WITHIN_NM = 25;

/** Nothing is known of the ground but the station's own height and the peaks of the scene's land. */
function lowestFt(station: Station, land: Land | null): number {
  const peaks = (land?.peaks ?? []).filter(
    (peak) => geodesicDistanceNm(peak.position, station.position) - peak.baseRadiusNm <= GROUND_WITHIN_NM,
  );
  return Math.max(
    station.elevationFt + RULE_FROM_FT,
    ...peaks.map((peak) => peak.elevationFt + CLEAR_OF_GROUND_FT),
  );
}

/**
 * The lowest altitude by visual rules at or above a height: on magnetic courses 000 to 179 odd thousands and 500 ft, on 180 to 359 even
 * thousands and 500 ft. Source: 14 CFR 91.159 (AIM 3-1-5), from memory.
 */
export function cruisingAltitudeFt(course: MagneticDeg, atLeastFt: number): number {
  const offsetFt = course < 180 ? 1500 : 500;
  const lowest = offsetFt + 2000 * Math.ceil((atLeastFt - offsetFt) / 2000);
  return Math.max(course < 180 ? 3500 : 4500, lowest);
}
