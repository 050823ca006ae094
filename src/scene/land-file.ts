/** The land under a scene, from a land file or written inside the scene. */

import { isMap, isSeq, type Node } from "yaml";
import type { LatLon } from "../earth/index.ts";
import type { Airfield, Island, Land, Peak, ReliefArea } from "../radio/index.ts";
import type { Fault } from "./fault.ts";
import { openFile } from "./file-kind.ts";
import {
  AIRFIELD,
  airfieldLeaves,
  ISLAND,
  islandLeaves,
  LAND,
  LAND_FILE,
  landFileLeaves,
  PEAK,
  peakLeaves,
  RELIEF,
  reliefLeaves,
} from "./land-shape.ts";
import { readPlace } from "./place.ts";
import { addFault, cited, inReadingOrder, type Reading } from "./reading.ts";
import {
  type FileRecord,
  isBlank,
  offsetOf,
  openRecord,
  type RecordField,
  readField,
  scalarText,
} from "./record.ts";
import type { RecordShape } from "./shape.ts";
import { parseYamlFile } from "./yaml-file.ts";

export type LandRead =
  | { readonly ok: true; readonly land: Land }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/** A class session reads dozens of scenes over one land, whose coast takes longer to read than all the rest of them. */
const KEPT = 4;
const kept = new Map<string, LandRead>();

/** Reads a land file. Never throws. `path` is what faults call the file. The last few are kept, by their whole text. */
export function readLand(text: string, { path }: { readonly path: string }): LandRead {
  const key = `${path}\n${text}`;
  const before = kept.get(key);
  if (before) return before;
  const read = readLandAnew(text, path);
  if (kept.size >= KEPT) kept.clear();
  kept.set(key, read);
  return read;
}

function readLandAnew(text: string, path: string): LandRead {
  const { reading, root } = parseYamlFile(text, path);
  const record = root && openFile(reading, root, "land", LAND_FILE);
  const land = record && landOf(reading, record);
  return land && reading.faults.length === 0
    ? { ok: true, land }
    : { ok: false, faults: inReadingOrder(reading.faults, [path]) };
}

/** The land written inside a scene. */
export function readInlineLand(reading: Reading, field: RecordField): Land | null {
  const record = openRecord(reading, field.node, LAND, {
    what: "land",
    label: "land ",
    offset: offsetOf(field),
  });
  return record && landOf(reading, record);
}

function landOf(reading: Reading, record: FileRecord): Land {
  const name = readField(reading, record, "name", landFileLeaves.name);
  return {
    name: name?.value ?? "",
    islands: each(reading, record, "islands", "an island", ISLAND, readIsland),
    // Lowest first, so that higher ground is drawn over lower.
    relief: each(reading, record, "relief", "an area of relief", RELIEF, readRelief).sort(
      (one, other) => one.aboveFt - other.aboveFt,
    ),
    peaks: each(reading, record, "peaks", "a peak", PEAK, readPeak),
    airfields: each(reading, record, "airfields", "an airfield", AIRFIELD, readAirfield),
  };
}

type ReadItem<T> = (reading: Reading, record: FileRecord) => T | null;

function each<T>(
  reading: Reading,
  record: FileRecord,
  key: string,
  what: string,
  shape: RecordShape,
  read: ReadItem<T>,
): T[] {
  const field = record.fields.get(key);
  if (!field || isBlank(field.node)) return [];
  if (!isSeq(field.node)) {
    addFault(
      reading,
      "not-a-list",
      offsetOf(field),
      `${record.label}${key} is not a list; write each under it, beginning with a dash`,
    );
    return [];
  }
  return (field.node.items as (Node | null)[]).flatMap((node) => {
    const offset = node?.range?.[0] ?? offsetOf(field);
    const name = isMap(node) ? scalarText(node.get("name", true)) : null;
    const label = name === null ? "" : `${cited(name)} `;
    const item = openRecord(reading, node, shape, { what, label, offset });
    const value = item && read(reading, item);
    return value ? [value] : [];
  });
}

const readIsland: ReadItem<Island> = (reading, record) => {
  const name = readField(reading, record, "name", islandLeaves.name);
  const coast = readRing(reading, record, "coast");
  return name && coast && { name: name.value, coast };
};

const readRelief: ReadItem<ReliefArea> = (reading, record) => {
  const above = readField(reading, record, "above", reliefLeaves.above);
  const ring = readRing(reading, record, "ring");
  return above && ring && { aboveFt: above.value, ring };
};

const readPeak: ReadItem<Peak> = (reading, record) => {
  const name = readField(reading, record, "name", peakLeaves.name);
  const position = placeAt(reading, record);
  const elevation = readField(reading, record, "elevation", peakLeaves.elevation);
  const radius = readField(reading, record, "radius", peakLeaves.radius);
  if (!name || !position || !elevation || !radius) return null;
  return { name: name.value, position, elevationFt: elevation.value, baseRadiusNm: radius.value };
};

const readAirfield: ReadItem<Airfield> = (reading, record) => {
  const name = readField(reading, record, "name", airfieldLeaves.name);
  const position = placeAt(reading, record);
  const elevation = readField(reading, record, "elevation", airfieldLeaves.elevation);
  const runway = readField(reading, record, "runway", airfieldLeaves.runway);
  if (!name || !position || !elevation) return null;
  return { name: name.value, position, elevationFt: elevation.value, runway: runway?.value ?? null };
};

function placeAt(reading: Reading, record: FileRecord): LatLon | null {
  const field = record.fields.get("at");
  return field ? (readPlace(reading, field, `${record.label}at`)?.value ?? null) : null;
}

function readRing(reading: Reading, record: FileRecord, key: string): LatLon[] | null {
  const field = record.fields.get(key);
  if (!field) return null;
  const items = isSeq(field.node) ? (field.node.items as (Node | null)[]) : null;
  if (items === null || items.length < 3) {
    const got = items === null ? "is not a list" : `has ${items.length} points`;
    addFault(
      reading,
      items === null ? "not-a-list" : "wrong-count",
      offsetOf(field),
      `${record.label}${key} ${got}; write at least three points such as - [-10.25, 1.40]`,
    );
    return null;
  }
  const points = items.flatMap((node) => {
    const keyOffset = node?.range?.[0] ?? offsetOf(field);
    const point = readPlace(reading, { key, keyOffset, node }, `${record.label}${key}`);
    return point ? [point.value] : [];
  });
  return withoutRepeatedEnd(points);
}

/** A ring is closed by itself; a file that says its first point again at the end means the same ring. */
function withoutRepeatedEnd(points: LatLon[]): LatLon[] {
  const first = points[0];
  const last = points.at(-1);
  const repeats = points.length > 3 && first?.latDeg === last?.latDeg && first?.lonDeg === last?.lonDeg;
  return repeats ? points.slice(0, -1) : points;
}
