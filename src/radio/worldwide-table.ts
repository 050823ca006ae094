/**
 * The worldwide navaid table: a public-domain comma-separated file (OurAirports, `navaids.csv`), one navaid a row.
 * VOR, VOR-DME and VORTAC are kept; DME and TACAN alone are kept as giving distance only; of a beacon with DME the DME
 * is kept; beacons alone are left out and counted. A broken row is listed with its line and the rest is read.
 * `slaved_variation_deg` is the declination a station was aligned to. Where it is missing the magnetic model's variation
 * on a given date stands in, and the station says so.
 */

import { type ModelLife, magneticModel } from "../earth/index.ts";
import { type BrokenRow, readCsvRows } from "./csv-rows.ts";
import type { Station, StationKind } from "./station.ts";
import {
  stationFromRow,
  WORLDWIDE_COLUMNS,
  type WorldwideColumn,
  type WorldwideValues,
} from "./worldwide-row.ts";

/** Something about a kept row that its reader should know. */
export interface RowNote {
  readonly line: number;
  readonly ident: string;
  /** One sentence, lower-case start, no full stop. */
  readonly note: string;
}

export interface WorldwideCounts {
  /** Rows under the header, whatever became of them. */
  readonly rows: number;
  /** Non-directional beacons left out. */
  readonly ndb: number;
  /** Beacons with DME, of which the DME is kept (under its kind, DME) and the beacon left out. */
  readonly ndbDme: number;
  readonly declinationEstimated: number;
  readonly byKind: Readonly<Record<StationKind, number>>;
}

export interface WorldwideTable {
  readonly kind: "table";
  /** In the file's order. */
  readonly stations: readonly Station[];
  /** Rows that could not be used, by line. */
  readonly skipped: readonly BrokenRow[];
  readonly notes: readonly RowNote[];
  readonly counts: WorldwideCounts;
  /** The model whose variation stands in for missing declinations; `dateInside` false: its date is past its life. */
  readonly declinationModel: ModelLife;
}

/** The file as a whole is something else. */
export interface NotTheTable {
  readonly kind: "not-the-table";
  readonly code: "worldwide-table-empty" | "worldwide-table-header";
  readonly line: number;
  readonly column: number;
  /** One sentence, lower-case start, no full stop. */
  readonly message: string;
}

/**
 * The stations of the table. `date` (YYYY-MM-DD) is the day whose variation stands in for a missing declination.
 * The 11,008 rows of the copy of 2025 are read in about 0.3 s. Throws RangeError on a date that is not in the calendar.
 */
export function readWorldwideTable(text: string, date: string): WorldwideTable | NotTheTable {
  const model = magneticModel(date);
  const { rows, broken } = readCsvRows(text);
  const [header, ...body] = rows;
  if (header === undefined) return notTheTable("worldwide-table-empty", 1, "the file holds no rows");
  const missing = WORLDWIDE_COLUMNS.filter((column) => !header.values.includes(column));
  if (missing.length > 0) {
    const names = missing.length === WORLDWIDE_COLUMNS.length ? "any of its columns" : missing.join(", ");
    const message = `this is not the worldwide navaid table: its first row does not name ${names}; it must begin with ${WORLDWIDE_COLUMNS.slice(0, 3).join(", ")} and the other column names`;
    return notTheTable("worldwide-table-header", header.line, message);
  }
  const stations: Station[] = [];
  const skipped: BrokenRow[] = [...broken];
  const notes: RowNote[] = [];
  const lineOfId = new Map<string, number>();
  let ndb = 0;
  let ndbDme = 0;
  const variationAt: Parameters<typeof stationFromRow>[1] = (position, altitudeFt) =>
    model.field(position, altitudeFt).variationDeg;
  const columns = columnPlaces(header.values);
  for (const { line, values } of body) {
    if (values.length !== header.values.length) {
      const reason = `the row has ${values.length} values, the header names ${header.values.length}`;
      skipped.push({ line, reason });
      continue;
    }
    const row = pick(values, columns);
    const earlier = lineOfId.get(row.id);
    if (earlier !== undefined && row.id !== "") {
      skipped.push({ line, reason: `id ${row.id} is already used on line ${earlier}` });
      continue;
    }
    lineOfId.set(row.id, line);
    const read = stationFromRow(row, variationAt);
    if (read.kind === "ndb") ndb++;
    else if (read.kind === "broken") skipped.push({ line, reason: read.reason });
    else {
      stations.push(read.station);
      if (row.type === "NDB-DME") ndbDme++;
      for (const note of read.notes) notes.push({ line, ident: read.station.ident, note });
    }
  }
  skipped.sort((one, other) => one.line - other.line);
  const { name, validFrom, validTo, dateInside } = model;
  return {
    kind: "table",
    stations,
    skipped,
    notes,
    counts: {
      rows: body.length + broken.length,
      ndb,
      ndbDme,
      declinationEstimated: stations.filter((station) => station.declinationEstimated).length,
      byKind: countKinds(stations),
    },
    declinationModel: { name, validFrom, validTo, dateInside },
  };
}

const notTheTable = (code: NotTheTable["code"], line: number, message: string): NotTheTable => ({
  kind: "not-the-table",
  code,
  line,
  column: 1,
  message,
});

type Places = Readonly<Record<WorldwideColumn, number>>;

const columnPlaces = (header: readonly string[]): Places =>
  Object.fromEntries(WORLDWIDE_COLUMNS.map((column) => [column, header.indexOf(column)])) as Places;

function pick(values: readonly string[], places: Places): WorldwideValues {
  const value = (column: WorldwideColumn): string => values[places[column]] ?? "";
  return Object.fromEntries(WORLDWIDE_COLUMNS.map((column) => [column, value(column)])) as WorldwideValues;
}

function countKinds(stations: readonly Station[]): Record<StationKind, number> {
  const counts = { VOR: 0, "VOR-DME": 0, VORTAC: 0, DME: 0, TACAN: 0, VOT: 0 };
  for (const station of stations) counts[station.kind]++;
  return counts;
}
