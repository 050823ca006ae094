/**
 * Where everything on the sheet stands that does not move with the aircraft: roses, information boxes, names, furniture. It keeps
 * clear of the aircraft and of the lines as they are now; the bench holds one layout while a drag lasts, so that nothing jumps.
 */

import { variation } from "../../earth/index.ts";
import type { Situation } from "../../scene/index.ts";
import type { PaperPoint } from "../plain/paper.ts";
import { aircraftOnSheet, vectorPaths } from "./aircraft.tsx";
import { type ChartFrame, drawable } from "./frame.ts";
import { FURNITURE_WEIGHT, type Furniture, layOutFurniture } from "./furniture-layout.ts";
import {
  layOutIslandNames,
  layOutPointNames,
  NAME_WEIGHT,
  type Names,
  namesAsObstacles,
} from "./names-layout.ts";
import { boxObstacle, discObstacle, type Obstacle, pathObstacle } from "./placement.ts";
import { aircraftLines, receiverLines, visibleRun } from "./receiver-lines.ts";
import { ROSE_ARROW_PART } from "./rose.tsx";
import { coveredOnChart, seenOfReceiver, seenOnChart } from "./seen.ts";
import { LABEL_WEIGHT, layOutStationLabels, type StationLabel } from "./station-labels.ts";
import { planStations, roseFiguresPx, type StationOnSheet } from "./station-plan.ts";
import { SYMBOL_RADIUS_PX } from "./station-symbol.tsx";

export interface GroundLayout {
  readonly stations: readonly (StationOnSheet & { readonly label: StationLabel | null })[];
  readonly names: Names;
  readonly furniture: Furniture;
  /** How many receivers the scene has; with one alone no numbers are needed. */
  readonly receivers: number;
  /** Variation as printed: at the aircraft, or at the middle of the sheet when the aircraft is covered. */
  readonly variationDeg: number;
  /** All of it, for the labels on the lines and at the aircraft to keep clear of. */
  readonly obstacles: readonly Obstacle[];
}

/** Half the room the aircraft and its heading line take, px at type scale 1. */
export const AIRCRAFT_REACH_PX = 30;

/** `receiver` names the one whose lines are drawn in full; the first when left out. */
export function layOutGround(frame: ChartFrame, situation: Situation, receiver?: string): GroundLayout {
  const planned = planStations(frame, situation);
  const stationObstacles = planned.flatMap((station) => obstaclesOfStation(frame, station));
  const moving = movingObstacles(frame, situation, receiver);
  const wanted = { wind: situation.scene.wind.speedKt > 0, covered: coveredOnChart(situation, receiver) };
  const furniture = layOutFurniture(frame, wanted, [...stationObstacles, ...moving]);
  const furnitureObstacles = [
    furniture.badges,
    furniture.scale,
    ...furniture.strips.map(({ box }) => box),
  ].map((box) => boxObstacle(box, FURNITURE_WEIGHT, 6));
  const variationDeg = printedVariationDeg(frame, situation);
  const land = situation.scene.land;
  const taken: Obstacle[] = [...stationObstacles, ...furnitureObstacles];
  const coasts = coastObstacles(frame, situation);
  // Most important first: summits and airfields, which have few places; stations tuned; other stations; islands.
  const points = layOutPointNames(
    frame,
    land,
    variationDeg,
    planned.map(({ at }) => at),
    [...taken, ...moving],
  );
  taken.push(...namesAsObstacles(points, frame.typeScale));
  const labels = new Map<StationOnSheet, StationLabel>();
  for (const tuned of [true, false]) {
    const stations = planned.filter(({ tunedBy }) => tunedBy.length > 0 === tuned);
    const placed = layOutStationLabels(frame, stations, [...taken, ...moving, ...coasts], planned.length);
    for (const [station, label] of placed) {
      labels.set(station, label);
      taken.push(boxObstacle(label.outer, LABEL_WEIGHT, label.kind === "box" ? 6 : 2));
    }
  }
  const islands = layOutIslandNames(frame, land, [...taken, ...moving]);
  taken.push(...islands.map(({ box }) => boxObstacle(box, NAME_WEIGHT, 1)));
  return {
    stations: planned.map((station) => ({ ...station, label: labels.get(station) ?? null })),
    names: { ...points, islands },
    furniture,
    receivers: situation.receivers.length,
    variationDeg,
    obstacles: taken,
  };
}

function obstaclesOfStation(frame: ChartFrame, station: StationOnSheet): Obstacle[] {
  const symbol = discObstacle(station.at, (SYMBOL_RADIUS_PX + 5) * station.symbolScale, 9);
  const radiusPx = station.roseRadiusPx;
  if (radiusPx === null) return [symbol];
  const tuned = station.tunedBy.length > 0;
  return [
    symbol,
    {
      kind: "ring",
      centre: station.at,
      innerPx: radiusPx - 14 - roseFiguresPx(frame) * 1.4,
      outerPx: radiusPx + roseFiguresPx(frame) * ROSE_ARROW_PART,
      weight: tuned ? 2.5 : 2,
    },
    discObstacle(station.at, radiusPx, 0.3),
  ];
}

/** The aircraft and the lines, as far as they are seen: what is covered must not be given away by the room left for it. */
function movingObstacles(frame: ChartFrame, situation: Situation, receiver?: string): Obstacle[] {
  const found: Obstacle[] = [];
  const { position } = situation.scene.aircraft;
  if (seenOnChart(situation).aircraft && drawable(frame, position)) {
    const aircraft = aircraftOnSheet(frame, situation);
    found.push(discObstacle(aircraft.at, AIRCRAFT_REACH_PX * frame.typeScale, 5));
    for (const points of vectorPaths(aircraft, frame.typeScale)) found.push(pathObstacle(points, 15));
  }
  situation.receivers.forEach((reading, index) => {
    const name = reading.settings.name;
    const seen = seenOfReceiver(situation, name);
    const chosen = receiver === undefined ? index === 0 : name === receiver;
    const lines = chosen && seen.course ? receiverLines(frame, reading) : null;
    const path = (points: readonly PaperPoint[], weight: number): Obstacle =>
      pathObstacle(visibleRun(points, frame.window), weight);
    if (lines) found.push(path(lines.fromHalf, 30), path(lines.toHalf, 30), path(lines.abeam, 4));
    const radial = seen.radial ? aircraftLines(frame, reading, position) : null;
    if (radial) found.push(path(radial.radial, 25));
  });
  return found;
}

/** A coast is not spoilt by a box, but a box on open sea is better. */
function coastObstacles(frame: ChartFrame, situation: Situation): Obstacle[] {
  return (situation.scene.land?.islands ?? []).map(({ coast }) =>
    pathObstacle(coast.filter((corner) => drawable(frame, corner)).map(frame.projection.toPaper), 2.5),
  );
}

/** The variation at the covered aircraft would tell how far east or west it is. */
function printedVariationDeg(frame: ChartFrame, situation: Situation): number {
  if (seenOnChart(situation).aircraft) return situation.variationDeg;
  const { date } = situation.scene;
  return variation({ position: frame.view.centre, altitudeFt: 0, date }).variationDeg;
}
