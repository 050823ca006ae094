/**
 * Changes to a scene file that is there: the values that changed and nothing else. Comments, the order of keys, quotes,
 * spaces and blank lines stay as their author left them.
 */

import { isMap, isNode, isScalar, isSeq, type Node, type YAMLMap } from "yaml";
import type { LatLon } from "../earth/index.ts";
import type { ReceiverSettings } from "../panel/index.ts";
import { frequencyText } from "../radio/index.ts";
import type { Fault } from "./fault.ts";
import { openFile } from "./file-kind.ts";
import { addFault, listed, type Reading } from "./reading.ts";
import { scalarText } from "./record.ts";
import type { SceneEdit } from "./scene-edits.ts";
import { aircraftLeaves, MOST_RECEIVERS, receiverLeaves, SCENE, sceneLeaves } from "./scene-shape.ts";
import { receiverText } from "./scene-write.ts";
import { withSignal } from "./signal-edit.ts";
import {
  directionText,
  numberText,
  positionText,
  quotedIfNeeded,
  textValue,
  windText,
} from "./written-values.ts";
import { lineEnd, pairOf, withItem, withKey, withoutItem, withValue } from "./yaml-edit.ts";
import { parseYamlFile } from "./yaml-file.ts";

export type SceneEdited =
  | { readonly ok: true; readonly text: string }
  /** The text is no scene file that can be read, or an edit does not fit it: then nothing may be overwritten. */
  | { readonly ok: false; readonly faults: readonly Fault[] };

/**
 * The text after the edits, one after another. Numbers are rounded as `written-values.ts` says. Never throws; `path` is what
 * faults call the file.
 */
export function editScene(
  text: string,
  edits: readonly SceneEdit[],
  { path }: { readonly path: string },
): SceneEdited {
  let edited = text;
  for (const edit of edits) {
    const { reading, root } = parseYamlFile(edited, path);
    const opened = root && openFile(reading, root, "scene", SCENE);
    if (!opened || !isMap(root)) return { ok: false, faults: reading.faults };
    const place: Place = { text: edited, root, reading: { ...reading, faults: [] } };
    edited = applied(place, edit);
    if (place.reading.faults.length > 0) return { ok: false, faults: place.reading.faults };
  }
  const faults = countFaults(edited, path, edits);
  return faults.length > 0 ? { ok: false, faults } : { ok: true, text: edited };
}

/** Receivers may come and go on the way, but at the end there are one to four. */
function countFaults(text: string, path: string, edits: readonly SceneEdit[]): readonly Fault[] {
  if (!edits.some(({ kind }) => kind === "add-receiver" || kind === "remove-receiver")) return [];
  const { reading, root } = parseYamlFile(text, path);
  if (!isMap(root)) return reading.faults;
  const count = receiverNodes(root).length;
  const offset = root.range?.[0] ?? 0;
  if (count < 1 || count > MOST_RECEIVERS)
    addFault(
      reading,
      "wrong-count",
      offset,
      `the change leaves the scene ${count < 1 ? "no receivers" : `${count} receivers`}; a scene has one to four`,
    );
  return reading.faults;
}

/** A scene file's text and its nodes; the reading collects what keeps an edit from being made. */
interface Place {
  readonly text: string;
  readonly root: YAMLMap;
  readonly reading: Reading;
}

function applied(place: Place, edit: SceneEdit): string {
  const { text, root } = place;
  switch (edit.kind) {
    case "text":
      return withText(place, edit.key, edit.text);
    case "date":
      return setIn(text, root, "date", edit.date, SCENE_ORDER);
    case "position":
      return withPosition(place, edit.at);
    case "heading":
      return setInAircraft(place, "heading", directionText(edit.heading));
    case "altitude":
      return setInAircraft(place, "altitude", numberText(edit.altitudeFt, 1));
    case "tas":
      return setInAircraft(place, "tas", numberText(edit.tasKt, 1));
    case "wind":
      return setIn(text, root, "wind", windText(edit.wind), SCENE_ORDER);
    case "signal":
      return withSignal(place, edit);
    case "covers":
      return withCovers(place, edit.covers);
    case "receiver":
      return withReceiver(place, edit.name, edit.change);
    case "add-receiver":
      return withNewReceiver(place, edit.receiver);
    case "remove-receiver":
      return withoutReceiver(place, edit.name);
  }
}

const SCENE_ORDER = Object.keys(sceneLeaves);

/** The text with a key's value set, the key added where the map lacks it. */
function setIn(text: string, map: YAMLMap, key: string, value: string, order: readonly string[]): string {
  const pair = pairOf(map, key);
  return pair ? withValue(text, pair, value) : withKey(text, map, { key, value, order });
}

/** Over several lines only where that cannot run into what stands around it; else on one, in quotes where needed. */
function withText({ text, root }: Place, key: "title" | "about" | "ask", value: string): string {
  const old = pairOf(root, key)?.value;
  const isBlock = isScalar(old) && /^BLOCK/.test(old.type ?? "");
  const start = root.range?.[0] ?? 0;
  const atEdge = !root.flow && (start === 0 || text[start - 1] === "\n");
  const many = atEdge && (isBlock || old === undefined);
  const line = root.flow ? JSON.stringify(value) : quotedIfNeeded(value);
  const written = many ? textValue(value) : line;
  return setIn(text, root, key, written.replaceAll("\n", lineEnd(text)), SCENE_ORDER);
}

function aircraftMap({ root, reading }: Place): YAMLMap | null {
  const aircraft = pairOf(root, "aircraft")?.value;
  if (isMap(aircraft) && (aircraft.flow || aircraft.items.length > 0)) return aircraft;
  addFault(
    reading,
    "missing-key",
    root.range?.[0] ?? 0,
    "the scene has no aircraft to change; add aircraft: with at: and altitude: under it",
  );
  return null;
}

function setInAircraft(place: Place, key: keyof typeof aircraftLeaves, value: string): string {
  const map = aircraftMap(place);
  return map ? setIn(place.text, map, key, value, Object.keys(aircraftLeaves)) : place.text;
}

function withPosition(place: Place, at: LatLon | string): string {
  if (typeof at === "string") return setInAircraft(place, "at", quotedIfNeeded(at));
  const old = aircraftMap(place)?.get("at", true) as Node | undefined;
  if (isSeq(old) && old.items.length === 2) return withCoordinates(place.text, old.items as Node[], at);
  const names = isMap(old) ? [old.get("lat", true), old.get("lon", true)] : [];
  if (names.length === 2 && names.every(isNode)) return withCoordinates(place.text, names as Node[], at);
  return setInAircraft(place, "at", positionText(at));
}

/** Latitude and longitude that stand apart, each in the form it had: a number, or degrees and minutes. */
function withCoordinates(text: string, [lat, lon]: readonly Node[], at: LatLon): string {
  const [latText = "", lonText = ""] = positionText(at).split(" ");
  const put = (into: string, node: Node | undefined, minutes: string, deg: number): string => {
    const [start = 0, end = start] = node?.range ?? [];
    const isNumber = /^[-+\d.]+$/.test(scalarText(node) ?? "");
    return `${into.slice(0, start)}${isNumber ? numberText(deg, 5) : minutes}${into.slice(end)}`;
  };
  // The later one first, so that its place still holds; either may be first in a map.
  const latFirst = (lat?.range?.[0] ?? 0) < (lon?.range?.[0] ?? 0);
  return latFirst
    ? put(put(text, lon, lonText, at.lonDeg), lat, latText, at.latDeg)
    : put(put(text, lat, latText, at.latDeg), lon, lonText, at.lonDeg);
}

function withCovers({ text, root, reading }: Place, covers: readonly string[]): string {
  const old = pairOf(root, "cover");
  const list = old?.value;
  if (!isSeq(list) || list.items.length === 0) {
    if (!old && covers.length === 0) return text;
    return setIn(text, root, "cover", `[${covers.join(", ")}]`, SCENE_ORDER);
  }
  const written = list.items.map((item) => scalarText(item) ?? "");
  const gone = written.findLastIndex((cover) => !covers.includes(cover));
  const added = covers.find((cover) => !written.includes(cover));
  // One change at a time, each on the text and nodes that the one before left.
  const changed =
    added !== undefined ? withItem(text, list, added) : gone >= 0 ? withoutItem(text, list, gone) : null;
  if (changed === null) return text;
  const next = parseYamlFile(changed, reading.file).root;
  return isMap(next) ? withCovers({ text: changed, root: next, reading }, covers) : text;
}

/** The items of the list of receivers, each a map. */
function receiverNodes(root: YAMLMap): Node[] {
  const list = pairOf(root, "receivers")?.value;
  return isSeq(list) ? (list.items as Node[]) : [];
}

/** The index of the receiver of that name; -1, with a fault, when there is none. */
function receiverAt({ root, reading }: Place, name: string): number {
  const names = receiverNodes(root).map(
    (node, index) => (isMap(node) && scalarText(node.get("name", true))) || `NAV${index + 1}`,
  );
  const index = names.indexOf(name);
  if (index < 0)
    addFault(
      reading,
      "unknown-receiver",
      root.range?.[0] ?? 0,
      `the scene has no receiver ${name} to change; its receivers are ${listed(names, "and")}`,
    );
  return index;
}

function withReceiver(place: Place, name: string, change: Partial<ReceiverSettings>): string {
  const { frequencyMhz, course, face, bearingErrorDeg } = change;
  const values: [key: keyof typeof receiverLeaves, value: string | undefined][] = [
    ["tune", frequencyMhz === undefined ? undefined : frequencyText(frequencyMhz)],
    ["course", course === undefined ? undefined : directionText(course)],
    ["face", face],
    ["error", bearingErrorDeg === undefined ? undefined : numberText(bearingErrorDeg, 2)],
    // Last: the values before are found by the name there is.
    ["name", change.name],
  ];
  let { text, root } = place;
  for (const [key, value] of values) {
    if (value === undefined) continue;
    const map = receiverNodes(root)[receiverAt({ ...place, root }, name)];
    if (!isMap(map)) return place.text;
    text = setIn(text, map, key, value, Object.keys(receiverLeaves));
    const next = parseYamlFile(text, place.reading.file).root;
    if (!isMap(next)) return place.text;
    root = next;
  }
  return text;
}

function withNewReceiver({ text, root }: Place, receiver: ReceiverSettings): string {
  const list = pairOf(root, "receivers")?.value;
  const written = receiverText(receiver);
  if (isSeq(list) && (list.flow || list.items.length > 0)) return withItem(text, list, written);
  return setIn(text, root, "receivers", `[${written}]`, SCENE_ORDER);
}

function withoutReceiver(place: Place, name: string): string {
  const list = pairOf(place.root, "receivers")?.value;
  const index = receiverAt(place, name);
  return isSeq(list) && index >= 0 ? withoutItem(place.text, list, index) : place.text;
}
