/**
 * Reads the ident out of the loudness of its tone: strokes from a threshold half way between silence and tone, letters from their
 * lengths by the Morse code's own units. What was cut off by the start or the end of listening is not counted; of several whole idents
 * the one heard most often is believed.
 */

import { TEST_IDENT } from "./ident.ts";
import type { Loudness } from "./ident-listener.ts";
import { decodeMorse, dotMs } from "./morse.ts";

export type KeyingRead =
  /** `times`: how often it was heard whole. */
  | { readonly kind: "ident"; readonly text: string; readonly times: number }
  | { readonly kind: "test"; readonly times: number }
  /** A VOT's row of dots or steady tone. */
  | { readonly kind: "test-signal" }
  /** Keyed, but no whole ident was heard. */
  | { readonly kind: "cut-off" }
  | { readonly kind: "none" };

/** The tone counts as heard when it modulates the carrier by a hundredth. The standard's ident is up to a tenth. */
const LEAST_DEPTH = 0.01;
/** It must stand so far above the noise beside it: of noise alone one moment in a hundred thousand does. */
const LEAST_OVER_NOISE = 3.4;
/** A tone that never falls below this share of its loudest is not keyed at all. */
const STEADY_SHARE = 0.7;
/** Samples of loudness are averaged over so many, which is far shorter than a dot. */
const SMOOTHED_OVER = 3;
/** Dots from 5 to 12 words a minute. */
const SLOWEST_WPM = 5;
const QUICKEST_WPM = 12;
/** Longer silence than this parts two idents, dot units; the longest inside one is 3. */
const IDENT_GAP_UNITS = 5.5;
/** A row of dots longer than any letter. */
const ROW_OF_DOTS = 6;

/** What was keyed. `carrier` is the detector's mean level in the same units; 0 where it is not known. */
export function readKeying({ amplitudes, noiseAmplitude, everyS }: Loudness, carrier: number): KeyingRead {
  const smooth = smoothed(amplitudes);
  const sorted = smooth.slice().sort();
  const quiet = sorted[Math.floor(0.05 * sorted.length)] ?? 0;
  const loud = sorted[Math.floor(0.97 * sorted.length)] ?? 0;
  if (!(loud > LEAST_DEPTH * carrier && loud > LEAST_OVER_NOISE * noiseAmplitude)) return { kind: "none" };
  if (quiet > STEADY_SHARE * loud) return { kind: "test-signal" };
  const runs = runsOf(smooth, quiet, loud, everyS);
  const unitS = unitOf(runs);
  const idents = groupsOf(runs, unitS);
  if (
    idents.some(({ code }) =>
      code.split(" ").some((letter) => letter.length >= ROW_OF_DOTS && !letter.includes("-")),
    )
  )
    return { kind: "test-signal" };
  const texts = idents.filter(({ whole }) => whole).map(({ code }) => decodeMorse(code));
  const counts = new Map<string, number>();
  for (const text of texts) if (text !== null) counts.set(text, (counts.get(text) ?? 0) + 1);
  const [best] = [...counts].sort((one, other) => other[1] - one[1]);
  if (best === undefined) return idents.length > 0 ? { kind: "cut-off" } : { kind: "none" };
  const [text, times] = best;
  return text === TEST_IDENT ? { kind: "test", times } : { kind: "ident", text, times };
}

interface Run {
  readonly on: boolean;
  readonly lengthS: number;
  /** Bounded by a change on both sides. */
  readonly whole: boolean;
}

function smoothed(amplitudes: Float64Array): Float64Array {
  const half = (SMOOTHED_OVER - 1) / 2;
  return amplitudes.map((_, at) => {
    const from = Math.max(0, at - half);
    const to = Math.min(amplitudes.length, at + half + 1);
    let sum = 0;
    for (let index = from; index < to; index++) sum += amplitudes[index] ?? 0;
    return sum / (to - from);
  });
}

/** On and off by a threshold half way up, with a little stickiness so that noise on the edge does not chatter. */
function runsOf(loudness: Float64Array, quiet: number, loud: number, everyS: number): Run[] {
  const middle = (quiet + loud) / 2;
  const sticky = 0.1 * (loud - quiet);
  const changes: { readonly at: number; readonly on: boolean }[] = [];
  let on = (loudness[0] ?? 0) > middle;
  loudness.forEach((value, at) => {
    if (on ? value > middle - sticky : value < middle + sticky) return;
    on = !on;
    changes.push({ at, on });
  });
  const bounds = [{ at: 0, on: !(changes[0]?.on ?? !on) }, ...changes];
  return bounds.map((bound, index) => ({
    on: bound.on,
    lengthS: ((bounds[index + 1]?.at ?? loudness.length) - bound.at) * everyS,
    whole: index > 0 && index < bounds.length - 1,
  }));
}

/** The dot that fits the strokes and the gaps inside letters best: every one of them is one unit long or three. */
function unitOf(runs: readonly Run[]): number {
  const longest = (IDENT_GAP_UNITS * dotMs(SLOWEST_WPM)) / 1000;
  const lengths = runs
    .filter(({ on, whole, lengthS }) => whole && (on || lengthS < longest))
    .map(({ lengthS }) => lengthS);
  let best = { unitS: 0, misfit: Number.POSITIVE_INFINITY };
  for (let wpm = SLOWEST_WPM; wpm <= QUICKEST_WPM; wpm += 0.1) {
    const unitS = dotMs(wpm) / 1000;
    const misfit = lengths.reduce((sum, lengthS) => {
      const units = lengthS / unitS;
      return (
        sum +
        Math.min(
          (units - 1) ** 2,
          (units - 3) ** 2 / 3,
          units > IDENT_GAP_UNITS ? 0.5 : Number.POSITIVE_INFINITY,
        )
      );
    }, 0);
    if (misfit < best.misfit) best = { unitS, misfit };
  }
  return best.unitS;
}

interface Keyed {
  /** Dots and hyphens, letters apart by a space. */
  readonly code: string;
  /** Silence of an ident's gap was heard before it and after it. */
  readonly whole: boolean;
}

function groupsOf(runs: readonly Run[], unitS: number): Keyed[] {
  const groups: Keyed[] = [];
  let code = "";
  let begun = false;
  const end = (whole: boolean): void => {
    if (code !== "") groups.push({ code, whole: whole && begun });
    code = "";
    begun = whole;
  };
  for (const { on, lengthS, whole } of runs) {
    const units = lengthS / unitS;
    if (on) {
      code += units < 2 ? "." : "-";
      // A stroke that was going on when listening began or ended may have been longer.
      if (!whole) begun = false;
    } else if (units > IDENT_GAP_UNITS) end(true);
    else if (units > 2 && code !== "") code += " ";
  }
  end(false);
  return groups;
}
