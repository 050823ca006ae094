/** One link of the chain: a step with its disc and thread, a receiver's name, or a strip over what is covered. */

import type { Reason } from "../../reason/index.ts";
import { BoxWash } from "../faces/lit-wash.tsx";
import { PaperStrip } from "../plain/paper-strip.tsx";
import { px } from "../plain/px.ts";
import { middleBaseline, TextLine } from "../plain/text-line.tsx";
import { CAP_HEIGHT, LINE_HEIGHT } from "../plain/text-width.ts";
import type { Theme } from "../theme.ts";
import { withheldWords } from "./chain.ts";
import { type PlacedItem, type ReasonsLayout, WORDS_LEFT_EM } from "./reasons-layout.ts";

export interface ItemProps {
  readonly placed: PlacedItem;
  readonly layout: ReasonsLayout;
  readonly theme: Theme;
  readonly lit: boolean;
}

export function Item({ placed, layout, theme, lit }: ItemProps) {
  const { item } = placed;
  switch (item.kind) {
    case "receiver":
      return (
        <TextLine
          x={placed.x}
          y={placed.y + layout.titlePx}
          sizePx={layout.titlePx}
          fill={theme.soft}
          typeface="words-bold"
        >
          {item.receiver}
        </TextLine>
      );
    case "withheld":
      return (
        <PaperStrip
          middleX={placed.x + layout.columnPx / 2}
          middleY={placed.y + placed.heightPx / 2}
          widthPx={Math.min(layout.columnPx * 0.94, layout.textPx * 18)}
          heightPx={placed.heightPx * 0.8}
          covered={withheldWords(item.extent)}
          theme={theme}
        />
      );
    case "step":
      return (
        <Step
          placed={placed}
          reason={item.reason}
          shownNumber={item.shownNumber}
          layout={layout}
          theme={theme}
          lit={lit}
        />
      );
  }
}

interface StepProps extends ItemProps {
  readonly reason: Reason;
  readonly shownNumber: number;
}

function Step({ placed, reason, shownNumber, layout, theme, lit }: StepProps) {
  const { x, y, titleLines, lines, threadDownPx, heightPx } = placed;
  const { textPx, titlePx, columnPx } = layout;
  const wordsX = x + WORDS_LEFT_EM * textPx;
  const discPx = textPx * 0.82;
  const discX = x + discPx;
  const titleBaseline = y + titlePx;
  const discY = titleBaseline - (CAP_HEIGHT * titlePx) / 2;
  const numberPx = Math.max(12, textPx * 0.88);
  const linePx = LINE_HEIGHT * textPx;
  const firstLine = titleBaseline + (titleLines.length - 1) * titlePx * LINE_HEIGHT + linePx * 1.04;
  return (
    <g data-reason={shownNumber} data-receiver={reason.receiver} data-rule={reason.rule}>
      <title>{reason.source}</title>
      {threadDownPx !== null && (
        <line
          x1={px(discX)}
          x2={px(discX)}
          y1={px(discY + discPx)}
          y2={px(discY + threadDownPx - discPx)}
          stroke={theme.soft}
          stroke-width={px(Math.max(1, textPx / 14))}
        />
      )}
      {lit && (
        <BoxWash
          x={wordsX - textPx * 0.6}
          y={y - textPx * 0.28}
          widthPx={columnPx - WORDS_LEFT_EM * textPx + textPx * 0.9}
          heightPx={heightPx + textPx * 0.5}
          theme={theme}
        />
      )}
      <circle
        cx={px(discX)}
        cy={px(discY)}
        r={px(discPx)}
        fill={lit ? theme.ink : theme.paper}
        stroke={theme.ink}
        stroke-width={px(Math.max(1, textPx / 13))}
      />
      <TextLine
        x={discX}
        y={middleBaseline(discY, numberPx)}
        sizePx={numberPx}
        fill={lit ? theme.paper : theme.ink}
        typeface="words-bold"
        anchor="middle"
      >
        {String(shownNumber)}
      </TextLine>
      {titleLines.map((line, index) => (
        <TextLine
          key={line}
          x={wordsX}
          y={titleBaseline + index * titlePx * LINE_HEIGHT}
          sizePx={titlePx}
          fill={theme.ink}
          typeface="words-bold"
        >
          {line}
        </TextLine>
      ))}
      {lines.map((line, index) => (
        <TextLine
          key={line}
          x={wordsX}
          y={firstLine + index * linePx}
          sizePx={textPx}
          fill={lit ? theme.ink : theme.soft}
          typeface="words"
        >
          {line}
        </TextLine>
      ))}
    </g>
  );
}
