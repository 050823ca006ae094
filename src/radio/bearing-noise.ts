/**
 * How well a radial can be known at all from a noisy signal: the Cramer-Rao bound. With carrier power C, noise density N0 (so the
 * detector's output holds white noise of density N0/2 beside a carrier of amplitude 1) and a time T,
 *
 *   var(AM phase) >= N0 / (C m^2 T)          var(FM phase) >= 2 N0 / (C n^2 b^2 T)
 *
 * and the radial is their difference. Derived in docs/model.md; the method is common to books on estimation (S. M. Kay, 1993, ch. 3).
 */

import type { VorModulation } from "./vor-modulation.ts";

const DEG = 180 / Math.PI;

/** The least standard deviation of a radial measured without bias over a time, degrees. */
export function leastRadialDeviationDeg(
  modulation: VorModulation,
  carrierToNoiseDbHz: number,
  overS: number,
): number {
  const { toneDepth, subcarrierDepth, deviationRatio } = modulation;
  const noise = 1 / (10 ** (carrierToNoiseDbHz / 10) * overS);
  return Math.sqrt(noise / toneDepth ** 2 + (2 * noise) / (subcarrierDepth * deviationRatio) ** 2) * DEG;
}
