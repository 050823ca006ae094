/** Where problems are set: any stations, with or without their land. */

import { latLonText } from "../earth/index.ts";
import { givesBearing, givesDistance, type Land, type Station } from "../radio/index.ts";
import { resolver, type Scene, type Situation } from "../scene/index.ts";

export interface World {
  readonly name: string;
  /** ISO date of every scene. */
  readonly date: string;
  readonly stations: readonly Station[];
  readonly land: Land | null;
  /** Stations on the air that give a bearing, no test signals. */
  readonly beacons: readonly Station[];
  /** Those of them with DME. */
  readonly beaconsWithDme: readonly Station[];
  /** 0 to 255: tells one set of stations from another in a problem's code. */
  readonly mark: number;
  resolve(scene: Scene): Situation;
}

/** Beyond this a set of stations is more than any problem needs, and resolving would be slow. */
export const MOST_STATIONS = 400;

/**
 * A world to set problems in. Throws RangeError with a sentence when the stations cannot serve: none that gives a bearing, or too many.
 */
export function practiceWorld(given: {
  readonly name: string;
  readonly date: string;
  readonly stations: readonly Station[];
  readonly land: Land | null;
}): World {
  const { stations, land } = given;
  if (stations.length > MOST_STATIONS)
    throw new RangeError(
      `Problems can be set on up to ${MOST_STATIONS} stations, and ${given.name} has ${stations.length}: choose those of one region.`,
    );
  const beacons = stations.filter(
    (station) => givesBearing(station) && station.kind !== "VOT" && station.status === "on-air",
  );
  if (beacons.length === 0)
    throw new RangeError(`${given.name} has no VOR on the air: problems need at least one.`);
  return {
    ...given,
    beacons,
    beaconsWithDme: beacons.filter(givesDistance),
    mark: markOf(stations, land, given.date),
    resolve: resolver(stations, land),
  };
}

/** A checksum (FNV-1a, folded to 8 bits) over what problems depend on. */
function markOf(stations: readonly Station[], land: Land | null, date: string): number {
  const peaks = land?.peaks.map(
    (peak) => `${latLonText(peak.position)} ${peak.elevationFt} ${peak.baseRadiusNm}`,
  );
  const text = [
    date,
    ...stations.map((station) =>
      [
        station.ident,
        station.kind,
        station.frequencyMhz,
        latLonText(station.position),
        station.elevationFt,
        station.declinationDeg,
        station.vorClass,
        station.dmeClass,
        station.status,
      ].join(" "),
    ),
    ...(peaks ?? []),
  ].join("\n");
  let hash = 0x811c9dc5;
  for (let at = 0; at < text.length; at += 1) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193);
  return (hash ^ (hash >>> 8) ^ (hash >>> 16) ^ (hash >>> 24)) & 0xff;
}
