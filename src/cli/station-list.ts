/** The stations of a file with what was left out of it, for `needlework stations`. */

import { type BrokenRow, type RowNote, readWorldwideTable, type Station } from "../radio/index.ts";
import { isTablePath, readStations } from "../scene/index.ts";
import { faultsOf } from "./faults.ts";
import { openBeside, operandText } from "./text-files.ts";

export interface StationList {
  readonly stations: readonly Station[];
  /** Rows of a table that could not be used, by line. */
  readonly skipped: readonly BrokenRow[];
  readonly notes: readonly RowNote[];
  /** Beacons of a table, which a VOR receiver has no use for. */
  readonly beaconsLeftOut: number;
  /** Paths of every file that took part. */
  readonly files: readonly string[];
}

/**
 * Reads our station file, or the worldwide table when the name ends in .csv. `date` (ISO) is the day for which missing
 * declinations are estimated. Throws InputFault with a line for each fault.
 */
export async function readStationList(path: string, date: string): Promise<StationList> {
  const text = await operandText(path);
  if (isTablePath(path)) {
    const table = readWorldwideTable(text, date);
    if (table.kind === "not-the-table") throw faultsOf([{ ...table, file: path }]);
    const { stations, skipped, notes, counts } = table;
    return { stations, skipped, notes, beaconsLeftOut: counts.ndb, files: [path] };
  }
  const read = readStations(text, { path, open: openBeside, date });
  if (!read.ok) throw faultsOf(read.faults);
  const { stations, skipped, notes, sources } = read;
  return { stations, skipped, notes, beaconsLeftOut: 0, files: sources.map((source) => source.path) };
}
