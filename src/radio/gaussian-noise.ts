/** Gaussian noise from a seed: the same seed gives the same samples on every machine. */

import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import type { RandomGenerator } from "pure-rand/types/RandomGenerator";

const TWO_TO_32 = 2 ** 32;

/** Draws pairs by the polar method of Marsaglia and Bray (1964). */
export interface GaussianPairs {
  /** Two independent draws of mean 0 and variance 1, written to `first` and `second`. */
  next(): void;
  first: number;
  second: number;
}

/** A source of normal draws. Any whole number is a seed. */
export function gaussianPairs(seed: number): GaussianPairs {
  const random: RandomGenerator = xoroshiro128plus(seed);
  const uniform = (): number => (random.next() / TWO_TO_32) * 2;
  const pairs: GaussianPairs = {
    first: 0,
    second: 0,
    next() {
      let u = 0;
      let v = 0;
      let square = 0;
      do {
        // `next` is a signed 32-bit number, so these lie in [-1, 1).
        u = uniform();
        v = uniform();
        square = u * u + v * v;
      } while (square >= 1 || square === 0);
      const scale = Math.sqrt((-2 * Math.log(square)) / square);
      pairs.first = u * scale;
      pairs.second = v * scale;
    },
  };
  return pairs;
}
