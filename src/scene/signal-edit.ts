/** The signal of a scene file that is there, changed value by value: comments, order and what stays the same stay as written. */

import { isMap, isSeq, type Node, type YAMLMap, type YAMLSeq } from "yaml";
import type { Reflector, SignalConditions } from "../panel/index.ts";
import { samePropeller, sameReflector } from "./same-signal.ts";
import type { SceneEdit } from "./scene-edits.ts";
import { sceneLeaves } from "./scene-shape.ts";
import { propellerLeaves, reflectorLeaves, signalLeaves } from "./signal-shape.ts";
import {
  amplitudeText,
  noiseText,
  propellerText,
  reflectorPlaceText,
  reflectorText,
  signalLines,
} from "./signal-text.ts";
import type { ScenePlace } from "./station-item-edit.ts";
import { pairOf, withItem, withKey, withoutItem, withoutKey, withValue } from "./yaml-edit.ts";
import { parseYamlFile } from "./yaml-file.ts";

type SignalEdit = Extract<SceneEdit, { kind: "signal" }>;

/** The text with the signal of the edit. `before` must be what the text says. */
export function withSignal({ text, root }: ScenePlace, { before, signal }: SignalEdit): string {
  const pair = pairOf(root, "signal");
  if (signal === null) return pair ? withoutKey(text, root, "signal") : text;
  const map = pair?.value;
  if (before === null || !isMap(map) || (!map.flow && map.items.length === 0))
    return setIn(text, root, "signal", wholeText(signal), Object.keys(sceneLeaves));
  return changesTo(before, signal).reduce((changed, change) => withSignalMap(changed, change), text);
}

/** On one line: `{ kind: doppler, noise: 25 }`. */
function wholeText({ reflectors, propeller, ...signal }: SignalConditions): string {
  const pairs = signalLines({ ...signal, reflectors: [], propeller });
  const list = reflectors.map(reflectorText).join(", ");
  return `{ ${[...pairs, ...(list === "" ? [] : [`reflectors: [${list}]`])].join(", ")} }`;
}

/** One change of the map under `signal:`, given the text and the map parsed from it. */
type Change = (text: string, map: YAMLMap) => string;

function withSignalMap(text: string, change: Change): string {
  const { root } = parseYamlFile(text, "");
  const map = isMap(root) ? pairOf(root, "signal")?.value : null;
  return isMap(map) ? change(text, map) : text;
}

const SIGNAL_ORDER = Object.keys(signalLeaves);

function changesTo(before: SignalConditions, now: SignalConditions): Change[] {
  const changes: Change[] = [];
  const set = (key: keyof typeof signalLeaves, value: string) =>
    changes.push((text, map) => setIn(text, map, key, value, SIGNAL_ORDER));
  if (now.kind !== before.kind) set("kind", now.kind);
  if (now.noiseDb !== before.noiseDb) set("noise", noiseText(now.noiseDb));
  changes.push(...reflectorChanges(before.reflectors, now.reflectors));
  const { propeller } = now;
  if (samePropeller(propeller, before.propeller)) return changes;
  if (propeller === null) changes.push((text, map) => withoutKey(text, map, "propeller"));
  else if (before.propeller === null) set("propeller", propellerText(propeller));
  else
    for (const key of ["speed", "blades"] as const)
      changes.push((text, map) => {
        const old = pairOf(map, "propeller")?.value;
        const value = String(key === "speed" ? propeller.speedRpm : propeller.blades);
        return isMap(old) ? setIn(text, old, key, value, Object.keys(propellerLeaves)) : text;
      });
  return changes;
}

/** One that alone differs is changed where it stands; else those that are gone go, and new ones come last. */
function reflectorChanges(before: readonly Reflector[], now: readonly Reflector[]): Change[] {
  const differ = before.flatMap((old, index) => {
    const there = now[index];
    return there === undefined || sameReflector(old, there) ? [] : [index];
  });
  if (before.length === now.length && differ.length <= 1)
    return differ.flatMap((index) => {
      const [old, reflector] = [before[index], now[index]];
      return old && reflector ? itemChanges(index, old, reflector) : [];
    });
  // Kept while they stand in the same order; the rest goes, last first, so that places before it hold.
  let from = 0;
  const kept = before.map((old) => {
    const index = now.findIndex((one, at) => at >= from && sameReflector(one, old));
    if (index !== from) return false;
    from++;
    return true;
  });
  const gone = kept.flatMap((stays, index) => (stays ? [] : [index])).reverse();
  const added = now.slice(from);
  if (now.length === 0) return [(text, map) => withoutKey(text, map, "reflectors")];
  // A list stands never empty on the way: what comes, comes first.
  return [
    ...added.map(
      (one): Change =>
        (text, map) =>
          withReflector(text, map, one),
    ),
    ...gone.map(without),
  ];
}

const without =
  (index: number): Change =>
  (text, map) => {
    const list = listOf(map);
    return list ? withoutItem(text, list, index) : text;
  };

function withReflector(text: string, map: YAMLMap, reflector: Reflector): string {
  const list = listOf(map);
  const written = reflectorText(reflector);
  if (list && (list.flow || list.items.length > 0)) return withItem(text, list, written);
  return setIn(text, map, "reflectors", `[${written}]`, SIGNAL_ORDER);
}

function itemChanges(index: number, old: Reflector, now: Reflector): Change[] {
  const values: [key: keyof typeof reflectorLeaves, value: string][] = [];
  if (now.ident !== old.ident) values.push(["station", now.ident]);
  if (now.position.latDeg !== old.position.latDeg || now.position.lonDeg !== old.position.lonDeg)
    values.push(["at", reflectorPlaceText(now.position)]);
  if (now.amplitude !== old.amplitude) values.push(["amplitude", amplitudeText(now.amplitude)]);
  // A station that was left out was the nearest to the old place.
  if (now.ident === old.ident && values.some(([key]) => key === "at")) values.push(["station", now.ident]);
  return values.map(
    ([key, value]): Change =>
      (text, map) => {
        const item = listOf(map)?.items[index];
        const written = key === "station" ? stationText(value) : value;
        return isMap(item) ? setIn(text, item, key, written, Object.keys(reflectorLeaves)) : text;
      },
  );
}

const listOf = (map: YAMLMap): YAMLSeq | null => {
  const list = pairOf(map, "reflectors")?.value as Node | null | undefined;
  return isSeq(list) ? list : null;
};

/** An ident such as 123 or NO is text in any reader when it stands in quotes. */
const stationText = (ident: string): string => (/^[A-Z]{2,}$/.test(ident) ? ident : JSON.stringify(ident));

function setIn(text: string, map: YAMLMap, key: string, value: string, order: readonly string[]): string {
  const pair = pairOf(map, key);
  return pair ? withValue(text, pair, value) : withKey(text, map, { key, value, order });
}
