/** A reading as a person reads it on a terminal. */

import { faceSentence } from "../draw/index.ts";
import { threeDigits } from "../earth/index.ts";
import { eastWest, feet, type Reason } from "../reason/index.ts";
import type { Situation } from "../scene/index.ts";

/** Title and file, the aircraft, each receiver with its numbered reasons, the cautions. */
export function readingText(file: string, situation: Situation, reasons: readonly Reason[]): string {
  const blocks = situation.receivers.map((reading) => {
    const own = reasons.filter((reason) => reason.receiver === reading.settings.name);
    return [faceSentence(reading), ...own.map(reasonLine)].join("\n");
  });
  if (situation.cautions.length > 0)
    blocks.push(["Cautions", ...situation.cautions.map((caution) => `  ! ${caution}`)].join("\n"));
  return [`${situation.scene.title}   (${file})\n${aircraftLine(situation)}`, ...blocks].join("\n\n");
}

const reasonLine = ({ number, title, sentence }: Reason): string =>
  `  ${String(number).padStart(2)}  ${title}. ${sentence}`;

function aircraftLine({ scene, track, groundspeedKt, variationDeg }: Situation): string {
  const { heading, altitudeFt, tasKt } = scene.aircraft;
  return [
    `Heading ${threeDigits(heading)}, ${feet(altitudeFt)}, ${Math.round(tasKt)} kt`,
    `track ${threeDigits(track)} at ${Math.round(groundspeedKt)} kt over the ground`,
    `variation ${eastWest(variationDeg)}`,
  ].join("; ");
}
