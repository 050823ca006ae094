/** Files that a person names: read whole or refused in one sentence, written whole or not at all. */

import { readFileSync, realpathSync, renameSync, rmSync, statSync, writeFileSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { CallFault, InputFault } from "./faults.ts";
import { printBytes } from "./streams.ts";

/** The name that stands for stdin and stdout. */
export const STREAM = "-";

/** Larger files are refused unread: no scene, station file or table comes near it. */
export const LARGEST_FILE_BYTES = 32 * 1024 * 1024;

/** The file's bytes. Throws InputFault when it is missing, a folder, too large or may not be read. */
export function readBytes(path: string): Uint8Array {
  try {
    const { size } = statSync(path);
    if (size > LARGEST_FILE_BYTES)
      throw new InputFault(
        `${path}:1:1 the file has ${megabytes(size)}; at most ${megabytes(LARGEST_FILE_BYTES)} are read`,
      );
    return readFileSync(path);
  } catch (error) {
    throw error instanceof InputFault ? error : new InputFault(`${path}: ${systemReason(error)}`);
  }
}

const megabytes = (bytes: number): string => `${Math.round(bytes / 1024 / 1024)} MB`;

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

const SYSTEM_REASONS: Readonly<Record<string, string>> = {
  ENOENT: "no such file or folder",
  EISDIR: "is a folder, not a file",
  EACCES: "may not be opened with your rights",
  EPERM: "may not be changed with your rights",
  ENOTDIR: "a part of the path is not a folder",
  EROFS: "lies on a disk that cannot be written",
  ENOSPC: "the disk is full",
  ELOOP: "its links lead in a circle",
  ENAMETOOLONG: "the name is too long",
};

function systemReason(error: unknown): string {
  const code = error instanceof Error && "code" in error ? String(error.code) : "";
  return SYSTEM_REASONS[code] ?? (error instanceof Error ? error.message : String(error));
}
