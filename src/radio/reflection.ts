/**
 * By how much a reflector bends the radial, in closed form. A reflector in azimuth B sends the signal of its own radial, r times as
 * strong and with the carrier turned by p by its longer way, toward an aircraft on radial A. An envelope detector takes what is in
 * phase with the sum of both carriers, so the reflected modulation counts against the direct one as
 *
 *   k = (r cos p + r^2) / (1 + r cos p)
 *
 *   conventional   tan(error) = k sin(B - A) / (1 + k cos(B - A))            the AM of both patterns adds up
 *   Doppler        tan(error) = q cos h / (16 - q sin h), h = (B - A) / 2,   two FM signals of ratio 16 beat
 *                  q = 2 sum over n of (-1)^(n+1) k^n J1(32 n sin h) cos(n d) / n
 *
 * with d the sub-carrier's delay in radians. Derived in docs/model.md, to first order in the depth of modulation. The delay of the
 * 30 Hz (0.04 degree a kilometre of the reflected part) is left out.
 */

import { type StationDeg, turnBetween } from "../earth/index.ts";
import { LIGHT_M_PER_S } from "./field-strength.ts";
import { DEVIATION_RATIO, type SignalKind, SUBCARRIER_HZ } from "./vor-modulation.ts";

const RAD = Math.PI / 180;

/** Wavelength of a carrier, metres. */
export const wavelengthM = (frequencyMhz: number): number => LIGHT_M_PER_S / (frequencyMhz * 1e6);

/** Phase by which a longer way turns the carrier back, radians. */
export const pathPhaseRad = (extraPathM: number, frequencyMhz: number): number =>
  (-2 * Math.PI * extraPathM) / wavelengthM(frequencyMhz);

export interface Bend {
  readonly kind: SignalKind;
  readonly radial: StationDeg;
  /** Of the reflector. */
  readonly azimuth: StationDeg;
  /** Strength beside the direct signal, well below 1. */
  readonly amplitude: number;
  readonly extraPathM: number;
  readonly frequencyMhz: number;
}

/** How far the measured radial is off, degrees, clockwise positive. */
export function bendDeg({ kind, radial, azimuth, amplitude, extraPathM, frequencyMhz }: Bend): number {
  const across = turnBetween(radial, azimuth) * RAD;
  const inPhase = amplitude * Math.cos(pathPhaseRad(extraPathM, frequencyMhz));
  const share = (inPhase + amplitude ** 2) / (1 + inPhase);
  if (kind === "conventional")
    return Math.atan2(share * Math.sin(across), 1 + share * Math.cos(across)) / RAD;
  const half = across / 2;
  const delayRad = (2 * Math.PI * SUBCARRIER_HZ * extraPathM) / LIGHT_M_PER_S;
  const beat = beating(share, 2 * DEVIATION_RATIO * Math.sin(half), delayRad);
  return Math.atan2(beat * Math.cos(half), DEVIATION_RATIO - beat * Math.sin(half)) / RAD;
}

/** The 30 Hz part of the phase of 1 + k exp(i (z cos x - d)): the series of the argument, each term by Jacobi and Anger. */
function beating(share: number, swing: number, delayRad: number): number {
  let sum = 0;
  let power = share;
  for (let order = 1; Math.abs(power) > 1e-9 && order <= MOST_TERMS; order++) {
    sum +=
      ((order % 2 === 1 ? 2 : -2) * power * besselJ1(order * swing) * Math.cos(order * delayRad)) / order;
    power *= share;
  }
  return sum;
}

const MOST_TERMS = 60;

/** Bessel function of the first kind, order 1, by Bessel's integral; periodic, so the plain sum is exact to rounding. */
function besselJ1(x: number): number {
  const points = 64 + 2 * Math.ceil(Math.abs(x));
  let sum = 0;
  for (let index = 0; index < points; index++) {
    const angle = (2 * Math.PI * index) / points;
    sum += Math.cos(angle - x * Math.sin(angle));
  }
  return sum / points;
}
