/**
 * Where a text puts an aircraft: `TXJ 246/18` or `TXJ246018` by a station's radial and distance, or latitude and longitude in any form.
 * The rule of the scene file, and of whatever else asks a person for a place.
 */

import { type LatLon, readLatLon } from "../earth/index.ts";
import { placeOfPoint, readSignificantPoint, type StationPoint } from "../radio/index.ts";
import type { FaultCode } from "./fault-codes.ts";
import { type Catalogue, describeSome, hasFrame, stationsNamed, whichAreKnown } from "./find-station.ts";

/** Farther out than this a position from a station is a slip, and on a chart of radials it has no meaning. */
const FARTHEST_NM = 300;

export type AircraftPlaceCode = Extract<
  FaultCode,
  "unknown-ident" | "ambiguous-ident" | "no-radials" | "bad-position"
>;

export type AircraftPlaceRead =
  | { readonly ok: true; readonly position: LatLon }
  | {
      readonly ok: false;
      readonly code: AircraftPlaceCode;
      /** One sentence, lower-case start, no full stop. */
      readonly reason: string;
      /** The point that was understood and yet leads nowhere; null when the text itself cannot be read. */
      readonly point: StationPoint | null;
    };

/** The place the text names among these stations, or why it names none. Never throws. */
export function readAircraftPlace(text: string, stations: Catalogue): AircraftPlaceRead {
  const read = readSignificantPoint(text);
  if (read.kind === "read")
    return read.point.kind === "place"
      ? { ok: true, position: read.point.position }
      : placeFromStation(read.point, stations);
  if (meansStation(text)) return unreadable(read.reason);
  const place = readLatLon(text);
  return place.ok ? place : unreadable(place.reason);
}

/** `TXJ 400/18` or `TXJ24601` was meant as a point from a station, however it went wrong. */
const meansStation = (text: string): boolean =>
  /^\s*[A-Z][A-Z0-9]{0,4}\s+[^/]*\/[^/]*$/i.test(text) || /^\s*[A-Z]{2,5}\s*\d+\s*$/i.test(text);

function placeFromStation(point: StationPoint, stations: Catalogue): AircraftPlaceRead {
  const { ident, distanceNm } = point;
  const refused = (code: AircraftPlaceCode, reason: string) => ({ ok: false, code, reason, point }) as const;
  const named = stationsNamed(stations, ident);
  const withRadials = named.filter((station) => station.kind !== "DME" && station.kind !== "VOT");
  const [station, another] = withRadials;
  if (named.length === 0)
    return refused(
      "unknown-ident",
      `no station of this scene has the ident ${ident}; ${whichAreKnown(stations, ident)}`,
    );
  if (!station)
    return refused(
      "no-radials",
      `${ident} is a ${named[0]?.kind} and has no radials to count from; write latitude and longitude`,
    );
  if (another)
    return refused(
      "ambiguous-ident",
      `${withRadials.length} stations have the ident ${ident}, ${describeSome(withRadials)}; write at: in latitude and longitude`,
    );
  if (!hasFrame(station))
    return refused("bad-position", `${ident} stands poleward of 80 degrees, where radials have no use`);
  if (distanceNm > FARTHEST_NM)
    return refused(
      "bad-position",
      `${distanceNm} NM is too far; a position is at most ${FARTHEST_NM} NM from its station`,
    );
  return { ok: true, position: placeOfPoint(point, station) };
}

const unreadable = (reason: string): AircraftPlaceRead => ({
  ok: false,
  code: "bad-position",
  reason,
  point: null,
});
