/** Reads texts as scenes. Loaded when the first file is opened: the demo was read when the bench was built. */

import {
  decodeText,
  type Fault,
  faultLine,
  largestBytes,
  type Open,
  readScene,
  tooBigFault,
} from "../../scene/index.ts";
import type { Origin } from "./bench.ts";
import type { SceneRead } from "./scene-files.ts";

/** Reads one of some texts as a scene; the files it names are looked for among the others. Paths use `/`. */
export function readFrom(files: ReadonlyMap<string, string>, path: string, origin: Origin): SceneRead {
  const open: Open = (wanted, from) => {
    const place = pathFrom(from, wanted);
    // A person picks files out of a folder: then only their names are known.
    const found = [place, baseName(wanted)].find((candidate) => files.has(candidate));
    const text = found === undefined ? undefined : files.get(found);
    if (found === undefined || text === undefined)
      return { failure: "it was not given together with this file" };
    return { path: found, text };
  };
  const read = readScene(files.get(path) ?? "", { path, open, today: today() });
  const name = baseName(path);
  return read.ok
    ? { ok: true, name: name.replace(/\.ya?ml$/i, ""), origin, scene: read.scene }
    : { ok: false, name, lines: read.faults.map(faultLine) };
}

/** The scene among the files a person picked: the first that says it is one, else the first. Null when none was picked. */
export async function readPicked(picked: readonly File[]): Promise<SceneRead | null> {
  const texts = new Map<string, string>();
  for (const file of picked) {
    if (file.size > largestBytes(file.name)) return refused(file, tooBigFault(file.name, file.size));
    const decoded = decodeText(new Uint8Array(await file.arrayBuffer()), file.name);
    if (!decoded.ok) return refused(file, decoded.fault);
    texts.set(file.name, decoded.text);
  }
  const paths = [...texts.keys()];
  const scene = paths.find((path) => /^scene\s*:/m.test(texts.get(path) ?? "")) ?? paths[0];
  return scene === undefined ? null : readFrom(texts, scene, "file");
}

const refused = ({ name }: File, fault: Fault): SceneRead => ({ ok: false, name, lines: [faultLine(fault)] });

/** Stands in where a scene has no date. */
const today = (): string => new Date().toISOString().slice(0, 10);

const baseName = (path: string): string => path.replace(/^.*[\\/]/, "");

/** The path that `wanted` names, seen from the file `from`: with `.` and `..` worked out. */
function pathFrom(from: string, wanted: string): string {
  const slashed = wanted.replaceAll("\\", "/");
  const steps = slashed.startsWith("/") ? [] : from.split("/").slice(0, -1);
  for (const step of slashed.split("/")) {
    if (step === ".." && steps.length > 0 && steps.at(-1) !== "..") steps.pop();
    else if (step !== "." && step !== "") steps.push(step);
  }
  return steps.join("/");
}
