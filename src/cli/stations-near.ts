/** The stations near a place, nearest first. */

import { geodesicDistanceNm, type LatLon, latLonText, readLatLon } from "../earth/index.ts";
import type { Station } from "../radio/index.ts";
import { didYouMean } from "./did-you-mean.ts";
import { CallFault } from "./faults.ts";

/** The place that a text names: an ident of the list, or latitude and longitude. Throws CallFault when it names none or several. */
export function placeNamed(text: string, stations: readonly Station[]): LatLon {
  const named = stations.filter((station) => station.ident === text.trim().toUpperCase());
  const [only, second] = named;
  if (only !== undefined && second === undefined) return only.position;
  if (only !== undefined)
    throw new CallFault(
      `${named.length} stations are called ${only.ident}, the first at ${latLonText(only.position)}; give latitude and longitude instead`,
    );
  const read = readLatLon(text);
  if (read.ok) return read.position;
  const idents = stations.map((station) => station.ident);
  throw new CallFault(
    /^[A-Za-z0-9]{1,5}$/.test(text)
      ? `no station is called ${text}${didYouMean(text, idents)}`
      : `"${text}" is neither an ident of the file nor a position: ${read.reason}`,
  );
}

/** Those at most `withinNm` away along the ground, nearest first. */
export function stationsNear(stations: readonly Station[], place: LatLon, withinNm: number): Station[] {
  return stations
    .map((station) => ({ station, distanceNm: geodesicDistanceNm(place, station.position) }))
    .filter(({ distanceNm }) => distanceNm <= withinNm)
    .sort((one, other) => one.distanceNm - other.distanceNm)
    .map(({ station }) => station);
}
