/** The receivers of a scene: what each is tuned to, by frequency or by ident, its course and its face. */

import { isMap, isSeq, type Node } from "yaml";
import { type LatLon, stationDeg } from "../earth/index.ts";
import type { ReceiverSettings } from "../panel/index.ts";
import { explainFrequency, readFrequency, type Station, sameChannel, serviceOf } from "../radio/index.ts";
import { COVER_WORDS } from "./cover.ts";
import { hasFrame, nearest, stationsAround, stationsNamed, whichAreKnown } from "./find-station.ts";
import { addFault, cited, type Reading } from "./reading.ts";
import {
  type FileRecord,
  isBlank,
  offsetOf,
  openRecord,
  type RecordField,
  readField,
  scalarText,
  type Written,
} from "./record.ts";
import { MOST_RECEIVERS, RECEIVER, receiverLeaves } from "./scene-shape.ts";
import type { Gathered } from "./station-files.ts";

export interface ReceiversRead {
  readonly receivers: readonly ReceiverSettings[];
  /** Every name given or understood, sound receivers or not. */
  readonly names: readonly string[];
  /** Stations tuned by their ident. */
  readonly tunedStations: ReadonlySet<Station>;
}

export function readReceivers(
  reading: Reading,
  field: RecordField,
  stations: Gathered,
  aircraft: LatLon | null,
): ReceiversRead {
  const receivers: ReceiverSettings[] = [];
  const names: string[] = [];
  const tunedStations = new Set<Station>();
  const items = isSeq(field.node) ? (field.node.items as (Node | null)[]) : [];
  const count = isBlank(field.node) ? 0 : items.length;
  if (!isSeq(field.node) && !isBlank(field.node))
    addFault(
      reading,
      "not-a-list",
      offsetOf(field),
      "receivers is not a list; write each under it as - { name: NAV1, tune: 115.60, course: 070 }",
    );
  else if (count < 1 || count > MOST_RECEIVERS)
    addFault(
      reading,
      "wrong-count",
      count < 1 ? field.keyOffset : offsetOf(field),
      `${count < 1 ? "no receivers are" : `${count} receivers are`} given; a scene has one to four`,
    );
  items.forEach((node, index) => {
    const offset = node?.range?.[0] ?? offsetOf(field);
    const before = { index, offset, names, stations, aircraft };
    const { settings, name, station } = readReceiver(reading, node, before);
    names.push(name);
    if (settings) receivers.push(settings);
    if (station) tunedStations.add(station);
  });
  return { receivers, names, tunedStations };
}

interface Before {
  /** From 0. */
  readonly index: number;
  readonly offset: number;
  /** Of the receivers before this one. */
  readonly names: readonly string[];
  readonly stations: Gathered;
  readonly aircraft: LatLon | null;
}

interface ReceiverRead {
  readonly settings: ReceiverSettings | null;
  readonly name: string;
  readonly station: Station | null;
}

function readReceiver(reading: Reading, node: Node | null, before: Before): ReceiverRead {
  const standard = `NAV${before.index + 1}`;
  const given = isMap(node) ? scalarText(node.get("name", true)) : null;
  const label = `${cited(given ?? standard)} `;
  const record = openRecord(reading, node, RECEIVER, { what: "a receiver", label, offset: before.offset });
  if (!record) return { settings: null, name: standard, station: null };
  const name = readField(reading, record, "name", receiverLeaves.name, "");
  if (name) refuseName(reading, name, before);
  else if (!given && before.names.includes(standard)) refuseName(reading, unnamed(record, standard), before);
  const tune = readField(reading, record, "tune", receiverLeaves.tune);
  const tuned = tune && readTune(reading, tune, label, before);
  const course = readField(reading, record, "course", receiverLeaves.course);
  const face = readField(reading, record, "face", receiverLeaves.face);
  const error = readField(reading, record, "error", receiverLeaves.error);
  const settings = tuned && {
    name: name?.value ?? standard,
    frequencyMhz: tuned.frequencyMhz,
    course: stationDeg(course?.value ?? 0),
    face: face?.value ?? "cdi",
    bearingErrorDeg: error?.value ?? 0,
  };
  return { settings, name: given ?? standard, station: tuned?.station ?? null };
}

const unnamed = (record: FileRecord, value: string): Written<string> => ({
  value,
  text: value,
  offset: record.offset,
});

function refuseName(reading: Reading, { value, offset }: Written<string>, { names }: Before): void {
  if (COVER_WORDS.includes(value))
    addFault(
      reading,
      "reserved-name",
      offset,
      `a receiver cannot be named ${value}, which is a cover of its own; name it NAV1 or the like`,
    );
  else if (names.includes(value))
    addFault(
      reading,
      "repeated-name",
      offset,
      `two receivers are named ${value}; give each its own name, such as NAV${names.length + 1}`,
    );
}

interface Tuned {
  readonly frequencyMhz: number;
  /** The station, where it was tuned by ident. */
  readonly station: Station | null;
}

/** `115.60` or `TXJ`. A number is a frequency unless it is the ident of a station and no frequency of the band. */
function readTune(
  reading: Reading,
  { text, offset }: Written<string>,
  label: string,
  before: Before,
): Tuned | null {
  const isNumber = /^\s*\d+([.,]\d+)?\s*(mhz)?\s*$/i.test(text);
  if (isNumber && !(isNumericIdent(text) && stationsNamed(before.stations, text).length > 0))
    return readFrequencyTuned(reading, { value: text, text, offset }, label, before);
  const ident = text.trim().toUpperCase();
  const named = stationsNamed(before.stations, ident);
  if (named.length === 0) {
    // Its station may be among those that could not be read, and that has its own fault.
    if (!before.stations.incomplete && !before.stations.idents.has(ident))
      addFault(
        reading,
        "unknown-ident",
        offset,
        `${label}tune ${cited(text)} is no station of this scene; ${whichAreKnown(before.stations, ident)}`,
      );
    return null;
  }
  const station = named.length === 1 ? named[0] : before.aircraft && nearest(named, before.aircraft);
  // Without the aircraft's place the nearest is unknown, and the place has its own fault.
  if (!station) return null;
  if (hasFrame(station)) return { frequencyMhz: station.frequencyMhz, station };
  addFault(
    reading,
    "bad-position",
    offset,
    `${label}tune ${ident} stands poleward of 80 degrees, where radials have no use; tune another station`,
  );
  return null;
}

const isNumericIdent = (text: string): boolean => {
  const read = /^\s*\d{1,4}\s*$/.test(text) ? readFrequency(text) : null;
  return read?.kind === "read" && serviceOf(read.frequencyMhz) === "outside";
};

function readFrequencyTuned(
  reading: Reading,
  { text, offset }: Written<string>,
  label: string,
  { stations, aircraft }: Before,
): Tuned | null {
  const read = readFrequency(text);
  if (read.kind === "unreadable") {
    addFault(reading, "bad-frequency", offset, `${label}tune ${read.reason}`);
    return null;
  }
  const { frequencyMhz } = read;
  const { service, explanation } = explainFrequency(frequencyMhz);
  // The DME of an instrument landing system is tuned by the localizer's frequency, where the scene has one.
  const near = aircraft ? stationsAround(stations.table, aircraft, new Set()) : [];
  const isOnAir = (): boolean =>
    [...stations.own, ...near].some((station) => sameChannel(station.frequencyMhz, frequencyMhz));
  if (service === "vor" || (service === "localizer" && isOnAir())) return { frequencyMhz, station: null };
  const code = service === "localizer" ? "localizer-channel" : "not-a-channel";
  addFault(reading, code, offset, `${label}tune ${explanation}`);
  return null;
}
