/** Which piece of the earth the chart shows, and how a hand moves it. Pure; a place under the hand stays under the hand. */

import { type ChartProjection, type ChartView, chartProjection } from "../../draw/index.ts";
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

/** The view after the paper was dragged by so many pixels. */
export function panned(view: ChartView, size: ChartSize, by: ScreenPoint): ChartView {
  const centre = projectionOf(view, size).toWorld(size.widthPx / 2 - by.x, size.heightPx / 2 - by.y);
  return { ...view, centre };
}

/** The view magnified by a factor (above 1 comes nearer), the place at `about` staying where it is. Kept within the widths above. */
export function zoomed(view: ChartView, size: ChartSize, factor: number, about: ScreenPoint): ChartView {
  const widthNm = Math.min(WIDEST_NM, Math.max(NARROWEST_NM, view.widthNm / factor));
  const held = projectionOf(view, size).toWorld(about.x, about.y);
  const nearer = { ...view, widthNm };
  const drifted = projectionOf(nearer, size).toPaper(held);
  return panned(nearer, size, { x: about.x - drifted.x, y: about.y - drifted.y });
}
