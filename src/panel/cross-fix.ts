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
  const [sinCut, cosCut] = [Math.sin(rad(cutDeg)), Math.cos(rad(cutDeg))];
  const [sin1, cos1] = [Math.sin(rad(error1Deg)), Math.cos(rad(error1Deg))];
  const [sin2, cos2] = [Math.sin(rad(error2Deg)), Math.cos(rad(error2Deg))];
  // The aircraft at the origin, the first station behind it on the x axis, the second at the cut's angle from there.
  const baseX = distance1Nm - distance2Nm * cosCut;
  const baseY = -distance2Nm * sinCut;
  let farthest2 = 0;
  for (const side1 of SIDES)
    for (const side2 of SIDES) {
      const [x1, y1] = [cos1, side1 * sin1];
      const [x2, y2] = [cosCut * cos2 - side2 * sinCut * sin2, sinCut * cos2 + side2 * cosCut * sin2];
      const cross = x1 * y2 - y1 * x2;
      // How far along either line they meet; behind either station is no crossing.
      const along1 = (baseX * y2 - baseY * x2) / cross;
      const along2 = (baseX * y1 - baseY * x1) / cross;
      if (along1 >= 0 && along2 >= 0)
        farthest2 = Math.max(farthest2, (along1 * x1 - distance1Nm) ** 2 + (along1 * y1) ** 2);
    }
  // Between stations that lie nearly opposite, a wedge may reach back over the other station, and the fix as far as there.
  if (baseX > 0 && -baseY * cos1 <= baseX * sin1) farthest2 = Math.max(farthest2, distance2Nm ** 2);
  const ahead = -baseX * cosCut - baseY * sinCut;
  const aside = Math.abs(baseX * sinCut - baseY * cosCut);
  if (ahead > 0 && aside * cos2 <= ahead * sin2) farthest2 = Math.max(farthest2, distance1Nm ** 2);
  return Math.sqrt(farthest2);
}

const SIDES = [-1, 1] as const;

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
