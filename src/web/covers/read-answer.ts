/** What a person wrote for a guess: the answer it means, or one sentence that says what would be right. Pure. */

import { readAircraftPlace, type Scene } from "../../scene/index.ts";
import { readDirection } from "../input/read-number.ts";
import type { Answer, AnswerKind } from "./guess.ts";

/** Typed text is read for these kinds; the others are laid down by hand. */
export const isTyped = (kind: AnswerKind): boolean =>
  kind === "place" || kind === "direction" || kind === "words";

/** @param what is guessed, as a fault calls it: "course" */
export function readAnswer(
  kind: AnswerKind,
  text: string,
  { stations }: Pick<Scene, "stations">,
  what: string,
): Answer | string {
  const written = text.trim();
  switch (kind) {
    case "place": {
      const read = readAircraftPlace(written, { own: stations, table: [] });
      if (read.ok) return { kind: "place", position: read.position };
      // Example places are not given: one of them may be the answer.
      const why =
        read.point === null ? (written === "" ? "" : `“${written}” is no place; `) : `${read.reason}; `;
      return `${why}write ident radial/NM, or latitude and longitude`;
    }
    case "direction": {
      const deg = readDirection(what, written);
      return typeof deg === "number" ? { kind: "direction", deg: deg === 0 ? 360 : deg } : deg;
    }
    case "words":
      return written === "" ? "write what you think, in a few words" : { kind: "words", text: written };
    case "needle":
      return "lay the paper needle where you think it stands";
    case "flag":
      return "choose what you think the flag says";
  }
}
