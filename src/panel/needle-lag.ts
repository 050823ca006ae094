/**
 * A needle does not jump: it is damped, and follows what it is told with a lag. One time constant covers 63 % of the way.
 * A pure step: the caller keeps the state and brings the time.
 */

/** Common practice: a course needle settles in about two seconds, three time constants. */
export const NEEDLE_TIME_CONSTANT_S = 0.6;

/**
 * Where the needle stands after a step. Exact for any step length, so that the frame rate does not change the motion.
 * @param shown where it stands now, any unit (dots, degrees)
 * @param target where it is told to go, same unit
 * @param stepS length of the step, seconds, 0 or more
 */
export function stepNeedle(
  shown: number,
  target: number,
  stepS: number,
  timeConstantS = NEEDLE_TIME_CONSTANT_S,
): number {
  if (!(stepS >= 0)) throw new RangeError(`a needle step must last 0 s or more, got ${stepS}`);
  return target + (shown - target) * Math.exp(-stepS / timeConstantS);
}
