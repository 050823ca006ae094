/** The argument as a numbered chain on a thread: what is so, and why, one step at a time. */

import type { Reason } from "../../reason/index.ts";
import { px } from "../plain/px.ts";
import { TextLine } from "../plain/text-line.tsx";
import { textWidthPx } from "../plain/text-width.ts";
import { TitledPicture } from "../plain/titled-picture.tsx";
import type { Theme } from "../theme.ts";
import { type ChainItem, chainOf, chainText, spokenSteps } from "./chain.ts";
import { Item } from "./chain-item.tsx";
import { layoutReasons, type ReasonsLayout, SMALLEST_PX } from "./reasons-layout.ts";

export interface ReasonsProps {
  readonly reasons: readonly Reason[];
  readonly widthPx: number;
  /** As high as it takes when not given. */
  readonly heightPx?: number | undefined;
  readonly theme: Theme;
  /** Begins every id in the picture. */
  readonly idPrefix: string;
  /** Whose argument is drawn; everyone's when not given. The steps of the others are counted as left out. */
  readonly receivers?: readonly string[] | undefined;
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
  const drawn = reasons.filter((reason) => props.receivers?.includes(reason.receiver) ?? true);
  const named = new Set(reasons.map((reason) => reason.receiver)).size > 1;
  const chain = chainOf(drawn, covers, named);
  const elsewhere = spokenSteps(reasons, covers).length - spokenSteps(drawn, covers).length;
  const layout = layoutReasons(chain, {
    widthPx,
    heightPx: props.heightPx,
    typeScale,
    noteBelow: elsewhere > 0,
  });
  const litReceiver = props.litReceiver ?? drawn[0]?.receiver;
  const leftOut = layout.leftOut + elsewhere;
  const heightPx = props.heightPx ?? layout.heightPx;
  return (
    <TitledPicture
      widthPx={widthPx}
      heightPx={heightPx}
      idPrefix={idPrefix}
      title="Reasons"
      words={chainText(chain)}
    >
      {layout.items.map((placed, index) => (
        <Item
          key={itemKey(placed.item, index)}
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
      {leftOut > 0 && (
        <LeftOutNote count={leftOut} layout={layout} right={widthPx} bottom={px(heightPx)} theme={theme} />
      )}
    </TitledPicture>
  );
}

function itemKey(item: ChainItem, index: number): string {
  if (item.kind === "step") return `${item.reason.receiver}-${item.reason.number}`;
  return item.kind === "withheld" ? `${item.receiver}-withheld-${index}` : item.receiver;
}

interface LeftOutNoteProps {
  readonly count: number;
  readonly layout: ReasonsLayout;
  readonly right: number;
  readonly bottom: number;
  readonly theme: Theme;
}

function LeftOutNote({ count, layout, right, bottom, theme }: LeftOutNoteProps) {
  const sizePx = Math.max(SMALLEST_PX, layout.textPx * 0.86);
  const steps = count === 1 ? "1 more step" : `${count} more steps`;
  const wordings = [`${steps} ${count === 1 ? "is" : "are"} left out`, steps, `+${count}`];
  const roomPx = right - 2 * layout.marginPx;
  const words = wordings.find((each) => textWidthPx(each, sizePx, "words") <= roomPx) ?? "";
  return (
    <TextLine
      x={right - layout.marginPx}
      y={bottom - layout.marginPx * 0.7}
      sizePx={sizePx}
      fill={theme.soft}
      typeface="words"
      anchor="end"
    >
      {words}
    </TextLine>
  );
}
