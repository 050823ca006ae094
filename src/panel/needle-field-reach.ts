/**
 * What decides at one altitude how a station is received, as distances from it: beyond the first the horizon hides it, beyond the
 * second the field is too weak, and so on. Each is where the engine's own rule changes its answer, to the last digit, so that a
 * comparison of distances says for a whole chart what the rule would say place by place.
 */

import {
  coneRadiusNm,
  type FieldVerdict,
  fieldMicrovoltPerM,
  fieldVerdict,
  givesBearing,
  lineOfSightNm,
  serviceRadiusNm,
  slantRangeNm,
} from "../radio/index.ts";
import type { OnAir } from "./airwaves.ts";

export interface Reach {
  readonly onAir: OnAir;
  readonly heightAboveFt: number;
  /** Why its bearing is heard nowhere; null when it is heard somewhere. */
  readonly mute: "distance-only" | "silent" | null;
  /** Farther away it lies below the horizon. */
  readonly horizonNm: number;
  /** Farther away its field is too weak for any bearing; -1 where it is too weak everywhere. */
  readonly heardNm: number;
  /** Farther away its field is below the published minimum; -1 where it is so everywhere. */
  readonly goodNm: number;
  /** Nearer than this is the cone; 0 for a test station, which has none. */
  readonly coneNm: number;
  /** Up to here is the published volume, -1 where there is none at this height; null: no volume is published. */
  readonly serviceNm: number | null;
}

/** The reach of a station at an altitude, feet above mean sea level. */
export function reachAt(onAir: OnAir, altitudeFt: number): Reach {
  const { station, site } = onAir;
  const heightAboveFt = altitudeFt - site.elevationFt;
  const horizonNm = lineOfSightNm(site.elevationFt, altitudeFt);
  const verdictAt = (distanceNm: number): FieldVerdict =>
    fieldVerdict(fieldMicrovoltPerM(station.eirpW, slantRangeNm(distanceNm, heightAboveFt)));
  return {
    onAir,
    heightAboveFt,
    mute: givesBearing(station) ? (station.status === "silent" ? "silent" : null) : "distance-only",
    horizonNm,
    heardNm: lastDistanceNm(horizonNm, (nm) => verdictAt(nm) !== "too-weak"),
    goodNm: lastDistanceNm(horizonNm, (nm) => verdictAt(nm) === "good"),
    coneNm: station.kind === "VOT" ? 0 : coneRadiusNm(heightAboveFt),
    serviceNm: publishedNm(onAir, heightAboveFt),
  };
}

function publishedNm({ station }: OnAir, heightAboveFt: number): number | null {
  if (station.vorClass === null || !givesBearing(station)) return null;
  const radiusNm = serviceRadiusNm(station.vorClass, heightAboveFt);
  return radiusNm > 0 ? radiusNm : -1;
}

/** The farthest distance up to a limit, NM, at which something holds that holds near and fails far; -1 where it never holds. */
function lastDistanceNm(limitNm: number, holds: (distanceNm: number) => boolean): number {
  if (holds(limitNm)) return limitNm;
  if (!holds(0)) return -1;
  let near = 0;
  let far = limitNm;
  for (let middle = far / 2; middle > near && middle < far; middle = (near + far) / 2) {
    if (holds(middle)) near = middle;
    else far = middle;
  }
  return near;
}
