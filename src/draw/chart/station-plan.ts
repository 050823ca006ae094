/** Which stations are on the sheet, who has tuned them, and which get a compass rose of what size. */

import { givesBearing, type Station } from "../../radio/index.ts";
import type { Situation } from "../../scene/index.ts";
import { distancePx, type PaperPoint } from "../plain/paper.ts";
import { type ChartFrame, drawable, NOTE_PX, onSheet } from "./frame.ts";
import { seenOfReceiver } from "./seen.ts";
import { SYMBOL_RADIUS_PX } from "./station-symbol.tsx";

export interface TunedBy {
  readonly name: string;
  /** 1 for the scene's first receiver. */
  readonly number: number;
}

interface OnPaper {
  readonly station: Station;
  readonly at: PaperPoint;
  readonly tunedBy: readonly TunedBy[];
}

export interface StationOnSheet extends OnPaper {
  /** Null where there is no room for one, or its radials mean nothing. */
  readonly roseRadiusPx: number | null;
  /** Where the station's north points on the paper, degrees clockwise from straight up. */
  readonly northDeg: number;
  readonly symbolScale: number;
}

const ROSE_PX = 88;
const SMALLEST_ROSE_PX = 52;
/** Of the sheet's shorter side. */
const LARGEST_ROSE_PART = 0.17;
/** Between two roses, px: room for the north arrow. */
const ROSE_GAP_PX = 14;
/** Roses of stations that nobody has tuned may take this part of the sheet, no more. */
const QUIET_ROSES_PART = 0.16;
/** A sheet smaller than this has room for the roses of tuned stations only. */
const QUIET_ROSES_FROM_PX = 480;
/** From this many stations on, those that nobody has tuned are drawn smaller. */
const CROWD = 16;
const CROWD_SCALE = 0.72;

/** The stations on or near the sheet, tuned ones first, then from the middle outward. */
export function planStations(frame: ChartFrame, situation: Situation): StationOnSheet[] {
  const tuned = tunedStations(situation);
  const middle = { x: frame.widthPx / 2, y: frame.heightPx / 2 };
  const ringPx = roseRadiusPx(frame);
  const near = situation.scene.stations
    .filter((station) => drawable(frame, station.position))
    .map((station) => ({
      station,
      at: frame.projection.toPaper(station.position),
      tunedBy: tuned.get(station) ?? [],
    }))
    .filter(({ at }) => onSheet(frame, at, ringPx))
    .sort((a, b) => rank(a.tunedBy) - rank(b.tunedBy) || distancePx(a.at, middle) - distancePx(b.at, middle));
  const crowded = near.length > CROWD;
  // With panel and argument covered the radial is to be measured on the true grid: a rose would tell it.
  const { covers } = situation.scene;
  const roseless = covers.includes("panel") && covers.includes("reasons");
  const apartPx = 2.6 * SYMBOL_RADIUS_PX * frame.typeScale;
  const planned: StationOnSheet[] = [];
  for (const each of near) {
    // A test signal stands on an airfield beside its station; untuned, it makes way.
    const crampedTest =
      each.station.kind === "VOT" &&
      each.tunedBy.length === 0 &&
      near.some((other) => other !== each && distancePx(other.at, each.at) < apartPx);
    if (crampedTest) continue;
    const isTuned = each.tunedBy.length > 0;
    planned.push({
      ...each,
      roseRadiusPx: roseless ? null : roomForRose(frame, each, near, planned, crowded),
      northDeg: frame.projection.trueNorthAngle(each.station.position) + each.station.declinationDeg,
      symbolScale: frame.typeScale * (crowded && !isTuned ? CROWD_SCALE : 1),
    });
  }
  return planned;
}

/** First the stations of the first receivers, last those that nobody has tuned. */
const rank = (tunedBy: readonly TunedBy[]): number => tunedBy[0]?.number ?? Number.MAX_SAFE_INTEGER;

/** The stations that receivers are tuned to, where the covers let that be seen. */
export function tunedStations(situation: Situation): Map<Station, TunedBy[]> {
  const tuned = new Map<Station, TunedBy[]>();
  situation.receivers.forEach(({ station, settings }, index) => {
    if (station === null || !seenOfReceiver(situation, settings.name).station) return;
    tuned.set(station, [...(tuned.get(station) ?? []), { name: settings.name, number: index + 1 }]);
  });
  return tuned;
}

/** A rose keeps its size on the paper whatever the scale of the map, and never crowds the sheet. */
export function roseRadiusPx(frame: ChartFrame): number {
  const { left, right, top, bottom } = frame.window;
  const largest = Math.min(right - left, bottom - top) * LARGEST_ROSE_PART;
  return Math.min(ROSE_PX * frame.typeScale ** 0.7, Math.max(SMALLEST_ROSE_PX, largest));
}

/** The size of the figures on a rose. */
export const roseFiguresPx = (frame: ChartFrame): number => NOTE_PX * frame.typeScale;

/** The clear distance round a station that words keep out of. */
export const stationReachPx = ({ roseRadiusPx: rosePx, symbolScale }: StationOnSheet): number =>
  rosePx === null ? (SYMBOL_RADIUS_PX + 5) * symbolScale : rosePx;

function roomForRose(
  frame: ChartFrame,
  station: OnPaper,
  all: readonly OnPaper[],
  planned: readonly StationOnSheet[],
  crowded: boolean,
): number | null {
  if (!hasRose(station.station)) return null;
  const ringPx = roseRadiusPx(frame);
  const rosed = planned.filter((other) => other.roseRadiusPx !== null);
  if (station.tunedBy.length > 0) {
    // Two tuned stations near each other share the room between them; where that is too little the first has it all.
    const others = all.filter(
      (other) => other !== station && other.tunedBy.length > 0 && hasRose(other.station),
    );
    const apart = others.map((other) => distancePx(station.at, other.at));
    const sharedPx = Math.min(ringPx, ...apart.map((each) => (each - ROSE_GAP_PX) / 2));
    if (sharedPx >= SMALLEST_ROSE_PX * 0.7) return sharedPx;
    return rosed.length === 0 ? ringPx : null;
  }
  const { left, right, top, bottom } = frame.window;
  const small = Math.min(right - left, bottom - top) < QUIET_ROSES_FROM_PX;
  const quiet = rosed.filter((other) => other.tunedBy.length === 0);
  const takenPx2 = quiet.reduce((sum, other) => sum + Math.PI * (other.roseRadiusPx ?? 0) ** 2, 0);
  const spent = takenPx2 + Math.PI * ringPx ** 2 > QUIET_ROSES_PART * frame.widthPx * frame.heightPx;
  if (crowded || small || spent || !onSheet(frame, station.at)) return null;
  const rooms = rosed.map(
    (other) => distancePx(station.at, other.at) - (other.roseRadiusPx ?? 0) - ROSE_GAP_PX,
  );
  const roomPx = Math.min(ringPx, ...rooms);
  return roomPx < ringPx * 0.75 ? null : roomPx;
}

const hasRose = (station: Station): boolean => givesBearing(station) && station.kind !== "VOT";
