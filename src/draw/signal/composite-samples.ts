/** Two turns of a composite as samples, and the slow wave that is left when the fast parts are averaged away. */

import { composite, TONE_HZ, type VorSignal } from "../../radio/index.ts";

export const SHOWN_TURNS = 2;
/** 120 samples to a cycle of the ident, 12 to one of the sub-carrier, 4080 to a turn of the pattern. */
export const COMPOSITE_RATE_HZ = 122_400;
const IDENT_CYCLE = 120;

export interface CompositeSamples {
  readonly audio: Float64Array;
  /** The mean over one cycle of the ident around each sample, in which ident and sub-carrier vanish. */
  readonly slow: Float64Array;
}

export function compositeSamples(signal: VorSignal): CompositeSamples {
  const count = (SHOWN_TURNS * COMPOSITE_RATE_HZ) / TONE_HZ;
  const half = IDENT_CYCLE / 2;
  const longer = new Float64Array(count + IDENT_CYCLE);
  composite(signal, {
    sampleRateHz: COMPOSITE_RATE_HZ,
    startS: 1 / TONE_HZ - half / COMPOSITE_RATE_HZ,
  }).audio(longer);
  const slow = new Float64Array(count);
  let sum = 0;
  for (let at = 0; at < IDENT_CYCLE; at++) sum += longer[at] as number;
  for (let at = 0; at < count; at++) {
    slow[at] = sum / IDENT_CYCLE;
    sum += (longer[at + IDENT_CYCLE] as number) - (longer[at] as number);
  }
  return { audio: longer.subarray(half, half + count), slow };
}
