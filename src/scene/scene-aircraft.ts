/** The aircraft of a scene: where it is, by latitude and longitude or from a station of the scene, and how it flies. */

import type { LatLon } from "../earth/index.ts";
import { magneticDeg } from "../earth/index.ts";
import { placeOfPoint, readSignificantPoint, type StationPoint } from "../radio/index.ts";
import { type Catalogue, describeSome, hasFrame, stationsNamed, whichAreKnown } from "./find-station.ts";
import { badPlace, fromText, readPlace } from "./place.ts";
import { addFault, cited, type Reading } from "./reading.ts";
import { isBlank, offsetOf, openRecord, type RecordField, readField, scalarText } from "./record.ts";
import type { Aircraft } from "./scene.ts";
import { AIRCRAFT, aircraftLeaves } from "./scene-shape.ts";
import type { Gathered } from "./station-files.ts";

/** Knots; the club trainer's cruise. */
export const DEFAULT_TAS_KT = 100;
/** Farther out than this a position from a station is a slip, and on a chart of radials it has no meaning. */
const FARTHEST_NM = 300;

/** The aircraft, with null for what is at fault. */
export type AircraftRead = { readonly [Key in keyof Aircraft]: Aircraft[Key] | null };

export function readAircraft(reading: Reading, field: RecordField, stations: Gathered): AircraftRead | null {
  const record = openRecord(reading, field.node, AIRCRAFT, { what: "aircraft", offset: offsetOf(field) });
  if (!record) return null;
  const at = record.fields.get("at");
  const heading = readField(reading, record, "heading", aircraftLeaves.heading);
  const altitude = readField(reading, record, "altitude", aircraftLeaves.altitude);
  const tas = readField(reading, record, "tas", aircraftLeaves.tas);
  return {
    position: at ? readAircraftPlace(reading, at, stations) : null,
    heading: magneticDeg(heading?.value ?? 0),
    altitudeFt: altitude?.value ?? null,
    tasKt: tas?.value ?? DEFAULT_TAS_KT,
  };
}

function readAircraftPlace(reading: Reading, field: RecordField, stations: Gathered): LatLon | null {
  const text = scalarText(field.node);
  if (text === null || isBlank(field.node)) return readPlace(reading, field, "at")?.value ?? null;
  const offset = offsetOf(field);
  const read = readSignificantPoint(text);
  if (read.kind === "read")
    return read.point.kind === "place"
      ? read.point.position
      : placeFromStation(reading, read.point, text, offset, stations);
  if (!meansStation(text)) return fromText(reading, text, offset, "at")?.value ?? null;
  badPlace(reading, offset, "at", read.reason);
  return null;
}

/** `TXJ 400/18` or `TXJ24601` was meant as a point from a station, however it went wrong. */
const meansStation = (text: string): boolean =>
  /^\s*[A-Z][A-Z0-9]{0,4}\s+[^/]*\/[^/]*$/i.test(text) || /^\s*[A-Z]{2,5}\s*\d+\s*$/i.test(text);

function placeFromStation(
  reading: Reading,
  point: StationPoint,
  text: string,
  offset: number,
  stations: Gathered,
): LatLon | null {
  const refuse = (code: "unknown-ident" | "ambiguous-ident" | "no-radials" | "bad-position", why: string) => {
    addFault(reading, code, offset, `at ${cited(text)}: ${why}`);
    return null;
  };
  const catalogue: Catalogue = stations;
  const named = stationsNamed(catalogue, point.ident);
  const withRadials = named.filter((station) => station.kind !== "DME" && station.kind !== "VOT");
  const [station, another] = withRadials;
  if (named.length === 0) {
    // Its station may be among those that could not be read, and that has its own fault.
    if (stations.incomplete || stations.idents.has(point.ident)) return null;
    return refuse(
      "unknown-ident",
      `no station of this scene has the ident ${point.ident}; ${whichAreKnown(catalogue, point.ident)}`,
    );
  }
  if (!station)
    return refuse(
      "no-radials",
      `${point.ident} is a ${named[0]?.kind} and has no radials to count from; write latitude and longitude`,
    );
  if (another)
    return refuse(
      "ambiguous-ident",
      `${withRadials.length} stations have the ident ${point.ident}, ${describeSome(withRadials)}; write at: in latitude and longitude`,
    );
  if (!hasFrame(station))
    return refuse("bad-position", `${point.ident} stands poleward of 80 degrees, where radials have no use`);
  if (point.distanceNm > FARTHEST_NM)
    return refuse(
      "bad-position",
      `${point.distanceNm} NM is too far; a position is at most ${FARTHEST_NM} NM from its station`,
    );
  return placeOfPoint(point, station);
}
