/** A guess at what lies under a cover: which cover, and what is thought to be there. Plain data. */

import type { LatLon } from "../../earth/index.ts";
import type { Flag } from "../../panel/index.ts";
import { parseCover, type Scene } from "../../scene/index.ts";

export type Answer =
  /** Where the aircraft is. */
  | { readonly kind: "place"; readonly position: LatLon }
  /** Right positive, in half dots from -5 to 5, where 5 is the stop; null: parked for want of a signal. */
  | { readonly kind: "needle"; readonly dots: number | null }
  | { readonly kind: "flag"; readonly flag: Flag }
  /** A course, a heading, or where a pointer's head stands on its card: whole degrees, 1 to 360. */
  | { readonly kind: "direction"; readonly deg: number }
  | { readonly kind: "words"; readonly text: string }
  | { readonly kind: "not-yet" };

/** The ways of answering that a cover can ask for; "I don't know yet" is always open. */
export type AnswerKind = Exclude<Answer["kind"], "not-yet">;

export interface Guess {
  /** As the scene writes it: `NAV1.needle`. */
  readonly cover: string;
  readonly answer: Answer;
}

/** How what lies under a cover is guessed. */
export function answerKind({ receivers }: Pick<Scene, "receivers">, cover: string): AnswerKind {
  const target = parseCover(cover);
  if (target?.kind === "aircraft") return "place";
  if (target?.kind === "heading") return "direction";
  if (target?.kind !== "receiver") return "words";
  const face = receivers.find(({ name }) => name === target.receiver)?.face;
  switch (target.part) {
    case "needle":
      // A magnetic indicator has a pointer on a card in place of a bar on dots.
      return face === "rmi" ? "direction" : "needle";
    case "flag":
      return "flag";
    case "course":
      return "direction";
    default:
      return "words";
  }
}
