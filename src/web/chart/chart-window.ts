/** Which piece of the earth the chart shows, and how a hand moves it. Pure; a place under the hand stays under the hand. */

import { type ChartProjection, type ChartView, chartProjection } from "../../draw/index.ts";
import type { LatLon } from "../../earth/index.ts";
import type { ScreenPoint } from "../input/turn.ts";

export interface ChartSize {
  readonly widthPx: number;
  readonly heightPx: number;
}

/** From a runway's neighbourhood to a whole region, NM across. */
export const NARROWEST_NM = 4;
export const WIDEST_NM = 600;

export const projectionOf = (view: ChartView, size: ChartSize): ChartProjection =>
  chartProjection(view, size.widthPx, size.heightPx);

/** The view after a hand dragged the paper from one point to another: the place under the hand has gone with it. */
export const panned = (view: ChartView, size: ChartSize, from: ScreenPoint, to: ScreenPoint): ChartView =>
  withPlaceAt(view, size, projectionOf(view, size).toWorld(from.x, from.y), to);

/** The view magnified by a factor (above 1 comes nearer), the place at `about` staying where it is. Kept within the widths above. */
export function zoomed(view: ChartView, size: ChartSize, factor: number, about: ScreenPoint): ChartView {
  const widthNm = Math.min(WIDEST_NM, Math.max(NARROWEST_NM, view.widthNm / factor));
  return withPlaceAt({ ...view, widthNm }, size, projectionOf(view, size).toWorld(about.x, about.y), about);
}

/** The cone turns with its centre, so that one shift leaves a few pixels; each further round leaves a hundredth of them. */
const ROUNDS = 3;

function withPlaceAt(view: ChartView, size: ChartSize, place: LatLon, at: ScreenPoint): ChartView {
  let placed = view;
  for (let round = 0; round < ROUNDS; round++) {
    const projection = projectionOf(placed, size);
    const now = projection.toPaper(place);
    const centre = projection.toWorld(size.widthPx / 2 + now.x - at.x, size.heightPx / 2 + now.y - at.y);
    placed = { ...placed, centre };
  }
  return placed;
}
