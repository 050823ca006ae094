/**
 * Five dots a side, two degrees each, and the bar that moves across them. The bar is where the line is: a bar to the right says
 * that the selected course lies to the right of the aircraft, for a pilot who faces along it (Instrument Flying Handbook ch. 9).
 */

import { DEGREES_PER_DOT, DOTS_EACH_SIDE, type ReceiverReading } from "../../panel/index.ts";
import { px } from "../plain/px.ts";
import { still } from "../still.ts";
import type { Theme } from "../theme.ts";
import type { DialGeometry } from "./dial-geometry.ts";

/**
 * Where the bar stands, dots, right positive, in [-5, 5]; 0 when it is parked for want of a signal.
 * @param shownDots where a damped needle has got to, in place of the reading's own
 */
export function barDots(reading: ReceiverReading, shownDots?: number): number {
  const dots = shownDots ?? (reading.deviationDeg ?? 0) / DEGREES_PER_DOT;
  return Math.max(-DOTS_EACH_SIDE, Math.min(DOTS_EACH_SIDE, dots)) + 0;
}

export interface DeviationScaleProps {
  readonly geometry: DialGeometry;
  readonly theme: Theme;
}

/** The dots, and a ring in the middle. */
export const DeviationDots = still(function DeviationDots({ geometry, theme }: DeviationScaleProps) {
  const { dotRadiusPx, dotSpacingPx } = geometry;
  const sides = [-5, -4, -3, -2, -1, 1, 2, 3, 4, 5];
  return (
    <g data-part="dots" fill={theme.ink}>
      {sides.map((dot) => (
        <circle key={dot} cx={px(dot * dotSpacingPx)} cy="0" r={px(dotRadiusPx)} />
      ))}
      <circle
        r={px(dotRadiusPx * 2)}
        fill={theme.paper}
        stroke={theme.ink}
        stroke-width={px(Math.max(1, dotRadiusPx * 0.6))}
      />
    </g>
  );
});

export interface DeviationBarProps extends DeviationScaleProps {
  readonly dots: number;
  /** False: no signal, the bar is parked, thin and broken. */
  readonly live: boolean;
  readonly halfLengthPx: number;
}

export function DeviationBar({ geometry, theme, dots, live, halfLengthPx }: DeviationBarProps) {
  const strokePx = live ? geometry.needleStrokePx : geometry.needleStrokePx * 0.6;
  return (
    <g
      data-part="needle"
      data-live={live ? "yes" : "no"}
      transform={`translate(${px(dots * geometry.dotSpacingPx)} 0)`}
    >
      <line
        y1={px(-halfLengthPx)}
        y2={px(halfLengthPx)}
        stroke={live ? theme.course : theme.soft}
        stroke-width={px(strokePx)}
        stroke-linecap={live ? "round" : "butt"}
        {...(live ? {} : { "stroke-dasharray": `${px(strokePx * 2)} ${px(strokePx * 1.5)}` })}
      />
    </g>
  );
}
