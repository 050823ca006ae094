/** Which part of the chart no tool's sheet lies on: what is brought into sight must not come to lie under paper. */

import type { ChartSize } from "../chart/chart-window.ts";
import type { ScreenPoint } from "../input/turn.ts";

/** How far from the chart's left edge a sheet lies on it, px; 0 where none does. */
function coveredPx(): number {
  const chart = document.querySelector(".chart-ground")?.getBoundingClientRect();
  const sheet = document.querySelector(".tool-sheet")?.getBoundingClientRect();
  if (chart === undefined || sheet === undefined) return 0;
  const overlaps = sheet.top < chart.bottom && sheet.bottom > chart.top && sheet.left < chart.right;
  return overlaps ? Math.max(0, Math.min(sheet.right - chart.left, chart.width / 2)) : 0;
}

/** The middle of what is free. */
export function freeMiddle({ widthPx, heightPx }: ChartSize): ScreenPoint {
  return { x: (coveredPx() + widthPx) / 2, y: heightPx / 2 };
}

/** A place this near the edge does not count as in sight, px. */
const EDGE_PX = 40;

export function isInSight({ x, y }: ScreenPoint, { widthPx, heightPx }: ChartSize): boolean {
  return x > coveredPx() + EDGE_PX && x < widthPx - EDGE_PX && y > EDGE_PX && y < heightPx - EDGE_PX;
}
