/** A scene's `signal:`: how its stations send, the noise, what throws the signal back, and the propeller. */

import { isMap, isSeq, type Node } from "yaml";
import { geodesicDistanceNm, type LatLon } from "../earth/index.ts";
import type { Propeller, Reflector, SignalConditions } from "../panel/index.ts";
import { givesBearing, type Station, TYPICAL_NOISE_DB } from "../radio/index.ts";
import { stationsNamed, whichAreKnown } from "./find-station.ts";
import { addFault, cited, type Reading } from "./reading.ts";
import {
  type FileRecord,
  isBlank,
  offsetOf,
  openRecord,
  type RecordField,
  readField,
  readScalar,
  scalarText,
} from "./record.ts";
import { NO_NOISE } from "./same-signal.ts";
import { readScenePlace } from "./scene-place.ts";
import { MOST_REFLECTORS } from "./signal-limits.ts";
import {
  noiseLeaf,
  PROPELLER,
  propellerLeaves,
  REFLECTOR,
  reflectorLeaves,
  SIGNAL,
  signalLeaves,
} from "./signal-shape.ts";
import type { Gathered } from "./station-files.ts";

/** The signal, with what is at fault left out; null, with a fault, when it is no map at all. */
export function readSignal(
  reading: Reading,
  field: RecordField,
  stations: Gathered,
): SignalConditions | null {
  if (!isMap(field.node)) {
    const got = isBlank(field.node)
      ? "empty"
      : isSeq(field.node)
        ? "a list"
        : cited(scalarText(field.node) ?? "");
    addFault(
      reading,
      isBlank(field.node) ? "blank" : "not-a-map",
      offsetOf(field),
      `signal is keys and values, but this is ${got}; write a key of it such as kind: conventional under signal:, or take the key out`,
    );
    return null;
  }
  const record = openRecord(reading, field.node, SIGNAL, {
    what: "signal",
    label: "signal ",
    offset: offsetOf(field),
  });
  if (!record) return null;
  const reflectors = record.fields.get("reflectors");
  const propeller = record.fields.get("propeller");
  return {
    kind: readField(reading, record, "kind", signalLeaves.kind)?.value ?? "conventional",
    noiseDb: readNoise(reading, record),
    reflectors: reflectors ? readReflectors(reading, reflectors, stations) : [],
    propeller: propeller ? readPropeller(reading, propeller) : null,
  };
}

function readNoise(reading: Reading, record: FileRecord): number | null {
  const field = record.fields.get("noise");
  if (!field) return TYPICAL_NOISE_DB;
  if (scalarText(field.node)?.toLowerCase() === NO_NOISE) return null;
  return readScalar(reading, field, noiseLeaf, "signal noise")?.value ?? null;
}

function readPropeller(reading: Reading, field: RecordField): Propeller | null {
  const record = openRecord(reading, field.node, PROPELLER, {
    what: "propeller",
    label: "propeller ",
    offset: offsetOf(field),
  });
  if (!record) return null;
  const speed = readField(reading, record, "speed", propellerLeaves.speed);
  const blades = readField(reading, record, "blades", propellerLeaves.blades);
  return speed && blades && { speedRpm: speed.value, blades: blades.value };
}

function readReflectors(reading: Reading, field: RecordField, stations: Gathered): Reflector[] {
  if (isBlank(field.node)) return [];
  if (!isSeq(field.node)) {
    addFault(
      reading,
      "not-a-list",
      offsetOf(field),
      "reflectors is not a list; write each under it as - { station: TXJ, at: TXJ 300/2, amplitude: 0.1 }",
    );
    return [];
  }
  const items = field.node.items as (Node | null)[];
  if (items.length > MOST_REFLECTORS)
    addFault(
      reading,
      "wrong-count",
      offsetOf(field),
      `${items.length} reflectors are given; a scene has at most ${MOST_REFLECTORS}`,
    );
  return items.flatMap((node) => {
    const reflector = readReflector(reading, node, node?.range?.[0] ?? offsetOf(field), stations);
    return reflector === null ? [] : [reflector];
  });
}

function readReflector(
  reading: Reading,
  node: Node | null,
  offset: number,
  stations: Gathered,
): Reflector | null {
  const record = openRecord(reading, node, REFLECTOR, { what: "a reflector", label: "reflector ", offset });
  if (!record) return null;
  const at = record.fields.get("at");
  const position = at ? readScenePlace(reading, at, stations, "reflector at") : null;
  const amplitude = readField(reading, record, "amplitude", reflectorLeaves.amplitude);
  const ident = reflectedIdent(reading, record, stations, position);
  return position && amplitude && ident !== null ? { ident, position, amplitude: amplitude.value } : null;
}

function reflectedIdent(
  reading: Reading,
  record: FileRecord,
  stations: Gathered,
  position: LatLon | null,
): string | null {
  if (!record.fields.has("station")) {
    const station = position && nearestWithRadials([...stations.own, ...stations.table], position);
    if (station) return station.ident;
    // One that could not be read may have radials, and has a fault of its own.
    if (position && !stations.incomplete && stations.idents.size === stations.own.length)
      addFault(
        reading,
        "no-radials",
        record.offset,
        "reflector has no station, and the scene has none with radials to throw back; add one under stations:",
      );
    return null;
  }
  const written = readField(reading, record, "station", reflectorLeaves.station);
  if (!written) return null;
  const ident = written.value.trim().toUpperCase();
  const named = stationsNamed(stations, ident);
  if (named.some(hasRadials)) return ident;
  const [station] = named;
  if (station)
    addFault(
      reading,
      "no-radials",
      written.offset,
      `reflector station ${ident} is a ${station.kind} and has no radials that an echo could bend; name a VOR`,
    );
  // It may be among those that could not be read, and that has its own fault.
  else if (!stations.incomplete && !stations.idents.has(ident))
    addFault(
      reading,
      "unknown-ident",
      written.offset,
      `reflector station ${cited(written.text)} is no station of this scene; ${whichAreKnown(stations, ident)}`,
    );
  return null;
}

/** A test station sends the same all around: its echo bends nothing. */
const hasRadials = (station: Station): boolean => givesBearing(station) && station.kind !== "VOT";

function nearestWithRadials(stations: readonly Station[], position: LatLon): Station | null {
  let best: Station | null = null;
  let leastNm = Number.POSITIVE_INFINITY;
  for (const station of stations) {
    if (!hasRadials(station)) continue;
    const distanceNm = geodesicDistanceNm(position, station.position);
    if (distanceNm < leastNm) [best, leastNm] = [station, distanceNm];
  }
  return best;
}
