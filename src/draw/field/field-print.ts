/**
 * How a plate is printed: which ink each cell gets. Both painters follow this, the one in JavaScript and the one on the graphics
 * card; so does whoever checks them.
 */

import { type StationDeg, stationDeg } from "../../earth/index.ts";
import {
  BEARING_EDGE,
  BIN_COUNT,
  courseShift,
  FIX_EDGE,
  NO_BIN,
  RECEPTION_EDGE,
  shadesForCourse,
  TEST_SIGNAL_BIN,
  testSignalShade,
} from "../../panel/index.ts";
import type { FieldKind } from "./field-choice.ts";
import type { FieldLook } from "./field-subject.ts";

/** Codes of bins are 16 bits wide. */
export const CODE_COUNT = 0x10000;

/** Where a kind of field draws an edge. */
export const EDGES: Readonly<Record<FieldKind, number>> = {
  needle: BEARING_EDGE,
  "to-from": BEARING_EDGE,
  reception: RECEPTION_EDGE,
  fix: FIX_EDGE,
};

/** What stands in the table of shades where a cell's reception decides. */
export const BY_RECEPTION = 0xff;

/**
 * The shade of every code of a bin for one course; a table to look up. Turning the course by whole degrees copies the last table
 * with a shift; only another fraction of a bin has it read off the indicator anew.
 */
export interface ShadeTable {
  readonly shades: Uint8Array;
  readonly turnTo: (look: FieldLook) => void;
}

export function shadeTable(): ShadeTable {
  const shades = new Uint8Array(CODE_COUNT).fill(BY_RECEPTION);
  let base: { readonly restDeg: number; readonly shades: Uint8Array } | null = null;
  return {
    shades,
    turnTo: ({ course, bearingErrorDeg }) => {
      const { restDeg, bins } = courseShift(course);
      if (base?.restDeg !== restDeg) base = { restDeg, shades: shadesForCourse(stationDeg(restDeg)) };
      shades.set(base.shades.subarray(0, BIN_COUNT - bins), bins);
      shades.set(base.shades.subarray(BIN_COUNT - bins), 0);
      shades[TEST_SIGNAL_BIN] = testSignalShade(course as StationDeg, bearingErrorDeg);
      shades[NO_BIN] = BY_RECEPTION;
    },
  };
}
