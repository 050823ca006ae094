/** What a receiver has shown over a flight, and that in words. */

import { DEGREES_PER_DOT, type Flag } from "../../panel/index.ts";
import { timeWords } from "./time-words.ts";

/** What the receiver's instruments showed at one moment. */
export interface HistoryPoint {
  /** Since the flight began, seconds. */
  readonly timeS: number;
  /** -5 to 5, right positive; null without a signal. */
  readonly needleDots: number | null;
  readonly flag: Flag;
  /** Slant range; null without one. */
  readonly dmeNm: number | null;
}

/** Which of the plot's parts are to be seen. */
export interface HistorySeen {
  /** False also for a magnetic indicator, which has a pointer and no needle. */
  readonly needle: boolean;
  readonly flag: boolean;
  readonly dme: boolean;
}

/** A run of time in which one flag stood. */
export interface FlagRun {
  readonly flag: Flag;
  readonly fromS: number;
  readonly toS: number;
}

/** The flags one after another. Each stands until the moment that shows another. */
export function flagRuns(points: readonly HistoryPoint[]): readonly FlagRun[] {
  const runs: FlagRun[] = [];
  for (const { timeS, flag } of points) {
    const last = runs.at(-1);
    if (last !== undefined) runs[runs.length - 1] = { ...last, toS: timeS };
    if (last?.flag !== flag) runs.push({ flag, fromS: timeS, toS: timeS });
  }
  return runs;
}

/** More changes of the flag than this are counted and not told one by one. */
const MOST_TOLD = 5;

/** "NAV1 over 3 min 20 s. Needle from 2 dots left to 1 dot right. Flag TO, OFF at 1 min 5 s, FROM at 1 min 9 s. DME 18.0 to 12.4." */
export function historySentence(
  receiver: string,
  points: readonly HistoryPoint[],
  seen: HistorySeen,
): string {
  const first = points[0];
  const last = points.at(-1);
  if (first === undefined || last === undefined || points.length < 2)
    return `${receiver}: nothing flown yet.`;
  const sentences = [`${receiver} over ${timeWords(last.timeS - first.timeS)}.`];
  if (seen.needle)
    sentences.push(`Needle from ${dotsWords(first.needleDots)} to ${dotsWords(last.needleDots)}.`);
  if (seen.flag) sentences.push(flagSentence(flagRuns(points)));
  if (seen.dme) sentences.push(dmeSentence(points));
  return sentences.join(" ");
}

/** To half a dot, as the eye reads. */
function dotsWords(dots: number | null): string {
  if (dots === null) return "parked";
  const halves = Math.round(Math.abs(dots) * DEGREES_PER_DOT) / DEGREES_PER_DOT;
  if (halves === 0) return "centred";
  const side = dots < 0 ? "left" : "right";
  return halves >= 5 ? `full ${side}` : `${halves} ${halves === 1 ? "dot" : "dots"} ${side}`;
}

function flagSentence(runs: readonly FlagRun[]): string {
  const told = runs.slice(0, MOST_TOLD).map(({ flag, fromS }, index) => {
    return index === 0 ? flag : `${flag} at ${timeWords(fromS)}`;
  });
  const more = runs.length - told.length;
  return `Flag ${told.join(", ")}${more > 0 ? `, and ${more} more changes` : ""}.`;
}

function dmeSentence(points: readonly HistoryPoint[]): string {
  const read = points.flatMap(({ dmeNm }) => (dmeNm === null ? [] : [dmeNm]));
  const [first, last] = [read[0], read.at(-1)];
  if (first === undefined || last === undefined) return "No DME.";
  return `DME ${first.toFixed(1)} to ${last.toFixed(1)}, nearest ${Math.min(...read).toFixed(1)}.`;
}
