/**
 * Which steps of the argument may be shown under the scene's covers. A step that tells what is covered is hidden, and so is every
 * later step about the same receiver, since it builds on it.
 */

import type { Part, Reason, ReasonRule } from "../../reason/index.ts";
import { isCovered, isReceiverCovered, type ReceiverPart } from "../../scene/index.ts";

/** What can be covered and told by words. */
type Told = ReceiverPart | "aircraft" | "heading";

/** What each rule's sentence tells, whatever the scene; its parts on chart and panel come to it. */
const RULE_TELLS: Readonly<Record<ReasonRule, readonly Told[]>> = {
  tuned: ["frequency", "ident"],
  identified: ["frequency", "ident"],
  received: ["dme", "aircraft"],
  "service-volume": ["dme", "aircraft"],
  radial: ["aircraft"],
  norths: ["aircraft"],
  line: ["course"],
  "to-from": ["flag", "course", "aircraft"],
  deviation: ["needle", "course", "aircraft"],
  distance: ["needle", "dme", "course", "aircraft"],
  "slant-range": ["dme", "aircraft"],
  "heading-agrees": ["heading", "course"],
  fly: ["heading", "needle", "course", "aircraft"],
};

const PART_TELLS: Partial<Record<Part, Told>> = {
  aircraft: "aircraft",
  heading: "heading",
  track: "heading",
  radial: "aircraft",
  course: "course",
  "to-side": "flag",
  "from-side": "flag",
  abeam: "flag",
  offset: "needle",
  frequency: "frequency",
  ident: "ident",
  "course-card": "course",
  needle: "needle",
  flag: "flag",
  dme: "dme",
};

function tellsCovered(reason: Reason, covers: readonly string[]): boolean {
  // The panel shows what most steps tell, and the chart where the aircraft is.
  if (covers.includes("reasons") || covers.includes("panel")) return true;
  if (isReceiverCovered(covers, reason.receiver)) return true;
  const hidden = (told: Told): boolean =>
    told === "aircraft" || told === "heading"
      ? isCovered(covers, null, told) || (told === "aircraft" && covers.includes("chart"))
      : isCovered(covers, reason.receiver, told);
  const byParts = reason.parts.map((part) => PART_TELLS[part]).filter((told) => told !== undefined);
  return [...RULE_TELLS[reason.rule], ...byParts].some(hidden);
}

export interface OpenSteps {
  readonly open: readonly Reason[];
  /** How many steps lie under covers, by receiver; receivers with none are left out. */
  readonly coveredByReceiver: ReadonlyMap<string, number>;
}

/** The steps that may be shown, in order. With no covers: all of them. */
export function openSteps(reasons: readonly Reason[], covers: readonly string[]): OpenSteps {
  const coveredByReceiver = new Map<string, number>();
  const open = reasons.filter((reason) => {
    const before = coveredByReceiver.get(reason.receiver) ?? 0;
    if (before === 0 && !tellsCovered(reason, covers)) return true;
    coveredByReceiver.set(reason.receiver, before + 1);
    return false;
  });
  return { open, coveredByReceiver };
}
