/** The ident as sound: samples in [-1, 1] of a keyed sine tone, with soft edges so that it does not click. */

import { IDENT_WORDS_PER_MINUTE, type IdentCall, keying, VOR_IDENT_HZ } from "./ident.ts";
import { EDGE_S, risen } from "./key-edge.ts";

export interface IdentSoundOptions {
  readonly toneHz?: number;
  readonly wordsPerMinute?: number;
  /** Whole hertz, more than twice the tone. */
  readonly sampleRateHz?: number;
  /** Peak, in (0, 1]. */
  readonly amplitude?: number;
}

export const IDENT_SAMPLE_RATE_HZ = 44_100;
/** Half of full scale, so that two stations on one channel still fit when mixed. */
export const IDENT_AMPLITUDE = 0.5;

/** Samples of one ident, from the first dot to the end of the last element. Throws RangeError on a text without code. */
export function identSamples(text: string, options: IdentSoundOptions = {}): Float32Array {
  const call = { startS: 0, text, toneHz: options.toneHz ?? VOR_IDENT_HZ };
  const end = keying(text, options.wordsPerMinute).at(-1);
  return callSamples([call], end === undefined ? 0 : end.startS + end.durationS, options);
}

/**
 * Samples of a stretch of the frequency: every call that starts in it, cut off at its end. Calls that overlap are
 * added, as two stations on one channel would be; the sum is kept in [-1, 1] by clipping.
 */
export function callSamples(
  calls: readonly IdentCall[],
  durationS: number,
  options: Omit<IdentSoundOptions, "toneHz"> = {},
): Float32Array {
  const {
    wordsPerMinute = IDENT_WORDS_PER_MINUTE,
    sampleRateHz = IDENT_SAMPLE_RATE_HZ,
    amplitude = IDENT_AMPLITUDE,
  } = options;
  if (!(amplitude > 0 && amplitude <= 1))
    throw new RangeError(`an amplitude lies in (0, 1], got ${amplitude}`);
  const samples = new Float32Array(Math.round(durationS * sampleRateHz));
  for (const call of calls) {
    if (!(sampleRateHz > 2 * call.toneHz))
      throw new RangeError(
        `a tone of ${call.toneHz} Hz needs more than ${2 * call.toneHz} samples a second, got ${sampleRateHz}`,
      );
    for (const stroke of keying(call.text, wordsPerMinute))
      addStroke(samples, {
        startS: call.startS + stroke.startS,
        durationS: stroke.durationS,
        toneHz: call.toneHz,
        sampleRateHz,
        amplitude,
      });
  }
  return samples;
}

function addStroke(
  samples: Float32Array,
  stroke: {
    readonly startS: number;
    readonly durationS: number;
    readonly toneHz: number;
    readonly sampleRateHz: number;
    readonly amplitude: number;
  },
): void {
  const { startS, durationS, toneHz, sampleRateHz, amplitude } = stroke;
  const first = Math.max(0, Math.ceil(startS * sampleRateHz));
  const last = Math.min(samples.length - 1, Math.floor((startS + durationS) * sampleRateHz));
  const edgeS = Math.min(EDGE_S, durationS / 2);
  for (let index = first; index <= last; index++) {
    const sinceS = index / sampleRateHz - startS;
    const fromEdgeS = Math.min(sinceS, durationS - sinceS, edgeS);
    const envelope = risen(fromEdgeS, edgeS);
    // The tone runs on through the gaps, as a keyed oscillator does, so its phase counts from the start of the file.
    const tone = Math.sin(2 * Math.PI * toneHz * (index / sampleRateHz));
    const sum = (samples[index] ?? 0) + amplitude * envelope * tone;
    samples[index] = Math.max(-1, Math.min(1, sum));
  }
}
