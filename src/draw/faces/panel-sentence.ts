/** The whole panel in words. */

import { threeDigits } from "../../earth/index.ts";
import { feet } from "../../reason/index.ts";
import type { Situation } from "../../scene/index.ts";
import { headingCovered } from "./covers.ts";
import { faceSentence } from "./face-sentence.ts";

/** Heading, altitude, and each receiver's sentence in order; covered things are said to be covered. */
export function panelSentence(situation: Situation, covers = situation.scene.covers): string {
  if (covers.includes("panel")) return "Panel covered.";
  const { heading, altitudeFt } = situation.scene.aircraft;
  const headed = headingCovered(covers) ? "Heading covered." : `Heading ${threeDigits(heading)}.`;
  const receivers = situation.receivers.map((reading) => faceSentence(reading, covers));
  return [headed, `Altitude ${feet(altitudeFt)}.`, ...receivers].join(" ");
}
