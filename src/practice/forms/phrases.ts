/** Phrases that several forms' questions and steps share. */

import { threeDigits, wrap180 } from "../../earth/index.ts";
import { DEGREES_PER_DOT } from "../../panel/index.ts";
import type { Facts } from "../facts.ts";
import { panelShown, physicalRadial } from "../functions.ts";

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

/** Why the flag shows what it shows: "The radial is 246 and the course 070, 176 degrees apart, more than 90: TO." */
export function flagStep(facts: Facts): string {
  const radial = physicalRadial(facts);
  const apartDeg = Math.abs(Math.round(wrap180(radial - facts.course)));
  const { flag } = panelShown(facts);
  const leads =
    flag === "TO"
      ? "the course leads toward the station, and the flag says TO"
      : "the course leads away from the station, and the flag says FROM";
  return `You are on the ${threeDigits(radial)} radial and the course is ${threeDigits(facts.course)}, ${apartDeg} degrees apart, ${flag === "TO" ? "more" : "less"} than 90: ${leads}.`;
}
