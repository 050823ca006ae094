/** Whether two scenes have the same signal. Needs neither the reader of files nor their writer. */

import type { Propeller, Reflector, SignalConditions } from "../panel/index.ts";

/** Said in files and links in place of a number of decibels. */
export const NO_NOISE = "none";

export const sameReflector = (one: Reflector, other: Reflector): boolean =>
  one === other ||
  (one.ident === other.ident &&
    one.amplitude === other.amplitude &&
    one.position.latDeg === other.position.latDeg &&
    one.position.lonDeg === other.position.lonDeg);

export const samePropeller = (one: Propeller | null, other: Propeller | null): boolean =>
  one === other ||
  (one !== null && other !== null && one.speedRpm === other.speedRpm && one.blades === other.blades);

export const sameSignal = (one: SignalConditions | null, other: SignalConditions | null): boolean =>
  one === other ||
  (one !== null &&
    other !== null &&
    one.kind === other.kind &&
    one.noiseDb === other.noiseDb &&
    samePropeller(one.propeller, other.propeller) &&
    one.reflectors.length === other.reflectors.length &&
    one.reflectors.every((reflector, index) => {
      const there = other.reflectors[index];
      return there !== undefined && sameReflector(reflector, there);
    }));
