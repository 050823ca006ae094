/** What the argument speaks of at the moment lies on a wash of ink, in every view alike. */

import type { Part } from "../../reason/index.ts";
import type { Lit } from "../lit.ts";
import { px } from "../plain/px.ts";
import type { Theme } from "../theme.ts";

/** Strength of the wash; the same in the reasons' row. */
export const WASH_OPACITY = 0.11;

export const isLit = (lit: Lit | undefined, receiver: string, part: Part): boolean =>
  lit !== undefined && lit.receiver === receiver && lit.parts.includes(part);

/** A wash over the ring between two radii, around (0, 0). */
export function RingWash(props: {
  readonly outerPx: number;
  readonly innerPx: number;
  readonly theme: Theme;
}) {
  const middlePx = (props.outerPx + props.innerPx) / 2;
  return (
    <circle
      data-lit="yes"
      r={px(middlePx)}
      fill="none"
      stroke={props.theme.ink}
      stroke-opacity={WASH_OPACITY}
      stroke-width={px(props.outerPx - props.innerPx)}
    />
  );
}

/** A wash over a rectangle. */
export function BoxWash(props: {
  readonly x: number;
  readonly y: number;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly theme: Theme;
}) {
  return (
    <rect
      data-lit="yes"
      x={px(props.x)}
      y={px(props.y)}
      width={px(props.widthPx)}
      height={px(props.heightPx)}
      rx="3"
      fill={props.theme.ink}
      fill-opacity={WASH_OPACITY}
    />
  );
}
