/**
 * A point named by a station: `TXJ246018` as a flight plan writes it (ident, radial in three figures, distance in three
 * figures of NM), or `TXJ 246/18` as a pilot says it; and the flight plan's own latitude and longitude, `4620N07805W`.
 * Source: ICAO Doc 4444 PANS-ATM, Appendix 2, Item 15 (c). The plan calls the bearing magnetic; what it means is the
 * station's radial, counted from the station's own north. Distances are along the ground, not slant.
 */

import {
  direct,
  type LatLon,
  latLon,
  type StationDeg,
  stationDeg,
  threeDigits,
  trueFromStation,
} from "../earth/index.ts";
import type { Station } from "./station.ts";

export interface StationPoint {
  readonly kind: "station-point";
  /** Upper case. */
  readonly ident: string;
  readonly radial: StationDeg;
  readonly distanceNm: number;
}

export type SignificantPoint = StationPoint | { readonly kind: "place"; readonly position: LatLon };

export type SignificantPointRead =
  | { readonly kind: "read"; readonly point: SignificantPoint }
  | { readonly kind: "unreadable"; readonly reason: string };

const FARTHEST_NM = 999;
const SPOKEN = /^([A-Z0-9]+)\s+(\d+(?:\.\d+)?)\s*\/\s*(\d+(?:\.\d+)?)$/;
const CODED = /^(?=.*[A-Z])([A-Z0-9]+)(\d{3})(\d{3})$/;
const PLACE = /^(\d{2})(\d{2})?([NS])(\d{3})(\d{2})?([EW])$/;

/** The point in a text, in upper or lower case, or one sentence why there is none. */
export function readSignificantPoint(text: string): SignificantPointRead {
  const written = text.trim().toUpperCase();
  const place = PLACE.exec(written);
  if (place) return readPlace(text, place);
  const spoken = SPOKEN.exec(written);
  const coded = CODED.exec(written);
  const found = spoken ?? coded;
  if (found === null)
    return unreadable(`"${text}" is not a point by a station; write it as TXJ 246/18 or TXJ246018`);
  const [, ident = "", radialText = "", distanceText = ""] = found;
  const least = spoken ? 1 : 2;
  if (ident.length < least || ident.length > 5)
    return unreadable(`the ident in "${text}" has ${ident.length} characters; it has ${least} to 5`);
  if (!/^\d{3}$/.test(radialText))
    return unreadable(`the radial in "${text}" is ${radialText}; a radial has three figures, 001 to 360`);
  if (Number(radialText) > 360)
    return unreadable(`the radial in "${text}" is ${radialText}; it must be 001 to 360`);
  const distanceNm = Number(distanceText);
  if (distanceNm > FARTHEST_NM)
    return unreadable(`the distance in "${text}" is ${distanceText} NM; it must be 0 to ${FARTHEST_NM}`);
  return {
    kind: "read",
    point: { kind: "station-point", ident, radial: stationDeg(Number(radialText)), distanceNm },
  };
}

/**
 * The flight plan's form, `TXJ246018`: whole degrees and miles, north 360. Throws RangeError where the distance does not
 * round into 0..999 NM or the ident has not two to five letters and figures.
 */
export function flightPlanPoint(point: Omit<StationPoint, "kind">): string {
  const miles = Math.round(point.distanceNm);
  if (!(miles >= 0 && miles <= FARTHEST_NM))
    throw new RangeError(`a flight plan point lies 0 to ${FARTHEST_NM} NM away, got ${point.distanceNm}`);
  if (!/^[A-Z0-9]{2,5}$/.test(point.ident))
    throw new RangeError(`a flight plan ident has two to five letters or figures, got "${point.ident}"`);
  return `${point.ident}${threeDigits(point.radial)}${String(miles).padStart(3, "0")}`;
}

/** The spoken form, `TXJ 246/18`: radial to the whole degree, distance to the tenth of a mile (none for a whole mile). */
export const spokenPoint = (point: Omit<StationPoint, "kind">): string =>
  `${point.ident} ${threeDigits(point.radial)}/${Number(point.distanceNm.toFixed(1))}`;

/** Where the point is: along the station's radial by its own north, that far over the ground. */
export const placeOfPoint = (
  point: Pick<StationPoint, "radial" | "distanceNm">,
  station: Pick<Station, "position" | "declinationDeg">,
): LatLon =>
  direct(station.position, trueFromStation(point.radial, station.declinationDeg), point.distanceNm);

function readPlace(text: string, found: RegExpExecArray): SignificantPointRead {
  const [, latitude, latitudeMin, northOrSouth, longitude, longitudeMin, eastOrWest] = found;
  if ((latitudeMin === undefined) !== (longitudeMin === undefined))
    return unreadable(`"${text}" gives minutes on one side only; write 46N078W or 4620N07805W`);
  const minutes = [latitudeMin, longitudeMin].map((part) => Number(part ?? 0));
  if (minutes.some((part) => part > 59)) return unreadable(`"${text}" has minutes above 59`);
  const [latMin = 0, lonMin = 0] = minutes;
  const latDeg = Number(latitude) + latMin / 60;
  const lonDeg = Number(longitude) + lonMin / 60;
  if (latDeg > 90) return unreadable(`the latitude in "${text}" is above 90 degrees`);
  if (lonDeg > 180) return unreadable(`the longitude in "${text}" is above 180 degrees`);
  const position = latLon(northOrSouth === "S" ? -latDeg : latDeg, eastOrWest === "W" ? -lonDeg : lonDeg);
  return { kind: "read", point: { kind: "place", position } };
}

const unreadable = (reason: string): SignificantPointRead => ({ kind: "unreadable", reason });
