/** What is covered on the panel. What is covered must not be drawn, nor said. */

import type { ReceiverReading } from "../../panel/index.ts";
import { isCovered, RECEIVER_PARTS, type ReceiverPart } from "../../scene/index.ts";

/** What can be covered on a face. The heading is the aircraft's, and shows on every card that turns with it. */
export type CoverablePart = ReceiverPart | "heading";

/** What the strip over a part says. */
export const COVERED_AS: Readonly<Record<CoverablePart, string>> = {
  frequency: "frequency",
  ident: "ident",
  course: "course",
  needle: "needle",
  flag: "TO/FROM",
  dme: "DME",
  heading: "heading",
};

/** The covered parts of one receiver by the scene's covers; all of them when the panel or the whole receiver is covered. */
export function coveredParts(receiver: string, covers: readonly string[]): ReadonlySet<CoverablePart> {
  const hidden = (part: ReceiverPart) => covers.includes("panel") || isCovered(covers, receiver, part);
  const found = new Set<CoverablePart>(RECEIVER_PARTS.filter(hidden));
  if (headingCovered(covers)) found.add("heading");
  return found;
}

/** Whether the receiver's place on the panel is covered as a whole. */
export const receiverCovered = (receiver: string, covers: readonly string[]): boolean =>
  covers.includes("panel") || covers.includes(receiver);

export const headingCovered = (covers: readonly string[]): boolean =>
  covers.includes("panel") || isCovered(covers, null, "heading");

/**
 * Whether the bar is drawn as one with a signal. A parked bar is drawn thin and broken, which says OFF as plainly as the flag: with the
 * flag covered it looks as it does on a real face, like a centred one.
 */
export const barLooksLive = (reading: ReceiverReading, covered: ReadonlySet<CoverablePart>): boolean =>
  reading.deviationDeg !== null || covered.has("flag");
