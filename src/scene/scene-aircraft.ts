/** The aircraft of a scene: where it is, by latitude and longitude or from a station of the scene, and how it flies. */

import { magneticDeg } from "../earth/index.ts";
import type { Reading } from "./reading.ts";
import { offsetOf, openRecord, type RecordField, readField } from "./record.ts";
import type { Aircraft } from "./scene.ts";
import { readScenePlace } from "./scene-place.ts";
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
    position: at ? readScenePlace(reading, at, stations, "at") : null,
    heading: magneticDeg(heading?.value ?? 0),
    altitudeFt: altitude?.value ?? null,
    tasKt: tas?.value ?? DEFAULT_TAS_KT,
  };
}
