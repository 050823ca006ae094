/** The key of a station's ident over time: how far it is down, 0 to 1, at any moment since the station's clock began. */

import {
  IDENT_WORDS_PER_MINUTE,
  identCalls,
  identPeriodS,
  keying,
  PERIODS_PER_BLOCK,
  type ToneStroke,
  VOR_IDENT_HZ,
} from "./ident.ts";
import { EDGE_S, risen } from "./key-edge.ts";
import { dotMs } from "./morse.ts";
import type { IdentModulation } from "./vor-modulation.ts";

interface KeyPlan {
  readonly strokes: readonly ToneStroke[];
  readonly repeatS: number;
}

/** The key as a function of seconds. A function that remembers where it was: quick when asked in order, right in any order. */
export function identKey(ident: IdentModulation): (atS: number) => number {
  if (ident.kind === "none") return () => 0;
  if (ident.kind === "steady") return () => 1;
  const { strokes, repeatS } = planOf(ident);
  let index = 0;
  // Most moments lie in a gap or well inside a stroke, where the key stays as it is for a while.
  let held = 0;
  let heldFromS = 0;
  let heldUntilS = 0;
  const hold = (down: number, fromS: number, forS: number): number => {
    held = down;
    heldFromS = fromS;
    heldUntilS = fromS + forS;
    return down;
  };
  return (atS) => {
    if (atS >= heldFromS && atS < heldUntilS) return held;
    const sinceS = atS - Math.floor(atS / repeatS) * repeatS;
    let stroke = strokes[index];
    if (stroke === undefined || sinceS < stroke.startS) {
      index = 0;
      stroke = strokes[0];
    }
    while (stroke !== undefined && sinceS > stroke.startS + stroke.durationS) stroke = strokes[++index];
    if (stroke === undefined) return hold(0, atS, repeatS - sinceS);
    const afterStartS = sinceS - stroke.startS;
    if (afterStartS < 0) return hold(0, atS, -afterStartS);
    const beforeEndS = stroke.durationS - afterStartS;
    const fromEdgeS = Math.min(afterStartS, beforeEndS);
    if (fromEdgeS >= EDGE_S) return hold(1, atS, beforeEndS - EDGE_S);
    return risen(fromEdgeS, EDGE_S);
  };
}

function planOf(ident: Exclude<IdentModulation, { kind: "none" | "steady" }>): KeyPlan {
  if (ident.kind === "dots") {
    const dotS = dotMs(IDENT_WORDS_PER_MINUTE) / 1000;
    return { strokes: [{ startS: 0, durationS: dotS }], repeatS: 2 * dotS };
  }
  const repeatS = PERIODS_PER_BLOCK * identPeriodS(ident.text);
  const source = { vorText: ident.text, dmeText: ident.shared ? ident.text : null };
  const calls = identCalls(source, repeatS).filter(({ toneHz }) => toneHz === VOR_IDENT_HZ);
  const strokes = calls.flatMap(({ startS, text }) =>
    keying(text).map((stroke) => ({ ...stroke, startS: startS + stroke.startS })),
  );
  return { strokes, repeatS };
}
