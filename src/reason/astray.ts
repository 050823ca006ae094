/**
 * Where the aircraft is, beside where its receiver believes it to be. An echo, a propeller, noise or the receiver's own error can lead
 * needle and flag astray: then the argument speaks of the place as it is, and of the needle as of something that errs.
 */

import { type StationDeg, turnBetween } from "../earth/index.ts";
import { type Deviation, deviationDeg, indicate, type ReceiverReading } from "../panel/index.ts";

/** Under this a measured radial is as good as the true one, degrees: a needle's width. */
export const WORTH_SAYING_DEG = 0.2;

/** What a receiver that is not misled would show here. */
export interface TruePlace extends Deviation {
  readonly radial: StationDeg;
  /** Never null: it is worked out from the place, and needs no signal. */
  readonly deviationDeg: number;
  /** From the true radial to the one read, clockwise positive. */
  readonly astrayDeg: number;
}

/**
 * The true place of a receiver that is led astray by a needle's width or more; null where its radial is as good as the true one, where
 * it has none, and of a test signal, whose radial is no place.
 */
export function ledAstray({ radial, geometry, station, settings }: ReceiverReading): TruePlace | null {
  if (radial === null || geometry === null || station === null || station.kind === "VOT") return null;
  const { trueRadial } = geometry;
  const astrayDeg = turnBetween(trueRadial, radial);
  if (Math.abs(astrayDeg) < WORTH_SAYING_DEG) return null;
  return {
    ...indicate(trueRadial, settings.course),
    radial: trueRadial,
    astrayDeg,
    deviationDeg: deviationDeg(trueRadial, settings.course),
  };
}
