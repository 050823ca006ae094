/** The aircraft of a scene: where it is, by latitude and longitude or from a station of the scene, and how it flies. */

import type { LatLon } from "../earth/index.ts";
import { magneticDeg } from "../earth/index.ts";
import { readAircraftPlace } from "./aircraft-place.ts";
import { badPlace, readPlace } from "./place.ts";
import { addFault, cited, type Reading } from "./reading.ts";
import { isBlank, offsetOf, openRecord, type RecordField, readField, scalarText } from "./record.ts";
import type { Aircraft } from "./scene.ts";
import { AIRCRAFT, aircraftLeaves } from "./scene-shape.ts";
import type { Gathered } from "./station-files.ts";

/** Knots; the club trainer's cruise. */
export const DEFAULT_TAS_KT = 100;

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
    position: at ? placeOf(reading, at, stations) : null,
    heading: magneticDeg(heading?.value ?? 0),
    altitudeFt: altitude?.value ?? null,
    tasKt: tas?.value ?? DEFAULT_TAS_KT,
  };
}

function placeOf(reading: Reading, field: RecordField, stations: Gathered): LatLon | null {
  const text = scalarText(field.node);
  if (text === null || isBlank(field.node)) return readPlace(reading, field, "at")?.value ?? null;
  const offset = offsetOf(field);
  const read = readAircraftPlace(text, stations);
  if (read.ok) return read.position;
  const { code, reason, point } = read;
  if (point === null) badPlace(reading, offset, "at", reason);
  // Its station may be among those that could not be read, and that has its own fault.
  else if (code !== "unknown-ident" || !(stations.incomplete || stations.idents.has(point.ident)))
    addFault(reading, code, offset, `at ${cited(text)}: ${reason}`);
  return null;
}
