/** Where an aircraft lies beside a course line, measured on the earth: the second route to what a needle's sign says. */

import { direct, geodesicDistanceNm, type TrueDeg, trueFromStation, turnBetween } from "../../earth/index.ts";
import type { ReceiverReading } from "../../panel/index.ts";

/** Which way over the ground the selected course leads; null without a station. */
export const courseOverGround = ({ station, settings }: ReceiverReading): TrueDeg | null =>
  station === null ? null : trueFromStation(settings.course, station.declinationDeg);

/**
 * How far right (positive) of the course line, facing along it, a receiver's aircraft is, NM: across the plane round the station.
 * Null without a station.
 */
export function rightOfCourseNm({ station, geometry, settings }: ReceiverReading): number | null {
  if (station === null || geometry === null) return null;
  const course = trueFromStation(settings.course, station.declinationDeg);
  return geometry.distanceNm * Math.sin((turnBetween(course, geometry.azimuthFromStation) * Math.PI) / 180);
}

/** How far from the course line an aircraft is, NM: to the foot of the square from it, on the ellipsoid. Null without a station. */
export function toCourseLineNm(
  { station, geometry, settings }: ReceiverReading,
  position: { readonly latDeg: number; readonly lonDeg: number },
): number | null {
  if (station === null || geometry === null) return null;
  const course = trueFromStation(settings.course, station.declinationDeg);
  const awayRad = (turnBetween(course, geometry.azimuthFromStation) * Math.PI) / 180;
  const foot = direct(station.position, course, geometry.distanceNm * Math.cos(awayRad));
  return geodesicDistanceNm(position, foot);
}
