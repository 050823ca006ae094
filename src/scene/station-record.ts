/** One station out of a file: its shape, and then what its parts must be to each other. */

import { isMap, type Node } from "yaml";
import {
  FRAME_LIMIT_LAT_DEG,
  geodesicDistanceNm,
  type LatLon,
  latLonText,
  variation,
} from "../earth/index.ts";
import {
  DME_CLASSES,
  type DmeClass,
  defaultEirpW,
  type Station,
  type StationKind,
  VOR_CLASSES,
  type VorClass,
} from "../radio/index.ts";
import { readPlace } from "./place.ts";
import { addFault, cited, type Reading } from "./reading.ts";
import { type FileRecord, openRecord, readField, scalarText, type Written } from "./record.ts";
import { STATION, stationLeaves } from "./station-shape.ts";
import { hasBearing, hasDistance, readTuning } from "./station-tuning.ts";

export interface StationRead {
  /** Null when something in it is at fault. */
  readonly station: Station | null;
  /** As written, even of a station at fault; null when it has none that can be read. */
  readonly ident: Written<string> | null;
}

/** Reads one station. `date` (ISO) is the day for which a missing declination is estimated. */
export function readStation(reading: Reading, node: Node | null, date: string, offset: number): StationRead {
  const label = identLabel(node);
  const record = openRecord(reading, node, STATION, { what: "a station", label, offset });
  if (!record) return { station: null, ident: null };
  const before = reading.faults.length;
  const ident = readField(reading, record, "ident", stationLeaves.ident, "");
  const name = readField(reading, record, "name", stationLeaves.name);
  const kind = readField(reading, record, "kind", stationLeaves.kind);
  const tuned = readTuning(reading, record, kind?.value ?? null);
  const at = placeOf(reading, record, "at");
  const elevation = readField(reading, record, "elevation", stationLeaves.elevation);
  const declination = readField(reading, record, "declination", stationLeaves.declination);
  const declinationDeg = declination && readDeclination(reading, declination, label);
  const classes = readClasses(reading, record, kind?.value ?? null);
  const status = readField(reading, record, "status", stationLeaves.status);
  const power = readField(reading, record, "power", stationLeaves.power);
  const dmeAt = placeOf(reading, record, "dmeAt");
  const dmeElevation = readField(reading, record, "dmeElevation", stationLeaves.dmeElevation);
  if (kind && (dmeAt ?? dmeElevation)) needsDistance(reading, record, kind.value);
  if (at) refusePolar(reading, at, `${label}at`);
  if (at && dmeAt) refuseFar(reading, at, dmeAt, label);
  if (reading.faults.length > before || !ident || !kind || !tuned || !at || !elevation || !classes)
    return { station: null, ident };
  const dmeSite =
    dmeAt || dmeElevation
      ? { position: dmeAt?.value ?? at.value, elevationFt: dmeElevation?.value ?? elevation.value }
      : null;
  const station: Station = {
    ident: ident.value,
    name: name?.value ?? ident.value,
    kind: kind.value,
    ...tuned,
    position: at.value,
    elevationFt: elevation.value,
    dmeSite,
    declinationDeg:
      declinationDeg ?? variation({ position: at.value, altitudeFt: elevation.value, date }).variationDeg,
    declinationEstimated: declinationDeg === null,
    ...classes,
    status: status?.value ?? "on-air",
    eirpW: power?.value ?? defaultEirpW(classes.vorClass),
  };
  return { station, ident };
}

/** What stands before the name of a value in sentences: the ident, where there is one. */
function identLabel(node: Node | null): string {
  const ident = isMap(node) ? scalarText(node.get("ident", true)) : null;
  return ident === null ? "" : `${cited(ident)} `;
}

function placeOf(reading: Reading, record: FileRecord, key: string): Written<LatLon> | null {
  const field = record.fields.get(key);
  return field ? readPlace(reading, field, `${record.label}${key}`) : null;
}

/** Degrees east positive out of `10W`, `7.5 E` or `-10`; the shape has seen to the form. */
function readDeclination(reading: Reading, { text, offset }: Written<string>, label: string): number | null {
  const degrees = Number.parseFloat(text);
  const declinationDeg = /w$/i.test(text) ? -degrees : degrees;
  if (Math.abs(declinationDeg) <= 180) return declinationDeg + 0;
  addFault(
    reading,
    "out-of-range",
    offset,
    `${label}declination ${cited(text)} is out of range; write 0 to 180 degrees with E or W, such as 10W`,
  );
  return null;
}

interface Classes {
  readonly vorClass: VorClass | null;
  readonly dmeClass: DmeClass | null;
}

const isVorClass = (text: string): text is VorClass => (VOR_CLASSES as readonly string[]).includes(text);
const isDmeClass = (text: string): text is DmeClass => (DME_CLASSES as readonly string[]).includes(text);

/** One class, or one for each part; null with a fault when it cannot be the station's. */
function readClasses(reading: Reading, record: FileRecord, kind: StationKind | null): Classes | null {
  const written = readField(reading, record, "class", stationLeaves.class);
  if (!written) return { vorClass: null, dmeClass: null };
  const [first = "", second] = written.text.split("/");
  const refuse = (what: string): null => {
    addFault(reading, "bad-class", written.offset, `${record.label}class ${cited(written.text)} ${what}`);
    return null;
  };
  const vorClass = isVorClass(first) ? first : null;
  const dmeText = second ?? (vorClass ? null : first);
  const dmeClass = dmeText !== null && isDmeClass(dmeText) ? dmeText : null;
  if ((!vorClass && !dmeClass) || (second !== undefined && !(vorClass && dmeClass)))
    return refuse("is not known; a class is T, L, H, VL, VH, DL or DH, or one of each part such as VH/DH");
  if (kind && dmeClass && !hasDistance(kind))
    return refuse(`names a distance part, but a ${kind} has none; leave ${dmeClass} out`);
  if (kind === "VOT") return refuse("is given, but a VOT has no published service volume; leave class out");
  if (kind && !hasBearing(kind) && (vorClass === "VL" || vorClass === "VH"))
    return refuse(`names a VOR part, but a ${kind} has none; write DL or DH`);
  return { vorClass, dmeClass };
}

function refusePolar(reading: Reading, { value, offset }: Written<LatLon>, name: string): void {
  if (Math.abs(value.latDeg) <= FRAME_LIMIT_LAT_DEG) return;
  addFault(
    reading,
    "bad-position",
    offset,
    `${name}: latitude ${latLonText(value).split(" ")[0]} is too near a pole for radials; a station stands from 80 S to 80 N`,
  );
}

/** A DME farther from its VOR than this is a slip of the pen, NM. */
const FARTHEST_DME_NM = 10;

function refuseFar(reading: Reading, at: Written<LatLon>, dmeAt: Written<LatLon>, label: string): void {
  const apartNm = geodesicDistanceNm(at.value, dmeAt.value);
  if (apartNm <= FARTHEST_DME_NM) return;
  addFault(
    reading,
    "bad-position",
    dmeAt.offset,
    `${label}dmeAt lies ${apartNm.toFixed(0)} NM from the station; a DME stands within ${FARTHEST_DME_NM} NM of its VOR`,
  );
}

function needsDistance(reading: Reading, record: FileRecord, kind: StationKind): void {
  if (hasDistance(kind)) return;
  const field = record.fields.get("dmeAt") ?? record.fields.get("dmeElevation");
  if (!field) return;
  addFault(
    reading,
    "no-distance-part",
    field.keyOffset,
    `${record.label}${field.key} is given, but a ${kind} has no DME; leave it out`,
  );
}
