/**
 * The places on the earth under a chart's cells, a row at a time. The chart's own projection is inverted exactly on a coarse grid,
 * and the cells between are cubic interpolations of its earth-centred positions, which bend so little over a grid's step that the
 * places are good to a millimetre on a view of 600 NM (`test/needle-field-plate.test.ts`), and a row costs no trigonometry at all.
 */

import { type LatLon, type PlaceTable, placeTable } from "../../earth/index.ts";
import type { ChartProjection } from "../chart/index.ts";

/** Between two places of the grid, px. */
const STEP_PX = 32;

export interface PaperGrid {
  readonly widthPx: number;
  readonly heightPx: number;
  /** A cell is a square of so many px; its place is under its middle. */
  readonly cellPx: number;
}

export const columnsOf = ({ widthPx, cellPx }: PaperGrid): number => Math.ceil(widthPx / cellPx - 1e-9);
export const rowsOf = ({ heightPx, cellPx }: PaperGrid): number => Math.ceil(heightPx / cellPx - 1e-9);

/** A number that changes smoothly from place to place. */
export type SmoothNumber = (place: LatLon) => number;

/** The places under one row of cells. Written over by the next. */
export interface RowPlaces {
  readonly table: PlaceTable;
  /** The smooth numbers asked for, each for all places. */
  readonly numbers: readonly Float64Array[];
}

export interface PaperPlaces {
  readonly row: (index: number) => RowPlaces;
}

/** `smooth` numbers are interpolated too, between exact ones on the grid. */
export function paperPlaces(
  projection: ChartProjection,
  grid: PaperGrid,
  smooth: readonly SmoothNumber[] = [],
): PaperPlaces {
  const across = Math.ceil(grid.widthPx / STEP_PX) + 4;
  const down = Math.ceil(grid.heightPx / STEP_PX) + 4;
  const channels = 3 + smooth.length;
  const nodes = nodesOf(projection, across, down, smooth);
  const columns = columnsOf(grid);
  const places = Array.from({ length: columns }, (_, column) => weightsAt((column + 0.5) * grid.cellPx));
  const first = Int32Array.from(places, ({ node }) => node * channels);
  const weights = Float64Array.from(places.flatMap((place) => place.weights));
  const line = new Float64Array(across * channels);
  const table = { count: columns, xyzM: new Float64Array(3 * columns) };
  const numbers = smooth.map(() => new Float64Array(columns));
  const mix = (channel: number, into: Float64Array, start: number, stride: number): void => {
    for (let place = 0, to = start; place < columns; place++, to += stride) {
      const from = at(first, place) + channel;
      const weight = 4 * place;
      into[to] =
        at(weights, weight) * at(line, from) +
        at(weights, weight + 1) * at(line, from + channels) +
        at(weights, weight + 2) * at(line, from + 2 * channels) +
        at(weights, weight + 3) * at(line, from + 3 * channels);
    }
  };
  return {
    row(index) {
      const { node, weights: byRow } = weightsAt((index + 0.5) * grid.cellPx);
      const [w0, w1, w2, w3] = byRow;
      const width = across * channels;
      for (let to = 0, from = node * width; to < width; to++, from++)
        line[to] =
          w0 * at(nodes, from) +
          w1 * at(nodes, from + width) +
          w2 * at(nodes, from + 2 * width) +
          w3 * at(nodes, from + 3 * width);
      for (let axis = 0; axis < 3; axis++) mix(axis, table.xyzM, axis, 3);
      numbers.forEach((list, index) => {
        mix(3 + index, list, 0, 1);
      });
      return { table, numbers };
    },
  };
}

/** An index that is known to be inside. */
const at = (list: Float64Array | Int32Array, index: number): number => list[index] as number;

/** The exact inversions, row by row; the first node lies a step outside the paper's corner. */
function nodesOf(
  projection: ChartProjection,
  across: number,
  down: number,
  smooth: readonly SmoothNumber[],
): Float64Array {
  const places = Array.from({ length: across * down }, (_, node) =>
    projection.toWorld(((node % across) - 1) * STEP_PX, (Math.floor(node / across) - 1) * STEP_PX),
  );
  const { xyzM } = placeTable(
    places.map(({ latDeg }) => latDeg),
    places.map(({ lonDeg }) => lonDeg),
  );
  const channels = 3 + smooth.length;
  const nodes = new Float64Array(places.length * channels);
  places.forEach((place, node) => {
    nodes.set(xyzM.subarray(3 * node, 3 * node + 3), node * channels);
    smooth.forEach((number, index) => {
      nodes[node * channels + 3 + index] = number(place);
    });
  });
  return nodes;
}

/** The first of the four nodes round a coordinate, and their weights: Lagrange's cubic through them. */
function weightsAt(px: number): {
  readonly node: number;
  readonly weights: readonly [number, number, number, number];
} {
  const place = px / STEP_PX;
  const node = Math.floor(place);
  const t = place - node;
  return {
    node,
    weights: [
      (-t * (t - 1) * (t - 2)) / 6,
      ((t + 1) * (t - 1) * (t - 2)) / 2,
      (-(t + 1) * t * (t - 2)) / 2,
      ((t + 1) * t * (t - 1)) / 6,
    ],
  };
}
