/** Whether a signal is so bent or so rough that a pilot must leave it: as measured now, or as it can be within a wavelength of here. */

import { turnBetween } from "../earth/index.ts";
import type { ReceiverReading } from "../panel/index.ts";
import { bendDeg, TONE_HZ, wavelengthM } from "../radio/index.ts";

/** Roughness and scalloping of a radial beyond this fail a flight check, degrees: ICAO Doc 8071 Vol I, table I-2-3 (from memory). */
export const ROUGH_DEG = 3;
/** Places within a wavelength at which the echo's carrier is tried. */
const TRIED = 8;

/** Blades that pass within this of the 30 Hz or its double swing the needle, hertz: farther off the receiver averages them out. */
const BEATS_WITHIN_HZ = 1.5;

/** The multiple of the 30 Hz, 1 or 2, that blades passing so many times a second beat with; null for none. */
export const beatsWith = (bladePassHz: number): 1 | 2 | null =>
  ([1, 2] as const).find((times) => Math.abs(bladePassHz - times * TONE_HZ) <= BEATS_WITHIN_HZ) ?? null;

export function mayBeFarOff({ measured, geometry }: ReceiverReading): boolean {
  if (measured === null || geometry === null || measured.measurement.radial === null) return false;
  const { radial, radialDeviationDeg } = measured.measurement;
  if (Math.abs(turnBetween(geometry.trueRadial, radial)) >= ROUGH_DEG || radialDeviationDeg >= ROUGH_DEG)
    return true;
  const { modulation, propeller, echoes, frequencyMhz, radial: at } = measured.arriving;
  if (propeller !== null && beatsWith(propeller.bladePassHz) !== null) return true;
  // A Doppler station is bent too little to ask.
  if (modulation.kind === "doppler") return false;
  return echoes.some(({ extraPathM, ...echo }) =>
    Array.from(
      { length: TRIED },
      (_, index) => extraPathM + (index / TRIED) * wavelengthM(frequencyMhz),
    ).some(
      (pathM) =>
        Math.abs(bendDeg({ kind: "conventional", radial: at, frequencyMhz, extraPathM: pathM, ...echo })) >=
        ROUGH_DEG,
    ),
  );
}
