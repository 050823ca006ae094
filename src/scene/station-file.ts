/** The stations of one file: our own station file, with those it includes, or the worldwide table. */

import type { BrokenRow, RowNote, Station } from "../radio/index.ts";
import type { Fault } from "./fault.ts";
import { inReadingOrder } from "./reading.ts";
import type { Open, SourceFile } from "./sources.ts";
import { gathering, gatherStationFile, gatherTable } from "./station-files.ts";
import { isTablePath } from "./text-file.ts";

export type StationsRead =
  | {
      readonly ok: true;
      /** In the order of the files. */
      readonly stations: readonly Station[];
      readonly sources: readonly SourceFile[];
      /** Rows of the table that could not be used; our own files have none, they are at fault instead. */
      readonly skipped: readonly BrokenRow[];
      /** Rows of the table that were kept with something to say about them. */
      readonly notes: readonly RowNote[];
    }
  | { readonly ok: false; readonly faults: readonly Fault[] };

export interface StationsReadOptions {
  /** What faults call the file, in the form `open` gives paths in. A path that ends in .csv is a worldwide table. */
  readonly path: string;
  readonly open: Open;
  /** ISO date for which a missing declination is estimated. Throws RangeError when it is not in the calendar. */
  readonly date: string;
}

/** Reads a station file or a worldwide table. What is wrong with the text comes back as faults, all of them. */
export function readStations(text: string, { path, open, date }: StationsReadOptions): StationsRead {
  const found = gathering(open, date);
  if (isTablePath(path)) gatherTable(found, path, text, path);
  else gatherStationFile(found, path, text, path, []);
  const paths = found.sources.map((source) => source.path);
  if (found.faults.length > 0) return { ok: false, faults: inReadingOrder(found.faults, paths) };
  return {
    ok: true,
    stations: [...found.own, ...found.table],
    sources: found.sources,
    skipped: found.sources.flatMap((source) => source.skipped),
    notes: found.sources.flatMap((source) => source.notes),
  };
}
