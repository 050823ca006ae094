/**
 * How probable it is that slips are held together, whatever else is held: computed once for a belief, it makes the forecast of an item
 * a matter of the few slips that fire on it.
 */

import type { Belief } from "./belief.ts";

/** Of the settled or of the unsettled hypotheses. */
export interface HeldTogether {
  /** Of all. */
  readonly total: number;
  /** Of those with a slip, by its place in the scope. */
  readonly one: Readonly<Float64Array>;
  /** Of those with two slips a < b, at a * (slips in scope) + b. */
  readonly two: Readonly<Float64Array>;
  /** Of the sets of three, from the set's place in `space` on. */
  readonly mass: Readonly<Float64Array>;
}

/** The same for both kinds of learner. */
export function heldTogether({ space, mass }: Belief): {
  readonly settled: HeldTogether;
  readonly unsettled: HeldTogether;
} {
  const { setCount, slips } = space;
  return {
    settled: ofHalf(slips.length, mass.subarray(0, setCount)),
    unsettled: ofHalf(slips.length, mass.subarray(setCount)),
  };
}

/** Walks the sets in the fixed order of the space, which is faster than looking their members up. */
function ofHalf(slipCount: number, mass: Readonly<Float64Array>): HeldTogether {
  const one = new Float64Array(slipCount);
  const two = new Float64Array(slipCount * slipCount);
  let at = 1;
  for (let a = 0; a < slipCount; a++) add(one, a, mass[at++] as number);
  for (let a = 0; a < slipCount; a++)
    for (let b = a + 1; b < slipCount; b++) {
      const value = mass[at++] as number;
      add(one, a, value);
      add(one, b, value);
      add(two, a * slipCount + b, value);
    }
  for (let a = 0; a < slipCount; a++)
    for (let b = a + 1; b < slipCount; b++) {
      let withBoth = 0;
      for (let c = b + 1; c < slipCount; c++) {
        const value = mass[at++] as number;
        withBoth += value;
        add(one, c, value);
        add(two, a * slipCount + c, value);
        add(two, b * slipCount + c, value);
      }
      add(one, a, withBoth);
      add(one, b, withBoth);
      add(two, a * slipCount + b, withBoth);
    }
  return { total: mass.reduce((sum, value) => sum + value, 0), one, two, mass };
}

const add = (to: Float64Array, at: number, value: number): void => {
  to[at] = (to[at] as number) + value;
};
