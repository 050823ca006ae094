/**
 * Numbers spread evenly over a range. fast-check's own `double` draws evenly over the bit patterns, so that nine of ten values in
 * [0, 360) lie under a thousandth: no way to test directions.
 */

import fc from "fast-check";

const STEPS = 2 ** 30;

/** Evenly over [min, max], both ends possible. */
export const spread = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: STEPS }).map((step) => min + ((max - min) * step) / STEPS);
