/** The card of every dial: a ring, ticks, and numerals that stand upright along the radius, N 3 6 E 12 15 S 21 24 W 30 33. */

import { px } from "../plain/px.ts";
import { middleBaseline, TextLine } from "../plain/text-line.tsx";
import { still } from "../still.ts";
import type { Theme } from "../theme.ts";
import type { DialGeometry } from "./dial-geometry.ts";

/** From north clockwise, one each thirty degrees: tens of degrees, with letters for the four quarters. */
export const CARD_NUMERALS = ["N", "3", "6", "E", "12", "15", "S", "21", "24", "W", "30", "33"] as const;

export interface CompassCardProps {
  readonly geometry: DialGeometry;
  /** The direction that stands under the top of the instrument, degrees. */
  readonly topDeg: number;
  readonly theme: Theme;
  /** What of the panel it is: the course card turns with the selector, the others with the heading. */
  readonly part: "course-card" | "heading";
}

export const CompassCard = still(function CompassCard(props: CompassCardProps) {
  const { geometry, topDeg, theme, part } = props;
  return (
    <g data-part={part} transform={`rotate(${px(-topDeg)})`}>
      <path d={ticksPath(geometry)} stroke={theme.ink} stroke-width={px(geometry.tickStrokePx)} />
      <path d={ticksPath(geometry, 30)} stroke={theme.ink} stroke-width={px(geometry.tickStrokePx * 1.7)} />
      {CARD_NUMERALS.map((numeral, index) =>
        geometry.tiny && index % 3 !== 0 ? null : (
          <g key={numeral} transform={`rotate(${30 * index})`}>
            <TextLine
              x={0}
              y={middleBaseline(-geometry.numeralRadiusPx, geometry.numeralSizePx)}
              sizePx={geometry.numeralSizePx}
              fill={theme.ink}
              typeface="words-bold"
              anchor="middle"
            >
              {numeral}
            </TextLine>
          </g>
        ),
      )}
    </g>
  );
});

export interface DialRingProps {
  readonly geometry: DialGeometry;
  readonly theme: Theme;
}

/** The ring and the ground of a dial; it does not turn. */
export const DialRing = still(function DialRing({ geometry, theme }: DialRingProps) {
  return (
    <>
      <circle
        r={px(geometry.ringRadiusPx)}
        fill={theme.paper}
        stroke={theme.ink}
        stroke-width={px(geometry.ringStrokePx)}
      />
      <circle r={px(geometry.innerRadiusPx)} fill="none" stroke={theme.line} stroke-width="1" />
    </>
  );
});

/** Each tick of the card; with `onlyEachDeg`, those at its multiples, else all the others than the thirties. */
function ticksPath(geometry: DialGeometry, onlyEachDeg?: number): string {
  const { ringRadiusPx, ringStrokePx, tickPx } = geometry;
  const outerPx = ringRadiusPx - ringStrokePx / 2;
  let path = "";
  for (let deg = 0; deg < 360; deg += 5) {
    const thirty = deg % 30 === 0;
    if (thirty !== (onlyEachDeg === 30)) continue;
    const lengthPx = thirty ? tickPx.thirty : deg % 10 === 0 ? tickPx.ten : tickPx.five;
    if (lengthPx === 0) continue;
    const rad = (deg * Math.PI) / 180;
    const [sin, cos] = [Math.sin(rad), -Math.cos(rad)];
    const innerPx = ringRadiusPx - lengthPx;
    path += `M${px(sin * outerPx)} ${px(cos * outerPx)}L${px(sin * innerPx)} ${px(cos * innerPx)}`;
  }
  return path;
}
