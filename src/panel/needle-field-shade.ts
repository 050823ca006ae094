/**
 * What needle and flag show at a place, in the steps the needle field is coloured by: quarters of a dot, which is as far as the
 * needle is read (`CENTRED_WITHIN_DEG`), on the TO or the FROM side. For one course every bin of radials has one shade; turning
 * the course by a bin's width only shifts that table, so the course knob costs nothing but a shift.
 */

import { type StationDeg, stationDeg, turned } from "../earth/index.ts";
import { VOT_RADIAL } from "../radio/index.ts";
import { CENTRED_WITHIN_DEG, FULL_SCALE_DEG, indicate } from "./deviation-indicator.ts";
import { BIN_COUNT, BINS_PER_DEGREE, radialOfBin } from "./needle-field-cell.ts";
import type { Deviation } from "./reading.ts";

/** Steps from the middle to full scale. */
export const STEPS_EACH_SIDE = FULL_SCALE_DEG / CENTRED_WITHIN_DEG;
const STEPS = 2 * STEPS_EACH_SIDE + 1;
/** Shades of the FROM side, then as many of the TO side, then one without a flag. */
export const SHADE_COUNT = 2 * STEPS + 1;
/** Square to the course, where no flag shows; and where there is no bearing. */
export const SHADE_OFF = SHADE_COUNT - 1;

/** Steps are cut where the needle is at so many quarters of a dot; below this it is rounding, degrees. */
const NOISE_DEG = 1e-9;

/** One shade in plain words: the flag, and the needle in steps, right positive; null where no flag shows. */
export interface Shade {
  readonly flag: "TO" | "FROM";
  /** -20 (full scale left) to 20; 0 is centred. */
  readonly step: number;
}

/** The shade of what an indicator shows, 0 to `SHADE_OFF`. */
export function shadeOf({ deviationDeg, flag }: Deviation): number {
  if (flag === "OFF" || deviationDeg === null) return SHADE_OFF;
  const steps = Math.floor((Math.abs(deviationDeg) + NOISE_DEG) / CENTRED_WITHIN_DEG);
  const step = Math.sign(deviationDeg) * Math.min(STEPS_EACH_SIDE, steps);
  return shadeNumber({ flag, step });
}

/** The number of a shade. */
export const shadeNumber = ({ flag, step }: Shade): number =>
  (flag === "TO" ? STEPS : 0) + STEPS_EACH_SIDE + step;

/** What a shade means; null for `SHADE_OFF`. */
export function shadeMeaning(shade: number): Shade | null {
  if (shade >= SHADE_OFF) return null;
  return { flag: shade < STEPS ? "FROM" : "TO", step: (shade % STEPS) - STEPS_EACH_SIDE };
}

/**
 * A course as the table of a course near 000, shifted by whole bins.
 * `restDeg` in [0, 1/182): 0 for whole and half degrees.
 */
export function courseShift(course: StationDeg): { readonly restDeg: number; readonly bins: number } {
  const bins = Math.floor(course * BINS_PER_DEGREE);
  return { bins, restDeg: course - bins / BINS_PER_DEGREE };
}

/**
 * The shade of every bin for a course, read off the deviation indicator at the middle of each. Exact for a course in whole or
 * half degrees; for others a place within 0.003 degree of the edge of a step may get its neighbour's shade.
 */
export function shadesForCourse(course: StationDeg): Uint8Array {
  const shades = new Uint8Array(BIN_COUNT);
  for (let bin = 0; bin < BIN_COUNT; bin++)
    shades[bin] = shadeOf(indicate(stationDeg(radialOfBin(bin)), course));
  return shades;
}

/** The shade wherever a test signal is received, by a receiver that adds so many degrees. */
export const testSignalShade = (course: StationDeg, bearingErrorDeg: number): number =>
  shadeOf(indicate(turned(VOT_RADIAL, bearingErrorDeg), course));
