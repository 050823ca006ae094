/** The holding pattern: which way in, and how much into the wind. AIM 5-3-8. */

import { type MagneticDeg, reciprocal, turnBetween, turned } from "../earth/index.ts";
import type { Hand } from "./functions.ts";

export const HOLDING_ENTRIES = ["direct", "teardrop", "parallel"] as const;
export type HoldingEntry = (typeof HOLDING_ENTRIES)[number];

/** Sectors are counted from the heading at the fix to the outbound course, degrees: AIM figure 5-3-4, the line at 70 degrees. */
const TEARDROP_WITHIN_DEG = 70;
const PARALLEL_WITHIN_DEG = 110;
const TEARDROP_OFFSET_DEG = 30;
const OUTBOUND_CORRECTION_TIMES = 3;

export interface Hold {
  readonly inboundCourse: MagneticDeg;
  readonly turns: Hand;
}

/** How far the outbound course lies toward the holding side of a heading, degrees, (-180, 180]. */
export const outboundOnHoldingSideDeg = (heading: MagneticDeg, { inboundCourse, turns }: Hold): number =>
  turnBetween(heading, reciprocal(inboundCourse)) * (turns === "right" ? 1 : -1);

/** The entry from a heading at the fix. Within 5 degrees of a sector's edge the neighbour's is as good (AIM 5-3-8). */
export function holdingEntry(heading: MagneticDeg, hold: Hold): HoldingEntry {
  const outboundDeg = outboundOnHoldingSideDeg(heading, hold);
  if (outboundDeg >= 0 && outboundDeg <= TEARDROP_WITHIN_DEG) return "teardrop";
  return outboundDeg < 0 && outboundDeg >= -PARALLEL_WITHIN_DEG ? "parallel" : "direct";
}

/** How near a sector's edge a heading at the fix lies, degrees. */
export const fromSectorEdgeDeg = (heading: MagneticDeg, hold: Hold): number => {
  const outboundDeg = outboundOnHoldingSideDeg(heading, hold);
  return Math.min(
    ...[0, TEARDROP_WITHIN_DEG, -PARALLEL_WITHIN_DEG].map((edgeDeg) => Math.abs(outboundDeg - edgeDeg)),
  );
};

/** Flown for a minute after the fix in a teardrop entry: 30 degrees from the outbound course, toward the holding side. */
export const teardropHeading = ({ inboundCourse, turns }: Hold): MagneticDeg =>
  turned(reciprocal(inboundCourse), turns === "right" ? -TEARDROP_OFFSET_DEG : TEARDROP_OFFSET_DEG);

/** Outbound, three times the inbound correction, to the other hand; degrees, right positive. */
export const outboundCorrectionDeg = (inboundCorrectionDeg: number): number =>
  -OUTBOUND_CORRECTION_TIMES * inboundCorrectionDeg + 0;
