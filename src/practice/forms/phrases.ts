/** Phrases that several forms' questions and steps share. */

import { DEGREES_PER_DOT } from "../../panel/index.ts";

/** "3 dots right, 6 degrees". Right is positive. */
export function dotsPhrase(needleDeg: number): string {
  const size = Math.abs(needleDeg);
  if (size === 0) return "centred";
  const hand = needleDeg > 0 ? "right" : "left";
  if (size >= 10) return `full ${hand}`;
  const dots = size / DEGREES_PER_DOT;
  const dotsText = Number.isInteger(dots) ? `${dots}` : dots.toFixed(1);
  return `${dotsText} ${dots === 1 ? "dot" : "dots"} ${hand}, ${Number.isInteger(size) ? size : size.toFixed(1)} degrees`;
}
