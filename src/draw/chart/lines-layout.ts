/** What moves with the aircraft and the course knob: the receivers' lines, the aircraft, and where their words are written. */

import type { ReceiverReading } from "../../panel/index.ts";
import type { Situation } from "../../scene/index.ts";
import { type PaperPoint, paperAngleDeg } from "../plain/paper.ts";
import { type AircraftOnSheet, aircraftOnSheet, vectorPaths } from "./aircraft.tsx";
import { type ChartFrame, drawable, onSheet } from "./frame.ts";
import type { GroundLayout } from "./ground-layout.ts";
import { type AircraftBlock, type LineLabel, placeMovingWords } from "./moving-words.ts";
import { discObstacle, type Obstacle, pathObstacle } from "./placement.ts";
import {
  type AircraftLines,
  aircraftLines,
  alongRun,
  type ReceiverLines,
  receiverLines,
  runLengthPx,
  visibleRun,
} from "./receiver-lines.ts";
import { type SeenOfReceiver, seenOfReceiver, seenOnChart } from "./seen.ts";
import { roseRadiusPx } from "./station-plan.ts";

/** One receiver's lines. */
export interface DrawnReceiver {
  readonly reading: ReceiverReading;
  /** 1 for the scene's first. */
  readonly number: number;
  readonly seen: SeenOfReceiver;
  /** Drawn in full; the others show their radial alone. */
  readonly chosen: boolean;
  /** Whether a flag shows that the covers let be seen; without it the halves are not told apart. */
  readonly halvesShown: boolean;
  readonly course: ReceiverLines | null;
  readonly aircraft: AircraftLines | null;
  /** Arrowheads in the sense of the course: place, and direction on the paper. */
  readonly arrows: readonly { readonly at: PaperPoint; readonly angleDeg: number }[];
}

export interface LinesLayout {
  readonly receivers: readonly DrawnReceiver[];
  /** Null when covered, or nowhere near the sheet. */
  readonly aircraft: AircraftOnSheet | null;
  readonly labels: readonly LineLabel[];
  readonly block: AircraftBlock | null;
}

export interface LinesOptions {
  /** Name of the receiver whose lines are drawn in full; the first when left out. */
  readonly receiver?: string | undefined;
  /** Whether the distance from the course is written, as while the argument speaks of it. */
  readonly offsetShown?: boolean;
}

const LINE_WEIGHT = 10;
const ARROWS_APART_PX = 190;

export function layOutLines(
  frame: ChartFrame,
  situation: Situation,
  ground: GroundLayout,
  { receiver, offsetShown = false }: LinesOptions = {},
): LinesLayout {
  const position = situation.scene.aircraft.position;
  const aircraft =
    seenOnChart(situation).aircraft && drawable(frame, position) ? aircraftOnSheet(frame, situation) : null;
  const receivers = situation.receivers.map((reading, index) => {
    const chosen = receiver === undefined ? index === 0 : reading.settings.name === receiver;
    return linesOf(frame, situation, reading, { number: index + 1, chosen });
  });
  const obstacles: Obstacle[] = [
    ...ground.obstacles,
    ...receivers.flatMap((drawn) => lineObstacles(frame, drawn)),
    ...(aircraft ? aircraftObstacles(frame, aircraft) : []),
  ];
  const words = placeMovingWords(frame, situation, { receivers, aircraft, offsetShown }, obstacles);
  return { receivers, aircraft, ...words };
}

function linesOf(
  frame: ChartFrame,
  situation: Situation,
  reading: ReceiverReading,
  { number, chosen }: { readonly number: number; readonly chosen: boolean },
): DrawnReceiver {
  const seen = seenOfReceiver(situation, reading.settings.name);
  const received = reading.signal.kind === "good" || reading.signal.kind === "weak";
  const course = chosen && seen.course ? receiverLines(frame, reading) : null;
  const position = situation.scene.aircraft.position;
  return {
    reading,
    number,
    seen,
    chosen,
    // With the aircraft covered, whether the station is received would tell where it is; the halves are the course's own.
    halvesShown: seen.halves && (received || !seenOnChart(situation).aircraft),
    course,
    // Nor may a line that is not there say that the flag is OFF.
    aircraft: seen.radial && (received || !seen.reception) ? aircraftLines(frame, reading, position) : null,
    arrows: course ? arrowsOf(frame, course) : [],
  };
}

function lineObstacles(frame: ChartFrame, { course, aircraft, arrows }: DrawnReceiver): Obstacle[] {
  const path = (points: readonly PaperPoint[], weight: number): Obstacle =>
    pathObstacle(visibleRun(points, frame.window), weight);
  return [
    ...(course
      ? [path(course.fromHalf, LINE_WEIGHT), path(course.toHalf, LINE_WEIGHT), path(course.abeam, 2)]
      : []),
    ...(aircraft ? [path(aircraft.radial, LINE_WEIGHT)] : []),
    ...arrows.map(({ at }) => discObstacle(at, 8 * frame.typeScale, 3)),
  ];
}

function aircraftObstacles(frame: ChartFrame, aircraft: AircraftOnSheet): Obstacle[] {
  const vectors = vectorPaths(aircraft, frame.typeScale);
  return [
    discObstacle(aircraft.at, 22 * frame.typeScale, 6),
    ...vectors.map((points) => pathObstacle(points, LINE_WEIGHT)),
  ];
}

/** At even steps from the station along both halves, so that they stay put while the course turns. */
function arrowsOf(frame: ChartFrame, course: ReceiverLines): DrawnReceiver["arrows"] {
  const firstPx = roseRadiusPx(frame) + 96 * frame.typeScale;
  return [course.fromHalf, course.toHalf].flatMap((half, index) => {
    const found: { at: PaperPoint; angleDeg: number }[] = [];
    const lengthPx = Math.min(runLengthPx(half), 4000);
    for (let alongPx = firstPx; alongPx < lengthPx; alongPx += ARROWS_APART_PX * frame.typeScale) {
      const place = alongRun(half, alongPx);
      if (!place || !onSheet(frame, place[0], -14)) continue;
      const outwardDeg = paperAngleDeg({ x: 0, y: 0 }, place[1]);
      found.push({ at: place[0], angleDeg: index === 0 ? outwardDeg : (outwardDeg + 180) % 360 });
    }
    return found;
  });
}
