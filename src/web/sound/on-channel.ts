/**
 * What is keyed on a receiver's channel, as its reading says: who calls when, over and over. A paired station gives every
 * fourth turn to its DME (see `radio/ident.ts`); two stations that neither covers run by clocks of their own.
 */

import type { ReceiverReading, Signal } from "../../panel/index.ts";
import {
  dotMs,
  IDENT_WORDS_PER_MINUTE,
  type IdentCall,
  type IdentSource,
  identCalls,
  identPeriodS,
  TEST_IDENT,
  VOR_IDENT_HZ,
} from "../../radio/index.ts";

/** One sender's calls in one round, which it repeats for ever. */
export interface Round {
  readonly calls: readonly IdentCall[];
  readonly roundS: number;
  /** When its first round begins, seconds after the listening does. */
  readonly firstAtS: number;
}

export interface OnChannel {
  /** Empty where nothing is keyed. */
  readonly rounds: readonly Round[];
}

/** Turns in a paired station's block, the DME's among them. ICAO Annex 10 Vol I, 3.5.3.6. */
const TURNS_WITH_DME = 4;

/** Two stations keep no common time: the second begins inside the first one's ident, so that the two are heard to overlap. */
const SECOND_STATION_AFTER_S = 1.3;
/**
 * Nor are their tones the same: 1020 Hz may be off by 50 Hz (ICAO Annex 10 Vol I, 3.3.6; from memory). So many hertz let
 * the ear part the two, and beat where they overlap.
 */
const SECOND_STATION_HIGHER_HZ = 15;

/** A dot and the gap after it, in dots. */
export const DOT_PITCH_UNITS = 2;

/** What is keyed where this reading is taken. Covers have no say here. */
export function onChannel({ ident, dme }: ReceiverReading): OnChannel {
  switch (ident.kind) {
    case "none":
      return { rounds: [] };
    case "ident":
      return { rounds: [round({ vorText: ident.text, dmeText: dme === null ? null : ident.text })] };
    case "test":
      return { rounds: [round({ vorText: TEST_IDENT, dmeText: null })] };
    case "dme-only":
      return { rounds: [round({ vorText: null, dmeText: ident.text })] };
    case "test-signal":
      return { rounds: [rowOfDots()] };
    case "mixed": {
      const [first, second] = ident.texts;
      const other = round({ vorText: second, dmeText: null });
      return {
        rounds: [
          round({ vorText: first, dmeText: null }),
          {
            ...other,
            calls: other.calls.map((call) => ({ ...call, toneHz: call.toneHz + SECOND_STATION_HIGHER_HZ })),
            firstAtS: SECOND_STATION_AFTER_S,
          },
        ],
      };
    }
  }
}

function round(source: IdentSource): Round {
  const turns = source.dmeText === null ? 1 : TURNS_WITH_DME;
  const roundS = turns * identPeriodS(source.vorText ?? source.dmeText ?? "");
  return { calls: identCalls(source, roundS), roundS, firstAtS: 0 };
}

/** Of a test signal's two sounds, dots and a steady tone (FAA AIM 1-1-4), the dots. */
function rowOfDots(): Round {
  const roundS = (DOT_PITCH_UNITS * dotMs(IDENT_WORDS_PER_MINUTE)) / 1000;
  return { calls: [{ startS: 0, text: "E", toneHz: VOR_IDENT_HZ }], roundS, firstAtS: 0 };
}

/**
 * The receiver's own hiss behind it, as a part of full scale (root mean square). By ear, not by measure: faint where a
 * carrier quiets the receiver, stronger where it does not.
 */
export function hissLevel(signal: Signal): number {
  switch (signal.kind) {
    case "good":
    case "two-at-once":
      return 0.002;
    case "overhead":
      return 0.005;
    case "weak":
    case "none":
      return 0.012;
  }
}

/** Where one sender stands at a moment. */
export interface Moment {
  /** The call under way, or the last one; before the first round the first one. */
  readonly call: IdentCall;
  /** Seconds since it began; negative before the first. */
  readonly sinceS: number;
  /** Seconds to the beginning of the next. */
  readonly nextInS: number;
}

/** Where a round stands so many seconds after the listening began. Throws RangeError when the round has no call. */
export function momentOf({ calls, roundS, firstAtS }: Round, elapsedS: number): Moment {
  const [first] = calls;
  if (first === undefined) throw new RangeError("a round holds at least one call");
  const sinceFirstS = elapsedS - firstAtS;
  if (sinceFirstS < 0) return { call: first, sinceS: sinceFirstS, nextInS: -sinceFirstS };
  const inRoundS = sinceFirstS % roundS;
  const index = calls.findLastIndex((call) => call.startS <= inRoundS);
  const call = calls[Math.max(0, index)] ?? first;
  const next = calls[index + 1]?.startS ?? roundS + first.startS;
  return { call, sinceS: inRoundS - call.startS, nextInS: next - inRoundS };
}
