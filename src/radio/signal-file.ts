/**
 * A signal as the bytes of a WAV file of 16 bits: the AM detector's output on one channel, its direct part kept so that depths can be
 * read back; or the complex envelope on two, in phase and quadrature. Scaled so that the strongest the signal can be stays inside.
 */

import { composite, noiseDeviation, type VorSignal } from "./composite.ts";
import { wavWriter } from "./wav.ts";

export interface SignalFileOptions {
  readonly form: RecordedForm;
  readonly sampleRateHz: number;
  readonly durationS: number;
  /** Where the carrier stands beside the middle of the band, hertz; unheard in audio. */
  readonly carrierOffsetHz: number;
  /** Told from time to time which share is made, 0 to 1. */
  readonly made?: (share: number) => void;
}

/** What a recording holds: the AM detector's output, or the complex envelope before it. */
export type RecordedForm = "audio" | "baseband";

export interface SignalFile {
  readonly bytes: Uint8Array;
  /** Samples of each channel. */
  readonly samples: number;
  /** What the carrier alone comes to, of a full scale of 1. */
  readonly carrierLevel: number;
}

/** Below full scale by half a decibel. */
const HEADROOM = 0.94;
/** Noise goes beyond so many of its standard deviations once in some million samples. */
const NOISE_DEVIATIONS = 5;
/** The station's clock at the first sample: silence enough before the first ident, so that twelve seconds hold one whole. */
const START_S = -2;
const BLOCK = 4096;

/** The file. Throws RangeError on a rate that is not whole or is below 24 kHz. */
export function signalFile(signal: VorSignal, options: SignalFileOptions): SignalFile {
  const { form, sampleRateHz, durationS, carrierOffsetHz, made } = options;
  const samples = Math.round(durationS * sampleRateHz);
  const source = composite(signal, { sampleRateHz, carrierOffsetHz, startS: START_S });
  const file = wavWriter(samples, sampleRateHz, form === "audio" ? 1 : 2);
  const carrierLevel = HEADROOM / strongest(signal, sampleRateHz);
  const first = new Float64Array(BLOCK);
  const second = new Float64Array(BLOCK);
  for (let from = 0; from < samples; from += BLOCK) {
    const count = Math.min(BLOCK, samples - from);
    const one = first.subarray(0, count);
    const other = second.subarray(0, count);
    if (form === "audio") source.audio(one);
    else source.baseband(one, other);
    for (let at = 0; at < count; at++) {
      file.write((one[at] as number) * carrierLevel);
      if (form === "baseband") file.write((other[at] as number) * carrierLevel);
    }
    made?.((from + count) / samples);
  }
  return { bytes: file.bytes, samples, carrierLevel };
}

/** The most that the envelope can come to, carrier 1: all of it in phase. */
function strongest({ modulation, echoes, propeller, carrierToNoiseDbHz }: VorSignal, rateHz: number): number {
  const { toneDepth, subcarrierDepth, identDepth } = modulation;
  const ways = echoes.reduce((sum, { amplitude }) => sum + amplitude, 1);
  const signal = ways * (1 + toneDepth + subcarrierDepth + identDepth) * (1 + (propeller?.depth ?? 0));
  return signal + NOISE_DEVIATIONS * noiseDeviation(carrierToNoiseDbHz, rateHz);
}
