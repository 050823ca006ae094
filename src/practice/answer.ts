/** What a learner answers and what the engine answers, and how near one lies to the other. */

import {
  geodesicDistanceNm,
  inverse,
  type LatLon,
  latLonText,
  type TrueDeg,
  threeDigits,
  turnBetween,
  wrap180,
} from "../earth/index.ts";
import type { Flag } from "../panel/index.ts";

export const NEEDLES = ["full left", "part left", "centred", "part right", "full right"] as const;
export type Needle = (typeof NEEDLES)[number];

export type Unit = "NM" | "kt" | "min" | "ft" | "degrees";

export type Answer =
  /** A direction in three digits; which north it is counted from is the question's to say. */
  | { readonly kind: "direction"; readonly deg: number }
  | { readonly kind: "quantity"; readonly value: number; readonly unit: Unit }
  /** One of the form's own words. */
  | { readonly kind: "word"; readonly word: string }
  | { readonly kind: "panel"; readonly flag: Flag; readonly needle: Needle }
  /** `station`: the place is scored by its azimuth from there; null where only the place itself counts. */
  | { readonly kind: "place"; readonly position: LatLon; readonly station: LatLon | null }
  | { readonly kind: "wind"; readonly fromDeg: TrueDeg; readonly speedKt: number }
  /** A line of the nav log: each figure by its name, directions among them in three digits. */
  | { readonly kind: "row"; readonly figures: Readonly<Record<string, number>> }
  /** Letters of the listed items, first to last. */
  | { readonly kind: "order"; readonly items: readonly string[] };

export type AnswerKind = Answer["kind"];

/** How far from the truth still counts as right. What is absent must be exact, or is not scored. */
export interface Tolerance {
  /** Directions, degrees; for a place, its azimuth from the station. */
  readonly deg?: number;
  /** Quantities, in their unit. */
  readonly value?: number;
  /** Quantities, as a share of the truth; the wider of this and `value` holds. */
  readonly share?: number;
  /** A place, NM from the truth; with `station`, the distance from the station. */
  readonly nm?: number;
  /** A wind's speed, kt. */
  readonly kt?: number;
  /** A row: each figure's own, in its unit. Names ending in "Deg" are directions. */
  readonly figures?: Readonly<Record<string, number>>;
  /** An order: how many of the first items count. */
  readonly first?: number;
}

const over = (difference: number, tolerance: number | undefined): number => {
  const size = Math.abs(difference);
  if (tolerance === undefined || tolerance === 0) return size < 1e-9 ? 0 : Number.POSITIVE_INFINITY;
  return size / tolerance;
};

/**
 * How far two answers lie apart, counted in tolerances of `truth`: up to 1 counts as the same, and options stand at least 2 apart.
 * Infinity between different words or kinds.
 */
export function apart(answer: Answer, truth: Answer, tolerance: Tolerance): number {
  switch (truth.kind) {
    case "direction":
      if (answer.kind !== "direction") return Number.POSITIVE_INFINITY;
      return over(wrap180(answer.deg - truth.deg), tolerance.deg);
    case "quantity": {
      if (answer.kind !== "quantity" || answer.unit !== truth.unit) return Number.POSITIVE_INFINITY;
      const width = Math.max(tolerance.value ?? 0, (tolerance.share ?? 0) * Math.abs(truth.value));
      return over(answer.value - truth.value, width);
    }
    case "word":
      return answer.kind === "word" && answer.word === truth.word ? 0 : Number.POSITIVE_INFINITY;
    case "panel":
      return answer.kind === "panel" && answer.flag === truth.flag && answer.needle === truth.needle
        ? 0
        : Number.POSITIVE_INFINITY;
    case "place":
      return answer.kind === "place"
        ? placesApart(answer.position, truth, tolerance)
        : Number.POSITIVE_INFINITY;
    case "wind": {
      if (answer.kind !== "wind") return Number.POSITIVE_INFINITY;
      return Math.max(
        over(turnBetween(answer.fromDeg, truth.fromDeg), tolerance.deg),
        over(answer.speedKt - truth.speedKt, tolerance.kt),
      );
    }
    case "row":
      return answer.kind === "row"
        ? rowsApart(answer.figures, truth.figures, tolerance)
        : Number.POSITIVE_INFINITY;
    case "order": {
      if (answer.kind !== "order") return Number.POSITIVE_INFINITY;
      const scored = truth.items.slice(0, tolerance.first ?? truth.items.length);
      return scored.every((item, at) => answer.items[at] === item) ? 0 : Number.POSITIVE_INFINITY;
    }
  }
}

function placesApart(
  position: LatLon,
  truth: Extract<Answer, { kind: "place" }>,
  tolerance: Tolerance,
): number {
  if (truth.station === null) return over(geodesicDistanceNm(position, truth.position), tolerance.nm);
  const marked = inverse(truth.station, position);
  const meant = inverse(truth.station, truth.position);
  // A mark on the station itself has no direction: it is as wrong as can be.
  const turnedDeg =
    marked.kind === "line" && meant.kind === "line" ? turnBetween(meant.azimuth, marked.azimuth) : 180;
  const turnedOver = over(turnedDeg, tolerance.deg);
  if (tolerance.nm === undefined) return turnedOver;
  return Math.max(turnedOver, over(marked.distanceNm - meant.distanceNm, tolerance.nm));
}

function rowsApart(
  row: Readonly<Record<string, number>>,
  truth: Readonly<Record<string, number>>,
  tolerance: Tolerance,
): number {
  return Math.max(
    ...Object.entries(truth).map(([name, value]) => {
      const told = row[name];
      if (told === undefined) return Number.POSITIVE_INFINITY;
      const difference = name.endsWith("Deg") ? wrap180(told - value) : told - value;
      return over(difference, tolerance.figures?.[name]);
    }),
  );
}

/** An answer as it is written on an option or in a key: "246", "2.4 NM", "FROM, part left". */
export function answerText(answer: Answer): string {
  switch (answer.kind) {
    case "direction":
      return threeDigits(answer.deg);
    case "quantity":
      return `${numberText(answer)} ${answer.unit}`;
    case "word":
      return answer.word;
    case "panel":
      return `${answer.flag === "OFF" ? "no flag" : answer.flag}, ${answer.needle}`;
    case "place":
      return latLonText(answer.position);
    case "wind":
      return `${threeDigits(answer.fromDeg)}/${Math.round(answer.speedKt)}`;
    case "row":
      return Object.entries(answer.figures)
        .map(([name, value]) => (name.endsWith("Deg") ? threeDigits(value) : `${Math.round(value)}`))
        .join(", ");
    case "order":
      return answer.items.join(", ");
  }
}

function numberText({ value, unit }: { readonly value: number; readonly unit: Unit }): string {
  if (unit === "ft") return `${Math.round(value / 100) * 100}`;
  if (unit === "NM") return value.toFixed(1);
  if (unit === "min" || unit === "degrees")
    return Math.abs(value - Math.round(value)) < 0.05 ? `${Math.round(value)}` : value.toFixed(1);
  return `${Math.round(value)}`;
}
