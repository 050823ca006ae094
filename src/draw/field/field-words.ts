/** What the legend of the needle field says. */

import type { FieldReception } from "../../panel/index.ts";
import { FIX_BANDS_NM } from "../../panel/index.ts";
import { feet } from "../../reason/index.ts";
import type { FieldShown } from "./field-choice.ts";

export const RECEPTION_WORDS: Readonly<Record<FieldReception, string>> = {
  "good-inside": "inside the published volume",
  "good-outside": "received, beyond the published volume",
  "good-unknown": "received, no volume published",
  "weak-inside": "weak",
  "weak-outside": "weak",
  "weak-unknown": "weak",
  overhead: "overhead",
  "two-at-once": "two stations at once",
  "below-horizon": "below the horizon",
  terrain: "hidden by high ground",
  "too-weak": "too weak",
  silent: "station silent",
  "distance-only": "no bearing: distance only",
  "no-station": "no station on this channel",
  "localizer-channel": "a localizer's channel",
};

/** The bands of a cross fix from the best, in words. */
export const FIX_WORDS: readonly string[] = [
  `under ${FIX_BANDS_NM[0]}`,
  ...FIX_BANDS_NM.slice(1).map((upTo, index) => `${FIX_BANDS_NM[index]} to ${upTo}`),
  `${FIX_BANDS_NM.at(-1)} NM or more`,
];

/** What a figure says under its views: the heading, and what the inks mean. */
export function fieldCaption(choice: FieldShown, altitudeFt: number): string {
  const title = fieldTitle(choice, altitudeFt);
  switch (choice.kind) {
    case "needle":
      return `${title}: deeper where it stands farther out, in the radial’s ink to the left and the course’s to the right; TO hatched; blank is OFF or centred.`;
    case "to-from":
      return `${title}: TO hatched in the radial’s ink, FROM plain in the course’s, blank is OFF.`;
    case "reception":
      return `${title}: plain inside the published volume or where none is known, lined beyond it, dotted where weak, blank where nothing is received.`;
    case "fix":
      return `${title} ${FIX_WORDS.join(", ")}, from the deepest ink to the dots; blank is no fix.`;
  }
}

/** The heading of the legend: what is shown, of whom and how high. */
export function fieldTitle(
  { kind, receiver, other, allowedErrorDeg }: FieldShown,
  altitudeFt: number,
): string {
  const height = `at ${feet(altitudeFt)}`;
  switch (kind) {
    case "needle":
      return `${receiver} needle ${height}`;
    case "to-from":
      return `${receiver} flag ${height}`;
    case "reception":
      return `${receiver} reception ${height}`;
    case "fix":
      return `Fix by ${receiver} and ${other} ${height}, each within ${allowedErrorDeg}°: may be out by`;
  }
}
