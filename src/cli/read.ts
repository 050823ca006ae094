/** `needlework read`: what every instrument shows in a scene, and why. */

import { readingJson, reasonsFor } from "../reason/index.ts";
import { resolveScene, type Situation } from "../scene/index.ts";
import type { Command } from "./command.ts";
import { EXIT_DONE, EXIT_INPUT, InputFault } from "./faults.ts";
import { readingText } from "./reading-text.ts";
import { readSceneOrThrow } from "./scene-operand.ts";
import { print, tell } from "./streams.ts";

export const READ: Command = {
  name: "read",
  operands: "SCENE...",
  operandCount: [1, Number.POSITIVE_INFINITY],
  about: [
    "Prints what every instrument shows in each scene, and the argument why, step by step. - reads a scene from stdin.",
    "With --json one object a line, in the order of the files; directions in degrees, deviation right positive, null",
    "where there is none. A file at fault is reported and the others are still read.",
  ].join("\n"),
  options: { json: { help: "one JSON object a line" } },
  example: "needlework read demo/scenes/01-which-way-to-the-course.yaml",
  run: async (call) => {
    let anyAtFault = false;
    let printed = 0;
    for (const file of call.operands) {
      const situation = await situationOf(file);
      if (situation === null) {
        anyAtFault = true;
        continue;
      }
      const reasons = reasonsFor(situation);
      if (call.has("json")) print(JSON.stringify({ file, ...readingJson(situation, reasons) }));
      else print((printed > 0 ? "\n" : "") + readingText(file, situation, reasons));
      printed++;
    }
    return anyAtFault ? EXIT_INPUT : EXIT_DONE;
  },
};

/** Null when the file is at fault, which is then told. */
async function situationOf(file: string): Promise<Situation | null> {
  try {
    return resolveScene((await readSceneOrThrow(file)).scene);
  } catch (error) {
    if (!(error instanceof InputFault)) throw error;
    tell(error.message);
    return null;
  }
}
