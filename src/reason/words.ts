/** How numbers are said in the argument: the trade's figures with their units, always in the same form. */

import { threeDigits } from "../earth/index.ts";

export const course3 = threeDigits;

/** `243.1`, `006.0`: a radial to the tenth, `360.0` for north. */
export function tenths(radialDeg: number): string {
  const rounded = Math.round(radialDeg * 10) % 3600;
  return (rounded === 0 ? 360 : rounded / 10).toFixed(1).padStart(5, "0");
}

/** Two radials in three digits, or to the tenth where three digits would not tell them apart. */
export function apart(oneDeg: number, otherDeg: number): readonly [string, string] {
  const whole = [course3(oneDeg), course3(otherDeg)] as const;
  return whole[0] === whole[1] ? [tenths(oneDeg), tenths(otherDeg)] : whole;
}

/** "18.0 NM"; under a mile with two decimals, a hundred and more without. */
export function miles(distanceNm: number): string {
  const decimals = distanceNm >= 99.95 ? 0 : distanceNm < 0.995 ? 2 : 1;
  return `${distanceNm.toFixed(decimals)} NM`;
}

/** "40 NM": a published radius, or a distance where tenths say nothing. */
export const wholeMiles = (distanceNm: number): string => `${Math.round(distanceNm)} NM`;

/** "3,500 ft", to the foot; the size alone, as heights below something are said in words. */
export const feet = (heightFt: number): string => `${thousands(Math.round(Math.abs(heightFt)))} ft`;

/** "3,478 ft above", "1,150 ft below". */
export const feetAbove = (heightFt: number): string =>
  `${feet(heightFt)} ${heightFt < 0 ? "below" : "above"}`;

/** A height that must at least be reached: rounded up to the next hundred feet. */
export const atLeastFeet = (heightFt: number): string => `${thousands(Math.ceil(heightFt / 100) * 100)} ft`;

/** "4°" or "4.3°": a whole number where a tenth would say nothing. */
export function degrees(deg: number): string {
  const tenths = Math.round(Math.abs(deg) * 10) / 10;
  return `${Number.isInteger(tenths) ? tenths.toFixed(0) : tenths.toFixed(1)}°`;
}

/** "4°": to the whole degree, so that it agrees with three-digit directions; under one degree with a decimal. */
export const wholeDegrees = (deg: number): string =>
  Math.abs(deg) < 0.95 ? degrees(deg) : `${Math.round(Math.abs(deg))}°`;

/** "7.2° W", "10° W", "0°". */
export function eastWest(deg: number): string {
  const size = degrees(deg);
  return size === "0°" ? size : `${size} ${deg < 0 ? "W" : "E"}`;
}

/** "2 dots", "1 dot", "half a dot", "2½ dots": to the nearest half. */
export function dotsText(dots: number): string {
  const halves = Math.round(dots * 2);
  if (halves === 0) return "a hair";
  if (halves === 1) return "half a dot";
  const whole = Math.floor(halves / 2);
  if (halves % 2 === 1) return `${whole}½ dots`;
  return whole === 1 ? "1 dot" : `${whole} dots`;
}

function thousands(whole: number): string {
  return whole.toString().replace(/\B(?=(\d{3})+$)/g, ",");
}
