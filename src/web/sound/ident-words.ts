/**
 * What may be said of an ident under the covers, and how. Covered ident (its own cover, the receiver's, the panel's):
 * nothing, and it does not sound. Covered frequency: it sounds and its dots and dashes are shown, but no letter and no
 * meaning is named, in words or for a screen reader, since reading the code is then the question.
 */

import { coveredParts } from "../../draw/index.ts";
import type { IdentHeard } from "../../panel/index.ts";
import { DME_IDENT_HZ, TEST_IDENT } from "../../radio/index.ts";
import type { Moment } from "./on-channel.ts";

export type Told = "everything" | "no-letters" | "nothing";

/** How much may be told of what a receiver hears. `covers` are the scene's. */
export function toldOf(receiver: string, covers: readonly string[]): Told {
  const covered = coveredParts(receiver, covers);
  if (covered.has("ident")) return "nothing";
  return covered.has("frequency") ? "no-letters" : "everything";
}

/** "T, X, J": said letter by letter. */
const spelled = (text: string): string => [...text].join(", ");

/** What is heard, for a screen reader. It must not be asked where nothing may be told. */
export function identSentence(receiver: string, ident: IdentHeard, told: Exclude<Told, "nothing">): string {
  const begin = `Identify ${receiver}:`;
  const letters = (text: string): string =>
    told === "everything" ? spelled(text) : `${text.length} letters in code`;
  switch (ident.kind) {
    case "ident":
      return `${begin} ${letters(ident.text)}.`;
    case "test":
      return told === "everything"
        ? `${begin} ${spelled(TEST_IDENT)}. The station is on test, do not use it.`
        : `${begin} ${letters(TEST_IDENT)}.`;
    case "test-signal":
      return told === "everything"
        ? `${begin} a row of dots, the test signal.`
        : `${begin} a row of dots without an end.`;
    case "none":
      return `${begin} silence, no ident.`;
    case "dme-only":
      return `${begin} ${letters(ident.text)}, on the higher tone of a DME, ${DME_IDENT_HZ} hertz, about once in 40 seconds, and no other ident.`;
    case "mixed":
      return told === "everything"
        ? `${begin} two idents at once, ${spelled(ident.texts[0])} and ${spelled(ident.texts[1])}.`
        : `${begin} two idents at once.`;
  }
}

/** The line below the code, short enough for a phone's column. `moment` is the sender's; null where nobody calls. */
export function identCaption(
  ident: IdentHeard,
  moment: Moment | null,
  told: Exclude<Told, "nothing">,
): string {
  switch (ident.kind) {
    case "none":
      return "silence: no ident";
    case "mixed":
      return "two idents at once";
    case "test-signal":
      return told === "everything" ? "the test signal's dots" : "a row of dots";
    case "test":
      return told === "everything" ? "on test: do not use" : toneAndPeriod(moment);
    case "ident":
      return moment?.call.toneHz === DME_IDENT_HZ
        ? `its DME's turn, ${DME_IDENT_HZ} Hz`
        : toneAndPeriod(moment);
    case "dme-only":
      return moment === null ? "DME alone" : `DME alone, next in ${Math.ceil(moment.nextInS)} s`;
  }
}

const toneAndPeriod = (moment: Moment | null): string =>
  moment === null ? "" : `${moment.call.toneHz} Hz, every ${Math.round(moment.sinceS + moment.nextInS)} s`;
