/**
 * A VOR receiver in arithmetic. From the AM detector's output it takes, block by block:
 *
 *   - the carrier: the detector's mean level;
 *   - the 30 Hz AM: its size and phase;
 *   - the 9960 Hz sub-carrier: filtered out, its frequency followed from sample to sample, and of that the 30 Hz: size and phase.
 *
 * FM phase less AM phase is the radial, for a conventional station and for a Doppler one. Both phases pass through filters of one
 * length and even symmetry, so nothing of the receiver enters the difference. What it measures is an average since it began,
 * or with `averagingS` one that forgets. Blocks may have any length; none allocates anything.
 */

import type { StationDeg } from "../earth/index.ts";
import { filterBank } from "./filter-bank.ts";
import { type IdentListener, identListener } from "./ident-listener.ts";
import { lookSums } from "./look-sums.ts";
import { blackmanHarris, kaiserLowPass, toneGain, toneTaps } from "./low-pass.ts";
import { refuseRate, refuseStrange, refuseUnequal } from "./samples.ts";
import { SUBCARRIER_HZ, TONE_HZ } from "./vor-modulation.ts";

/** What the receiver has measured. */
export interface SignalMeasurement {
  /** FM phase less AM phase; null before the first whole look, a fifth of a second after the start. */
  readonly radial: StationDeg | null;
  /** How far the radial may be off from noise and roughness: the standard deviation of the average, degrees, from its own scatter. */
  readonly radialDeviationDeg: number;
  /** Mean level of the detector, 1 for a carrier of amplitude 1. Near 0 in a recording whose direct part was taken out. */
  readonly carrier: number;
  /** The 30 Hz AM, the sub-carrier, and what a localizer would send (90 and 150 Hz): amplitudes in the detector's own units. */
  readonly toneAmplitude: number;
  readonly subcarrierAmplitude: number;
  readonly amplitude90Hz: number;
  readonly amplitude150Hz: number;
  readonly toneHz: number;
  readonly subcarrierHz: number;
  /** Swing of the sub-carrier over its tone. */
  readonly deviationRatio: number;
  /** Carrier power over noise density, dB-Hz, from what is heard where no line of the signal stands; infinite where nothing is, minus infinite without a carrier. */
  readonly carrierToNoiseDbHz: number;
  /** Looks taken so far, about 30 a second. */
  readonly looks: number;
}

export interface VorDemodulator {
  /** Output of an AM detector, direct part included. Throws RangeError, and takes nothing in, where a sample is no number. */
  pushAudio(samples: ArrayLike<number>): void;
  /** Complex envelope of the carrier, which may stand off the middle of the band. Throws the same; both must be equally long. */
  pushBaseband(inPhase: ArrayLike<number>, quadrature: ArrayLike<number>): void;
  measured(): SignalMeasurement;
  readonly ident: IdentListener;
}

export interface DemodulatorOptions {
  readonly sampleRateHz: number;
  /** Time in which an old look fades to 1/e of its weight, seconds. Without it every look counts alike. */
  readonly averagingS?: number;
  /** Whether to listen for the ident as well; a needle needs it not. Default true. */
  readonly withIdent?: boolean;
}

const TURN = 2 * Math.PI;
/** After the first filters the stream runs at this rate or a little more, after the second at half of it. */
const FIRST_RATE_HZ = 6000;
const SECOND_STEP = 2;
/** Holds the ident's tone at the low end, and the sub-carrier with swing, side bands and its 1 % at the high one. */
const FIRST_PASS_HZ = 1250;
const SECOND_PASS_HZ = 720;
const SECOND_STOP_HZ = 1250;
const STOP_DB = 80;
/** A look at 30 Hz must not see the direct part beside it nor the 60 Hz beyond: six turns through the four-term window part them. */
const LOOK_S = 0.2;
const BUFFER = 1024;

interface Taps {
  readonly firstStep: number;
  readonly firstHz: number;
  readonly secondHz: number;
  /** Samples of the second rate from look to look. */
  readonly hop: number;
  readonly window: Float64Array;
  readonly firstTaps: readonly (readonly Float64Array[])[];
  readonly secondTaps: readonly (readonly Float64Array[])[];
  readonly lookTaps: readonly (readonly Float64Array[])[];
}

/** They are the same for every receiver of a rate, and take longer to make than a tenth of a second of signal. */
const made = new Map<number, Taps>();

function tapsFor(sampleRateHz: number): Taps {
  const before = made.get(sampleRateHz);
  if (before !== undefined) return before;
  const firstStep = Math.floor(sampleRateHz / FIRST_RATE_HZ);
  const firstHz = sampleRateHz / firstStep;
  const secondHz = firstHz / SECOND_STEP;
  const wide = kaiserLowPass({
    sampleRateHz,
    passHz: FIRST_PASS_HZ,
    stopHz: firstHz - FIRST_PASS_HZ,
    attenuationDb: STOP_DB,
  });
  const atSubcarrier = toneTaps(wide, SUBCARRIER_HZ, sampleRateHz);
  const narrow = kaiserLowPass({
    sampleRateHz: firstHz,
    passHz: SECOND_PASS_HZ,
    stopHz: SECOND_STOP_HZ,
    attenuationDb: STOP_DB,
  });
  const window = blackmanHarris(Math.round(LOOK_S * secondHz));
  const at = (hz: number): readonly Float64Array[] => {
    const { cos, sin } = toneTaps(window, hz, secondHz);
    return [cos, sin];
  };
  const taps: Taps = {
    firstStep,
    firstHz,
    secondHz,
    hop: Math.round(secondHz / TONE_HZ),
    window,
    firstTaps: [[wide, atSubcarrier.cos, atSubcarrier.sin]],
    secondTaps: [[narrow], [narrow], [narrow]],
    lookTaps: [[window, ...at(TONE_HZ), ...at(90), ...at(150)], [window, ...at(TONE_HZ)], [window]],
  };
  made.set(sampleRateHz, taps);
  return taps;
}

/** A receiver. Throws RangeError on a rate below 24 kHz or an averaging time of 0 or less. */
export function vorDemodulator(options: DemodulatorOptions): VorDemodulator {
  const { sampleRateHz, averagingS = Number.POSITIVE_INFINITY } = options;
  refuseRate(sampleRateHz, "demodulation");
  if (!(averagingS > 0)) throw new RangeError(`an averaging time is above 0 seconds, got ${averagingS}`);
  const { firstStep, firstHz, secondHz, hop, window, firstTaps, secondTaps, lookTaps } =
    tapsFor(sampleRateHz);
  const first = filterBank(firstTaps, firstStep);
  const second = filterBank(secondTaps, SECOND_STEP);
  const look = filterBank(lookTaps, hop);
  const sums = lookSums(
    look.outputs,
    {
      lookHz: secondHz / hop,
      sampleHz: secondHz,
      gainAt: (offsetHz) => toneGain(window, offsetHz, secondHz),
    },
    averagingS,
  );
  const ident = identListener(firstHz, averagingS, options.withIdent ?? true);

  // Between the stages: what the first filters gave in this block, then what the second gave.
  const buffer = (): Float64Array => new Float64Array(BUFFER);
  const [level1, cos1, sin1] = [buffer(), buffer(), buffer()];
  const [level2, swing2, size2] = [buffer(), buffer(), buffer()];
  const between1 = [level1, cos1, sin1];
  const between2 = [level2, swing2, size2];
  const turn1 = (TURN * SUBCARRIER_HZ) / firstHz;
  let phase1 = 0;
  let count1 = 0;
  let count2 = 0;
  let begun = false;
  let levelBefore = 0;
  let cosBefore = 0;
  let sinBefore = 0;

  const eachFirst = (): void => {
    // The taps look at the sub-carrier from the middle of each window; this turns it back to one beginning.
    const cos = Math.cos(phase1);
    const sin = Math.sin(phase1);
    phase1 = (phase1 + turn1) % TURN;
    const real = first.outputs[1] as number;
    const imaginary = first.outputs[2] as number;
    level1[count1] = first.outputs[0] as number;
    cos1[count1] = real * cos + imaginary * sin;
    sin1[count1] = imaginary * cos - real * sin;
    if (++count1 === BUFFER) flush();
  };
  const eachSecond = (): void => {
    const level = second.outputs[0] as number;
    const cos = second.outputs[1] as number;
    const sin = second.outputs[2] as number;
    if (begun) {
      swing2[count2] = Math.atan2(sin * cosBefore - cos * sinBefore, cos * cosBefore + sin * sinBefore);
      // The swing is known between two samples; the level is taken there too, so that both are of one moment.
      level2[count2] = (level + levelBefore) / 2;
      size2[count2] = Math.sqrt(cos * cos + sin * sin);
      count2++;
    }
    begun = true;
    levelBefore = level;
    cosBefore = cos;
    sinBefore = sin;
  };
  const flush = (): void => {
    ident.push(level1, count1);
    second.push(between1, 0, count1, eachSecond);
    count1 = 0;
    look.push(between2, 0, count2, sums.add);
    count2 = 0;
  };

  const envelope = new Float64Array(BUFFER);
  const envelopeStream = [envelope];
  const audioStream: ArrayLike<number>[] = [envelope];
  return {
    ident,
    pushAudio(samples) {
      refuseStrange(samples);
      audioStream[0] = samples;
      first.push(audioStream, 0, samples.length, eachFirst);
      flush();
    },
    pushBaseband(inPhase, quadrature) {
      refuseUnequal(inPhase, quadrature);
      refuseStrange(inPhase);
      refuseStrange(quadrature);
      for (let from = 0; from < inPhase.length; from += BUFFER) {
        const count = Math.min(BUFFER, inPhase.length - from);
        for (let at = 0; at < count; at++) {
          const i = inPhase[from + at] as number;
          const q = quadrature[from + at] as number;
          envelope[at] = Math.sqrt(i * i + q * q);
        }
        first.push(envelopeStream, 0, count, eachFirst);
      }
      flush();
    },
    measured: () => sums.measured(ident.noiseDensity()),
  };
}
