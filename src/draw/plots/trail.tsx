/**
 * Where the aircraft has flown: a thin line in ink with a bead for every minute, so that the beads stand apart where it was fast over
 * the ground. It lies on the chart's ground and under the aircraft.
 */

import type { VNode } from "preact";
import type { LatLon } from "../../earth/index.ts";
import { isCovered } from "../../scene/index.ts";
import type { ChartProjection } from "../chart/index.ts";
import { distancePx, type PaperPoint, pathThrough } from "../plain/paper.ts";
import { px } from "../plain/px.ts";
import type { Theme } from "../theme.ts";

export interface TrailPoint {
  /** Since the flight began, seconds. */
  readonly timeS: number;
  readonly position: LatLon;
}

export interface TrailProps {
  /** In the order of time. A bead stands on points of whole minutes. */
  readonly points: readonly TrailPoint[];
  readonly projection: ChartProjection;
  readonly theme: Theme;
  /** The scene's: under a cover of the chart, the aircraft or its heading a trail would give it away, and is not drawn. */
  readonly covers: readonly string[];
  readonly typeScale?: number;
}

/** Beads nearer to each other than this are thinned to every fifth minute, and so on, px at type scale 1. */
const BEADS_APART_PX = 11;
const BEAD_STEPS_S = [60, 300, 600, 1800, 3600];

export function Trail({ points, projection, theme, covers, typeScale = 1 }: TrailProps): VNode | null {
  const hidden = (["chart", "aircraft", "heading"] as const).some((part) => isCovered(covers, null, part));
  if (hidden || points.length < 2) return null;
  const onPaper = points.map(({ timeS, position }) => ({ timeS, at: projection.toPaper(position) }));
  const d = pathThrough(onPaper.map(({ at }) => at));
  const shared = { d, fill: "none", "stroke-linejoin": "round", "stroke-linecap": "round" } as const;
  const everyS = beadStepS(onPaper, BEADS_APART_PX * typeScale);
  const beads = onPaper.filter(({ timeS }) => timeS > 0 && timeS % everyS === 0);
  return (
    <g data-part="trail">
      <path {...shared} stroke={theme.sea} stroke-opacity={0.7} stroke-width={px(4 * typeScale)} />
      <path {...shared} stroke={theme.ink} stroke-opacity={0.75} stroke-width={px(1.3 * typeScale)} />
      {beads.map(({ timeS, at }) => (
        <circle
          key={timeS}
          data-minute={timeS / 60}
          cx={px(at.x)}
          cy={px(at.y)}
          r={px(2.6 * typeScale)}
          fill={theme.paper}
          stroke={theme.ink}
          stroke-width={px(1.3 * typeScale)}
        />
      ))}
    </g>
  );
}

/** How often a bead stands, so that they keep apart on the average. */
function beadStepS(
  points: readonly { readonly timeS: number; readonly at: PaperPoint }[],
  apartPx: number,
): number {
  const lengthPx = points.reduce((sum, { at }, index) => {
    const before = points[index - 1];
    return before === undefined ? 0 : sum + distancePx(before.at, at);
  }, 0);
  const spanS = (points.at(-1)?.timeS ?? 0) - (points[0]?.timeS ?? 0);
  return BEAD_STEPS_S.find((stepS) => (lengthPx * stepS) / spanS >= apartPx) ?? 3600;
}
