/**
 * The stations of a scene or of a station file, wherever they are written: inline, in station files, in files those
 * include, in the worldwide table. Own files hold each ident once; the table may hold it many times.
 */

import { isSeq, type Node } from "yaml";
import { type NotTheTable, readWorldwideTable, type Station } from "../radio/index.ts";
import type { Fault } from "./fault.ts";
import { openFile } from "./file-kind.ts";
import { addFault, cited, type Reading } from "./reading.ts";
import {
  isBlank,
  offsetOf,
  type RecordField,
  readField,
  readScalar,
  scalarText,
  type Written,
} from "./record.ts";
import { type Open, openNamed, type SourceFile, sourceFile } from "./sources.ts";
import { readStation } from "./station-record.ts";
import { pathLeaf, STATION_FILE, stationFileLeaves } from "./station-shape.ts";
import { isTablePath, textFault } from "./text-file.ts";
import { parseYamlFile } from "./yaml-file.ts";

/** Stations found so far. Filled by the functions below, file by file. */
export interface Gathered {
  readonly open: Open;
  /** ISO day for which missing declinations are estimated. */
  readonly date: string;
  /** From our own files and inline. */
  readonly own: Station[];
  /** From worldwide tables. */
  readonly table: Station[];
  readonly sources: SourceFile[];
  /** Faults of the other files. */
  readonly faults: Fault[];
  /** Every ident written in our own files, sound or not, with its place in words. */
  readonly idents: Map<string, string>;
  /** A file or station could not be read, so a station that is not found may still exist. */
  incomplete: boolean;
}

export const gathering = (open: Open, date: string): Gathered => ({
  open,
  date,
  own: [],
  table: [],
  sources: [],
  faults: [],
  idents: new Map(),
  incomplete: false,
});

/** Takes in a value that is a path, a list of paths and stations, or (with `stationsToo` false) paths only. */
export function gather(
  to: Gathered,
  reading: Reading,
  field: RecordField,
  { chain, stationsToo }: { chain: readonly string[]; stationsToo: boolean },
): void {
  const { node, key } = field;
  if (!isSeq(node)) {
    const path = readScalar(reading, field, pathLeaf, key);
    if (path) gatherFile(to, reading, path, key, chain);
    else to.incomplete = true;
    return;
  }
  for (const item of node.items as (Node | null)[]) {
    const offset = item?.range?.[0] ?? offsetOf(field);
    if (stationsToo && scalarText(item) === null && !isBlank(item)) {
      gatherStation(to, reading, item, offset);
      continue;
    }
    const path = readScalar(reading, { key, keyOffset: offset, node: item }, pathLeaf, key);
    if (path) gatherFile(to, reading, path, key, chain);
    else to.incomplete = true;
  }
}

/** Takes in a list of stations, and nothing else. */
export function gatherList(to: Gathered, reading: Reading, field: RecordField): void {
  const { node } = field;
  if (isBlank(node)) return;
  if (!isSeq(node)) {
    to.incomplete = true;
    addFault(
      reading,
      "not-a-list",
      offsetOf(field),
      `${field.key} is not a list; write each station under it, beginning with - ident:`,
    );
    return;
  }
  for (const item of node.items as (Node | null)[])
    gatherStation(to, reading, item, item?.range?.[0] ?? offsetOf(field));
}

function gatherStation(to: Gathered, reading: Reading, node: Node | null, offset: number): void {
  const { station, ident } = readStation(reading, node, to.date, offset);
  if (!station && !ident) to.incomplete = true;
  if (!ident) return;
  const place = `${reading.file} line ${reading.lines.linePos(ident.offset).line}`;
  const first = to.idents.get(ident.value);
  if (first !== undefined) {
    addFault(
      reading,
      "repeated-ident",
      ident.offset,
      `ident ${ident.value} belongs to another station already, at ${first}; give each station its own ident`,
    );
    return;
  }
  to.idents.set(ident.value, place);
  if (station) to.own.push(station);
}

function gatherFile(
  to: Gathered,
  reading: Reading,
  written: Written<string>,
  key: string,
  chain: readonly string[],
): void {
  const opened = openNamed(reading, written, key, to.open);
  if (!opened) {
    to.incomplete = true;
    return;
  }
  const { path, text } = opened;
  if (chain.includes(path)) {
    to.incomplete = true;
    const circle = [...chain.slice(chain.indexOf(path)), path].join(" includes ");
    addFault(
      reading,
      "include-cycle",
      written.offset,
      `${key} ${cited(written.text)} leads in a circle, ${circle}; take one of these includes out`,
    );
    return;
  }
  if (to.sources.some((source) => source.path === path)) return;
  if (isTablePath(path)) gatherTable(to, path, text, written.text);
  else gatherStationFile(to, path, text, written.text, chain);
}

/** Takes in a station file's text; its faults are its own. */
export function gatherStationFile(
  to: Gathered,
  path: string,
  text: string,
  written: string,
  chain: readonly string[],
): void {
  to.sources.push(sourceFile("stations", path, written));
  const { reading, root } = parseYamlFile(text, path);
  const record = root && openFile(reading, root, "stations", STATION_FILE);
  // Told about, not needed: the stations have their own names.
  if (record)
    for (const key of ["name", "about"] as const) readField(reading, record, key, stationFileLeaves[key]);
  // A misspelt `list:` hides stations too.
  if (!record || reading.faults.length > 0) to.incomplete = true;
  const include = record?.fields.get("include");
  const list = record?.fields.get("list");
  if (include && !isBlank(include.node))
    gather(to, reading, include, { chain: [...chain, path], stationsToo: false });
  if (list) gatherList(to, reading, list);
  to.faults.push(...reading.faults);
}

/** Takes in a worldwide table's text. */
export function gatherTable(to: Gathered, path: string, text: string, written: string): void {
  const before = textFault(text, path);
  const table = before ? null : readWorldwideTable(text, to.date);
  if (table?.kind !== "table") {
    const fault = before ?? (table && notTheTable(path, table));
    if (fault) to.faults.push(fault);
    to.incomplete = true;
    to.sources.push(sourceFile("table", path, written));
    return;
  }
  to.table.push(...table.stations);
  to.sources.push(sourceFile("table", path, written, { skipped: table.skipped, notes: table.notes }));
}

const notTheTable = (file: string, { line, column, message }: NotTheTable): Fault => ({
  code: "not-the-table",
  file,
  line,
  column,
  message,
});
