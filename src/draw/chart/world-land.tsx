/**
 * The world's land under a chart of real stations: the same tint, coast and shallow water as the isles have, drawn from outlines at
 * 1:50 million. A coast so drawn is a mile or two off in places: good for knowing where one is, not for finding a headland.
 */

import type { VNode } from "preact";
import { geodesicDistanceNm, wrap180 } from "../../earth/index.ts";
import type { Land } from "../../radio/index.ts";
import { distancePx, type PaperPoint, pathThrough } from "../plain/paper.ts";
import type { ChartFrame } from "./frame.ts";
import type { ChartView } from "./projection.ts";
import { type DegreeBox, outlinesWithin, type WorldOutlines } from "./world-outlines.ts";

export interface WorldLandProps {
  readonly outlines: WorldOutlines;
  readonly frame: ChartFrame;
}

/** Lies on the sea and under everything else, inside the chart's window. */
export function WorldLand({ outlines, frame }: WorldLandProps): VNode | null {
  const { theme } = frame;
  const coasts = worldLandPath(outlines, frame);
  if (coasts === "") return null;
  return (
    <g stroke-linejoin="round" data-land="world">
      <path d={coasts} fill="none" stroke={theme.coast} stroke-opacity={0.1} stroke-width={16} />
      <path d={coasts} fill="none" stroke={theme.coast} stroke-opacity={0.14} stroke-width={7} />
      <path d={coasts} fill={theme.land[0]} fill-rule="evenodd" stroke={theme.coast} stroke-width={1.3} />
    </g>
  );
}

/** The land on the sheet as one path, empty over open sea. Where it is cut off, it is so beyond the sheet's edge. */
export function worldLandPath(outlines: WorldOutlines, frame: ChartFrame): string {
  const box = boxAround(frame);
  return outlinesWithin(outlines, box)
    .map((part) => pathThrough(thinned(onPaper(frame, part, box)), true))
    .join("");
}

/** Room beyond the sheet, as a part of its size: a parallel cut off there bends by less than this back toward the sheet. */
const BEYOND = 0.3;
/** Of a conic chart of one hemisphere no more is drawn. */
const MOST_LAT_DEG = 89.9;
/** To either side of the middle's meridian; at 180 a point would change sides. */
const ALL_ROUND_DEG = 179.9;

/** The degrees that the sheet covers, and more. Longitudes count on from the middle's. */
function boxAround({ projection, widthPx, heightPx, view }: ChartFrame): DegreeBox {
  const middleLon = view.centre.lonDeg;
  const alongs = [0, 0.25, 0.5, 0.75, 1].map((part) => (1 + 2 * BEYOND) * part - BEYOND);
  const edge = alongs.flatMap((along) => [
    projection.toWorld(along * widthPx, -BEYOND * heightPx),
    projection.toWorld(along * widthPx, (1 + BEYOND) * heightPx),
    projection.toWorld(-BEYOND * widthPx, along * heightPx),
    projection.toWorld((1 + BEYOND) * widthPx, along * heightPx),
  ]);
  const lats = edge.map(({ latDeg }) => latDeg);
  const lons = edge.map(({ lonDeg }) => wrap180(lonDeg - middleLon));
  const pole = view.centre.latDeg < 0 ? -MOST_LAT_DEG : MOST_LAT_DEG;
  const { x, y } = projection.toPaper({ latDeg: pole, lonDeg: middleLon });
  const poleOnSheet = x > 0 && x < widthPx && y > -BEYOND * heightPx && y < (1 + BEYOND) * heightPx;
  if (poleOnSheet) {
    const south = pole < 0 ? pole : Math.min(...lats);
    const north = pole > 0 ? pole : Math.max(...lats);
    return { west: middleLon - ALL_ROUND_DEG, east: middleLon + ALL_ROUND_DEG, south, north };
  }
  return {
    west: middleLon + Math.min(...lons),
    east: middleLon + Math.max(...lons),
    south: Math.max(-MOST_LAT_DEG, Math.min(...lats)),
    north: Math.min(MOST_LAT_DEG, Math.max(...lats)),
  };
}

/** Along a cut parallel a point stands at least this often, degrees of longitude, so that it keeps to its curve. */
const PARALLEL_STEP_DEG = 2;

function onPaper(frame: ChartFrame, lonLat: readonly number[], box: DegreeBox): PaperPoint[] {
  const { toPaper } = frame.projection;
  const points: PaperPoint[] = [];
  let fromLon = lonLat.at(-2) ?? 0;
  let fromLat = lonLat.at(-1) ?? 0;
  for (let at = 0; at < lonLat.length; at += 2) {
    const lonDeg = lonLat[at] ?? 0;
    const latDeg = lonLat[at + 1] ?? 0;
    const alongEdge = latDeg === fromLat && (latDeg === box.south || latDeg === box.north);
    const steps = alongEdge ? Math.max(1, Math.ceil(Math.abs(lonDeg - fromLon) / PARALLEL_STEP_DEG)) : 1;
    for (let step = 1; step < steps; step++)
      points.push(toPaper({ latDeg, lonDeg: fromLon + ((lonDeg - fromLon) * step) / steps }));
    points.push(toPaper({ latDeg, lonDeg }));
    fromLon = lonDeg;
    fromLat = latDeg;
  }
  return points;
}

/** Closer together than this points say nothing more, px. */
const APART_PX = 0.6;

function thinned(points: readonly PaperPoint[]): PaperPoint[] {
  const kept: PaperPoint[] = [];
  for (const point of points) {
    const last = kept.at(-1);
    if (last === undefined || distancePx(last, point) >= APART_PX) kept.push(point);
  }
  return kept;
}

/** A scene's own land stands for the world's this far around it, NM. The demo's isles lie 530 NM from any other land. */
const OWN_LAND_REACHES_NM = 500;

/** Whether a view shows a piece of the earth that the scene's own land says nothing of. */
export function worldLandIsWanted(view: ChartView, heightPerWidth: number, land: Land | null): boolean {
  const places = land?.islands.flatMap(({ coast }) => coast.slice(0, 1)) ?? [];
  if (places.length === 0) return true;
  const reachNm = (view.widthNm / 2) * Math.hypot(1, heightPerWidth);
  const awayNm = Math.min(...places.map((place) => geodesicDistanceNm(view.centre, place)));
  return awayNm + reachNm > OWN_LAND_REACHES_NM;
}
