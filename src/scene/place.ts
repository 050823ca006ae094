/** A place read from a file: one text, `[lat, lon]`, or `{ lat, lon }`. The rules of the text are `earth`'s. */

import { isMap, isSeq, type Node } from "yaml";
import { type LatLon, readLatLon } from "../earth/index.ts";
import { LAT_LON } from "./position-shape.ts";
import { addFault, type Reading } from "./reading.ts";
import { isBlank, offsetOf, openRecord, type RecordField, scalarText, type Written } from "./record.ts";

const EXAMPLE = "write it like 10°18.8′S 002°03.7′E or { lat: -10.313, lon: 2.062 }";

/** The place a value names; null with a fault when it names none. `name` is what a sentence calls the value. */
export function readPlace(reading: Reading, field: RecordField, name: string): Written<LatLon> | null {
  const { node } = field;
  if (isMap(node)) return fromRecord(reading, field, name);
  if (isSeq(node)) return fromPair(reading, field, node.items as Node[], name);
  const offset = offsetOf(field);
  if (isBlank(node)) {
    addFault(reading, "blank", offset, `${name} has no value; ${EXAMPLE}`);
    return null;
  }
  return fromText(reading, scalarText(node) ?? "", offset, name);
}

/** The place one text names. */
function fromText(reading: Reading, text: string, offset: number, name: string): Written<LatLon> | null {
  const read = readLatLon(text);
  if (read.ok) return { value: read.position, text, offset };
  badPlace(reading, offset, name, read.reason);
  return null;
}

export function badPlace(reading: Reading, offset: number, name: string, reason: string): void {
  // Most reasons say themselves what would be right.
  const remedy = /;|lies outside|must be/.test(reason) ? "" : `; ${EXAMPLE}`;
  addFault(reading, "bad-position", offset, `${name}: ${reason}${remedy}`);
}

function fromRecord(reading: Reading, field: RecordField, name: string): Written<LatLon> | null {
  const record = openRecord(reading, field.node, LAT_LON, {
    what: "a position",
    label: name,
    offset: field.keyOffset,
  });
  const lat = record?.fields.get("lat");
  const lon = record?.fields.get("lon");
  return lat && lon ? joined(reading, lat.node, lon.node, offsetOf(field), name) : null;
}

function fromPair(reading: Reading, field: RecordField, items: Node[], name: string): Written<LatLon> | null {
  const [lat, lon] = items;
  if (items.length === 2 && lat && lon) return joined(reading, lat, lon, offsetOf(field), name);
  const count = items.length === 1 ? "1 value" : `${items.length} values`;
  addFault(
    reading,
    "bad-position",
    offsetOf(field),
    `${name} is a list of ${count}; a position is two, [latitude, longitude], such as [-10.313, 2.062]`,
  );
  return null;
}

/** Latitude and longitude given apart; the fault stands at the one that is wrong. */
function joined(
  reading: Reading,
  latNode: Node | null,
  lonNode: Node | null,
  offset: number,
  name: string,
): Written<LatLon> | null {
  const lat = scalarText(latNode);
  const lon = scalarText(lonNode);
  if (lat === null || lon === null) {
    const missing = lat === null ? "latitude" : "longitude";
    addFault(reading, "bad-position", offset, `${name} has no ${missing} written as one value; ${EXAMPLE}`);
    return null;
  }
  const text = `${lat} ${lon}`;
  const read = readLatLon(text);
  if (read.ok) return { value: read.position, text, offset };
  const at = read.part === lat ? latNode : read.part === lon ? lonNode : null;
  badPlace(reading, at?.range?.[0] ?? offset, name, read.reason);
  return null;
}
