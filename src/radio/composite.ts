/**
 * What a VOR radiates toward a radial, as samples: the complex envelope of the carrier, or the audio an AM detector makes of it.
 *
 *   conventional   e = 1 + m cos(wt - A) + n cos(W t + b sin wt)          the turning pattern is the AM, the reference the FM
 *   Doppler        e = 1 + m cos(wt)     + n cos(W t + b sin(wt + A))     the AM is the reference, the FM carries the radial
 *
 * with w = 2 pi 30/s, W = 2 pi 9960/s, b = 16, m = n = 0.3, plus the keyed ident. Either way FM phase less AM phase is the radial A.
 * Source: ICAO Annex 10 Vol I, 3.3.1 to 3.3.6. An echo is the same station heard by way of a reflector: with the reflector's own
 * azimuth, later by its path, and with the phase that the carrier has by then. Noise is white over the sampled band.
 */

import type { StationDeg } from "../earth/index.ts";
import { LIGHT_M_PER_S } from "./field-strength.ts";
import { gaussianPairs } from "./gaussian-noise.ts";
import { identKey } from "./ident-key.ts";
import { pathPhaseRad } from "./reflection.ts";
import { refuseRate, refuseUnequal } from "./samples.ts";
import { cosOfTurns, RUN, type TurningPhasor, turningPhasor } from "./turning-phasor.ts";
import type { VorModulation } from "./vor-modulation.ts";

const RAD = Math.PI / 180;
const TURN = 2 * Math.PI;

/** A second way from the station to the aircraft. */
export interface Echo {
  /** Of the reflector, from the station's north. */
  readonly azimuth: StationDeg;
  /** How much longer than the straight way, metres. */
  readonly extraPathM: number;
  /** Strength beside the direct signal, 0 to 1. */
  readonly amplitude: number;
}

/** Blades chopping the signal: an amplitude modulation at the rate at which they pass. */
export interface PropellerModulation {
  /** Blades passing, a second: turns a minute times blades over 60. */
  readonly bladePassHz: number;
  /** 0 to 1. */
  readonly depth: number;
}

/** What arrives at the antenna. */
export interface VorSignal {
  readonly modulation: VorModulation;
  readonly radial: StationDeg;
  /** The carrier, MHz: echoes turn with its wavelength. */
  readonly frequencyMhz: number;
  readonly echoes: readonly Echo[];
  readonly propeller: PropellerModulation | null;
  /** Carrier power over noise density, dB-Hz; null for no noise. */
  readonly carrierToNoiseDbHz: number | null;
  /** Which noise; the same seed gives the same. */
  readonly seed: number;
}

export interface SampleOptions {
  readonly sampleRateHz: number;
  /** Where the carrier stands beside the middle of the band, hertz. Default 0. */
  readonly carrierOffsetHz?: number;
  /** The station's clock at the first sample, seconds. Default 0: the beam passes station north. */
  readonly startS?: number;
}

/** Makes a signal block by block; every call goes on where the last one ended. */
export interface Composite {
  /** Fills both with the complex envelope, carrier amplitude 1. Throws RangeError unless they are equally long. */
  baseband(inPhase: Float64Array, quadrature: Float64Array): void;
  /** Fills with the AM detector's output: the envelope's size, direct part included, carrier amplitude 1. */
  audio(samples: Float64Array): void;
}

/** The samples of a signal. Throws RangeError on a rate below 24 kHz, and on a rate, offset or start that is no number. */
export function composite(signal: VorSignal, options: SampleOptions): Composite {
  const { sampleRateHz, carrierOffsetHz = 0, startS = 0 } = options;
  refuseRate(sampleRateHz, "a VOR's composite");
  if (!(Number.isFinite(startS) && Number.isFinite(carrierOffsetHz)))
    throw new RangeError(
      `a composite's start and carrier offset are numbers of seconds and hertz, got ${startS} and ${carrierOffsetHz}`,
    );
  const { modulation, propeller } = signal;
  const { toneDepth, subcarrierDepth, identDepth } = modulation;
  const ratioTurns = modulation.deviationRatio / TURN;
  const turning = (hz: number): TurningPhasor => turningPhasor(hz, sampleRateHz, startS);
  const tone = turning(modulation.toneHz);
  const subcarrier = turning(modulation.subcarrierHz);
  const key = identKey(modulation.ident);
  const isKeyed = modulation.ident.kind !== "none";
  const bladeDepth = propeller?.depth ?? 0;
  // Making a phasor costs as much as some hundred samples, and the panel makes short signals: only what is heard is made.
  const phasors = [tone, subcarrier];
  const turningIf = (heard: boolean, hz: number): TurningPhasor => {
    if (!heard) return tone;
    const phasor = turning(hz);
    phasors.push(phasor);
    return phasor;
  };
  const identTone = turningIf(isKeyed, modulation.identHz);
  const blade = turningIf(bladeDepth !== 0, propeller?.bladePassHz ?? 0);
  const offset = turningIf(carrierOffsetHz !== 0, carrierOffsetHz);
  const ways = waysOf(signal);
  const noise = signal.carrierToNoiseDbHz === null ? null : gaussianPairs(signal.seed);
  const noiseEach = noiseDeviation(signal.carrierToNoiseDbHz, sampleRateHz);
  let index = 0;

  /** Toward `quadrature` the imaginary part, or where there is none the size of both toward `inPhase`. */
  const fill = (inPhases: Float64Array, quadratures: Float64Array | null): void => {
    for (let at = 0; at < inPhases.length; at++) {
      const since = index % RUN;
      if (since === 0) for (const phasor of phasors) phasor.toRun(index);
      const toneCos = tone.cos[since] as number;
      const toneSin = tone.sin[since] as number;
      const subcarrierTurns = subcarrier.turns[since] as number;
      const down = isKeyed ? key(startS + index / sampleRateHz) : 0;
      const ident = down === 0 ? 0 : identDepth * down * (identTone.sin[since] as number);
      let inPhase = 0;
      let quadrature = 0;
      for (let each = 0; each < ways.length; each++) {
        const way = ways[each] as Way;
        const am = toneCos * way.amCos + toneSin * way.amSin;
        const swingTurns = ratioTurns * (toneSin * way.fmCos + toneCos * way.fmSin);
        const envelope =
          1 +
          toneDepth * am +
          subcarrierDepth * cosOfTurns(subcarrierTurns - way.subcarrierDelayTurns + swingTurns) +
          ident;
        inPhase += way.inPhase * envelope;
        quadrature += way.quadrature * envelope;
      }
      if (bladeDepth !== 0) {
        const blades = 1 + bladeDepth * (blade.cos[since] as number);
        inPhase *= blades;
        quadrature *= blades;
      }
      if (carrierOffsetHz !== 0) {
        const cos = offset.cos[since] as number;
        const sin = offset.sin[since] as number;
        const turned = inPhase * cos - quadrature * sin;
        quadrature = inPhase * sin + quadrature * cos;
        inPhase = turned;
      }
      if (noise !== null) {
        noise.next();
        inPhase += noiseEach * noise.first;
        quadrature += noiseEach * noise.second;
      }
      index++;
      if (quadratures === null) inPhases[at] = Math.sqrt(inPhase * inPhase + quadrature * quadrature);
      else {
        inPhases[at] = inPhase;
        quadratures[at] = quadrature;
      }
    }
  };
  return {
    baseband(inPhase, quadrature) {
      refuseUnequal(inPhase, quadrature);
      fill(inPhase, quadrature);
    },
    audio: (samples) => fill(samples, null),
  };
}

/**
 * Standard deviation of the noise in each part of a complex sample beside a carrier of amplitude 1: its power is N0 times the rate, half
 * of it in each. 0 where there is no noise.
 */
export const noiseDeviation = (carrierToNoiseDbHz: number | null, sampleRateHz: number): number =>
  carrierToNoiseDbHz === null ? 0 : Math.sqrt(sampleRateHz / 10 ** (carrierToNoiseDbHz / 10) / 2);

/** Phases as cosine and sine, so that one turning tone serves every way. */
interface Way {
  /** Of the AM, behind the station's clock; of the FM, ahead of it. The delay is in both. */
  readonly amCos: number;
  readonly amSin: number;
  readonly fmCos: number;
  readonly fmSin: number;
  readonly subcarrierDelayTurns: number;
  /** Of the carrier, strength included. */
  readonly inPhase: number;
  readonly quadrature: number;
}

/** The direct way, then the echoes. */
function waysOf(signal: VorSignal): Way[] {
  const { kind, toneHz, subcarrierHz } = signal.modulation;
  const way = (azimuth: number, extraPathM: number, amplitude: number): Way => {
    const carrier = pathPhaseRad(extraPathM, signal.frequencyMhz);
    const delayS = extraPathM / LIGHT_M_PER_S;
    const amPhase = TURN * toneHz * delayS + (kind === "conventional" ? azimuth * RAD : 0);
    const fmPhase = (kind === "conventional" ? 0 : azimuth * RAD) - TURN * toneHz * delayS;
    return {
      amCos: Math.cos(amPhase),
      amSin: Math.sin(amPhase),
      fmCos: Math.cos(fmPhase),
      fmSin: Math.sin(fmPhase),
      subcarrierDelayTurns: subcarrierHz * delayS,
      inPhase: amplitude * Math.cos(carrier),
      quadrature: amplitude * Math.sin(carrier),
    };
  };
  return [
    way(signal.radial, 0, 1),
    ...signal.echoes.map(({ azimuth, extraPathM, amplitude }) => way(azimuth, extraPathM, amplitude)),
  ];
}
