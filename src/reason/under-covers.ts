/**
 * The argument while something is covered: a step that would say what lies under a cover is withheld, number and place kept, so
 * that lifting the cover fills the gap. A chart and a panel give each other away, so covering one withholds what it shares with the
 * other.
 */

import type { Part, Reason, ReasonRule } from "./reason.ts";

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

/** What of the argument a cover takes away: these rules, and whatever else speaks of these parts. */
interface Hidden {
  readonly rules: readonly ReasonRule[];
  readonly parts: readonly Part[];
}

/** Each of these says where the aircraft is, or how far from something. */
const WHERE_YOU_ARE: readonly ReasonRule[] = [
  "received",
  "service-volume",
  "radial",
  "measured",
  "norths",
  "to-from",
  "deviation",
  "distance",
  "slant-range",
  "fly",
];
/** Each of these names the station. */
const WHICH_STATION: readonly ReasonRule[] = [
  "tuned",
  "identified",
  "received",
  "service-volume",
  "radial",
  "measured",
  "norths",
  "line",
  "fly",
];

/** By what is covered; views and the aircraft's own first, then the parts of a receiver. */
const HIDDEN_BY: Readonly<Record<string, Hidden>> = {
  chart: { rules: WHERE_YOU_ARE, parts: [] },
  aircraft: { rules: WHERE_YOU_ARE, parts: ["aircraft"] },
  // Why the receiver shows what it shows is what the view of the signal tells.
  signal: { rules: ["measured"], parts: [] },
  heading: { rules: ["heading-agrees", "fly"], parts: ["heading"] },
  panel: {
    rules: [
      "tuned",
      "identified",
      "received",
      "measured",
      "to-from",
      "deviation",
      "distance",
      "slant-range",
      "heading-agrees",
      "fly",
    ],
    parts: ["needle", "flag", "dme"],
  },
  needle: { rules: ["deviation", "distance", "heading-agrees", "fly"], parts: ["needle"] },
  // All that presupposes a signal: where it fails, there is none.
  flag: {
    rules: [
      "received",
      "service-volume",
      "radial",
      "measured",
      "norths",
      "line",
      "to-from",
      "deviation",
      "distance",
      "heading-agrees",
      "fly",
    ],
    parts: ["flag"],
  },
  course: {
    rules: ["line", "to-from", "deviation", "distance", "heading-agrees", "fly"],
    parts: ["course", "course-card"],
  },
  dme: { rules: ["received", "service-volume", "distance", "slant-range"], parts: ["dme"] },
  ident: { rules: WHICH_STATION, parts: ["ident"] },
  frequency: { rules: WHICH_STATION, parts: ["frequency"] },
};

const VIEWS_AND_SHARED = ["chart", "aircraft", "heading", "panel", "signal"];

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

/** The steps that these covers withhold: what the argument gains when they are lifted. */
export const withheldBy = (reasons: readonly Reason[], covers: readonly string[]): Reason[] =>
  reasons.filter((reason) => isWithheld(reason, covers));

/** Covers that no caution speaks of. */
const SILENT_FOR_CAUTIONS = ["heading", "signal"];

/** A situation's cautions as the covers let them be said: each names a station and how it is received, so they are said together or not. */
export const cautionsUnderCovers = (
  cautions: readonly string[],
  covers: readonly string[],
): readonly string[] => (covers.every((cover) => SILENT_FOR_CAUTIONS.includes(cover)) ? cautions : []);

function isWithheld(reason: Reason, covers: readonly string[]): boolean {
  return covers.some((cover) => {
    if (cover === "reasons" || cover === reason.receiver) return true;
    const own = cover.startsWith(`${reason.receiver}.`) ? cover.slice(reason.receiver.length + 1) : null;
    const key = own ?? (VIEWS_AND_SHARED.includes(cover) ? cover : null);
    const hidden = key === null ? undefined : HIDDEN_BY[key];
    if (hidden === undefined) return false;
    return hidden.rules.includes(reason.rule) || reason.parts.some((part) => hidden.parts.includes(part));
  });
}
