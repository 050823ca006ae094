/** How far the key has come in what a receiver hears, as the keying is drawn. */

import { type KeyedCode, keyedCode, letterAt } from "../../draw/index.ts";
import type { IdentHeard } from "../../panel/index.ts";
import { dotMs, IDENT_WORDS_PER_MINUTE } from "../../radio/index.ts";
import { DOT_PITCH_UNITS, type Moment, momentOf, type Round } from "./on-channel.ts";

export interface KeyedNow {
  readonly code: KeyedCode;
  /** Dots from the code's beginning; negative before the first call. */
  readonly sentUnits: number;
  readonly moment: Moment;
}

const DOT_S = dotMs(IDENT_WORDS_PER_MINUTE) / 1000;

/** So many dots of the endless row are drawn. */
const ROW_DOTS = 12;
const ROW: KeyedCode = {
  strokes: Array.from({ length: ROW_DOTS }, (_, dot) => ({ startUnits: dot * DOT_PITCH_UNITS, units: 1 })),
  lengthUnits: ROW_DOTS * DOT_PITCH_UNITS - 1,
  letters: [],
};

/** Where one sender's key is, so many seconds after the listening began. */
export function keyedNow(ident: IdentHeard, round: Round, elapsedS: number): KeyedNow {
  const moment = momentOf(round, elapsedS);
  if (ident.kind === "test-signal")
    return { code: ROW, sentUnits: (elapsedS / DOT_S) % (ROW_DOTS * DOT_PITCH_UNITS), moment };
  return { code: keyedCode(moment.call.text), sentUnits: moment.sinceS / DOT_S, moment };
}

/** The letter under the key in words, "X", or its number where letters are withheld; null between two calls. */
export function letterNow({ code, sentUnits }: KeyedNow, lettered: boolean): string | null {
  if (sentUnits >= code.lengthUnits) return null;
  const letter = letterAt(code, sentUnits);
  if (letter === null) return null;
  return lettered ? letter.letter : `letter ${code.letters.indexOf(letter) + 1} of ${code.letters.length}`;
}
