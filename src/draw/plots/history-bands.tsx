/** The two lines of the history plot: the needle in what you set's colour, the DME in the station's. */

import type { VNode } from "preact";
import { DOTS_EACH_SIDE } from "../../panel/index.ts";
import { px } from "../plain/px.ts";
import { middleBaseline, TextLine } from "../plain/text-line.tsx";
import type { Theme } from "../theme.ts";
import { type Band, type HistoryLayout, roundTop } from "./history-layout.ts";
import type { HistoryPoint } from "./history-sentence.ts";

export interface BandProps {
  readonly layout: HistoryLayout;
  readonly theme: Theme;
  readonly points: readonly HistoryPoint[];
}

export function NeedleBand({ layout, theme, points }: BandProps): VNode {
  const { left, right, needle, sizePx } = layout;
  const middle = (needle.top + needle.bottom) / 2;
  const perDot = (needle.bottom - needle.top) / 2 / DOTS_EACH_SIDE;
  const yOf = (dots: number) => middle - dots * perDot;
  const dots = Array.from({ length: 2 * DOTS_EACH_SIDE + 1 }, (_, index) => index - DOTS_EACH_SIDE);
  return (
    <g data-band="needle">
      {[-DOTS_EACH_SIDE, 0, DOTS_EACH_SIDE].map((at) => (
        <line
          key={at}
          x1={px(left)}
          x2={px(right)}
          y1={px(yOf(at))}
          y2={px(yOf(at))}
          stroke={theme.line}
          stroke-width={1}
        />
      ))}
      {dots.map((at) => (
        <circle key={at} cx={px(left - 5)} cy={px(yOf(at))} r={at === 0 ? 2 : 1.1} fill={theme.ink} />
      ))}
      {(["right", "left"] as const).map((side) => (
        <TextLine
          key={side}
          x={left - 12}
          y={middleBaseline(yOf(side === "right" ? 4 : -4), sizePx)}
          sizePx={sizePx}
          fill={theme.soft}
          typeface="words"
          anchor="end"
        >
          {side}
        </TextLine>
      ))}
      <path
        data-line="needle"
        d={linePath(points, ({ needleDots }) => needleDots, layout.xOf, yOf)}
        fill="none"
        stroke={theme.course}
        stroke-width={2}
        stroke-linejoin="round"
      />
    </g>
  );
}

export function DmeBand({ layout, theme, points }: BandProps): VNode {
  const { left, right, dme, sizePx } = layout;
  if (points.every(({ dmeNm }) => dmeNm === null))
    return <BandNote layout={layout} theme={theme} band={dme} text="no DME" />;
  const topNm = roundTop(Math.max(0, ...points.map(({ dmeNm }) => dmeNm ?? 0)));
  const yOf = (nm: number) => dme.bottom - (nm / topNm) * (dme.bottom - dme.top);
  const label = (text: string, y: number) => (
    <TextLine
      x={left - 12}
      y={middleBaseline(y, sizePx)}
      sizePx={sizePx}
      fill={theme.soft}
      typeface="words"
      anchor="end"
    >
      {text}
    </TextLine>
  );
  return (
    <g data-band="dme" data-top-nm={topNm}>
      {[dme.top, dme.bottom].map((y) => (
        <line
          key={y}
          x1={px(left)}
          x2={px(right)}
          y1={px(y)}
          y2={px(y)}
          stroke={theme.line}
          stroke-width={1}
        />
      ))}
      {label(`${topNm} NM`, dme.top + sizePx / 2)}
      <path
        data-line="dme"
        d={linePath(points, ({ dmeNm }) => dmeNm, layout.xOf, yOf)}
        fill="none"
        stroke={theme.radial}
        stroke-width={2}
        stroke-linejoin="round"
      />
    </g>
  );
}

/** Why a band has no line. */
export const BandNote = (props: {
  readonly layout: HistoryLayout;
  readonly theme: Theme;
  readonly band: Band;
  readonly text: string;
}): VNode => (
  <TextLine
    x={(props.layout.left + props.layout.right) / 2}
    y={middleBaseline((props.band.top + props.band.bottom) / 2, props.layout.sizePx)}
    sizePx={props.layout.sizePx}
    fill={props.theme.soft}
    typeface="words"
    anchor="middle"
  >
    {props.text}
  </TextLine>
);

/** Nearer to the last point drawn than this a point adds nothing to be seen, px. */
const SEEN_FROM_PX = 0.6;

/** A line through the values, broken where there is none. */
function linePath(
  points: readonly HistoryPoint[],
  valueAt: (point: HistoryPoint) => number | null,
  xOf: (timeS: number) => number,
  yOf: (value: number) => number,
): string {
  let d = "";
  let last: { readonly x: number; readonly y: number } | null = null;
  points.forEach((point, index) => {
    const value = valueAt(point);
    if (value === null) {
      last = null;
      return;
    }
    const at = { x: xOf(point.timeS), y: yOf(value) };
    const next = points[index + 1];
    const endsHere = next === undefined || valueAt(next) === null;
    if (last !== null && !endsHere && Math.hypot(at.x - last.x, at.y - last.y) < SEEN_FROM_PX) return;
    d += `${last === null ? "M" : "L"}${px(at.x)} ${px(at.y)}`;
    last = at;
  });
  return d;
}
