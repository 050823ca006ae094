/** Which text a path in a scene means, among files that a person gave: they often come without their folders. */

import type { Open, Opened } from "../../scene/index.ts";

export const baseName = (path: string): string => path.replace(/^.*[\\/]/, "");

/** The path that `wanted` names, seen from the file `from`: with `.` and `..` worked out. */
export function pathFrom(from: string, wanted: string): string {
  const slashed = wanted.replaceAll("\\", "/");
  const steps = slashed.startsWith("/") ? [] : from.split("/").slice(0, -1);
  for (const step of slashed.split("/")) {
    if (step === ".." && steps.length > 0 && steps.at(-1) !== "..") steps.pop();
    else if (step !== "." && step !== "") steps.push(step);
  }
  return steps.join("/");
}

/**
 * Opens files out of what was given, and after that out of what is always at hand (the demo's). A file is found by its path from the
 * file that names it, else by its name alone.
 */
export function openOver(given: ReadonlyMap<string, string>, atHand: ReadonlyMap<string, string>): Open {
  return (wanted, from): Opened => {
    const name = baseName(wanted);
    for (const files of [given, atHand]) {
      const path = pathFrom(from, wanted);
      const found = files.has(path) ? path : onlyOneNamed(files, name);
      const text = found === null ? undefined : files.get(found);
      if (found !== null && text !== undefined) return { path: found, text };
    }
    return { failure: "it was not given together with this file, so pick or drop both at once" };
  };
}

/** Of several files of one name none is taken: a guess would open the wrong world. */
function onlyOneNamed(files: ReadonlyMap<string, string>, name: string): string | null {
  const paths = [...files.keys()].filter((path) => baseName(path) === name);
  return paths.length === 1 ? (paths[0] ?? null) : null;
}
