/**
 * The argument while something is covered: a step that would say what lies under a cover is withheld, number and place kept, so
 * that lifting the cover fills the gap. A chart and a panel give each other away, so covering one withholds what it shares with the
 * other.
 */

import type { Reason, ReasonRule } from "./reason.ts";

/** A step that stays in its place without its words. */
export interface WithheldReason {
  readonly kind: "withheld";
  readonly receiver: string;
  readonly number: number;
}

export interface SpokenReason {
  readonly kind: "spoken";
  readonly reason: Reason;
}

/** Rules that say, or lead straight to, what each cover hides. */
const WITHHELD: Readonly<Record<string, readonly ReasonRule[]>> = {
  chart: [
    "received",
    "service-volume",
    "radial",
    "norths",
    "to-from",
    "deviation",
    "distance",
    "slant-range",
    "fly",
  ],
  aircraft: [
    "received",
    "service-volume",
    "radial",
    "norths",
    "to-from",
    "deviation",
    "distance",
    "slant-range",
    "fly",
  ],
  heading: ["heading-agrees", "fly"],
  panel: ["to-from", "deviation", "distance", "heading-agrees", "fly"],
  needle: ["deviation", "distance", "heading-agrees", "fly"],
  flag: ["received", "to-from", "heading-agrees", "fly"],
  course: ["line", "to-from", "deviation", "distance", "heading-agrees", "fly"],
  dme: ["received", "service-volume", "distance", "slant-range"],
  ident: ["tuned", "identified", "received", "service-volume", "radial", "norths", "line", "fly"],
  frequency: ["tuned", "identified", "received", "service-volume", "radial", "norths", "line", "fly"],
};

const VIEWS_AND_SHARED = ["chart", "aircraft", "heading", "panel"];

/** Every step in order, spoken or withheld. `covers` in the scene's form: "needle" of NAV1 is "NAV1.needle". */
export function underCovers(
  reasons: readonly Reason[],
  covers: readonly string[],
): (SpokenReason | WithheldReason)[] {
  return reasons.map((reason) =>
    isWithheld(reason, covers)
      ? { kind: "withheld", receiver: reason.receiver, number: reason.number }
      : { kind: "spoken", reason },
  );
}

function isWithheld(reason: Reason, covers: readonly string[]): boolean {
  return covers.some((cover) => {
    if (cover === "reasons" || cover === reason.receiver) return true;
    const own = cover.startsWith(`${reason.receiver}.`) ? cover.slice(reason.receiver.length + 1) : null;
    const key = own ?? (VIEWS_AND_SHARED.includes(cover) ? cover : null);
    // A magnetic indicator's pointer is the radial itself, so there the steps about the radial speak of the needle.
    if (key === "needle" && reason.parts.includes("needle")) return true;
    return key !== null && (WITHHELD[key] ?? []).includes(reason.rule);
  });
}
