/** Files that a person names to be written: whole or not at all. */

import { realpathSync, renameSync, rmSync, statSync, writeFileSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { CallFault, InputFault } from "./faults.ts";
import { printBytes, STREAM } from "./streams.ts";
import { systemReason } from "./system-reason.ts";

/**
 * Writes the bytes beside the target and then renames, so that the target is either the old file or the whole new one;
 * `-` prints them. Throws CallFault when the target is one of the files read, InputFault when it cannot be written.
 */
export function writeWhole(path: string, bytes: Uint8Array, inputs: readonly string[]): void {
  if (path === STREAM) {
    printBytes(bytes);
    return;
  }
  if (inputs.some((input) => input !== STREAM && isSameFile(input, path)))
    throw new CallFault(`${path} would be written over the file it is made from; choose another name`);
  // A link is followed, so that the file it names changes and not the link.
  const target = realPathOf(path) ?? path;
  if (isDevice(target)) {
    writeFileSync(target, bytes);
    return;
  }
  // In the same folder, since a rename is only whole within one file system.
  const aside = join(dirname(target), `.${basename(target)}.${process.pid}.part`);
  try {
    writeFileSync(aside, bytes, { flag: "wx" });
    renameSync(aside, target);
  } catch (error) {
    rmSync(aside, { force: true });
    throw new InputFault(`${path}: ${systemReason(error)}`);
  }
}

function isSameFile(a: string, b: string): boolean {
  const [real, other] = [realPathOf(a), realPathOf(b)];
  return real !== null && real === other;
}

function realPathOf(path: string): string | null {
  try {
    return realpathSync(path);
  } catch {
    // A target that is not there yet is no input either.
    return null;
  }
}

/** A pipe, a terminal or `/dev/null`: written to as it is, since renaming would put a file in its place. */
function isDevice(path: string): boolean {
  const found = statSync(path, { throwIfNoEntry: false });
  return found !== undefined && !found.isFile() && !found.isDirectory();
}
