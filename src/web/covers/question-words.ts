/** How each cover is asked about, in one line. */

import { parseCover, type Scene } from "../../scene/index.ts";
import type { AnswerKind } from "./guess.ts";

/** @param pointable whether the answer can be pointed at on the chart */
export function promptWords(
  cover: string,
  kind: AnswerKind,
  { receivers }: Pick<Scene, "receivers">,
  pointable: boolean,
): string {
  const target = parseCover(cover);
  if (target === null) return "What is under it?";
  switch (target.kind) {
    case "aircraft":
      return pointable ? "Where is the aircraft? Point at the chart, or write it" : "Where is the aircraft?";
    case "heading":
      return "Which heading?";
    case "view":
      return `What would the ${target.view} show?`;
    case "receiver":
      break;
  }
  const name = target.receiver;
  switch (target.part) {
    case null:
      return `What would ${name} show?`;
    case "needle":
      return kind === "direction"
        ? `Where on the card does the head of ${name}'s pointer stand?`
        : `Where does the needle of ${name} stand?`;
    case "flag":
      return `What does the flag of ${name} say?`;
    case "course":
      return `Which course is selected on ${name}?`;
    case "dme":
      return `What does the DME of ${name} read, in miles?`;
    case "ident":
      return `Which ident is heard on ${name}?`;
    case "frequency":
      return receivers.length > 1 ? `To which frequency is ${name} tuned?` : "Which frequency is tuned?";
  }
}
