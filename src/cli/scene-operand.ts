/** A scene named on the command line, read with every file that it names. */

import { readScene, type Scene } from "../scene/index.ts";
import { faultsOf } from "./faults.ts";
import { openBeside, operandText } from "./text-files.ts";
import { today } from "./today.ts";

export interface SceneOperand {
  readonly scene: Scene;
  /** Paths of every file that took part, the scene's own first. */
  readonly files: readonly string[];
}

/** The scene in a file, or on stdin for `-`. Throws InputFault with a line for each of its faults. */
export async function readSceneOrThrow(path: string): Promise<SceneOperand> {
  const text = await operandText(path);
  const read = readScene(text, { path, open: openBeside, today: today() });
  if (!read.ok) throw faultsOf(read.faults);
  return { scene: read.scene, files: read.sources.map((source) => source.path) };
}
