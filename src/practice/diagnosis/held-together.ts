/**
 * How probable it is that slips are held together, whatever else is held: computed once for a belief, it makes the forecast of an item
 * a matter of the few slips that fire on it.
 */

import type { Belief } from "./belief.ts";
import { MOST_SLIPS_HELD } from "./hypotheses.ts";

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
  const { setCount, members, slips } = space;
  const slipCount = slips.length;
  const ofHalf = (half: Readonly<Float64Array>): HeldTogether => {
    // One place more, for "no further slip".
    const one = new Float64Array(slipCount + 1);
    const two = new Float64Array(slipCount * slipCount);
    let total = 0;
    for (let set = 0, at = 0; set < setCount; set++, at += MOST_SLIPS_HELD) {
      const value = half[set] as number;
      const a = members[at] as number;
      const b = members[at + 1] as number;
      const c = members[at + 2] as number;
      total += value;
      one[a] = (one[a] as number) + value;
      one[b] = (one[b] as number) + value;
      one[c] = (one[c] as number) + value;
      if (b === slipCount) continue;
      two[a * slipCount + b] = (two[a * slipCount + b] as number) + value;
      if (c === slipCount) continue;
      two[a * slipCount + c] = (two[a * slipCount + c] as number) + value;
      two[b * slipCount + c] = (two[b * slipCount + c] as number) + value;
    }
    return { total, one, two, mass: half };
  };
  return { settled: ofHalf(mass.subarray(0, setCount)), unsettled: ofHalf(mass.subarray(setCount)) };
}
