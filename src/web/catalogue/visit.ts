/** Going to a station of a list: which stations the scene then has. */

import { geodesicDistanceNm, type LatLon, magneticModel } from "../../earth/index.ts";
import type { Station } from "../../radio/index.ts";
import type { Scene } from "../../scene/index.ts";
import { canStand } from "../state/station-actions.ts";
import { stationKey } from "./station-lists.ts";

/** Neighbours come along within this, NM: an hour and a half of flight in a light aircraft. */
export const NEIGHBOURS_WITHIN_NM = 150;
/** The nearest so many; a chart with more is a carpet, and a link that carries them a scroll. */
export const MOST_NEIGHBOURS = 60;
/** Farther than any station is received from an aircraft below 60,000 ft. */
const OUT_OF_REACH_NM = 300;

export type Visit =
  | { readonly kind: "visit"; readonly stations: readonly Station[] }
  /** `sentence`: why the scene cannot hold the station; upper-case start, with a full stop. */
  | { readonly kind: "refused"; readonly sentence: string };

/**
 * The stations of the scene when `chosen` is visited: it and its neighbours come in, and stations that the lists can bring back go where
 * neither the aircraft nor anyone near the chosen one could receive them. The scene's own stay, whatever comes.
 */
export function visitStation(scene: Scene, published: readonly Station[], chosen: Station): Visit {
  const aircraft = scene.aircraft.position;
  const where = chosen.position;
  if (!canStand(chosen))
    return refused(`${chosen.ident} stands poleward of 80 degrees, where radials have no use.`);
  const canComeBack = new Set(published.map(stationKey));
  const chosenKey = stationKey(chosen);
  const kept = scene.stations.filter((station) => {
    if (stationKey(station) === chosenKey) return true;
    if (!canComeBack.has(stationKey(station))) return true;
    if (station.ident === chosen.ident) return false;
    return (
      within(OUT_OF_REACH_NM, station.position, where) || within(OUT_OF_REACH_NM, station.position, aircraft)
    );
  });
  const idents = new Set(kept.map(({ ident }) => ident));
  if (idents.has(chosen.ident) && !kept.some((station) => stationKey(station) === chosenKey))
    return refused(
      `A station of this scene's own has the ident ${chosen.ident} already, and a scene holds each ident once.`,
    );
  const neighbours = published
    .filter((station) => canStand(station) && within(NEIGHBOURS_WITHIN_NM, station.position, where))
    .map((station) => ({ station, apartNm: geodesicDistanceNm(where, station.position) }))
    .sort((a, b) => a.apartNm - b.apartNm)
    .slice(0, MOST_NEIGHBOURS + 1);
  const asOfDate = estimatedFor(scene.date);
  const coming: Station[] = [];
  for (const station of [chosen, ...neighbours.map((each) => each.station)]) {
    if (idents.has(station.ident)) continue;
    idents.add(station.ident);
    coming.push(asOfDate(station));
  }
  return { kind: "visit", stations: [...kept, ...coming] };
}

/**
 * Where a list gave no declination the model's variation stands in, and for the scene's own date, as it would be read from the scene's
 * file.
 */
function estimatedFor(date: string): (station: Station) => Station {
  const model = magneticModel(date);
  return (station) =>
    station.declinationEstimated
      ? { ...station, declinationDeg: model.field(station.position, station.elevationFt).variationDeg }
      : station;
}

/** One degree of latitude is at least this many NM anywhere on the ellipsoid. */
const LEAST_NM_PER_DEG = 59.7;

const within = (limitNm: number, one: LatLon, other: LatLon): boolean =>
  Math.abs(one.latDeg - other.latDeg) * LEAST_NM_PER_DEG <= limitNm &&
  geodesicDistanceNm(one, other) <= limitNm;

const refused = (sentence: string): Visit => ({ kind: "refused", sentence });
