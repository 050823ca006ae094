/**
 * The plate of a needle field: one cell for every pixel of the chart, made by the engine. It knows nothing of courses and colours,
 * so it stands while the course turns and the aircraft moves; another view, altitude, station or hill needs another.
 */

import { convergenceDeg, type LatLon } from "../../earth/index.ts";
import {
  airwaves,
  BEARING_EDGE,
  binOfCell,
  channelKhz,
  FIELD_RECEPTIONS,
  FIX_EDGE,
  type FieldReception,
  fillCells,
  fillFixCells,
  fixBandOfCell,
  fixStations,
  type NeedleField,
  NO_BIN,
  needleField,
  RECEPTION_EDGE,
  receptionCodeOfCell,
} from "../../panel/index.ts";
import type { Peak, Station } from "../../radio/index.ts";
import { type ChartView, chartProjection } from "../chart/index.ts";
import { columnsOf, type PaperGrid, paperPlaces, rowsOf } from "./paper-places.ts";

/** What the cells of a plate depend on, but for the piece of earth it shows. */
export interface PlateSubject {
  /** The stations on the channels below. */
  readonly stations: readonly Station[];
  readonly peaks: readonly Peak[];
  readonly altitudeFt: number;
  readonly frequencyMhz: number;
  readonly bearingErrorDeg: number;
  /** The second receiver of a cross fix, and what each bearing may be out by; null where no fix is asked for. */
  readonly fix: { readonly frequencyMhz: number; readonly allowedErrorDeg: number } | null;
}

/** Which piece of the earth, on paper of which size. */
export interface PlatePaper {
  readonly view: ChartView;
  readonly widthPx: number;
  readonly heightPx: number;
}

export interface PlateRequest {
  readonly subject: PlateSubject;
  readonly paper: PlatePaper;
  /** The finest cells wanted, px; 1 or less. */
  readonly cellPx: number;
}

/** The coarse plate that comes first has cells so many times as wide; a power of two. */
export const COARSE_FACTOR = 4;

export interface Plate extends PlateRequest {
  readonly columns: number;
  readonly rows: number;
  /** Row by row from the top left. */
  readonly cells: Uint32Array;
  /** Which receptions occur on it. */
  readonly receptions: readonly FieldReception[];
}

/** The size of a plate's print when each of its cells is so many pixels wide. */
export const printedSize = (
  { paper, cellPx }: Plate,
  pixelsPerCell: number,
): { readonly width: number; readonly height: number } => {
  const grid = { widthPx: paper.widthPx, heightPx: paper.heightPx, cellPx: cellPx / pixelsPerCell };
  return { width: columnsOf(grid), height: rowsOf(grid) };
};

/** The receivers' fields, kept from plate to plate while the subject is the same: hills remember their sky lines. */
export interface PlateFields {
  readonly first: NeedleField;
  readonly second: NeedleField | null;
}

/** Makes the fields of a subject ready for rows of so many cells. */
export function plateFields(subject: PlateSubject, room: number): PlateFields {
  const { stations, peaks, altitudeFt, frequencyMhz, bearingErrorDeg, fix } = subject;
  const air = airwaves(stations, peaks);
  return {
    first: needleField(air, { frequencyMhz, bearingErrorDeg, altitudeFt, room }),
    second:
      fix === null
        ? null
        : needleField(air, { frequencyMhz: fix.frequencyMhz, bearingErrorDeg: 0, altitudeFt, room }),
  };
}

/** Makes a plate, pausing after every row so that its maker can attend to something else. */
export function* makePlate(request: PlateRequest, fields: PlateFields): Generator<undefined, Plate> {
  const { subject, paper, cellPx } = request;
  const grid: PaperGrid = { widthPx: paper.widthPx, heightPx: paper.heightPx, cellPx };
  const columns = columnsOf(grid);
  const rows = rowsOf(grid);
  const { first, second } = fields;
  const stations = second === null ? [] : [...fixStations(first), ...fixStations(second)];
  const projection = chartProjection(paper.view, paper.widthPx, paper.heightPx);
  const convergences = stations.map((station) => (place: LatLon) => convergenceDeg(station, place));
  const places = paperPlaces(projection, grid, convergences);
  const cells = new Uint32Array(columns * rows);
  const spare = new Uint32Array(columns);
  let seen = 0;
  for (let row = 0; row < rows; row++) {
    const here = places.row(row);
    const from = row * columns;
    if (second === null || subject.fix === null) fillCells(first, here.table, cells, from);
    else {
      const fix = { first, second, allowedErrorDeg: subject.fix.allowedErrorDeg };
      const of1 = first.stations.length;
      const fixPlaces = {
        table: here.table,
        convergences1Deg: here.numbers.slice(0, of1),
        convergences2Deg: here.numbers.slice(of1),
      };
      fillFixCells(fix, fixPlaces, cells, from, spare);
    }
    seen |= markEdges(cells, columns, row);
    yield;
  }
  const receptions = FIELD_RECEPTIONS.filter((_, code) => (seen & (1 << code)) !== 0);
  return { ...request, columns, rows, cells, receptions };
}

/** Marks in a row where something ends between a cell and the one to the left or above; gives a bit for each reception met. */
function markEdges(cells: Uint32Array, columns: number, row: number): number {
  let seen = 0;
  for (let column = 0, at = row * columns; column < columns; column++, at++) {
    const cell = cells[at] as number;
    let edges = column > 0 ? edgesBetween(cells[at - 1] as number, cell) : 0;
    if (row > 0) edges |= edgesBetween(cells[at - columns] as number, cell);
    if (edges !== 0) cells[at] = cell | edges;
    seen |= 1 << receptionCodeOfCell(cell);
  }
  return seen;
}

function edgesBetween(one: number, other: number): number {
  // Most neighbours differ in their bin alone.
  if (((one ^ other) & 0x0fff_0000) === 0 && (binOfCell(one) === NO_BIN) === (binOfCell(other) === NO_BIN))
    return 0;
  let edges = 0;
  if ((binOfCell(one) === NO_BIN) !== (binOfCell(other) === NO_BIN)) edges |= BEARING_EDGE;
  if (receptionCodeOfCell(one) !== receptionCodeOfCell(other)) edges |= RECEPTION_EDGE;
  if (fixBandOfCell(one) !== fixBandOfCell(other)) edges |= FIX_EDGE;
  return edges;
}

/** Of a scene's stations, those that a plate on these channels needs. */
export const stationsOnChannels = (
  stations: readonly Station[],
  frequenciesMhz: readonly number[],
): readonly Station[] =>
  stations.filter((station) =>
    frequenciesMhz.some((frequency) => channelKhz(frequency) === channelKhz(station.frequencyMhz)),
  );
