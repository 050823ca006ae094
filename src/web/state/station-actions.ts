/**
 * What a hand can do to the stations of a scene. A scene on the bench holds each ident once, as a station file does, and no station
 * poleward of 80 degrees, where radials have no use: an action that would break either leaves the scene as it was.
 */

import { direct, FRAME_LIMIT_LAT_DEG, inverse, type LatLon } from "../../earth/index.ts";
import { givesBearing, type Station } from "../../radio/index.ts";
import type { Scene } from "../../scene/index.ts";

export type StationAction =
  /** The scene's stations become these; of several with one ident the first stays. */
  | { readonly kind: "set-stations"; readonly stations: readonly Station[] }
  | { readonly kind: "add-station"; readonly station: Station }
  /** The station of that ident becomes another; it may get another ident. */
  | { readonly kind: "change-station"; readonly ident: string; readonly station: Station }
  /** A DME that stands apart goes with its station. */
  | { readonly kind: "move-station"; readonly ident: string; readonly to: LatLon }
  | { readonly kind: "remove-station"; readonly ident: string };

/** The scene after one action. The very same object when the action changes nothing or may not be done. */
export function actOnStations(scene: Scene, action: StationAction): Scene {
  const { stations } = scene;
  switch (action.kind) {
    case "set-stations":
      return withStations(scene, eachIdentOnce(action.stations.filter(canStand)));
    case "add-station":
      return identIsFree(scene, action.station.ident) ? put(scene, stations.length, action.station) : scene;
    case "change-station": {
      const renamed = action.station.ident !== action.ident;
      if (renamed && !identIsFree(scene, action.station.ident)) return scene;
      return put(scene, placeOf(scene, action.ident), action.station);
    }
    case "move-station": {
      const place = placeOf(scene, action.ident);
      const station = stations[place];
      return station === undefined ? scene : put(scene, place, stationMoved(station, action.to));
    }
    case "remove-station": {
      const place = placeOf(scene, action.ident);
      return withStations(
        scene,
        stations.filter((_, index) => index !== place),
      );
    }
  }
}

export const identIsFree = (scene: Scene, ident: string): boolean => placeOf(scene, ident) < 0;

/** Whether radials can be counted at the station, and at its DME. */
export const canStand = ({ position, dmeSite }: Station): boolean =>
  Math.abs(position.latDeg) <= FRAME_LIMIT_LAT_DEG &&
  Math.abs(dmeSite?.position.latDeg ?? 0) <= FRAME_LIMIT_LAT_DEG;

/** Where the first station of that ident stands in the list; -1 when there is none. */
const placeOf = (scene: Scene, ident: string): number =>
  scene.stations.findIndex((station) => station.ident === ident);

/** The scene with the station at that place of its list; a place that is not there, or a station that may not be, changes nothing. */
function put(scene: Scene, place: number, station: Station): Scene {
  if (place < 0 || !canStand(station)) return scene;
  const stations = [...scene.stations];
  stations[place] = station;
  return withStations(scene, stations);
}

function withStations(scene: Scene, stations: readonly Station[]): Scene {
  const before = scene.stations;
  const same =
    stations.length === before.length && stations.every((station, index) => station === before[index]);
  return same ? scene : { ...scene, stations, signal: signalAmong(scene.signal, before, stations) };
}

/** The signal with the reflectors whose stations are still there; one that got another ident takes its reflectors along. */
function signalAmong(
  signal: Scene["signal"],
  before: readonly Station[],
  after: readonly Station[],
): Scene["signal"] {
  if (signal === null || signal.reflectors.length === 0) return signal;
  const throwsBack = (station: Station | undefined): boolean =>
    station !== undefined && givesBearing(station) && station.kind !== "VOT";
  const reflectors = signal.reflectors.flatMap((reflector) => {
    if (after.some((station) => station.ident === reflector.ident && throwsBack(station))) return [reflector];
    const index = before.findIndex(({ ident }) => ident === reflector.ident);
    const renamed = after.length === before.length ? after[index] : undefined;
    return renamed !== undefined && throwsBack(renamed) ? [{ ...reflector, ident: renamed.ident }] : [];
  });
  const same = reflectors.every((reflector, index) => reflector === signal.reflectors[index]);
  return same && reflectors.length === signal.reflectors.length ? signal : { ...signal, reflectors };
}

/** Of several with one ident the first. */
export function eachIdentOnce(stations: readonly Station[]): readonly Station[] {
  const idents = new Set<string>();
  return stations.filter(({ ident }) => !idents.has(ident) && idents.add(ident));
}

/** The station at another place, with a DME that stands apart as far off and in the same direction. */
export function stationMoved(station: Station, to: LatLon): Station {
  const { position, dmeSite } = station;
  if (position.latDeg === to.latDeg && position.lonDeg === to.lonDeg) return station;
  if (dmeSite === null) return { ...station, position: to };
  const apart = inverse(position, dmeSite.position);
  const beside = apart.kind === "line" ? direct(to, apart.azimuth, apart.distanceNm) : to;
  return { ...station, position: to, dmeSite: { ...dmeSite, position: beside } };
}
