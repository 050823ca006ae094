/**
 * Changed stations put into a scene file that is there. Stations that stand in the scene itself are changed key by key; those of
 * a file it names stay in that file while they are unchanged, and are all written into the scene once one of them is not.
 */

import { isMap, type YAMLMap } from "yaml";
import type { Station } from "../radio/index.ts";
import type { Fault } from "./fault.ts";
import { openFile } from "./file-kind.ts";
import { hasFrame } from "./find-station.ts";
import { SCENE } from "./scene-shape.ts";
import {
  type ScenePlace,
  type StationsItem,
  stationsItems,
  withNewStation,
  withoutStationsItem,
  withStation,
} from "./station-item-edit.ts";
import { stationLines } from "./station-text.ts";
import { parseYamlFile } from "./yaml-file.ts";

export type StationsEdited =
  | {
      readonly ok: true;
      readonly text: string;
      /** Paths of files that the scene names no longer, for their stations now stand in the scene. */
      readonly takenIn: readonly string[];
      /** Idents of stations that a scene cannot hold: a second one of its ident, or poleward of 80 degrees. */
      readonly leftOut: readonly string[];
    }
  /** The text is no scene file that can be read: then nothing may be overwritten. */
  | { readonly ok: false; readonly faults: readonly Fault[] };

/** What the stations were when the text was read, and what they are now. */
export interface StationsChange {
  readonly before: readonly Station[];
  readonly after: readonly Station[];
}

/** The text with the stations as they are now. Values are rounded as `written-values.ts` says. Never throws. */
export function editStations(
  text: string,
  { before, after }: StationsChange,
  { path }: { readonly path: string },
): StationsEdited {
  const first = parsed(text, path);
  if ("faults" in first) return { ok: false, faults: first.faults };
  const written = stationsItems(first.root);
  const inline = new Set(written.flatMap(({ ident }) => (ident === null ? [] : [ident])));
  const now = new Set(after.map(stationText));
  const inFiles = before.filter(({ ident }) => !inline.has(ident));
  const filesStay = inFiles.every((station) => now.has(stationText(station)));
  const elsewhere = new Set(filesStay ? inFiles.map(stationText) : []);
  const { here, leftOut } = fitForScene(after.filter((station) => !elsewhere.has(stationText(station))));
  const takenIn = filesStay ? [] : written.flatMap(({ path: named }) => (named === null ? [] : [named]));
  let edited = text;
  for (const change of changesTo(written, new Map(before.map((one) => [one.ident, one])), here, filesStay)) {
    const place = parsed(edited, path);
    if ("faults" in place) return { ok: false, faults: place.faults };
    edited = change({ text: edited, root: place.root });
  }
  return { ok: true, text: edited, takenIn, leftOut };
}

function parsed(
  text: string,
  path: string,
): { readonly root: YAMLMap } | { readonly faults: readonly Fault[] } {
  const { reading, root } = parseYamlFile(text, path);
  const opened = root && openFile(reading, root, "scene", SCENE);
  return opened && isMap(root) ? { root } : { faults: reading.faults };
}

const stationText = (station: Station): string => stationLines(station).join("\n");

/** Each ident once, and only where a station can stand. */
function fitForScene(stations: readonly Station[]): {
  readonly here: readonly Station[];
  readonly leftOut: readonly string[];
} {
  const idents = new Set<string>();
  const here: Station[] = [];
  const leftOut: string[] = [];
  for (const station of stations) {
    if (!hasFrame(station) || idents.has(station.ident)) leftOut.push(station.ident);
    else {
      idents.add(station.ident);
      here.push(station);
    }
  }
  return { here, leftOut };
}

/** One change at a time, each on the text and nodes that the one before left. What goes, goes last, so that no list stands empty. */
function changesTo(
  written: readonly StationsItem[],
  before: ReadonlyMap<string, Station>,
  here: readonly Station[],
  filesStay: boolean,
): ((place: ScenePlace) => string)[] {
  const inline = new Set(written.map(({ ident }) => ident));
  const wanted = new Set(here.map(({ ident }) => ident));
  const changed = here.flatMap((station) => {
    const old = inline.has(station.ident) ? before.get(station.ident) : undefined;
    return old !== undefined && stationText(old) !== stationText(station) ? [{ station, old }] : [];
  });
  const added = here.filter(({ ident }) => !inline.has(ident));
  const gone = written.filter(({ ident, path }) =>
    ident === null ? !filesStay && path !== null : !wanted.has(ident),
  );
  return [
    ...changed.map(
      ({ station, old }) =>
        (place: ScenePlace) =>
          withStation(place, station, old),
    ),
    ...added.map((station) => (place: ScenePlace) => withNewStation(place, station)),
    ...gone.map((item) => (place: ScenePlace) => withoutStationsItem(place, item)),
  ];
}
