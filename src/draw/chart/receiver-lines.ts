/**
 * The lines a receiver draws on the chart, as points on the paper: its radial, the course line through the station with its TO
 * and FROM halves, the abeam line square to it, the ten degrees either side. All are shortest lines on the ellipsoid, sampled.
 * The course's FROM half leaves the station at course plus declination, from true north; its TO half at the opposite.
 */

import {
  direct,
  geodesicDistanceNm,
  inverse,
  type LatLon,
  type TrueDeg,
  trueFromStation,
  turnBetween,
  turned,
} from "../../earth/index.ts";
import { FULL_SCALE_DEG, offCourseNm, type ReceiverReading } from "../../panel/index.ts";
import { givesBearing, type Station } from "../../radio/index.ts";
import { distancePx, type PaperPoint } from "../plain/paper.ts";
import { type ChartFrame, drawable } from "./frame.ts";
import { clipSegment, type PaperWindow } from "./placement.ts";

export interface ReceiverLines {
  readonly station: Station;
  readonly at: PaperPoint;
  /** From the station onward, and beyond the sheet's edge. */
  readonly fromHalf: readonly PaperPoint[];
  readonly toHalf: readonly PaperPoint[];
  /** Square to the course, through the station. */
  readonly abeam: readonly PaperPoint[];
  /** Everything on the TO side of the abeam line, closed. */
  readonly toSide: readonly PaperPoint[];
  /** Full scale either side of each half, closed. */
  readonly wedges: readonly (readonly PaperPoint[])[];
}

/** The aircraft's place seen from the station: the radial it is on and its distance from the course. */
export interface AircraftLines {
  /** From the station to the aircraft. */
  readonly radial: readonly PaperPoint[];
  /** Square from the aircraft to the course line: aircraft first. */
  readonly offset: readonly [PaperPoint, PaperPoint];
  /** NM from the course line, either side. */
  readonly offsetNm: number;
}

const SAMPLES = 24;
/** Steps round a closed area; its chords must not cut back onto the sheet. */
const FAN_STEP_DEG = 15;
const FAN_MARGIN = 1.05;
/** Beyond this a line would run into the tear in the cone on the far side of the earth. */
const LONGEST_NM = 2400;

/**
 * The course's lines; null where the receiver's station gives no bearing, is a test signal (whose radials mean nothing), or is
 * too far from the sheet to draw.
 */
export function receiverLines(frame: ChartFrame, reading: ReceiverReading): ReceiverLines | null {
  const station = reading.station;
  if (!hasRadials(station) || !drawable(frame, station.position)) return null;
  const courseTrue = trueFromStation(reading.settings.course, station.declinationDeg);
  const drawn = DRAWN.get(frame)?.get(station);
  if (drawn?.courseTrue === courseTrue) return drawn.lines;
  const lines = courseLines(frame, station, courseTrue);
  const onFrame = DRAWN.get(frame) ?? new WeakMap<Station, CourseDrawn>();
  DRAWN.set(frame, onFrame.set(station, { courseTrue, lines }));
  return lines;
}

interface CourseDrawn {
  readonly courseTrue: TrueDeg;
  readonly lines: ReceiverLines;
}

/** The course last drawn of each station on a sheet: it stays while the aircraft moves. */
const DRAWN = new WeakMap<ChartFrame, WeakMap<Station, CourseDrawn>>();

function courseLines(frame: ChartFrame, station: Station, courseTrue: TrueDeg): ReceiverLines {
  const reachNm = Math.min(LONGEST_NM, farthestCornerNm(frame, station.position) * FAN_MARGIN);
  const ray = (azimuth: TrueDeg): PaperPoint[] => rayPoints(frame, station.position, azimuth, reachNm);
  const arc = (firstDeg: number, lastDeg: number): PaperPoint[] => {
    const edge: PaperPoint[] = [];
    for (let offDeg = firstDeg + FAN_STEP_DEG; offDeg < lastDeg; offDeg += FAN_STEP_DEG) {
      const place = direct(station.position, turned(courseTrue, offDeg), reachNm);
      edge.push(frame.projection.toPaper(place));
    }
    return edge;
  };
  const fan = (firstDeg: number, lastDeg: number): PaperPoint[] => [
    ...ray(turned(courseTrue, firstDeg)),
    ...arc(firstDeg, lastDeg),
    ...ray(turned(courseTrue, lastDeg)).reverse(),
  ];
  const right = ray(turned(courseTrue, 90));
  const left = ray(turned(courseTrue, -90));
  return {
    station,
    at: frame.projection.toPaper(station.position),
    fromHalf: ray(courseTrue),
    toHalf: ray(turned(courseTrue, 180)),
    abeam: [...[...left].reverse(), ...right.slice(1)],
    toSide: [...right, ...arc(90, 270), ...[...left].reverse()],
    wedges: [fan(-FULL_SCALE_DEG, FULL_SCALE_DEG), fan(180 - FULL_SCALE_DEG, 180 + FULL_SCALE_DEG)],
  };
}

/** The lines between station and aircraft; null as above, and when the aircraft is too near overhead to lie on any radial. */
export function aircraftLines(
  frame: ChartFrame,
  reading: ReceiverReading,
  aircraft: LatLon,
): AircraftLines | null {
  const station = reading.station;
  if (!hasRadials(station) || !drawable(frame, station.position) || !drawable(frame, aircraft)) return null;
  const line = inverse(station.position, aircraft);
  if (line.kind === "same-place") return null;
  const { toPaper } = frame.projection;
  const end = toPaper(aircraft);
  const courseTrue = trueFromStation(reading.settings.course, station.declinationDeg);
  const offsetNm = offCourseNm(line.distanceNm, turnBetween(courseTrue, line.azimuth));
  const alongNm = line.distanceNm * Math.cos((turnBetween(courseTrue, line.azimuth) * Math.PI) / 180);
  const nearFoot = direct(station.position, courseTrue, alongNm);
  return {
    radial: [...rayPoints(frame, station.position, line.azimuth, line.distanceNm).slice(0, -1), end],
    offset: [end, toPaper(nearFoot)],
    offsetNm,
  };
}

/** Whether the station sends radials that mean a direction. */
export function hasRadials(station: Station | null): station is Station {
  return station !== null && givesBearing(station) && station.kind !== "VOT";
}

/** The part of a line that lies in a window, from its start onward; empty when it passes by. */
export function visibleRun(points: readonly PaperPoint[], within: PaperWindow): PaperPoint[] {
  const run: PaperPoint[] = [];
  let previous: PaperPoint | null = null;
  for (const point of points) {
    const part = previous && clipSegment(previous, point, within);
    if (part) {
      if (run.length === 0) run.push(part[0]);
      run.push(part[1]);
    }
    previous = point;
  }
  return run;
}

/** The point so far along a line, and the line's direction there as a vector; the end when it is shorter. */
export function alongRun(points: readonly PaperPoint[], lengthPx: number): [PaperPoint, PaperPoint] | null {
  let left = lengthPx;
  for (let index = 1; index < points.length; index++) {
    const from = points[index - 1];
    const to = points[index];
    if (!from || !to) break;
    const partPx = distancePx(from, to);
    if (partPx >= left && partPx > 0) {
      const t = left / partPx;
      const unit = { x: (to.x - from.x) / partPx, y: (to.y - from.y) / partPx };
      return [{ x: from.x + (to.x - from.x) * t, y: from.y + (to.y - from.y) * t }, unit];
    }
    left -= partPx;
  }
  return null;
}

export function runLengthPx(points: readonly PaperPoint[]): number {
  let length = 0;
  for (let index = 1; index < points.length; index++) {
    const from = points[index - 1];
    const to = points[index];
    if (from && to) length += distancePx(from, to);
  }
  return length;
}

function rayPoints(frame: ChartFrame, from: LatLon, azimuth: TrueDeg, lengthNm: number): PaperPoint[] {
  return Array.from({ length: SAMPLES + 1 }, (_, index) =>
    frame.projection.toPaper(index === 0 ? from : direct(from, azimuth, (lengthNm * index) / SAMPLES)),
  );
}

function farthestCornerNm(frame: ChartFrame, from: LatLon): number {
  const { widthPx, heightPx, projection } = frame;
  const corners = [
    [0, 0],
    [widthPx, 0],
    [0, heightPx],
    [widthPx, heightPx],
  ] as const;
  return Math.max(...corners.map(([x, y]) => geodesicDistanceNm(from, projection.toWorld(x, y))));
}
