/** The argument as a numbered chain on a thread: what is so, and why, one step at a time. */

import type { Reason } from "../../reason/index.ts";
import { BoxWash } from "../faces/lit-wash.tsx";
import { PaperStrip } from "../plain/paper-strip.tsx";
import { px } from "../plain/px.ts";
import { middleBaseline, TextLine } from "../plain/text-line.tsx";
import { CAP_HEIGHT, LINE_HEIGHT } from "../plain/text-width.ts";
import type { Theme } from "../theme.ts";
import { type OpenSteps, openSteps } from "./open-steps.ts";
import {
  type ChainItem,
  layoutReasons,
  type PlacedItem,
  type ReasonsLayout,
  WORDS_LEFT_EM,
} from "./reasons-layout.ts";

export interface ReasonsProps {
  readonly reasons: readonly Reason[];
  readonly widthPx: number;
  /** As high as it takes when not given. */
  readonly heightPx?: number | undefined;
  readonly theme: Theme;
  /** Begins every id in the picture. */
  readonly idPrefix: string;
  /** The step that is lit. */
  readonly litNumber?: number | undefined;
  /** Whose step is lit; the first receiver's when not given. */
  readonly litReceiver?: string | undefined;
  /** 1 for 14 px text, 2 for a projector. */
  readonly typeScale?: number | undefined;
  /** The scene's covers; none when not given. */
  readonly covers?: readonly string[] | undefined;
}

export function Reasons(props: ReasonsProps) {
  const { reasons, widthPx, theme, idPrefix, typeScale = 1, covers = [] } = props;
  const steps = openSteps(reasons, covers);
  const layout = layoutReasons(chain(reasons, steps), { widthPx, heightPx: props.heightPx, typeScale });
  const litReceiver = props.litReceiver ?? reasons[0]?.receiver;
  const [width, height] = [px(widthPx), px(props.heightPx ?? layout.heightPx)];
  return (
    <svg
      xmlns="http://www.w3.org/2000/svg"
      width={width}
      height={height}
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-labelledby={`${idPrefix}-title ${idPrefix}-desc`}
    >
      <title id={`${idPrefix}-title`}>Reasons</title>
      <desc id={`${idPrefix}-desc`}>{reasonsText(steps)}</desc>
      {layout.items.map((placed) => (
        <Item
          key={itemKey(placed.item)}
          placed={placed}
          layout={layout}
          theme={theme}
          lit={
            placed.item.kind === "step" &&
            placed.item.reason.receiver === litReceiver &&
            placed.item.reason.number === props.litNumber
          }
        />
      ))}
      {layout.leftOut > 0 && (
        <TextLine
          x={widthPx - layout.marginPx}
          y={height - layout.marginPx * 0.7}
          sizePx={layout.textPx}
          fill={theme.soft}
          typeface="words"
          anchor="end"
        >
          {layout.leftOut === 1
            ? "1 more step has no room here"
            : `${layout.leftOut} more steps have no room here`}
        </TextLine>
      )}
    </svg>
  );
}

/** The steps in words, as the picture's description. */
export function reasonsText({ open, coveredByReceiver }: OpenSteps): string {
  const receivers = [...new Set([...open.map((reason) => reason.receiver), ...coveredByReceiver.keys()])];
  return receivers
    .map((receiver) => {
      const said = open
        .filter((reason) => reason.receiver === receiver)
        .map((reason) => `${reason.number}. ${reason.title}: ${reason.sentence}`);
      const rest = coveredByReceiver.has(receiver) ? ["The rest is covered."] : [];
      return [`${receiver}.`, ...said, ...rest].join(" ");
    })
    .join(" ");
}

/** The chain's items in order; receivers are named when there is more than one. */
function chain(reasons: readonly Reason[], steps: OpenSteps): ChainItem[] {
  const receivers = [...new Set(reasons.map((reason) => reason.receiver))];
  return receivers.flatMap((receiver) => {
    const named: ChainItem[] = receivers.length > 1 ? [{ kind: "receiver", receiver }] : [];
    const open = steps.open.filter((reason) => reason.receiver === receiver);
    const covered: ChainItem[] = steps.coveredByReceiver.has(receiver) ? [{ kind: "covered", receiver }] : [];
    return [...named, ...open.map((reason): ChainItem => ({ kind: "step", reason })), ...covered];
  });
}

const itemKey = (item: ChainItem): string =>
  item.kind === "step" ? `${item.reason.receiver}-${item.reason.number}` : `${item.kind}-${item.receiver}`;

interface ItemProps {
  readonly placed: PlacedItem;
  readonly layout: ReasonsLayout;
  readonly theme: Theme;
  readonly lit: boolean;
}

function Item({ placed, layout, theme, lit }: ItemProps) {
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
    case "covered":
      return (
        <PaperStrip
          middleX={placed.x + layout.columnPx / 2}
          middleY={placed.y + placed.heightPx / 2}
          widthPx={Math.min(layout.columnPx * 0.94, layout.textPx * 22)}
          heightPx={placed.heightPx * 0.8}
          covered="the rest of the argument"
          theme={theme}
        />
      );
    case "step":
      return <Step placed={placed} reason={item.reason} layout={layout} theme={theme} lit={lit} />;
  }
}

function Step({ placed, reason, layout, theme, lit }: ItemProps & { readonly reason: Reason }) {
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
    <g data-reason={reason.number} data-receiver={reason.receiver} data-rule={reason.rule}>
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
        {String(reason.number)}
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
