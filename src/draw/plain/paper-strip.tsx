/** A paper strip laid slightly askew over what is covered, saying what that is. What lies under it is not drawn at all. */

import type { Theme } from "../theme.ts";
import { px } from "./px.ts";
import { middleBaseline, TextLine } from "./text-line.tsx";
import { sizeThatFitsPx, textWidthPx } from "./text-width.ts";

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

/** Smaller words are not read. */
const SMALLEST_PX = 12;

export function PaperStrip({ middleX, middleY, covered, theme, ...asked }: PaperStripProps) {
  if (theme.blanks === true)
    return (
      <rect
        data-blank={covered}
        x={px(middleX - asked.widthPx / 2)}
        y={px(middleY - asked.heightPx / 2)}
        width={px(asked.widthPx)}
        height={px(asked.heightPx)}
        rx="2"
        fill={theme.cover}
        stroke={theme.coverInk}
        stroke-width="1"
        stroke-dasharray="3 2"
      />
    );
  const label = `covered: ${covered}`;
  // A strip too short for its words is made longer, never its words smaller than can be read.
  const widthPx = Math.max(asked.widthPx, textWidthPx(label, SMALLEST_PX, "words") * 1.12);
  const heightPx = Math.max(asked.heightPx, SMALLEST_PX * 1.4);
  const largestPx = Math.max(SMALLEST_PX, Math.min(40, heightPx * 0.5));
  const sizePx = sizeThatFitsPx(label, widthPx * 0.9, "words", { largestPx, smallestPx: SMALLEST_PX });
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
