/** Text files from disk or stdin, as the scene reader wants them: decoded, or the reason why not. */

import { readFileSync, statSync } from "node:fs";
import { dirname, isAbsolute, join } from "node:path";
import { decodeText, faultLine, largestBytes, type Open, type Opened, tooBigFault } from "../scene/index.ts";
import { InputFault } from "./faults.ts";
import { readStdin, STREAM } from "./streams.ts";
import { systemReason } from "./system-reason.ts";

/** Reads a text file. A file that is missing, too big or no text is a result, never an exception. */
export function readText(path: string): Opened {
  try {
    const { size } = statSync(path);
    // Asked before reading, so that a huge file costs nothing.
    if (size > largestBytes(path)) return { fault: tooBigFault(path, size) };
    return decoded(readFileSync(path), path);
  } catch (error) {
    return { failure: systemReason(error) };
  }
}

function decoded(bytes: Uint8Array, path: string): Opened {
  const text = decodeText(bytes, path);
  return text.ok ? { path, text: text.text } : { fault: text.fault };
}

/** Opens what a file names by the path from that file's folder; a text from stdin stands in the working folder. */
export const openBeside: Open = (wanted, from) =>
  readText(isAbsolute(wanted) ? wanted : join(from === STREAM ? "." : dirname(from), wanted));

/** The text of an operand, `-` being stdin. Throws InputFault when it cannot be read. */
export async function operandText(path: string): Promise<string> {
  const opened = path === STREAM ? decoded(await readStdin(largestBytes(path)), path) : readText(path);
  if ("failure" in opened) throw new InputFault(`${path}: ${opened.failure}`);
  if ("fault" in opened) throw new InputFault(faultLine(opened.fault));
  return opened.text;
}
