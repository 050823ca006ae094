/** A place in a scene file: from one of its stations by radial and distance, or by latitude and longitude. */

import type { LatLon } from "../earth/index.ts";
import { readAircraftPlace } from "./aircraft-place.ts";
import { badPlace, readPlace } from "./place.ts";
import { addFault, cited, type Reading } from "./reading.ts";
import { isBlank, offsetOf, type RecordField, scalarText } from "./record.ts";
import type { Gathered } from "./station-files.ts";

/** The place, or null with its fault. `name` is what a sentence calls it. */
export function readScenePlace(
  reading: Reading,
  field: RecordField,
  stations: Gathered,
  name: string,
): LatLon | null {
  const text = scalarText(field.node);
  if (text === null || isBlank(field.node)) return readPlace(reading, field, name)?.value ?? null;
  const offset = offsetOf(field);
  const read = readAircraftPlace(text, stations);
  if (read.ok) return read.position;
  const { code, reason, point } = read;
  if (point === null) badPlace(reading, offset, name, reason);
  // Its station may be among those that could not be read, and that has its own fault.
  else if (code !== "unknown-ident" || !(stations.incomplete || stations.idents.has(point.ident)))
    addFault(reading, code, offset, `${name} ${cited(text)}: ${reason}`);
  return null;
}
