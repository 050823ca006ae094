/**
 * The lighthouse that teachers tell of: a flash in all directions when the beam passes the station's north, a beam that turns evenly,
 * and a stopwatch. A turn of 12 s puts the radial 060 two seconds after the flash, 090 three, 180 six (common practice as taught).
 */

import { reciprocal, type StationDeg } from "../../earth/index.ts";
import type { ReceiverReading } from "../../panel/index.ts";

/** How long a turn may be chosen to take, seconds. */
export const LIGHTHOUSE_TURNS_S = [6, 12, 30] as const;
export type LighthouseTurnS = (typeof LIGHTHOUSE_TURNS_S)[number];
/** The flash is seen for this part of a turn. */
const FLASH_TURNS = 0.04;

/** Where the beam points so long after a flash, degrees from the station's north in [0, 360). */
export const beamDeg = (atS: number, turnS: number): number => ((atS % turnS) / turnS) * 360;

/** Seconds from the flash to the beam in this direction, in [0, turn). */
export const afterFlashS = (direction: StationDeg, turnS: number): number => (direction / 360) * turnS;

/** Whether the flash is to be seen. */
export const isFlash = (atS: number, turnS: number): boolean => (atS % turnS) / turnS < FLASH_TURNS;

/** The watch in this picture: what the receiver expects on the selected course, and what it measures. */
export interface LighthouseTimes {
  /** When the beam sweeps the aircraft. */
  readonly measuredS: number;
  /** When it would with the needle centred and FROM, and with TO. */
  readonly fromS: number;
  readonly toS: number;
  /** The flag of the nearer of the two. */
  readonly nearer: "FROM" | "TO";
  /** Measured less the nearer expected one, by the shorter way round: the needle. */
  readonly lateS: number;
}

/** The times for a bearing that is measured; null without one. */
export function lighthouseTimes(reading: ReceiverReading, turnS: number): LighthouseTimes | null {
  const { radial, settings } = reading;
  if (radial === null) return null;
  const measuredS = afterFlashS(radial, turnS);
  const fromS = afterFlashS(settings.course, turnS);
  const toS = afterFlashS(reciprocal(settings.course), turnS);
  const late = (expectedS: number): number => {
    const apart = (((measuredS - expectedS) % turnS) + turnS) % turnS;
    return apart > turnS / 2 ? apart - turnS : apart;
  };
  const nearer = Math.abs(late(fromS)) <= turnS / 4 ? "FROM" : "TO";
  return { measuredS, fromS, toS, nearer, lateS: late(nearer === "FROM" ? fromS : toS) };
}
