/**
 * The compass rose round a station, aligned to the station's own north: the north its radials are counted from. Numbered in tens
 * of degrees every thirty, ticks every five and ten. The figures stand upright, whichever way the rose is turned.
 */

import type { VNode } from "preact";
import { fromPoint, type PaperPoint, pathThrough } from "../plain/paper.ts";
import { angle, px } from "../plain/px.ts";
import type { Theme } from "../theme.ts";
import { Words } from "./words.tsx";

const MIDDLE: PaperPoint = { x: 0, y: 0 };
const TICKS_EVERY_DEG = 5;
/** Below this radius there is no room for figures every thirty degrees; the four quarters stay. */
const ROOM_FOR_TWELVE_FIGURES = 4.9;

/** How far the north arrow stands out of the ring, as a part of the type size. */
export const ROSE_ARROW_PART = 1;

export function Rose(props: {
  readonly at: PaperPoint;
  readonly radiusPx: number;
  /** Where the station's north points on the paper, degrees clockwise from straight up. */
  readonly northDeg: number;
  readonly theme: Theme;
  readonly figuresPx: number;
  readonly strokePx: number;
  /** A rose of a station that nobody has tuned stands back. */
  readonly quiet: boolean;
}): VNode {
  const { at, radiusPx, northDeg, theme, figuresPx, strokePx, quiet } = props;
  const figuresAtPx = radiusPx - longestTickPx(radiusPx) - 3 - figuresPx * 0.72;
  const everyDeg = radiusPx / figuresPx >= ROOM_FOR_TWELVE_FIGURES ? 30 : 90;
  return (
    <g transform={`translate(${px(at.x)} ${px(at.y)})`} opacity={quiet ? 0.62 : undefined}>
      <g
        transform={`rotate(${angle(northDeg)})`}
        fill="none"
        stroke={theme.radial}
        stroke-width={px(strokePx)}
      >
        <circle r={px(radiusPx)} />
        <path d={ticks(radiusPx, 30)} stroke-width={px(strokePx * 1.3)} />
        <path d={ticks(radiusPx, 10)} />
        <path d={ticks(radiusPx, TICKS_EVERY_DEG)} stroke-width={px(strokePx * 0.8)} />
        <path
          d={pathThrough(
            [
              { x: 0, y: -radiusPx - figuresPx * ROSE_ARROW_PART },
              { x: figuresPx * 0.42, y: -radiusPx - 0.5 },
              { x: -figuresPx * 0.42, y: -radiusPx - 0.5 },
            ],
            true,
          )}
          fill={theme.radial}
          stroke="none"
        />
      </g>
      {multiplesOf(everyDeg).map((figureDeg) => {
        const place = fromPoint(MIDDLE, northDeg + figureDeg, figuresAtPx);
        const style = { sizePx: figuresPx, fill: theme.radial, halo: theme.sea, haloPx: quiet ? 2.5 : 4 };
        return <Words text={figure(figureDeg)} x={place.x} y={place.y} style={style} />;
      })}
    </g>
  );
}

/** Tens of degrees in two digits, north as 36: the first two of the three a pilot says. */
const figure = (figureDeg: number): string => String(figureDeg === 0 ? 36 : figureDeg / 10).padStart(2, "0");

const multiplesOf = (stepDeg: number): number[] =>
  Array.from({ length: 360 / stepDeg }, (_, index) => index * stepDeg);

const longestTickPx = (radiusPx: number): number => Math.min(11, radiusPx * 0.13);

/** The ticks that belong to this step and to no coarser one, inside the ring. */
function ticks(radiusPx: number, stepDeg: 30 | 10 | 5): string {
  const part = stepDeg === 30 ? 1 : stepDeg === 10 ? 0.72 : 0.42;
  const lengthPx = longestTickPx(radiusPx) * part;
  return multiplesOf(stepDeg)
    .filter((tickDeg) => stepDeg === 30 || tickDeg % (stepDeg === 10 ? 30 : 10) !== 0)
    .map((tickDeg) =>
      pathThrough([fromPoint(MIDDLE, tickDeg, radiusPx), fromPoint(MIDDLE, tickDeg, radiusPx - lengthPx)]),
    )
    .join("");
}
