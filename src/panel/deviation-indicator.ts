/**
 * The deviation indicator: a needle across five dots a side and a TO/FROM flag. It compares the radial with the selected course,
 * both counted from the station's north, and knows nothing of heading.
 * Right is positive. Full scale is 10 degrees, two degrees a dot (FAA knowledge-test items; the handbook's older face reads 12).
 */

import { type StationDeg, turnBetween } from "../earth/index.ts";
import type { Deviation, Flag, NeedleSide } from "./reading.ts";

export const FULL_SCALE_DEG = 10;
export const DOTS_EACH_SIDE = 5;
export const DEGREES_PER_DOT = FULL_SCALE_DEG / DOTS_EACH_SIDE;
/** Half the width of the band square to the course in which the flag shows neither TO nor FROM, degrees. Common practice. */
export const ABEAM_HALF_WIDTH_DEG = 2;
/** A needle nearer the middle than this reads as centred: a quarter of a dot, about the width of the needle itself. Our choice. */
export const CENTRED_WITHIN_DEG = 0.5;

const RAD = Math.PI / 180;
/** Below this the sine is arithmetic noise of an exactly centred needle, degrees. */
const NOISE_DEG = 1e-9;

/** What the indicator shows without a usable signal: needle parked, flag OFF. */
export const NO_DEVIATION: Deviation = {
  deviationDeg: null,
  needleDots: null,
  needleSide: null,
  fullScale: false,
  flag: "OFF",
};

/**
 * Deviation in [-90, 90] degrees, right positive: asin(sin(course - radial)). On the TO side the needle mirrors, so that it always
 * lies toward the course for a pilot who faces along it.
 */
export function deviationDeg(radial: StationDeg, course: StationDeg): number {
  const angle = turnBetween(radial, course);
  const folded = angle > 90 ? 180 - angle : angle < -90 ? -180 - angle : angle;
  return Math.abs(folded) < NOISE_DEG ? 0 : folded;
}

/** TO where the cosine of (course - radial) is negative, FROM where positive, OFF within two degrees of abeam. */
export function toFrom(radial: StationDeg, course: StationDeg): Flag {
  const angleDeg = Math.abs(turnBetween(radial, course));
  if (Math.abs(angleDeg - 90) <= ABEAM_HALF_WIDTH_DEG) return "OFF";
  return angleDeg < 90 ? "FROM" : "TO";
}

/** Needle and flag for a received radial and a selected course. */
export function indicate(radial: StationDeg, course: StationDeg): Deviation {
  const deviation = deviationDeg(radial, course);
  const size = Math.abs(deviation);
  return {
    deviationDeg: deviation,
    needleDots: Math.min(size, FULL_SCALE_DEG) / DEGREES_PER_DOT,
    needleSide: sideOf(deviation),
    // Tolerates the last figure of a difference of two directions.
    fullScale: size >= FULL_SCALE_DEG - NOISE_DEG,
    flag: toFrom(radial, course),
  };
}

/** Across the course, how far the aircraft is from it, NM: distance to the station times the sine of the deviation. */
export const offCourseNm = (distanceNm: number, deviation: number): number =>
  Math.abs(distanceNm * Math.sin(deviation * RAD));

/** The same by the one-in-sixty rule: one degree at 60 NM is one mile. */
export const offCourseOneInSixtyNm = (distanceNm: number, deviation: number): number =>
  (distanceNm * Math.abs(deviation)) / 60;

/** The same by the rule of 200 feet a dot and mile, feet. Standard ground-school rule. */
export const offCourseByDotsFt = (distanceNm: number, dots: number): number => 200 * dots * distanceNm;

function sideOf(deviation: number): NeedleSide {
  if (Math.abs(deviation) < CENTRED_WITHIN_DEG) return "centre";
  return deviation > 0 ? "right" : "left";
}
