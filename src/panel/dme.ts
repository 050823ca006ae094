/**
 * The DME: slant range to the station, and a speed and a time that the set works out from how fast that range changes.
 * Both are true only when flying straight to or from the station, well away from overhead (IFH ch. 9, DME errors).
 */

import { type TrueDeg, turnBetween } from "../earth/index.ts";
import type { DmeReading } from "./reading.ts";

/** Slower than this the set shows no time, kt. */
const SLOWEST_CLOSING_KT = 1;

export interface DmeGeometry {
  /** Along the ground, NM. */
  readonly groundDistanceNm: number;
  readonly slantNm: number;
  /** From the aircraft to the station. */
  readonly bearingToStation: TrueDeg;
}

/** What the set shows in level flight along a track at a groundspeed. */
export function readDme(geometry: DmeGeometry, track: TrueDeg, groundspeedKt: number): DmeReading {
  const { groundDistanceNm, slantNm, bearingToStation } = geometry;
  const awayDeg = turnBetween(track, bearingToStation);
  const alongGroundKt = groundspeedKt * Math.cos((awayDeg * Math.PI) / 180);
  // d(slant)/dt = d(ground)/dt * ground/slant at a constant height; overhead at no height at all it is the groundspeed itself.
  const closingKt = slantNm > 0 ? (alongGroundKt * groundDistanceNm) / slantNm : groundspeedKt;
  return {
    distanceNm: slantNm,
    groundspeedKt: Math.abs(closingKt),
    closingKt: closingKt + 0,
    minutesToStation: closingKt > SLOWEST_CLOSING_KT ? (slantNm / closingKt) * 60 : null,
  };
}
