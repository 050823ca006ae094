/**
 * One place of the needle field, packed into a whole number of 32 bits: the radial a receiver there measures, how the signal
 * arrives, and how well a cross fix holds. Nothing in it depends on the selected course, so a field is worked out once and
 * coloured anew for each course. `fieldCell` says what a reading's cell is; the quick way in `needle-field.ts` must agree with it.
 *
 * Radials are kept in bins of 1/182 degree. Half degrees fall on the edges between bins, and so do all the steps of needle and
 * flag for a course in whole or half degrees: a bin lies wholly on one side of each, and nothing is lost by the packing.
 */

import type { ReceiverReading } from "./reading.ts";

export const BINS_PER_DEGREE = 182;
export const BIN_COUNT = 360 * BINS_PER_DEGREE;
/** In place of a bin where no bearing is measured. */
export const NO_BIN = 0xffff;
/** In place of a bin where a test signal is received: its one radial lies on the very edge of a bin (`testSignalShade`). */
export const TEST_SIGNAL_BIN = 0xfffe;

/** How the signal arrives at a place: a bearing that is good or weak, with its published volume, or why there is none. */
export const FIELD_RECEPTIONS = [
  "good-inside",
  "good-outside",
  "good-unknown",
  "weak-inside",
  "weak-outside",
  "weak-unknown",
  "overhead",
  "two-at-once",
  "below-horizon",
  "terrain",
  "too-weak",
  "silent",
  "distance-only",
  "no-station",
  "localizer-channel",
] as const;
export type FieldReception = (typeof FIELD_RECEPTIONS)[number];

/** Upper ends of the bands a cross fix is told by, NM; the last band has none. */
export const FIX_BANDS_NM = [1, 2, 4, 8] as const;
/** In place of a band where there is no cross fix at all. */
export const NO_FIX = 15;

const RECEPTION_SHIFT = 16;
const FIX_SHIFT = 24;
const FIX_MASK = 0xf;
/** Set where the next cell to the left or above has a bearing and this one has not, or the other way round. */
export const BEARING_EDGE = 1 << 28;
/** Set where the next cell to the left or above has another reception. */
export const RECEPTION_EDGE = 1 << 29;
/** Set where the next cell to the left or above has another band of fix. */
export const FIX_EDGE = 1 << 30;

/** The bin of a radial in [0, 360). */
export const binOfRadial = (radialDeg: number): number => Math.floor(radialDeg * BINS_PER_DEGREE);
/** The middle of a bin, degrees. */
export const radialOfBin = (bin: number): number => (bin + 0.5) / BINS_PER_DEGREE;

export const receptionCode = (reception: FieldReception): number => FIELD_RECEPTIONS.indexOf(reception);

/** A cell without a cross fix and without edges. */
export const packCell = (bin: number, receptionCode: number): number =>
  bin | (receptionCode << RECEPTION_SHIFT) | (NO_FIX << FIX_SHIFT);
/** The cell with the band of a cross fix in it. */
export const withFixBand = (cell: number, band: number): number =>
  (cell & ~(FIX_MASK << FIX_SHIFT)) | (band << FIX_SHIFT);

export const binOfCell = (cell: number): number => cell & 0xffff;
export const receptionCodeOfCell = (cell: number): number => (cell >>> RECEPTION_SHIFT) & 0xff;
export const fixBandOfCell = (cell: number): number => (cell >>> FIX_SHIFT) & FIX_MASK;

/** The reception in a cell. Throws RangeError on a number that is no cell. */
export function receptionOfCell(cell: number): FieldReception {
  const reception = FIELD_RECEPTIONS[receptionCodeOfCell(cell)];
  if (reception === undefined) throw new RangeError(`${cell} is no cell of a needle field`);
  return reception;
}

/** How a reading's signal arrives, as the field tells it. */
export function fieldReception({ signal, geometry }: ReceiverReading): FieldReception {
  switch (signal.kind) {
    case "none":
      // A field is worked out from the computed radial, in which no monitor has a part; noise is the nearest it knows.
      return signal.why.kind === "flagged" ? "too-weak" : signal.why.kind;
    case "overhead":
    case "two-at-once":
      return signal.kind;
    case "good":
    case "weak":
      return `${signal.kind}-${geometry?.serviceVolume ?? "unknown"}`;
  }
}

/** The cell of a place where a receiver reads so. This is the meaning of a field; edges and fixes are added by it. */
export const fieldCell = (reading: ReceiverReading): number =>
  packCell(binOfReading(reading), receptionCode(fieldReception(reading)));

function binOfReading({ radial, station }: ReceiverReading): number {
  if (radial === null) return NO_BIN;
  return station?.kind === "VOT" ? TEST_SIGNAL_BIN : binOfRadial(radial);
}

/** The band of a cross fix with such an error, NM (infinite where nothing bounds it); 0 is the best. */
export function fixBand(errorNm: number): number {
  const band = FIX_BANDS_NM.findIndex((upToNm) => errorNm < upToNm);
  return band < 0 ? FIX_BANDS_NM.length : band;
}
