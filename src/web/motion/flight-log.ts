/**
 * What a flight on the bench has been: a moment for every whole second of it, and one wherever a hand changed something or the flight was
 * halted. Any time in between is flown to from the moment before it, so a scrubbed scene is exact. Plain immutable data.
 */

import type { HistoryPoint, TrailPoint } from "../../draw/index.ts";
import { geodesicDistanceNm, turnBetween } from "../../earth/index.ts";
import { type Flight, flyOn } from "../../flight/index.ts";
import type { ReceiverReading } from "../../panel/index.ts";
import type { Aircraft, Scene, Situation } from "../../scene/index.ts";

/** The flight at one time, with all of the scene that it needs. */
export interface Moment extends Flight, Pick<Scene, "wind" | "date" | "receivers"> {
  /** Since the flight began, seconds. */
  readonly timeS: number;
  /** What the receivers showed, by their names. */
  readonly shown: Readonly<Record<string, Omit<HistoryPoint, "timeS">>>;
}

/** The moment of a flight at a time, with what its situation shows. */
export function momentFrom({ scene, receivers }: Situation, flight: Flight, timeS: number): Moment {
  const shown = Object.fromEntries(receivers.map((reading) => [reading.settings.name, shownBy(reading)]));
  return { ...flight, wind: scene.wind, date: scene.date, receivers: scene.receivers, timeS, shown };
}

/** A metre, NM: flown in other steps, a place differs by less. */
const SAME_PLACE_NM = 1 / 1852;

/** Whether two aircraft are in one place, for a flight. */
export const samePlace = (one: Aircraft, other: Aircraft): boolean =>
  one.position === other.position || geodesicDistanceNm(one.position, other.position) < SAME_PLACE_NM;

/** So that the seconds of a flight stay whole, however many frames they are added up from. */
export const inMicroseconds = (timeS: number): number => Math.round(timeS * 1e6) / 1e6;

/** In the order of time. */
export type FlightLog = readonly Moment[];

/** The oldest of a longer flight is forgotten first, seconds. */
export const LONGEST_LOG_S = 4 * 3600;

/** The log with a moment added; it replaces one of the same time. Later ones are dropped. */
export function withMoment(log: FlightLog, moment: Moment): FlightLog {
  const before = log.slice(
    firstBeyond(log, moment.timeS - LONGEST_LOG_S, true),
    firstBeyond(log, moment.timeS, true),
  );
  return [...before, moment];
}

/** The log without what came after a time. */
export const cutAfter = (log: FlightLog, timeS: number): FlightLog =>
  log.slice(0, firstBeyond(log, timeS, false));

/** The last moment at or before a time; the first for any time before it. Null for an empty log. */
export const momentBefore = (log: FlightLog, timeS: number): Moment | null =>
  log[Math.max(0, firstBeyond(log, timeS, false) - 1)] ?? null;

/** The flight as it was at a time inside the log. Null for an empty log. */
export function flightAt(
  log: FlightLog,
  timeS: number,
): (Flight & Pick<Moment, "wind" | "receivers">) | null {
  const moment = momentBefore(log, timeS);
  if (moment === null) return null;
  const { wind, receivers } = moment;
  return { ...flyOn(moment, moment, Math.max(0, timeS - moment.timeS)), wind, receivers };
}

/** Index of the first moment after a time, or (`orAt`) at or after it; the length when there is none. */
function firstBeyond(log: FlightLog, timeS: number, orAt: boolean): number {
  let [low, high] = [0, log.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    const at = log[middle]?.timeS ?? 0;
    if (at > timeS || (orAt && at === timeS)) high = middle;
    else low = middle + 1;
  }
  return low;
}

/** Needle, flag and DME as a history of them takes them. */
export function shownBy(reading: ReceiverReading): Omit<HistoryPoint, "timeS"> {
  const { needleDots, needleSide, flag, dme } = reading;
  const dots = needleDots === null ? null : needleSide === "left" ? -needleDots : needleDots;
  return { needleDots: dots, flag, dmeNm: dme?.distanceNm ?? null };
}

/** The history of one receiver; moments before it was there are left out. */
export const historyOf = (log: FlightLog, receiver: string): readonly HistoryPoint[] =>
  log.flatMap(({ timeS, shown }) => {
    const then = shown[receiver];
    return then === undefined ? [] : [{ timeS, ...then }];
  });

/** A trail turns by less than this between two of its points, degrees: then no corner is to be seen in it. */
const TRAIL_TURN_DEG = 4;

/** The log's places, thinned to those that bend the trail, those at whole minutes and the last. */
export function trailOf(log: FlightLog): readonly TrailPoint[] {
  let kept: Moment | null = null;
  const isKept = (moment: Moment, index: number): boolean => {
    const [before, next] = [log[index - 1], log[index + 1]];
    if (kept === null || next === undefined || moment.timeS % 60 === 0) return true;
    const begins =
      before?.aircraft.heading === moment.aircraft.heading &&
      next.aircraft.heading !== moment.aircraft.heading;
    return begins || Math.abs(turnBetween(kept.aircraft.heading, moment.aircraft.heading)) >= TRAIL_TURN_DEG;
  };
  return log.flatMap((moment, index) => {
    if (!isKept(moment, index)) return [];
    kept = moment;
    return [{ timeS: moment.timeS, position: moment.aircraft.position }];
  });
}
