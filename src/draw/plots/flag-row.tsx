/** The flags of a flight as a row of plates: TO filled, FROM outlined, OFF hatched; each with its word or triangle where there is room. */

import type { VNode } from "preact";
import type { Flag } from "../../panel/index.ts";
import { trianglePath } from "../faces/flag-plate.tsx";
import { px } from "../plain/px.ts";
import { middleBaseline, TextLine } from "../plain/text-line.tsx";
import { textWidthPx } from "../plain/text-width.ts";
import type { Theme } from "../theme.ts";
import type { HistoryLayout } from "./history-layout.ts";
import { type FlagRun, flagRuns, type HistoryPoint } from "./history-sentence.ts";

export interface FlagRowProps {
  readonly layout: HistoryLayout;
  readonly theme: Theme;
  readonly points: readonly HistoryPoint[];
  readonly idPrefix: string;
}

export function FlagRow({ layout, theme, points, idPrefix }: FlagRowProps): VNode {
  const { left, flag, sizePx } = layout;
  const hatch = `${idPrefix}-flag-off`;
  return (
    <g data-band="flag">
      <defs>
        <pattern id={hatch} width={5} height={5} patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <rect width={5} height={5} fill={theme.paper} />
          <rect width={1.4} height={5} fill={theme.soft} />
        </pattern>
      </defs>
      <TextLine
        x={left - 12}
        y={middleBaseline((flag.top + flag.bottom) / 2, sizePx)}
        sizePx={sizePx}
        fill={theme.soft}
        typeface="words"
        anchor="end"
      >
        flag
      </TextLine>
      {flagRuns(points).map((run) => (
        <FlagPiece key={run.fromS} run={run} layout={layout} theme={theme} offFill={`url(#${hatch})`} />
      ))}
    </g>
  );
}

interface PieceProps {
  readonly run: FlagRun;
  readonly layout: HistoryLayout;
  readonly theme: Theme;
  readonly offFill: string;
}

function FlagPiece({ run, layout, theme, offFill }: PieceProps): VNode {
  const { flag, sizePx, xOf } = layout;
  const x = xOf(run.fromS);
  const widthPx = xOf(run.toS) - x;
  const middleY = (flag.top + flag.bottom) / 2;
  const ink = run.flag === "TO" ? theme.paper : theme.ink;
  const fills: Readonly<Record<Flag, string>> = { TO: theme.ink, FROM: theme.paper, OFF: offFill };
  const wordPx = textWidthPx(run.flag, sizePx, "words-bold");
  const trianglePx = run.flag === "OFF" ? 0 : sizePx * 0.95;
  const hasWord = widthPx >= wordPx + trianglePx + 6;
  const startX = x + (widthPx - (hasWord ? wordPx + trianglePx : trianglePx)) / 2;
  return (
    <g data-flag={run.flag} data-from-s={run.fromS} data-to-s={run.toS}>
      <rect
        x={px(x)}
        y={px(flag.top)}
        width={px(Math.max(1, widthPx))}
        height={px(flag.bottom - flag.top)}
        fill={fills[run.flag]}
        stroke={theme.ink}
        stroke-width={1}
      />
      {run.flag !== "OFF" && widthPx >= trianglePx + 4 && (
        <path d={trianglePath(startX + sizePx * 0.4, middleY, sizePx * 0.3, run.flag === "TO")} fill={ink} />
      )}
      {hasWord && run.flag === "OFF" && (
        <rect
          x={px(startX - 3)}
          y={px(flag.top + 1)}
          width={px(wordPx + 6)}
          height={px(flag.bottom - flag.top - 2)}
          fill={theme.paper}
        />
      )}
      {hasWord && (
        <TextLine
          x={startX + trianglePx}
          y={middleBaseline(middleY, sizePx)}
          sizePx={sizePx}
          fill={ink}
          typeface="words-bold"
        >
          {run.flag}
        </TextLine>
      )}
    </g>
  );
}
