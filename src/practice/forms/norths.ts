/** Declination and variation as problems give them, and how finely a problem can tell one from the other. */

import type { Facts } from "../facts.ts";

/** "10°W", "7.6°W", "2°E". East positive. */
export function degreesEastWest(deg: number): string {
  const size = Math.round(Math.abs(deg) * 10) / 10;
  return size === 0 ? "0°" : `${size}°${deg < 0 ? "W" : "E"}`;
}

/**
 * One degree where the station's declination and today's variation are two or more apart, so that taking one for the other tells; two
 * where they are too near for that.
 */
export const radialTolerance = ({ declinationDeg, variationDeg }: Facts): { readonly deg: number } => ({
  deg: Math.abs(declinationDeg - variationDeg) >= 2 ? 1 : 2,
});
