/** One step of the argument from a situation to what the instruments show. */

/** Parts of chart and panel that a step speaks of, so that pointing at it lights them. `NAV1` stands for the receiver's name. */
export type Part =
  | "aircraft"
  | "heading"
  | "track"
  | "wind"
  | "station"
  | "rose"
  | "radial"
  | "course"
  | "to-side"
  | "from-side"
  | "abeam"
  | "offset"
  | "service-volume"
  | "frequency"
  | "ident"
  | "course-card"
  | "needle"
  | "flag"
  | "dme"
  | "north";

export const REASON_RULES = [
  "tuned",
  "identified",
  "received",
  "service-volume",
  "radial",
  "measured",
  "norths",
  "line",
  "to-from",
  "deviation",
  "distance",
  "slant-range",
  "heading-agrees",
  "fly",
] as const;
export type ReasonRule = (typeof REASON_RULES)[number];

export interface Reason {
  /** Name of the receiver it argues about. */
  readonly receiver: string;
  /** From 1 for each receiver. */
  readonly number: number;
  readonly rule: ReasonRule;
  /** Two to five words: "Your radial". */
  readonly title: string;
  /** One sentence, as a good instructor says it. */
  readonly sentence: string;
  /** The numbers it used, each key ending in its unit. */
  readonly numbers: Readonly<Record<string, number | string>>;
  /** Published source, or "common practice". */
  readonly source: string;
  readonly parts: readonly Part[];
}
