/** A guess at a direction beside the true one, in whole degrees as three digits show them. */

import { threeDigits, wrap180 } from "../../earth/index.ts";

/** This near the opposite direction a guess has read the wrong end of the line, degrees. Our judgement: half of the ten that fill the scale. */
const RECIPROCAL_WITHIN_DEG = 5;

/** Both in degrees from the same north. */
export function compareDirection(trueDeg: number, guessDeg: number): string {
  const truth = threeDigits(trueDeg);
  const offDeg = wrap180(guessDeg - Math.round(trueDeg));
  const size = Math.abs(offDeg);
  if (size === 0) return `Right: ${truth}.`;
  if (size === 180) return `The reciprocal: it is ${truth}, the other end of the same line.`;
  if (180 - size <= RECIPROCAL_WITHIN_DEG)
    return `Near the reciprocal: it is ${truth}, and you were ${degrees(180 - size)} off the other end of its line.`;
  return `${degrees(size)} too far ${offDeg > 0 ? "right" : "left"}: it is ${truth}.`;
}

const degrees = (whole: number): string => `${whole} ${whole === 1 ? "degree" : "degrees"}`;
