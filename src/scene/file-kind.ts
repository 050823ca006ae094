/** Scene file, station file, land file or problem set? Each says so by its first key; opened as another kind, it is named for what it is. */

import { isMap, isScalar, isSeq, type Node } from "yaml";
import { addFault, cited, type Reading } from "./reading.ts";
import { type FileRecord, openRecord, scalarText } from "./record.ts";
import type { RecordShape } from "./shape.ts";

export type FileKind = "scene" | "stations" | "land" | "problems";

const WORDS: Readonly<Record<FileKind, string>> = {
  scene: "a scene file",
  stations: "a station file",
  land: "a land file",
  problems: "a problem set",
};
/** The one version of each there is. */
const VERSION = "1";

/** Opens the top of a file that must be of one kind; null, with a fault, when it is not or is of another version. */
export function openFile(
  reading: Reading,
  root: Node,
  expected: FileKind,
  shape: RecordShape,
): FileRecord | null {
  const offset = root.range?.[0] ?? 0;
  const right = `${WORDS[expected]} begins with ${expected}: ${VERSION}`;
  if (!isMap(root)) {
    const list = expected === "stations" ? " and has its stations under list:" : "";
    const got = isSeq(root) ? "a list" : `nothing but ${cited(scalarText(root) ?? "")}`;
    addFault(reading, "not-a-map", offset, `the file is ${got}; ${right}${list}`);
    return null;
  }
  const actual = kindOf(root);
  if (actual !== null && actual !== expected) {
    addFault(reading, "wrong-kind", offset, `this is ${WORDS[actual]}; ${right}`);
    return null;
  }
  const version = root.get(expected, true);
  const written = scalarText(version);
  if (root.has(expected) && written !== VERSION) {
    const got = written === null ? "has no version" : `${cited(written)} is not a known version`;
    const at = isScalar(version) && written !== null ? version.range?.[0] : keyOffset(root, expected);
    addFault(reading, "wrong-version", at ?? offset, `${expected} ${got}; write ${expected}: ${VERSION}`);
    return null;
  }
  return openRecord(reading, root, shape, { what: "the file", offset });
}

/** What a file says it is; null when it does not say. */
function kindOf(root: Node): FileKind | null {
  if (!isMap(root)) return null;
  if (root.has("scene")) return "scene";
  if (root.has("problems")) return "problems";
  // A scene whose first key was left out has a path or a list here, a station file a number.
  if (/^\d+$/.test(scalarText(root.get("stations", true)) ?? "")) return "stations";
  if (/^\d+$/.test(scalarText(root.get("land", true)) ?? "")) return "land";
  if (root.has("aircraft") || root.has("receivers")) return "scene";
  if (root.has("list")) return "stations";
  return root.has("islands") || root.has("peaks") ? "land" : null;
}

function keyOffset(root: Node, key: string): number | undefined {
  const pair = isMap(root) ? root.items.find((item) => scalarText(item.key) === key) : undefined;
  return isScalar(pair?.key) ? pair.key.range?.[0] : undefined;
}
