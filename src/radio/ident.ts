/**
 * The ident: the station's letters in Morse code, keyed on a tone. A VOR sends it at 1020 Hz about every 10 seconds; a
 * DME beside it takes the place of every fourth, at 1350 Hz, so a lone ident every 30 to 40 seconds means that only the
 * DME works. A station under maintenance sends T-E-S-T, or nothing.
 * Sources: ICAO Annex 10 Vol I, 3.3.6 (7 words a minute, at least every 30 s, preferably three times: from memory) and
 * 3.5.3.6 (40 s block of at least four equal periods, one of them the DME's); FAA AIM 1-1-3 c and 1-1-7. The FAA speaks
 * of about 30 s where ICAO's block is 40; we send ICAO's.
 */

import { dotMs, morseStrokes, morseUnits, WORD_GAP_UNITS } from "./morse.ts";

export const VOR_IDENT_HZ = 1020;
export const DME_IDENT_HZ = 1350;
export const IDENT_WORDS_PER_MINUTE = 7;
/** What a station sends under maintenance: `- . ··· -`. FAA AIM 1-1-3 c. */
export const TEST_IDENT = "TEST";
/** Three idents in 30 s. */
export const IDENT_PERIOD_S = 10;
/** Of the four equal periods of a paired station's block the last is the DME's. */
export const PERIODS_PER_BLOCK = 4;

/** A stretch of tone, seconds from the start of the ident. */
export interface ToneStroke {
  readonly startS: number;
  readonly durationS: number;
}

/** One whole ident on the air. */
export interface IdentCall {
  readonly startS: number;
  readonly text: string;
  readonly toneHz: number;
}

/** What a station has on the air: the bearing part's ident, the distance part's; null where a part sends none. */
export interface IdentSource {
  readonly vorText: string | null;
  readonly dmeText: string | null;
}

/** When the tone is on, for one ident. Throws RangeError where a character has no code or the speed is not above 0. */
export function keying(text: string, wordsPerMinute = IDENT_WORDS_PER_MINUTE): ToneStroke[] {
  const dotS = dotMs(wordsPerMinute) / 1000;
  return morseStrokes(text).map(({ startUnits, units }) => ({
    startS: startUnits * dotS,
    durationS: units * dotS,
  }));
}

/** Seconds from the first dot to the end of the last element. Throws as `keying` does. */
export const identDurationS = (text: string, wordsPerMinute = IDENT_WORDS_PER_MINUTE): number =>
  (morseUnits(text) * dotMs(wordsPerMinute)) / 1000;

/**
 * Seconds from one ident's start to the next one's: 10, or longer where a long ident needs a word gap after it
 * (three figures take 10.8 s at 7 words a minute).
 */
export function identPeriodS(text: string, wordsPerMinute = IDENT_WORDS_PER_MINUTE): number {
  const gapS = (WORD_GAP_UNITS * dotMs(wordsPerMinute)) / 1000;
  return Math.max(IDENT_PERIOD_S, identDurationS(text, wordsPerMinute) + gapS);
}

/**
 * Every ident that starts in [0, durationS). With both parts: three of the VOR, then one of the DME. A VOR alone fills
 * every period; a DME whose VOR is silent keeps to its own one in four, the first at 0 so that the ear need not wait.
 */
export function identCalls(
  source: IdentSource,
  durationS: number,
  wordsPerMinute = IDENT_WORDS_PER_MINUTE,
): IdentCall[] {
  const periodS = Math.max(
    ...[source.vorText, source.dmeText].map((text) =>
      text === null ? 0 : identPeriodS(text, wordsPerMinute),
    ),
  );
  const dmeTurn = source.vorText === null ? 0 : PERIODS_PER_BLOCK - 1;
  const calls: IdentCall[] = [];
  for (let turn = 0; periodS > 0 && turn * periodS < durationS; turn++) {
    const isDmeTurn = source.dmeText !== null && turn % PERIODS_PER_BLOCK === dmeTurn;
    const text = isDmeTurn ? source.dmeText : source.vorText;
    if (text !== null)
      calls.push({ startS: turn * periodS, text, toneHz: isDmeTurn ? DME_IDENT_HZ : VOR_IDENT_HZ });
  }
  return calls;
}

/**
 * Which parts of a paired station may be used, by the idents heard on it (FAA AIM 1-1-7): each part vouches for itself
 * only.
 */
export const usableParts = (heard: {
  readonly vorIdentHeard: boolean;
  readonly dmeIdentHeard: boolean;
}): { readonly vorUsable: boolean; readonly dmeUsable: boolean } => ({
  vorUsable: heard.vorIdentHeard,
  dmeUsable: heard.dmeIdentHeard,
});
