/**
 * How well a cross fix from two VORs holds. Each receiver may be out by as much as a receiver check allows, so each bearing is a
 * wedge at its station, and the plotted fix may lie anywhere in what the two wedges share. The error of the fix is the farthest
 * it may lie from the aircraft.
 *
 * Plane geometry round the aircraft, whose two bearings are taken on the earth itself: within 100 NM of both stations the corners
 * agree with crossings on the ellipsoid to 1 % of the error (`test/needle-field-fix.test.ts`).
 */

import { directionBack, type LatLon, turnBetween } from "../earth/index.ts";
import type { ReceiverReading } from "./reading.ts";

/** Greatest error of a receiver checked on the ground, degrees: test signal or ground checkpoint. 14 CFR 91.171 (b)(1), (2). */
export const GROUND_CHECK_ERROR_DEG = 4;
/** Greatest error of a receiver checked in the air, degrees. 14 CFR 91.171 (b)(3) to (5). */
export const AIRBORNE_CHECK_ERROR_DEG = 6;

export interface CrossFix {
  readonly distance1Nm: number;
  readonly distance2Nm: number;
  /** Angle at the aircraft between the two bearings, degrees in [0, 180]. */
  readonly cutDeg: number;
  /** What each bearing may be out by to either side, degrees, above 0. */
  readonly error1Deg: number;
  readonly error2Deg: number;
}

const rad = (deg: number): number => (deg * Math.PI) / 180;

/** The error of a cross fix, NM; infinite where the wedges run together without end: a cut no wider than both errors. */
export function crossFixErrorNm({
  distance1Nm,
  distance2Nm,
  cutDeg,
  error1Deg,
  error2Deg,
}: CrossFix): number {
  if (cutDeg <= error1Deg + error2Deg) return Number.POSITIVE_INFINITY;
  // The aircraft at the origin, the first station behind it on the x axis, the second at the cut's angle from there.
  const cut = rad(cutDeg);
  const station2X = -distance2Nm * Math.cos(cut);
  const station2Y = -distance2Nm * Math.sin(cut);
  let farthest = 0;
  for (const e1 of [-rad(error1Deg), rad(error1Deg)])
    for (const e2 of [-rad(error2Deg), rad(error2Deg)]) {
      const [x1, y1] = [Math.cos(e1), Math.sin(e1)];
      const [x2, y2] = [Math.cos(cut + e2), Math.sin(cut + e2)];
      const cross = x1 * y2 - y1 * x2;
      // From station to station, along the first line and along the second to where they meet; behind either is no crossing.
      const baseX = station2X + distance1Nm;
      const along1 = (baseX * y2 - station2Y * x2) / cross;
      const along2 = (baseX * y1 - station2Y * x1) / cross;
      if (along1 >= 0 && along2 >= 0)
        farthest = Math.max(farthest, Math.hypot(along1 * x1 - distance1Nm, along1 * y1));
    }
  // Between stations that lie nearly opposite, each wedge may reach back over the other station, and the fix as far as there.
  const toward2Deg = degreesOf(Math.atan2(station2Y, station2X + distance1Nm));
  if (Math.abs(toward2Deg) <= error1Deg) farthest = Math.max(farthest, distance2Nm);
  const toward1Deg = degreesOf(Math.atan2(-station2Y, -distance1Nm - station2X)) - cutDeg;
  if (Math.abs(turn180(toward1Deg)) <= error2Deg) farthest = Math.max(farthest, distance1Nm);
  return farthest;
}

const degreesOf = (radians: number): number => (radians * 180) / Math.PI;
const turn180 = (deg: number): number => deg - 360 * Math.round(deg / 360);

/**
 * The error of the fix of two receivers at a place, NM, when each may be out by so much; null where either gives no line: no
 * bearing, or the bearing of a test station. What their own errors are has no part in it.
 */
export function crossFixAt(
  place: LatLon,
  first: ReceiverReading,
  second: ReceiverReading,
  allowedErrorDeg: number,
): number | null {
  const line1 = lineTo(place, first);
  const line2 = lineTo(place, second);
  if (line1 === null || line2 === null) return null;
  return crossFixErrorNm({
    distance1Nm: line1.distanceNm,
    distance2Nm: line2.distanceNm,
    cutDeg: Math.abs(turnBetween(line1.back, line2.back)),
    error1Deg: allowedErrorDeg,
    error2Deg: allowedErrorDeg,
  });
}

function lineTo(place: LatLon, { radial, station, geometry }: ReceiverReading) {
  if (radial === null || station === null || geometry === null || station.kind === "VOT") return null;
  const { azimuthFromStation, distanceNm } = geometry;
  return { back: directionBack(station.position, place, azimuthFromStation), distanceNm };
}
