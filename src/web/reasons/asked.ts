/** What the chain is asked for at the moment: one of its steps, or what made a part of chart or panel. */

import type { Lit } from "../../draw/index.ts";
import type { Part, Reason, ReasonRule } from "../../reason/index.ts";

export type Asked =
  | { readonly kind: "step"; readonly rule: ReasonRule }
  | { readonly kind: "part"; readonly receiver: string; readonly part: Part };

/** The steps to light, in order: the one asked for, or all that speak of the part. */
export function stepsAsked(asked: Asked | null, reasons: readonly Reason[]): readonly Reason[] {
  if (asked === null) return [];
  if (asked.kind === "step") return reasons.filter(({ rule }) => rule === asked.rule);
  return reasons.filter(({ receiver, parts }) => receiver === asked.receiver && parts.includes(asked.part));
}

/** What chart and panel light. A part lights itself, so that one sees what one points at. */
export function litBy(asked: Asked | null, reasons: readonly Reason[]): Lit | null {
  const [first] = stepsAsked(asked, reasons);
  if (asked === null || first === undefined) return null;
  return { receiver: first.receiver, parts: asked.kind === "part" ? [asked.part] : first.parts };
}

export const isSameLit = (one: Lit | null, other: Lit | null): boolean =>
  one === other || JSON.stringify(one) === JSON.stringify(other);

export const isSameAsked = (one: Asked | null, other: Asked | null): boolean =>
  JSON.stringify(one) === JSON.stringify(other);

/** "Rule: ..." of a step; of a part, how many steps made it. Empty when nothing is asked. */
export function askedNote(asked: Asked | null, reasons: readonly Reason[]): string {
  const steps = stepsAsked(asked, reasons);
  const [first, ...others] = steps;
  if (asked === null || first === undefined) return "";
  if (asked.kind === "step") return `Rule: ${first.source}`;
  const what = WORDS[asked.part] ?? asked.part;
  // By their count, for under covers the chain numbers its steps anew.
  return others.length === 0
    ? `The ${what}: 1 step speaks of it`
    : `The ${what}: ${steps.length} steps speak of it`;
}

const WORDS: Partial<Record<Part, string>> = {
  "to-side": "TO side",
  "from-side": "FROM side",
  abeam: "abeam line",
  offset: "distance off the line",
  "service-volume": "service volume",
  "course-card": "course card",
  dme: "DME",
};
