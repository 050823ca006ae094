/** Numbers as pictures write them. */

/**
 * A length or an angle with at most three decimals, never minus zero, so that a picture has the same bytes everywhere.
 * Throws RangeError when it is not finite: a picture with NaN in it must not leave.
 */
export function px(value: number): number {
  if (!Number.isFinite(value)) throw new RangeError(`a picture needs finite numbers, got ${value}`);
  return Math.round(value * 1000) / 1000 + 0;
}

/** An angle in degrees, at most three decimals, never minus zero. Throws RangeError when it is not finite. */
export const angle = (deg: number): number => px(deg);
