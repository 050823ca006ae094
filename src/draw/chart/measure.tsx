/**
 * A measured line: a ruler laid on the chart, ticked in nautical miles, with what it reads on a slip beside it. Inked, for it is yours:
 * neither what a station sends nor what a receiver is set to.
 */

import type { VNode } from "preact";
import { direct, inverse, type LatLon, type TrueDeg } from "../../earth/index.ts";
import {
  distancePx,
  fromPoint,
  type PaperPoint,
  paperAngleDeg,
  paperVector,
  pathThrough,
} from "../plain/paper.ts";
import { px } from "../plain/px.ts";
import { type ChartFrame, drawable, inset, NOTE_PX, TEXT_PX } from "./frame.ts";
import { Words, wordsWidthPx } from "./words.tsx";

export interface MeasureLineProps {
  readonly frame: ChartFrame;
  readonly from: LatLon;
  readonly to: LatLon;
  /** What it reads: the first line is set larger. Empty: no slip. */
  readonly lines: readonly string[];
}

/** Null where an end lies too far away to be drawn. */
export function MeasureLine({ frame, from, to, lines }: MeasureLineProps): VNode | null {
  if (!drawable(frame, from) || !drawable(frame, to)) return null;
  const { theme, typeScale } = frame;
  const ends = { from: frame.projection.toPaper(from), to: frame.projection.toPaper(to) };
  const line = inverse(from, to);
  const path = line.kind === "line" ? pathThrough(alongLine(frame, from, to, line)) : "";
  const widthPx = 1.6 * Math.sqrt(typeScale);
  return (
    <g data-measure="" stroke-linecap="round" fill="none">
      <path d={path} stroke={theme.paper} stroke-opacity={0.8} stroke-width={px(widthPx * 3)} />
      <path d={path} stroke={theme.ink} stroke-width={px(widthPx)} />
      {line.kind === "line" && (
        <path
          d={ticks(frame, from, line)}
          stroke={theme.ink}
          stroke-width={px(widthPx * 0.7)}
          data-ticks-nm={tickStepNm(frame)}
        />
      )}
      <circle
        cx={px(ends.from.x)}
        cy={px(ends.from.y)}
        r={px(4.5 * typeScale)}
        fill={theme.paper}
        stroke={theme.ink}
        stroke-width={px(widthPx)}
        data-end="from"
      />
      <circle cx={px(ends.to.x)} cy={px(ends.to.y)} r={px(3.5 * typeScale)} fill={theme.ink} data-end="to" />
      {lines.length > 0 && <Slip frame={frame} ends={ends} lines={lines} />}
    </g>
  );
}

interface Line {
  readonly azimuth: TrueDeg;
  readonly distanceNm: number;
}

/** Pieces that the shortest way is drawn in: over 600 NM it bends away from its chord by less than a pixel between two. */
const PIECES = 16;

function alongLine(frame: ChartFrame, from: LatLon, to: LatLon, { azimuth, distanceNm }: Line): PaperPoint[] {
  const between = Array.from({ length: PIECES - 1 }, (_, index) =>
    direct(from, azimuth, (distanceNm * (index + 1)) / PIECES),
  );
  return [from, ...between, to].map(frame.projection.toPaper);
}

const TICK_STEPS_NM = [0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100];
const TICKS_APART_PX = 9;
const LONG_EVERY = 5;
const MOST_TICKS = 400;

/** The finest step whose ticks stand apart. */
const tickStepNm = ({ projection }: ChartFrame): number =>
  TICK_STEPS_NM.find((stepNm) => stepNm * projection.pxPerNm >= TICKS_APART_PX) ?? 100;

function ticks(frame: ChartFrame, from: LatLon, { azimuth, distanceNm }: Line): string {
  const stepNm = tickStepNm(frame);
  const { toPaper } = frame.projection;
  const count = Math.min(MOST_TICKS, Math.floor(distanceNm / stepNm + 1e-9));
  let before = toPaper(from);
  const marks: string[] = [];
  for (let tick = 1; tick <= count; tick++) {
    const at = toPaper(direct(from, azimuth, tick * stepNm));
    const reachPx = (tick % LONG_EVERY === 0 ? 5 : 3) * frame.typeScale;
    const across = paperAngleDeg(before, at) + 90;
    marks.push(pathThrough([fromPoint(at, across, -reachPx), fromPoint(at, across, reachPx)]));
    before = at;
  }
  return marks.join("");
}

/** Between the line and its slip, px. */
const CLEAR_PX = 12;
const PAD_PX = 7;

/** Beside the line's middle, above it where there is room; kept on the sheet. */
function Slip(props: {
  readonly frame: ChartFrame;
  readonly ends: { readonly from: PaperPoint; readonly to: PaperPoint };
  readonly lines: readonly string[];
}): VNode {
  const { frame, ends, lines } = props;
  const { theme, typeScale } = frame;
  const styles = lines.map((_, index) => ({
    sizePx: (index === 0 ? TEXT_PX : NOTE_PX) * typeScale,
    bold: index === 0,
    fill: index === 0 ? theme.ink : theme.soft,
  }));
  const widths = lines.map((text, index) => wordsWidthPx(text, styles[index] ?? { sizePx: TEXT_PX }));
  const rowPx = 18 * typeScale;
  const box = {
    widthPx: Math.max(...widths) + 2 * PAD_PX,
    heightPx: lines.length * rowPx + PAD_PX,
  };
  const at = slipPlace(frame, ends, box);
  return (
    <g transform={`translate(${px(at.x)} ${px(at.y)})`}>
      <rect
        x={px(-box.widthPx / 2)}
        y={px(-box.heightPx / 2)}
        width={px(box.widthPx)}
        height={px(box.heightPx)}
        rx={2}
        fill={theme.paper}
        stroke={theme.ink}
        stroke-width={1}
      />
      {lines.map((text, index) => (
        <Words
          text={text}
          x={0}
          y={(index - (lines.length - 1) / 2) * rowPx}
          style={styles[index] ?? { sizePx: TEXT_PX, fill: theme.ink }}
        />
      ))}
    </g>
  );
}

function slipPlace(
  frame: ChartFrame,
  { from, to }: { readonly from: PaperPoint; readonly to: PaperPoint },
  { widthPx, heightPx }: { readonly widthPx: number; readonly heightPx: number },
): PaperPoint {
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  const across = (paperAngleDeg(from, to) + 90) % 180;
  // Across the line to its upper side, to the right of one that stands.
  const side = paperVector(across > 90 ? across + 180 : across);
  const reachPx = CLEAR_PX + (Math.abs(side.x) * widthPx + Math.abs(side.y) * heightPx) / 2;
  const room = inset(frame.window, 6);
  const within = (value: number, least: number, most: number) => Math.max(least, Math.min(most, value));
  const places = [reachPx, -reachPx].map((byPx) => {
    const free = { x: middle.x + side.x * byPx, y: middle.y + side.y * byPx };
    const kept = {
      x: within(free.x, room.left + widthPx / 2, room.right - widthPx / 2),
      y: within(free.y, room.top + heightPx / 2, room.bottom - heightPx / 2),
    };
    return { kept, pushedPx: distancePx(free, kept) };
  });
  const [upper, lower] = places;
  return (upper && lower && lower.pushedPx < upper.pushedPx ? lower.kept : upper?.kept) ?? middle;
}
