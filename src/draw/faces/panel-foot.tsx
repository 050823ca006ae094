/** The row at the foot of a panel: heading and altitude in figures. */

import { threeDigits } from "../../earth/index.ts";
import { feet } from "../../reason/index.ts";
import type { Situation } from "../../scene/index.ts";
import type { Lit } from "../lit.ts";
import { px } from "../plain/px.ts";
import { lineWidthPx, TextLine } from "../plain/text-line.tsx";
import { textWidthPx } from "../plain/text-width.ts";
import type { Theme } from "../theme.ts";
import { CoveredLine } from "./covered-line.tsx";
import { headingCovered } from "./covers.ts";
import { BoxWash } from "./lit-wash.tsx";
import type { PanelLayout } from "./panel-layout.ts";

export interface PanelFootProps {
  readonly situation: Situation;
  readonly layout: PanelLayout;
  readonly widthPx: number;
  readonly theme: Theme;
  readonly covers: readonly string[];
  readonly lit: Lit | undefined;
}

export function PanelFoot({ situation, layout, widthPx, theme, covers, lit }: PanelFootProps) {
  const { scale, footY, marginPx } = layout;
  const { heading, altitudeFt } = situation.scene.aircraft;
  const [numberPx, wordPx] = [16 * scale, 12 * scale];
  const baseline = footY + 22 * scale;
  const altitude = feet(altitudeFt).replace(/ ft$/, "");
  const feetPx = textWidthPx("ft", wordPx, "words") + 4 * scale;
  const altitudePx = lineWidthPx(altitude, numberPx, "numbers") + feetPx;
  const narrow = widthPx < 300 * scale;
  const headingLabel = narrow ? "hdg" : "heading";
  const headingLabelPx = textWidthPx(headingLabel, wordPx, "words") + 6 * scale;
  const headingX = marginPx + headingLabelPx;
  return (
    <>
      <line
        x1={px(marginPx)}
        x2={px(widthPx - marginPx)}
        y1={px(footY)}
        y2={px(footY)}
        stroke={theme.line}
        stroke-width="1"
      />
      <TextLine x={marginPx} y={baseline} sizePx={wordPx} fill={theme.soft} typeface="words">
        {headingLabel}
      </TextLine>
      {headingCovered(covers) ? (
        <CoveredLine
          part="heading"
          x={headingX}
          middleY={footY + 17 * scale}
          heightPx={20 * scale}
          roomPx={Math.max(60 * scale, widthPx - headingX - altitudePx - 80 * scale)}
          theme={theme}
        />
      ) : (
        <g data-part="heading">
          {lit?.parts.includes("heading") && (
            <BoxWash
              x={headingX - 4 * scale}
              y={footY + 6 * scale}
              widthPx={lineWidthPx("000", numberPx, "numbers") + 8 * scale}
              heightPx={22 * scale}
              theme={theme}
            />
          )}
          <TextLine x={headingX} y={baseline} sizePx={numberPx} fill={theme.ink} typeface="numbers">
            {threeDigits(heading)}
          </TextLine>
        </g>
      )}
      <TextLine
        x={widthPx - marginPx}
        y={baseline}
        sizePx={wordPx}
        fill={theme.soft}
        typeface="words"
        anchor="end"
      >
        ft
      </TextLine>
      <TextLine
        x={widthPx - marginPx - feetPx}
        y={baseline}
        sizePx={numberPx}
        fill={theme.ink}
        typeface="numbers"
        anchor="end"
      >
        {altitude}
      </TextLine>
      <TextLine
        x={widthPx - marginPx - altitudePx - 6 * scale}
        y={baseline}
        sizePx={wordPx}
        fill={theme.soft}
        typeface="words"
        anchor="end"
      >
        {narrow ? "alt" : "altitude"}
      </TextLine>
    </>
  );
}
