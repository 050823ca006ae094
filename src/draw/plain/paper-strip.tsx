/** A paper strip laid slightly askew over what is covered, saying what that is. What lies under it is not drawn at all. */

import type { Theme } from "../theme.ts";
import { px } from "./px.ts";
import { middleBaseline, TextLine } from "./text-line.tsx";
import { sizeThatFitsPx } from "./text-width.ts";

/** How far askew, degrees. */
const ASKEW_DEG = -2.5;

export interface PaperStripProps {
  readonly middleX: number;
  readonly middleY: number;
  readonly widthPx: number;
  readonly heightPx: number;
  /** What it covers, as the scene's author wrote it: "needle". */
  readonly covered: string;
  readonly theme: Theme;
}

export function PaperStrip({ middleX, middleY, widthPx, heightPx, covered, theme }: PaperStripProps) {
  const label = `covered: ${covered}`;
  const roomPx = widthPx * 0.9;
  const sizes = { largestPx: Math.max(12, Math.min(40, heightPx * 0.5)), smallestPx: 8 };
  const sizePx = sizeThatFitsPx(label, roomPx, "words", sizes);
  return (
    <g data-cover={covered} transform={`translate(${px(middleX)} ${px(middleY)}) rotate(${ASKEW_DEG})`}>
      <rect
        x={px(-widthPx / 2)}
        y={px(-heightPx / 2)}
        width={px(widthPx)}
        height={px(heightPx)}
        rx="2"
        fill={theme.cover}
        stroke={theme.coverInk}
        stroke-width="1"
      />
      <TextLine
        x={0}
        y={middleBaseline(0, sizePx)}
        sizePx={sizePx}
        fill={theme.ink}
        typeface="words"
        anchor="middle"
      >
        {label}
      </TextLine>
    </g>
  );
}
