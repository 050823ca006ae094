/** The sheet's furniture: true and magnetic north with the variation, the wind, the scale. */

import type { VNode } from "preact";
import { threeDigits } from "../../earth/index.ts";
import { eastWest } from "../../reason/index.ts";
import type { Situation } from "../../scene/index.ts";
import { PaperStrip } from "../plain/paper-strip.tsx";
import { angle, px } from "../plain/px.ts";
import { type ChartFrame, NOTE_PX } from "./frame.ts";
import {
  BADGE_FIGURE_PX,
  BADGE_WORDS_PX,
  badgeScale,
  type Furniture,
  NORTHS_WIDTH_PX,
  WIND_WIDTH_PX,
} from "./furniture-layout.ts";
import type { LabelBox } from "./placement.ts";
import { Words } from "./words.tsx";

export interface FurnitureProps {
  readonly frame: ChartFrame;
  readonly situation: Situation;
  readonly furniture: Furniture;
  readonly variationDeg: number;
  readonly lit: { readonly north: boolean; readonly wind: boolean };
}

export function FurnitureParts({ frame, situation, furniture, variationDeg, lit }: FurnitureProps): VNode {
  const { badges, scale, strips, scaleNm } = furniture;
  const left = badges.x - badges.widthPx / 2;
  const s = frame.typeScale;
  return (
    <g>
      <Norths
        frame={frame}
        x={left + (NORTHS_WIDTH_PX / 2) * s}
        top={badges.y - badges.heightPx / 2}
        variationDeg={variationDeg}
        lit={lit.north}
      />
      {situation.scene.wind.speedKt > 0 && (
        <WindBadge
          frame={frame}
          situation={situation}
          x={left + (NORTHS_WIDTH_PX + WIND_WIDTH_PX / 2) * s}
          top={badges.y - badges.heightPx / 2}
          lit={lit.wind}
        />
      )}
      <ScaleBar frame={frame} box={scale} scaleNm={scaleNm} />
      {/* What a chart leaves out it would have drawn somewhere: an empty box would say nothing, and its words say what is not there. */}
      {(frame.theme.blanks === true ? [] : strips).map(({ covered, box }) => (
        <PaperStrip
          middleX={box.x}
          middleY={box.y}
          widthPx={box.widthPx}
          heightPx={box.heightPx}
          covered={covered}
          theme={frame.theme}
        />
      ))}
    </g>
  );
}

interface BadgeProps {
  readonly frame: ChartFrame;
  readonly x: number;
  readonly top: number;
  readonly lit: boolean;
}

const noteStyle = (frame: ChartFrame) => ({
  sizePx: NOTE_PX * frame.typeScale,
  fill: frame.theme.soft,
  halo: frame.theme.sea,
});

/** From the foot of both arrows to the point of the true one, at type scale 1. */
const NORTH_LENGTH_PX = 56;

/** True north with a whole arrowhead, magnetic north with half of one on the side it lies, as map margins show them. */
function Norths({ frame, x, top, variationDeg, lit }: BadgeProps & { readonly variationDeg: number }): VNode {
  const { theme, typeScale: s, view, projection } = frame;
  const trueNorthDeg = projection.trueNorthAngle(view.centre);
  const f = badgeScale(frame);
  const length = NORTH_LENGTH_PX * f;
  const side = variationDeg < 0 ? -1 : 1;
  const footY = top + (BADGE_FIGURE_PX - 4) * f;
  const label = { sizePx: NOTE_PX * s, fill: theme.ink, halo: theme.sea };
  return (
    <g data-part="north">
      <g
        transform={`translate(${px(x)} ${px(footY)})`}
        fill="none"
        stroke={theme.ink}
        stroke-width={px((lit ? 2.4 : 1.4) * Math.sqrt(s))}
      >
        <circle r={px(2 * s)} fill={theme.ink} stroke="none" />
        <g transform={`rotate(${angle(trueNorthDeg)})`} data-north="true">
          <path d={`M0 0V${px(-length + 6 * s)}`} />
          <path
            d={`M0 ${px(-length)}l${px(4 * s)} ${px(10 * s)}h${px(-8 * s)}Z`}
            fill={theme.ink}
            stroke="none"
          />
          <Words text="T" x={-side * 13 * s} y={-length + 9 * s} style={label} />
        </g>
        <g transform={`rotate(${angle(trueNorthDeg + variationDeg)})`} data-north="magnetic">
          <path d={`M0 0V${px(-length + 1 * s)}l${px(side * 4 * s)} ${px(10 * s)}`} />
          <Words text="M" x={side * 15 * s} y={-length + 9 * s} style={label} />
        </g>
      </g>
      <Words
        text={`variation ${eastWest(variationDeg)}`}
        x={x}
        y={top + BADGE_FIGURE_PX * f + (BADGE_WORDS_PX / 2 + 1) * s}
        style={noteStyle(frame)}
      />
    </g>
  );
}

/** The arrow flies with the wind; its tail, at the rim, is where the wind comes from. */
function WindBadge({ frame, situation, x, top, lit }: BadgeProps & { readonly situation: Situation }): VNode {
  const { theme, typeScale: s, view, projection } = frame;
  const { from, speedKt } = situation.scene.wind;
  const fromDeg = projection.trueNorthAngle(view.centre) + from;
  const f = badgeScale(frame);
  const radius = 27 * f;
  const tail = 20 * f;
  return (
    <g data-part="wind">
      <g transform={`translate(${px(x)} ${px(top + 39 * f)})`}>
        <circle r={px(radius)} fill={theme.paper} fill-opacity={0.9} stroke={theme.line} stroke-width={1} />
        <g
          transform={`rotate(${angle(fromDeg)})`}
          fill="none"
          stroke={theme.ink}
          stroke-width={px((lit ? 3 : 1.8) * Math.sqrt(s))}
          stroke-linecap="round"
        >
          <path
            d={`M0 ${px(-tail)}V${px(tail)}M${px(-5 * s)} ${px(tail - 8 * s)}L0 ${px(tail)}L${px(5 * s)} ${px(tail - 8 * s)}`}
          />
        </g>
      </g>
      <Words
        text={`wind ${threeDigits(from)}/${Math.round(speedKt)}`}
        x={x}
        y={top + BADGE_FIGURE_PX * f + (BADGE_WORDS_PX / 2 + 1) * s}
        style={noteStyle(frame)}
      />
    </g>
  );
}

/** Ink and paper by turns: fifths for a five, quarters otherwise; figures at nought, half (where whole) and all. */
function ScaleBar({
  frame,
  box,
  scaleNm,
}: {
  readonly frame: ChartFrame;
  readonly box: LabelBox;
  readonly scaleNm: number;
}): VNode {
  const { theme, typeScale: s } = frame;
  const length = scaleNm * frame.projection.pxPerNm;
  const left = box.x - length / 2;
  const top = box.y + box.heightPx / 2 - 11 * s;
  const height = 5 * s;
  const labelY = top - 11 * s;
  const style = { ...noteStyle(frame), fill: theme.ink };
  const pieces = /^5/.test(String(scaleNm)) ? 5 : 4;
  const roomy = length > 7 * style.sizePx;
  const half = roomy && pieces === 4 && Number.isInteger(scaleNm / 2) ? String(scaleNm / 2) : null;
  const inked = Array.from({ length: Math.ceil(pieces / 2) }, (_, index) => {
    const start = left + (length * 2 * index) / pieces;
    return `M${px(start)} ${px(top)}h${px(length / pieces)}v${px(height)}h${px(-length / pieces)}Z`;
  });
  return (
    <g data-scale-nm={scaleNm}>
      <path
        d={`M${px(left)} ${px(top)}h${px(length)}v${px(height)}h${px(-length)}Z`}
        fill={theme.paper}
        stroke={theme.sea}
        stroke-width={4}
      />
      <path
        d={`M${px(left)} ${px(top)}h${px(length)}v${px(height)}h${px(-length)}Z`}
        fill={theme.paper}
        stroke={theme.ink}
        stroke-width={1}
      />
      <path d={inked.join("")} fill={theme.ink} />
      <Words text="0" x={left} y={labelY} style={style} />
      {half && <Words text={half} x={left + length / 2} y={labelY} style={style} />}
      <Words text={`${scaleNm} NM`} x={left + length} y={labelY} style={style} />
    </g>
  );
}
