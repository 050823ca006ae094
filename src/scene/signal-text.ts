/** A scene's signal as our files write it. */

import type { LatLon } from "../earth/index.ts";
import type { Propeller, Reflector, SignalConditions } from "../panel/index.ts";
import { NO_NOISE } from "./same-signal.ts";
import { numberText, quotedIfNeeded } from "./written-values.ts";
import { plainNumber } from "./yaml-flow.ts";

/**
 * Decimals of a degree of a reflector's place: a centimetre, since the length of its way against the wavelength (2.6 m) is what bends the
 * radial.
 */
const PLACE_DECIMALS = 7;

export const noiseText = (noiseDb: number | null): string =>
  noiseDb === null ? NO_NOISE : numberText(noiseDb, 1);

export const amplitudeText = (amplitude: number): string => numberText(amplitude, 4);

export const reflectorPlaceText = ({ latDeg, lonDeg }: LatLon): string =>
  `[${[latDeg, lonDeg].map((deg) => plainNumber(Number(deg.toFixed(PLACE_DECIMALS)) + 0)).join(", ")}]`;

/** `{ station: TXJ, at: [-10.1333333, 2.2833333], amplitude: 0.1 }` */
export const reflectorText = ({ ident, position, amplitude }: Reflector): string =>
  `{ station: ${quotedIfNeeded(ident)}, at: ${reflectorPlaceText(position)}, amplitude: ${amplitudeText(amplitude)} }`;

/** `{ speed: 1810, blades: 2 }` */
export const propellerText = ({ speedRpm, blades }: Propeller): string =>
  `{ speed: ${numberText(speedRpm, 1)}, blades: ${numberText(blades, 0)} }`;

/** The lines under `signal:`, without indentation. */
export const signalLines = ({ kind, noiseDb, reflectors, propeller }: SignalConditions): string[] => [
  `kind: ${kind}`,
  `noise: ${noiseText(noiseDb)}`,
  ...(reflectors.length === 0
    ? []
    : ["reflectors:", ...reflectors.map((reflector) => `  - ${reflectorText(reflector)}`)]),
  ...(propeller === null ? [] : [`propeller: ${propellerText(propeller)}`]),
];
