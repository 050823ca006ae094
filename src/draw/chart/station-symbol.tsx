/**
 * The signs of the chart trade for a ground station, drawn upright about its place.
 * Source of the shapes: FAA Aeronautical Chart Users' Guide, "Radio aids to navigation": VOR a hexagon with a dot, VOR-DME that
 * hexagon in a square, VORTAC the hexagon with three filled sides, TACAN the same outline left open, DME a square. Charts print
 * no sign for a test signal (VOT); ours is a ring with a T, so that nobody takes it for a place to fly to.
 */

import type { VNode } from "preact";
import type { StationKind } from "../../radio/index.ts";
import { fromPoint, type PaperPoint, pathThrough } from "../plain/paper.ts";
import { px } from "../plain/px.ts";
import type { Theme } from "../theme.ts";

/** From the middle to a corner of the hexagon, at type scale 1. */
export const SYMBOL_RADIUS_PX = 9;

const MIDDLE: PaperPoint = { x: 0, y: 0 };
/** Corners of a hexagon that stands on a flat side. */
const CORNER_ANGLES_DEG = [30, 90, 150, 210, 270, 330];
/** Middles of the three sides that carry a VORTAC's lobes: upper right, bottom, upper left. */
const LOBE_ANGLES_DEG = [60, 180, 300];
const LOBE_DEPTH = 0.55;

const hexagon = (radiusPx: number): PaperPoint[] =>
  CORNER_ANGLES_DEG.map((cornerDeg) => fromPoint(MIDDLE, cornerDeg, radiusPx));

/** The lobe on one side: the side itself, moved outward. */
function lobe(sideDeg: number, radiusPx: number): PaperPoint[] {
  const right = fromPoint(MIDDLE, sideDeg + 30, radiusPx);
  const left = fromPoint(MIDDLE, sideDeg - 30, radiusPx);
  const depthPx = radiusPx * LOBE_DEPTH;
  return [left, fromPoint(left, sideDeg, depthPx), fromPoint(right, sideDeg, depthPx), right];
}

function square(halfPx: number): PaperPoint[] {
  return [
    { x: -halfPx, y: -halfPx },
    { x: halfPx, y: -halfPx },
    { x: halfPx, y: halfPx },
    { x: -halfPx, y: halfPx },
  ];
}

export function StationSymbol(props: {
  readonly kind: StationKind;
  readonly at: PaperPoint;
  readonly theme: Theme;
  readonly scale: number;
  readonly strokePx: number;
}): VNode {
  const { kind, at, theme, scale, strokePx } = props;
  const radiusPx = SYMBOL_RADIUS_PX * scale;
  return (
    <g
      transform={`translate(${px(at.x)} ${px(at.y)})`}
      fill={theme.paper}
      stroke={theme.radial}
      stroke-width={px(strokePx)}
      stroke-linejoin="round"
      data-symbol={kind}
    >
      {shapes(kind, radiusPx, theme.radial)}
    </g>
  );
}

function shapes(kind: StationKind, radiusPx: number, ink: string): VNode {
  const dot = <circle r={px(radiusPx * 0.22)} fill={ink} stroke="none" />;
  switch (kind) {
    case "VOR":
      return (
        <>
          <path d={pathThrough(hexagon(radiusPx), true)} />
          {dot}
        </>
      );
    case "VOR-DME":
      return (
        <>
          <path d={pathThrough(square(radiusPx * 1.12), true)} />
          <path d={pathThrough(hexagon(radiusPx), true)} />
          {dot}
        </>
      );
    case "VORTAC":
      return (
        <>
          {LOBE_ANGLES_DEG.map((sideDeg) => (
            <path d={pathThrough(lobe(sideDeg, radiusPx), true)} fill={ink} />
          ))}
          <path d={pathThrough(hexagon(radiusPx), true)} />
          {dot}
        </>
      );
    case "TACAN":
      return (
        <>
          <path
            d={pathThrough(
              LOBE_ANGLES_DEG.flatMap((sideDeg) => lobe(sideDeg, radiusPx)),
              true,
            )}
          />
          {dot}
        </>
      );
    case "DME":
      return (
        <>
          <path d={pathThrough(square(radiusPx * 0.9), true)} />
          {dot}
        </>
      );
    case "VOT":
      return (
        <>
          <circle r={px(radiusPx)} />
          <path
            d={`M${px(-radiusPx * 0.42)} ${px(-radiusPx * 0.42)}h${px(radiusPx * 0.84)}m${px(-radiusPx * 0.42)} 0v${px(radiusPx * 0.95)}`}
            fill="none"
          />
        </>
      );
  }
}
