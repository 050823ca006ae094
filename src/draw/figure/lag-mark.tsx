/** From a peak of the reference to the next one of the variable, with the angle and the time. */

import { threeDigits } from "../../earth/index.ts";
import { px } from "../plain/px.ts";
import { TextLine } from "../plain/text-line.tsx";
import { textWidthPx } from "../plain/text-width.ts";
import type { Theme } from "../theme.ts";
import { lagMs } from "./wave-reading.ts";

/** Peaks closer than this are one to the eye, degrees. */
const IN_STEP_DEG = 0.5;

export interface LagMarkProps {
  readonly fromX: number;
  readonly toX: number;
  readonly y: number;
  /** The label ends before this. */
  readonly rightX: number;
  readonly radialDeg: number;
  readonly scale: number;
  readonly theme: Theme;
}

export function LagMark({ fromX, toX, y, rightX, radialDeg, scale, theme }: LagMarkProps) {
  const sizePx = 14 * scale;
  const inStep = radialDeg < IN_STEP_DEG || radialDeg > 360 - IN_STEP_DEG;
  const label = inStep
    ? "in step: radial 360"
    : `${threeDigits(radialDeg)}° = ${lagMs(radialDeg).toFixed(1)} ms`;
  const labelPx = textWidthPx(label, sizePx, "words-bold");
  const headPx = 5 * scale;
  const startX = Math.min(Math.max(fromX, (fromX + toX - labelPx) / 2), rightX - labelPx);
  return (
    <g data-part="radial">
      {!inStep && (
        <line
          x1={px(fromX)}
          x2={px(toX)}
          y1={px(y)}
          y2={px(y)}
          stroke={theme.radial}
          stroke-width={px(1.8 * scale)}
        />
      )}
      {!inStep && toX - fromX > headPx * 2.5 && (
        <path
          d={`M${px(toX)} ${px(y)}l${px(-headPx * 1.5)} ${px(-headPx * 0.75)}v${px(headPx * 1.5)}Z`}
          fill={theme.radial}
        />
      )}
      <TextLine
        x={startX}
        y={y + 5 * scale + sizePx}
        sizePx={sizePx}
        fill={theme.radial}
        typeface="words-bold"
      >
        {label}
      </TextLine>
    </g>
  );
}
