/** Winds and what a task says about the air. */

import { threeDigits, trueDeg, type Wind, wrap180 } from "../../earth/index.ts";
import { eastWest } from "../../reason/index.ts";
import { windText } from "../../scene/index.ts";
import type { Chance } from "../chance.ts";
import type { Facts } from "../facts.ts";
import type { Given } from "../form.ts";

/** A wind as forecasts give it: from a ten of degrees, 12 to 28 kt. */
export const drawWind = (chance: Chance): Wind => ({
  from: trueDeg(chance.integer(1, 36) * 10),
  speedKt: chance.integer(6, 14) * 2,
});

export const windGiven = (facts: Facts): Given => ({
  label: "Wind",
  value: `${windText(facts.wind)} (true, kt)`,
});

export const airspeedGiven = (facts: Facts): Given => ({
  label: "True airspeed",
  value: `${facts.tasKt} kt`,
});

/** The two norths that a magnetic heading along a radial needs. */
export const northsGiven = (facts: Facts, ident: string): readonly Given[] => [
  { label: "Variation here today", value: eastWest(facts.variationDeg) },
  { label: `${ident}'s radials count from`, value: `${eastWest(facts.declinationDeg)} of true` },
];

/** "4.3 degrees right". */
export function leanPhrase(correctionDeg: number): string {
  const size = Math.abs(correctionDeg).toFixed(1);
  return `${size} degrees ${correctionDeg > 0 ? "right" : "left"}`;
}

/** "062 true". */
export const truePhrase = (deg: number): string => `${threeDigits(deg)} true`;

/** Beyond this a course and a heading may not be laid on one card, degrees: the difference would show in the answer. */
const ONE_CARD_WITHIN_DEG = 4;

/** Whether the station's north and the compass's are near enough for a heading to be told from a course as the numbers stand. */
export const northsAgree = ({ declinationDeg, variationDeg }: Facts): boolean =>
  Math.abs(wrap180(declinationDeg - variationDeg)) <= ONE_CARD_WITHIN_DEG;
