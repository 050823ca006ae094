/** The suggestion beside an unknown word. */

import { nearMatch } from "../scene/index.ts";

/** ` (did you mean read?)` when one of the known words is near enough to be meant, otherwise nothing. */
export function didYouMean(word: string, known: readonly string[]): string {
  const near = nearMatch(word, known);
  return near === null ? "" : ` (did you mean ${near}?)`;
}
