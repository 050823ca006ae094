/** A leg from one beacon to another, an aircraft a little way along it. */

import { geodesicDistanceNm, inverse, stationFromTrue, type TrueDeg, type Wind } from "../../earth/index.ts";
import type { Station } from "../../radio/index.ts";
import type { Chance } from "../chance.ts";
import { CALM, type Stand, stand } from "../stand.ts";
import type { World } from "../world.ts";

export interface LegDrawn {
  readonly from: Station;
  readonly to: Station;
  readonly lengthNm: number;
  /** Leaving the first station. */
  readonly track: TrueDeg;
  readonly at: Stand;
}

/** Draws a leg of such a length, flown at a height that suits both stations; null where the two picked lie otherwise. */
export function drawLeg(
  chance: Chance,
  world: World,
  ask: {
    readonly lengthNm: readonly [number, number];
    readonly altitudeFt: readonly [number, number];
    readonly wind?: Wind;
  },
): LegDrawn | null {
  const from = chance.pick(world.beacons);
  const to = chance.pick(world.beacons);
  if (from.ident === to.ident) return null;
  const lengthNm = geodesicDistanceNm(from.position, to.position);
  const [shortest, longest] = ask.lengthNm;
  if (lengthNm < shortest || lengthNm > longest) return null;
  const line = inverse(from.position, to.position);
  if (line.kind !== "line") return null;
  const [lowest, highest] = ask.altitudeFt;
  const altitudeFt = chance.integer(lowest / 100, highest / 100) * 100;
  if (altitudeFt < Math.max(from.elevationFt, to.elevationFt) + 1_500) return null;
  const radialDeg = stationFromTrue(line.azimuth, from.declinationDeg);
  const at = stand(world, {
    station: from,
    radialDeg,
    distanceNm: Math.round(lengthNm / 5),
    altitudeFt,
    courseDeg: radialDeg,
    headingDeg: Math.round(radialDeg),
    wind: ask.wind ?? CALM,
  });
  return { from, to, lengthNm, track: line.azimuth, at };
}
