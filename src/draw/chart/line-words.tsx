/** The words on the lines and at the aircraft, and the numbered disc of a receiver. */

import type { VNode } from "preact";
import type { Lit } from "../lit.ts";
import { angle, px } from "../plain/px.ts";
import type { Theme } from "../theme.ts";
import { type ChartFrame, NOTE_PX } from "./frame.ts";
import type { LinesLayout } from "./lines-layout.ts";
import {
  type AircraftBlock,
  aircraftLabelStyle,
  type LineLabel,
  lineLabelStyle,
  TAG_ROOM_PX,
} from "./moving-words.ts";
import { Words, wordsWidthPx } from "./words.tsx";

interface WordsProps {
  readonly frame: ChartFrame;
  readonly lit: Lit | null;
}

/** Drawn after the stations, so that no rose crosses them. */
export function LineWords({ frame, layout, lit }: WordsProps & { readonly layout: LinesLayout }): VNode {
  return (
    <g>
      {layout.labels.map((label) => (
        <g data-part={label.part} data-receiver={label.receiver}>
          <TaggedWords label={label} frame={frame} lit={isLit(lit, label)} />
        </g>
      ))}
    </g>
  );
}

export function AircraftWords({ frame, block, lit }: WordsProps & { readonly block: AircraftBlock }): VNode {
  const { theme, typeScale } = frame;
  const { box, rowPx, leans, headings, lines } = block;
  const top = box.y - (rowPx * (headings.length + lines.length - 1)) / 2;
  const left = box.x - box.widthPx / 2;
  const right = box.x + box.widthPx / 2;
  const style = { ...aircraftLabelStyle(typeScale), fill: theme.ink, halo: theme.sea, anchor: leans };
  const at = { start: left, middle: box.x, end: right }[leans];
  return (
    <g>
      {headings.map((text, index) => (
        <Words text={text} x={at} y={top + index * rowPx} style={style} />
      ))}
      {lines.map((label, index) => {
        const widthPx = wordsWidthPx(label.text, lineLabelStyle(typeScale)) + 4 + tagRoomPx(label, typeScale);
        const x = { start: left + widthPx / 2, middle: box.x, end: right - widthPx / 2 }[leans];
        const row = { ...box, x, y: top + (headings.length + index) * rowPx, widthPx };
        return (
          <g data-part={label.part} data-receiver={label.receiver}>
            <TaggedWords label={{ ...label, box: row }} frame={frame} lit={isLit(lit, label)} />
          </g>
        );
      })}
    </g>
  );
}

const isLit = (lit: Lit | null, label: Pick<LineLabel, "receiver" | "part">): boolean =>
  lit?.receiver === label.receiver && lit.parts.includes(label.part);

const tagRoomPx = ({ tags }: Pick<LineLabel, "tags">, typeScale: number): number =>
  tags.length * TAG_ROOM_PX * typeScale;

/** The receiver's number in a disc before the words, both in the line's colour; on a plate while lit. */
function TaggedWords(props: {
  readonly label: LineLabel;
  readonly frame: ChartFrame;
  readonly lit: boolean;
}): VNode {
  const { label, frame, lit } = props;
  const { theme, typeScale } = frame;
  const { box, text, tags } = label;
  const ink = theme[label.ink];
  const roomPx = tagRoomPx(label, typeScale);
  return (
    <g transform={`translate(${px(box.x)} ${px(box.y)}) rotate(${angle(box.turnDeg)})`}>
      {lit && (
        <rect
          x={px(-box.widthPx / 2 - 3)}
          y={px(-box.heightPx / 2 - 1)}
          width={px(box.widthPx + 6)}
          height={px(box.heightPx + 2)}
          rx={2}
          fill={theme.paper}
          stroke={ink}
        />
      )}
      {tags.map((number, index) => (
        <ReceiverTag
          number={number}
          x={-box.widthPx / 2 + (index + 0.5) * TAG_ROOM_PX * typeScale - 1}
          y={0}
          ink={ink}
          theme={theme}
          typeScale={typeScale}
        />
      ))}
      <Words
        text={text}
        x={roomPx / 2}
        y={0}
        style={{ ...lineLabelStyle(typeScale), fill: ink, ...(lit ? {} : { halo: theme.sea }) }}
      />
    </g>
  );
}

/** A disc with the receiver's number. */
export function ReceiverTag(props: {
  readonly number: number;
  readonly x: number;
  readonly y: number;
  readonly ink: string;
  readonly theme: Theme;
  readonly typeScale: number;
}): VNode {
  const { number, x, y, ink, theme, typeScale } = props;
  const style = { sizePx: NOTE_PX * typeScale, bold: true, fill: theme.paper };
  return (
    <g>
      <circle
        cx={px(x)}
        cy={px(y)}
        r={px(8.5 * typeScale)}
        fill={ink}
        stroke={theme.paper}
        stroke-width={1.5}
      />
      <Words text={String(number)} x={x} y={y} style={style} />
    </g>
  );
}
