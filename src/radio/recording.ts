/**
 * What a receiver makes of a recording, and what may be wrong with one. Most sound recorders take the direct part out of what they record;
 * then there is no carrier to measure depths by, and the receiver's monitors take the stronger of the two 30 Hz carriers for one of
 * standard depth. A sound that was recorded upside down gives the reciprocal radial: where the direct part is kept that is seen
 * and mended, where it is not it cannot be known.
 */

import { type SignalMeasurement, type VorDemodulator, vorDemodulator } from "./demodulate.ts";
import { probableRateHz } from "./probable-rate.ts";
import { type KeyingRead, readKeying } from "./read-keying.ts";
import { clippedShare, envelopeOf, loudestOf, meanAndVariance, peakOf } from "./recorded-samples.ts";
import { LEAST_SAMPLE_RATE_HZ } from "./samples.ts";
import type { RecordedForm } from "./signal-file.ts";
import { type FlagCause, flagCause } from "./signal-monitor.ts";
import { MODULATION_DEPTH, SUBCARRIER_HZ, TONE_HZ } from "./vor-modulation.ts";

export interface Recording {
  readonly form: RecordedForm;
  readonly sampleRateHz: number;
  /** One or more, equally long; of baseband the first two are in phase and quadrature. */
  readonly channels: readonly Float64Array[];
  /** What the file's numbers can hold at most; null for floats, which have no end. */
  readonly fullScale: number | null;
}

export interface RecordedSignal {
  readonly measurement: SignalMeasurement;
  /** Whether the recording holds the carrier's own level; without it depths are not known. */
  readonly carrierKnown: boolean;
  /** It was recorded upside down. */
  readonly inverted: boolean;
  readonly ident: KeyingRead;
  readonly flagCause: FlagCause | null;
}

export type RecordingFault =
  | { readonly kind: "too-short"; readonly durationS: number }
  | { readonly kind: "rate-too-low"; readonly sampleRateHz: number }
  | { readonly kind: "silent" }
  | { readonly kind: "not-numbers" }
  | { readonly kind: "clipped"; readonly share: number }
  | { readonly kind: "wrong-rate"; readonly saidHz: number; readonly probablyHz: number }
  | { readonly kind: "other-form"; readonly holds: RecordedForm }
  | { readonly kind: "localizer" }
  | { readonly kind: "no-subcarrier" }
  | { readonly kind: "no-vor" };

export type RecordingRead =
  | { readonly ok: true; readonly signal: RecordedSignal }
  | { readonly ok: false; readonly fault: RecordingFault };

/** The filters fill within a third of this. */
export const LEAST_RECORDING_S = 0.5;
/** Less than this of full scale is the last bit of a sound card, or nothing. */
const SILENCE = 1e-4;
const FLOAT_SILENCE = 1e-9;
/** So much of a recording at the very end of its scale is no accident. */
const MOST_CLIPPED = 0.003;
/** A station's tone and sub-carrier are within 1 %, a recorder's clock far within the other. */
const FREQUENCY_SLACK = 0.02;
/** A radial that scatters more than this is none. */
const MOST_DEVIATION_DEG = 10;
/** The 30 Hz and the sub-carrier are equally deep; where one is so far below the other it is not sent at all. */
const LEAST_OF_THE_OTHER = 0.02;
/** Full scale of a localizer is a difference of 0.155 between depths of 0.2: the lesser is then 0.44 of the greater. */
const LEAST_OF_LOCALIZER = 0.2;
/** The rest is its ident, and noise. Our choice. */
const LEAST_SHARE_OF_LOCALIZER = 0.3;
const BLOCK = 8192;

/** Measures a recording, or says what is wrong with it. `heard` is told from time to time which share is heard, 0 to 1. */
export function readRecording(recording: Recording, heard?: (share: number) => void): RecordingRead {
  const { form, sampleRateHz, channels, fullScale } = recording;
  const fault = (of: RecordingFault): RecordingRead => ({ ok: false, fault: of });
  const used = form === "audio" ? [loudestOf(channels)] : channels.slice(0, 2);
  const durationS = (used[0]?.length ?? 0) / sampleRateHz;
  const peak = peakOf(used);
  if (Number.isNaN(peak)) return fault({ kind: "not-numbers" });
  if (durationS < LEAST_RECORDING_S) return fault({ kind: "too-short", durationS });
  if (peak < (fullScale === null ? FLOAT_SILENCE : SILENCE * fullScale)) return fault({ kind: "silent" });
  const share = clippedShare(used, fullScale);
  if (share > MOST_CLIPPED) return fault({ kind: "clipped", share });
  const tooSlow = sampleRateHz < LEAST_SAMPLE_RATE_HZ;
  const signal = tooSlow ? null : measure(used, peak, recording, heard);
  if (signal !== null && isSound(signal)) return { ok: true, signal };
  // Nothing to be believed yet: what else might it be?
  const envelope = envelopeOf(used);
  const probablyHz = probableRateHz(envelope);
  if (
    probablyHz !== null &&
    Math.abs(probablyHz / sampleRateHz - 1) > FREQUENCY_SLACK &&
    isSound(measure(used, peak, { form, sampleRateHz: probablyHz }))
  )
    return fault({ kind: "wrong-rate", saidHz: sampleRateHz, probablyHz });
  if (signal === null) return fault({ kind: "rate-too-low", sampleRateHz });
  if (isOtherForm(recording)) return fault({ kind: "other-form", holds: otherForm(form) });
  if (isLocalizer(signal, meanAndVariance(envelope).variance / peak ** 2))
    return fault({ kind: "localizer" });
  if (isThere(signal)) return { ok: true, signal };
  const { carrier, toneAmplitude } = signal.measurement;
  return fault({
    kind:
      signal.carrierKnown && toneAmplitude > (MODULATION_DEPTH / 2) * carrier ? "no-subcarrier" : "no-vor",
  });
}

const otherForm = (form: RecordedForm): RecordedForm => (form === "audio" ? "baseband" : "audio");

/** Whether the same channels hold a VOR when they are taken for the other form. */
function isOtherForm({ form, sampleRateHz, channels }: Recording): boolean {
  if (channels.length < 2) return false;
  const other = otherForm(form);
  const used = other === "audio" ? [loudestOf(channels)] : channels.slice(0, 2);
  return isSound(measure(used, peakOf(used), { form: other, sampleRateHz }));
}

/** A VOR without fault, at the frequencies where it belongs. */
const isSound = (signal: RecordedSignal): boolean => {
  const { toneHz, subcarrierHz } = signal.measurement;
  return (
    signal.flagCause === null &&
    isThere(signal) &&
    Math.abs(toneHz / TONE_HZ - 1) < FREQUENCY_SLACK &&
    Math.abs(subcarrierHz / SUBCARRIER_HZ - 1) < FREQUENCY_SLACK
  );
};

/** Whether there is a radial at all, however poor: what leaks from the one tone into the other's filter is none. */
const isThere = ({ measurement }: RecordedSignal): boolean => {
  const { radial, radialDeviationDeg, toneAmplitude, subcarrierAmplitude } = measurement;
  return (
    radial !== null &&
    radialDeviationDeg < MOST_DEVIATION_DEG &&
    toneAmplitude > LEAST_OF_THE_OTHER * subcarrierAmplitude &&
    subcarrierAmplitude > LEAST_OF_THE_OTHER * toneAmplitude
  );
};

/**
 * A localizer sends both its tones, even where it is flown far off its course, and little else; voice and music may hold both as well, among
 * much else. `power`: of all that varies in the envelope, in the measurement's units.
 */
function isLocalizer({ flagCause: cause, measurement }: RecordedSignal, power: number): boolean {
  const { amplitude90Hz, amplitude150Hz } = measurement;
  const [less, more] = [Math.min(amplitude90Hz, amplitude150Hz), Math.max(amplitude90Hz, amplitude150Hz)];
  const share = (less ** 2 + more ** 2) / 2 / power;
  return cause === "localizer" && less > LEAST_OF_LOCALIZER * more && share > LEAST_SHARE_OF_LOCALIZER;
}

function measure(
  channels: readonly Float64Array[],
  peak: number,
  { form, sampleRateHz }: Pick<Recording, "form" | "sampleRateHz">,
  heard?: (share: number) => void,
): RecordedSignal {
  const first = channels[0] ?? new Float64Array(0);
  const { mean, variance } = form === "audio" ? meanAndVariance(first) : { mean: 0, variance: 0 };
  // An envelope is never below nothing: a level that is was turned over.
  const inverted = mean < 0 && mean * mean > variance;
  const receiver = vorDemodulator({ sampleRateHz });
  const scale = (inverted ? -1 : 1) / peak;
  for (let from = 0; from < first.length; from += BLOCK) {
    pushBlock(receiver, channels, from, scale);
    heard?.(Math.min(1, (from + BLOCK) / first.length));
  }
  const measurement = receiver.measured();
  const { carrier, toneAmplitude, subcarrierAmplitude } = measurement;
  // What modulates the carrier is never larger than the carrier.
  const carrierKnown =
    form === "baseband" || (mean * mean > variance && carrier > toneAmplitude + subcarrierAmplitude);
  const judged = carrierKnown ? measurement : withStandardCarrier(measurement);
  return {
    measurement,
    carrierKnown,
    inverted,
    ident: readKeying(receiver.ident.loudness(), judged.carrier),
    flagCause: flagCause(judged),
  };
}

function pushBlock(
  receiver: VorDemodulator,
  channels: readonly Float64Array[],
  from: number,
  scale: number,
): void {
  const [first, second] = channels.map((channel) =>
    channel.subarray(from, from + BLOCK).map((value) => value * scale),
  );
  if (first === undefined) return;
  if (second === undefined) receiver.pushAudio(first);
  else receiver.pushBaseband(first, second);
}

/** As if the strongest of the tones that are watched had a VOR's standard depth. */
function withStandardCarrier(measured: SignalMeasurement): SignalMeasurement {
  const { toneAmplitude, subcarrierAmplitude, amplitude90Hz, amplitude150Hz } = measured;
  const carrier =
    Math.max(toneAmplitude, subcarrierAmplitude, amplitude90Hz, amplitude150Hz) / MODULATION_DEPTH;
  const changeDb = 20 * Math.log10(carrier / Math.abs(measured.carrier));
  return { ...measured, carrier, carrierToNoiseDbHz: measured.carrierToNoiseDbHz + changeDb };
}
