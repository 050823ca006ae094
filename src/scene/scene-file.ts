/**
 * From the text of a scene file to the scene: every file it names opened, every reference followed, and every fault of
 * all of them told at once. Pure: other files come through `open`, today's date through `today`.
 */

import { readDate } from "./date-field.ts";
import type { Fault } from "./fault.ts";
import { openFile } from "./file-kind.ts";
import { stationsAround } from "./find-station.ts";
import { readLandField } from "./land-field.ts";
import { inReadingOrder, type Reading } from "./reading.ts";
import { type FileRecord, readField } from "./record.ts";
import type { Scene } from "./scene.ts";
import { readAircraft } from "./scene-aircraft.ts";
import { readCovers } from "./scene-covers.ts";
import { readReceivers } from "./scene-receivers.ts";
import { SCENE, sceneLeaves } from "./scene-shape.ts";
import { readSignal } from "./scene-signal.ts";
import { readWind } from "./scene-wind.ts";
import { type Open, type SourceFile, sourceFile } from "./sources.ts";
import { type Gathered, gather, gathering } from "./station-files.ts";
import { parseYamlFile } from "./yaml-file.ts";

export type SceneRead =
  | { readonly ok: true; readonly scene: Scene; readonly sources: readonly SourceFile[] }
  | { readonly ok: false; readonly faults: readonly Fault[] };

export interface SceneReadOptions {
  /** What faults call the file, in the form `open` gives paths in. */
  readonly path: string;
  readonly open: Open;
  /** ISO date that stands in where the scene has none; without it such a scene is at fault. */
  readonly today?: string;
}

/** Any calendar day; only used while a scene's own date is at fault, so that the rest is still checked. */
const SOME_DAY = "2026-01-01";

/** Reads a scene. Never throws: what is wrong comes back as faults, all of them, in the order of the files. */
export function readScene(text: string, { path, open, today }: SceneReadOptions): SceneRead {
  const { reading, root } = parseYamlFile(text, path);
  const record = root && openFile(reading, root, "scene", SCENE);
  if (!record) return { ok: false, faults: inReadingOrder(reading.faults, [path]) };
  const date = readDate(reading, record, { leaf: sceneLeaves.date, what: "the scene", today });
  const stations = gathering(open, date ?? SOME_DAY);
  stations.sources.push(sourceFile("scene", path, path));
  const scene = sceneOf(reading, record, date, stations);
  const faults = [...reading.faults, ...stations.faults];
  if (scene && faults.length === 0) return { ok: true, scene, sources: stations.sources };
  const paths = stations.sources.map((source) => source.path);
  return { ok: false, faults: inReadingOrder(faults, paths) };
}

function sceneOf(
  reading: Reading,
  record: FileRecord,
  date: string | null,
  stations: Gathered,
): Scene | null {
  const text = (key: "title" | "about" | "ask"): string =>
    readField(reading, record, key, sceneLeaves[key])?.value ?? "";
  const title = text("title");
  const about = text("about");
  const stationsField = record.fields.get("stations");
  const chain = [reading.file];
  if (stationsField) gather(stations, reading, stationsField, { chain, stationsToo: true });
  else stations.incomplete = true;
  const land = readLandField(reading, record, stations);
  const aircraftField = record.fields.get("aircraft");
  const aircraft = aircraftField ? readAircraft(reading, aircraftField, stations) : null;
  const position = aircraft?.position ?? null;
  const wind = readWind(reading, record);
  const receiversField = record.fields.get("receivers");
  const read = receiversField ? readReceivers(reading, receiversField, stations, position) : null;
  const signalField = record.fields.get("signal");
  const signal = signalField ? readSignal(reading, signalField, stations) : null;
  const coverField = record.fields.get("cover");
  const covers = coverField ? readCovers(reading, coverField, read?.names ?? []) : [];
  const ask = text("ask");
  if (!aircraft || !position || aircraft.heading === null || aircraft.altitudeFt === null) return null;
  if (aircraft.tasKt === null || !read || date === null) return null;
  return {
    title,
    about,
    date,
    stations: [...stations.own, ...stationsAround(stations.table, position, read.tunedStations)],
    land,
    aircraft: {
      position,
      heading: aircraft.heading,
      altitudeFt: aircraft.altitudeFt,
      tasKt: aircraft.tasKt,
    },
    wind,
    receivers: read.receivers,
    signal,
    covers,
    ask,
  };
}
