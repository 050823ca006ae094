/** One station in the text of a scene file: changed key by key, written anew, added, or taken out. Everything around it stays. */

import { isMap, isScalar, isSeq, type Node, type Pair, type YAMLMap } from "yaml";
import type { Station } from "../radio/index.ts";
import { scalarText } from "./record.ts";
import { sceneLeaves } from "./scene-shape.ts";
import { stationLeaves } from "./station-shape.ts";
import { stationLines } from "./station-text.ts";
import { contentEnd, lineEnd, pairOf, withItem, withKey, withoutItem, withValue } from "./yaml-edit.ts";
import { parseYamlFile } from "./yaml-file.ts";

/** A scene file's text and its nodes. */
export interface ScenePlace {
  readonly text: string;
  readonly root: YAMLMap;
}

/** What stands under `stations:`, the path of a file or a station; null for what it is not. */
export interface StationsItem {
  readonly path: string | null;
  readonly ident: string | null;
}

const stationsNode = (root: YAMLMap): Node | null => (pairOf(root, "stations")?.value ?? null) as Node | null;

/** The items in their order; a path that stands alone is the only one. */
export function stationsItems(root: YAMLMap): readonly StationsItem[] {
  const node = stationsNode(root);
  const items = isSeq(node) ? (node.items as Node[]) : isScalar(node) ? [node] : [];
  return items.map((item) => ({
    path: scalarText(item),
    ident: isMap(item) ? scalarText(item.get("ident", true)) : null,
  }));
}

const indexOf = (root: YAMLMap, { ident, path }: StationsItem): number =>
  stationsItems(root).findIndex((item) => item.ident === ident && item.path === path);

type Pairs = ReadonlyMap<string, string>;

/** Keys and values as our files write them. */
const pairsOf = (station: Station): Pairs =>
  new Map(
    stationLines(station).map((line): [string, string] => {
      const colon = line.indexOf(": ");
      return [line.slice(2, colon), line.slice(colon + 2)];
    }),
  );

/** The item of the same ident, with the station's values. Where a key must go, the item is written anew and loses its comments. */
export function withStation(place: ScenePlace, station: Station, before: Station): string {
  const index = indexOf(place.root, { ident: station.ident, path: null });
  const item = itemAt(place.root, index);
  if (item === null) return place.text;
  const now = pairsOf(station);
  const then = pairsOf(before);
  // A channel would have to change with its frequency.
  const anew = [...then.keys()].some((key) => !now.has(key)) || pairOf(item, "channel") !== null;
  if (anew) return withWholeItem(place.text, item, now);
  const changes = [...now].filter(([key, value]) => then.get(key) !== value);
  return changes.reduce((text, [key, value]) => withItemKey(text, index, key, value), place.text);
}

function itemAt(root: unknown, index: number): YAMLMap | null {
  const list = isMap(root) ? stationsNode(root) : null;
  const item = isSeq(list) ? list.items[index] : null;
  return isMap(item) ? item : null;
}

function withItemKey(text: string, index: number, key: string, value: string): string {
  const map = itemAt(parseYamlFile(text, "").root, index);
  if (map === null) return text;
  const pair = pairOf(map, key);
  const form = map.flow ? inBraces(value) : value;
  return pair
    ? withValue(text, pair, form)
    : withKey(text, map, { key, value: form, order: Object.keys(stationLeaves) });
}

function withWholeItem(text: string, item: YAMLMap, pairs: Pairs): string {
  const [start = 0, flowEnd = start] = item.range ?? [];
  const end = item.flow ? flowEnd : contentEnd(text, item);
  return (
    text.slice(0, start) +
    (item.flow ? braces(pairs) : lines(text, pairs, columnOf(text, item))) +
    text.slice(end)
  );
}

const braces = (pairs: Pairs): string =>
  `{ ${[...pairs].map(([key, value]) => `${key}: ${inBraces(value)}`).join(", ")} }`;

/** Inside braces a comma or a bracket would end a plain value. */
const inBraces = (value: string): string =>
  /^["']/.test(value) || !/[,[\]{}]/.test(value) ? value : JSON.stringify(value);

/** The keys one under another, the first where the item begins. */
const lines = (text: string, pairs: Pairs, column: number): string =>
  [...pairs].map(([key, value]) => `${key}: ${value}`).join(`${lineEnd(text)}${" ".repeat(column)}`);

const columnOf = (text: string, node: Node): number => {
  const start = node.range?.[0] ?? 0;
  return start - (text.lastIndexOf("\n", start - 1) + 1);
};

/** One more station at the end. A path that stood alone becomes the first item of a list. */
export function withNewStation({ text, root }: ScenePlace, station: Station): string {
  const list = stationsNode(root);
  const pairs = pairsOf(station);
  const pair = pairOf(root, "stations");
  if (pair === null)
    return withKey(text, root, {
      key: "stations",
      value: `[${braces(pairs)}]`,
      order: Object.keys(sceneLeaves),
    });
  if (isSeq(list) && (list.flow || list.items.length > 0))
    return withItem(text, list, list.flow ? braces(pairs) : lines(text, pairs, columnOf(text, list) + 2));
  if (root.flow) {
    const path = isScalar(list) ? [text.slice(list.range?.[0] ?? 0, list.range?.[1] ?? 0)] : [];
    return withValue(text, pair, `[${[...path, braces(pairs)].join(", ")}]`);
  }
  return withFirstList(text, pair, `  - ${lines(text, pairs, 4)}`);
}

/** The item under `stations:`, after the path that stood there alone, which keeps a comment of its own. */
function withFirstList(text: string, { key, value }: Pair, item: string): string {
  const end = lineEnd(text);
  const colon = text.indexOf(":", (key as Node).range?.[1] ?? 0);
  const [start = 0, stop = start] = (value as Node | null)?.range ?? [];
  const lineStop = text.indexOf(end, stop);
  const rest = lineStop < 0 ? text.length : lineStop;
  const path = isScalar(value) ? `${end}  - ${text.slice(start, rest)}` : "";
  return `${text.slice(0, colon + 1)}${path}${end}${item}${text.slice(rest)}`;
}

/** Without that item; with an empty list where it was the only one. */
export function withoutStationsItem({ text, root }: ScenePlace, item: StationsItem): string {
  const list = stationsNode(root);
  const pair = pairOf(root, "stations");
  if (pair === null) return text;
  if (!isSeq(list) || list.items.length === 1) return withValue(text, pair, "[]");
  const index = indexOf(root, item);
  return index < 0 ? text : withoutItem(text, list, index);
}
