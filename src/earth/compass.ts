/**
 * The magnetic compass and its deviation, the error of this compass in this aircraft on this heading: degrees, east
 * positive (compass north lies east of magnetic north). A deviation card that prints the figure to add to the magnetic
 * heading prints minus this.
 */

import { type CompassDeg, compassDeg, type MagneticDeg, magneticDeg } from "./direction.ts";

/** Magnetic = compass plus deviation (east positive). */
export const magneticFromCompass = (direction: CompassDeg, deviationDeg: number): MagneticDeg =>
  magneticDeg(direction + deviationDeg);

/** Compass = magnetic less deviation (east positive). */
export const compassFromMagnetic = (direction: MagneticDeg, deviationDeg: number): CompassDeg =>
  compassDeg(direction - deviationDeg);
