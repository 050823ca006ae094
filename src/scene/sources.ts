/** The other files that a file names, opened through the caller: reading itself touches no disk and no network. */

import type { BrokenRow, RowNote } from "../radio/index.ts";
import type { Fault } from "./fault.ts";
import { addFault, cited, type Reading } from "./reading.ts";
import type { Written } from "./record.ts";

export type Opened =
  /** `path` names the file the same way whoever names it, so that a file named twice is known for the same. */
  | { readonly path: string; readonly text: string }
  /** Why it cannot be opened, as the end of a sentence: "no such file". */
  | { readonly failure: string }
  /** Opened, and found to be no text. */
  | { readonly fault: Fault };

/** Opens the file that `from` (a path, as given or as `Opened` gave it) names as `wanted`. */
export type Open = (wanted: string, from: string) => Opened;

/** Refuses every other file: for a text that must stand alone. */
export const openNothing: Open = () => ({ failure: "no other file can be opened from here" });

/** A file that took part, and how it was named. */
export interface SourceFile {
  readonly kind: "scene" | "problems" | "stations" | "table" | "land";
  readonly path: string;
  /** As the including file wrote it; the path itself for the first file. */
  readonly written: string;
  /** Rows of a table that could not be used. */
  readonly skipped: readonly BrokenRow[];
  /** Rows of a table that were kept with something to say about them. */
  readonly notes: readonly RowNote[];
}

export const sourceFile = (
  kind: SourceFile["kind"],
  path: string,
  written: string,
  { skipped = [], notes = [] }: Partial<Pick<SourceFile, "skipped" | "notes">> = {},
): SourceFile => ({ kind, path, written, skipped, notes });

/** Opens a file named in another; null with a fault, placed where it is named, when that fails. */
export function openNamed(
  reading: Reading,
  { text, offset }: Written<string>,
  what: string,
  open: Open,
): { readonly path: string; readonly text: string } | null {
  const opened = open(text, reading.file);
  if ("text" in opened) return opened;
  if ("fault" in opened) reading.faults.push(opened.fault);
  else
    addFault(
      reading,
      "cannot-open",
      offset,
      `${what} ${cited(text)} cannot be opened: ${opened.failure}; write its path from the folder of this file`,
    );
  return null;
}
