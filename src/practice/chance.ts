/** Chance from a seed: the same seed gives the same problem on every machine. */

import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";

export interface Chance {
  /** A whole number from `least` to `most`, both included. */
  integer(least: number, most: number): number;
  pick<T>(list: readonly T[]): T;
  /** True with this probability, 0 to 1. */
  odds(probability: number): boolean;
}

const TWO_TO_32 = 2 ** 32;

/** A source of chance. Any whole number is a seed. */
export function chance(seed: number): Chance {
  const random = xoroshiro128plus(seed);
  // The first draws of neighbouring seeds resemble each other; these are thrown away.
  for (let draw = 0; draw < 8; draw += 1) random.next();
  const uniform = (): number => (random.next() >>> 0) / TWO_TO_32;
  const integer = (least: number, most: number): number => least + Math.floor(uniform() * (most - least + 1));
  return {
    integer,
    pick: (list) => {
      const picked = list[integer(0, list.length - 1)];
      if (picked === undefined) throw new RangeError("nothing to pick from");
      return picked;
    },
    odds: (probability) => uniform() < probability,
  };
}
