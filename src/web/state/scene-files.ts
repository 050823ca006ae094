/** Scenes out of texts: those of the demo, the one the bench was started with, and those a person opens. */

import {
  decodeText,
  type Fault,
  faultLine,
  largestBytes,
  type Open,
  readScene,
  type Scene,
  tooBigFault,
} from "../../scene/index.ts";
import type { Origin } from "./bench.ts";

/** A scene that can be opened, as the list shows it. */
export interface SceneEntry {
  /** Stands in the address: the file's name without its ending. */
  readonly key: string;
  readonly scene: Scene;
}

export type SceneRead =
  | { readonly ok: true; readonly name: string; readonly origin: Origin; readonly scene: Scene }
  | {
      readonly ok: false;
      readonly name: string /** One sentence each, with file, line and column. */;
      readonly lines: readonly string[];
    };

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

const SCENE_FOLDER = "scenes/";

/** Every scene of the demo, in the order of their file names. */
export async function demoScenes(): Promise<readonly SceneEntry[]> {
  const { DEMO_FILES } = await import("./demo-files.ts");
  return [...DEMO_FILES.keys()]
    .filter((path) => path.startsWith(SCENE_FOLDER))
    .sort()
    .map((path) => readFrom(DEMO_FILES, path, "demo"))
    .flatMap((read) => (read.ok ? [{ key: read.name, scene: read.scene }] : []));
}

/** One scene of the demo, by its key or its number ("01"); the first when there is none such. */
export async function demoScene(key: string): Promise<SceneRead> {
  const { DEMO_FILES } = await import("./demo-files.ts");
  const paths = [...DEMO_FILES.keys()].filter((path) => path.startsWith(SCENE_FOLDER)).sort();
  const path = paths.find((candidate) => key !== "" && candidate.startsWith(SCENE_FOLDER + key)) ?? paths[0];
  return readFrom(DEMO_FILES, path ?? "", "demo");
}

interface ServedScene {
  readonly scene: { readonly file: string; readonly text: string };
  readonly files: readonly { readonly path: string; readonly text: string }[];
}

/** The scene that the bench was started with; null when there is none, or no server of ours. */
export async function servedScene(): Promise<SceneRead | null> {
  const answer = await fetch("/api/scene").catch(() => null);
  // 204: the bench was started without one. A page from a folder has no such address, and may answer with itself.
  if (answer === null || answer.status === 204 || !answer.headers.get("content-type")?.includes("json"))
    return null;
  if (!answer.ok) {
    const { message } = (await answer.json()) as { readonly message: string };
    return { ok: false, name: "the scene file", lines: [message] };
  }
  const served = (await answer.json()) as ServedScene;
  const files = new Map(served.files.map(({ path, text }) => [path, text]));
  files.set(served.scene.file, served.scene.text);
  return readFrom(files, served.scene.file, "file");
}

/** The scene among the files a person picked: the first that says it is one, else the first. Null when none was picked. */
export async function pickedScene(picked: readonly File[]): Promise<SceneRead | null> {
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
