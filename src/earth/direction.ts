/**
 * The three norths. A direction is a number of degrees counted clockwise from one of them, in [0, 360):
 *   true      from the geographic pole;
 *   magnetic  from today's magnetic north at the aircraft: headings and tracks;
 *   station   from the north a station was aligned to when surveyed: radials and the selected course.
 * A fourth type, compass, is what the compass card reads before its deviation is allowed for (compass.ts).
 * Each has its own type, so that mixing them does not compile. Variation and declination are east positive.
 */

declare const north: unique symbol;

export type TrueDeg = number & { readonly [north]: "true" };
export type MagneticDeg = number & { readonly [north]: "magnetic" };
export type StationDeg = number & { readonly [north]: "station" };
export type CompassDeg = number & { readonly [north]: "compass" };
export type Direction = TrueDeg | MagneticDeg | StationDeg | CompassDeg;

/** The number in [0, 360), never minus zero. Throws RangeError when it is not finite. */
export function wrap360(deg: number): number {
  if (!Number.isFinite(deg))
    throw new RangeError(`a direction must be a finite number of degrees, got ${deg}`);
  const wrapped = deg % 360;
  // A tiny negative number plus 360 rounds to 360 itself; that is north, and north is 0.
  const positive = wrapped < 0 ? wrapped + 360 : wrapped;
  return positive >= 360 ? 0 : positive + 0;
}

/** The number in (-180, 180], never minus zero. Throws RangeError when it is not finite. */
export function wrap180(deg: number): number {
  const wrapped = wrap360(deg);
  return wrapped > 180 ? wrapped - 360 : wrapped;
}

/** A direction from true north; any finite number of degrees, kept in [0, 360). */
export const trueDeg = (deg: number): TrueDeg => wrap360(deg) as TrueDeg;
/** A direction from magnetic north at the aircraft; any finite number of degrees, kept in [0, 360). */
export const magneticDeg = (deg: number): MagneticDeg => wrap360(deg) as MagneticDeg;
/** A direction from the station's own north; any finite number of degrees, kept in [0, 360). */
export const stationDeg = (deg: number): StationDeg => wrap360(deg) as StationDeg;
/** A direction as the compass reads it; any finite number of degrees, kept in [0, 360). */
export const compassDeg = (deg: number): CompassDeg => wrap360(deg) as CompassDeg;

/** Magnetic = true less variation (degrees, east positive). */
export const magneticFromTrue = (direction: TrueDeg, variationDeg: number): MagneticDeg =>
  magneticDeg(direction - variationDeg);
/** True = magnetic plus variation (degrees, east positive). */
export const trueFromMagnetic = (direction: MagneticDeg, variationDeg: number): TrueDeg =>
  trueDeg(direction + variationDeg);
/** Station direction = true less the station's declination (degrees, east positive). */
export const stationFromTrue = (direction: TrueDeg, declinationDeg: number): StationDeg =>
  stationDeg(direction - declinationDeg);
/** True = station direction plus the station's declination (degrees, east positive). */
export const trueFromStation = (direction: StationDeg, declinationDeg: number): TrueDeg =>
  trueDeg(direction + declinationDeg);

/** The opposite direction, from the same north. */
export const reciprocal = <D extends Direction>(direction: D): D => wrap360(direction + 180) as D;

/** The direction turned clockwise by so many degrees (negative turns left), from the same north. */
export const turned = <D extends Direction>(direction: D, byDeg: number): D =>
  wrap360(direction + byDeg) as D;

/** Signed turn in (-180, 180] that leads from one direction to another of the same north; right is positive. */
export const turnBetween = <D extends Direction>(from: D, to: D): number => wrap180(to - from);

/** A direction as the trade writes it: three digits, 001 to 360. */
export function threeDigits(deg: number): string {
  const whole = Math.round(wrap360(deg)) % 360;
  return String(whole === 0 ? 360 : whole).padStart(3, "0");
}
