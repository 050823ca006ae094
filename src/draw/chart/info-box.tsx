/** What is printed about a station: name, frequency, DME channel, ident and its Morse, with the number of each receiver tuned to it. */

import type { VNode } from "preact";
import { isMorseText, morseStrokes, morseUnits, type Station } from "../../radio/index.ts";
import { px } from "../plain/px.ts";
import type { Theme } from "../theme.ts";
import { NAME_PX, NOTE_PX } from "./frame.ts";
import type { LabelBox } from "./placement.ts";
import { Words, wordsWidthPx } from "./words.tsx";

const PADDING_PX = 8;
const ROW_PX = 18;
const GAP_PX = 10;
/** Length of a dot of the printed Morse. */
const DOT_PX = 2.5;
const NAME_STYLE = { sizePx: NAME_PX, bold: true };
const NOTE_STYLE = { sizePx: NOTE_PX };

/** `compact` leaves out name, kind and channel: for a small sheet. */
export type InfoBoxForm = "full" | "compact";

interface Row {
  readonly part: "name" | "frequency" | "ident";
  readonly left: string;
  readonly right: string;
}

function rowsOf(station: Station, form: InfoBoxForm): Row[] {
  const frequency = frequencyText(station);
  const channel = station.dmeChannel === null ? "" : `ch ${station.dmeChannel}`;
  if (form === "compact")
    return [
      { part: "frequency", left: station.ident, right: frequency },
      { part: "ident", left: "", right: "" },
    ];
  return [
    { part: "name", left: station.name, right: station.kind },
    { part: "frequency", left: frequency, right: channel },
    { part: "ident", left: station.ident, right: "" },
  ];
}

/** Size of the box at type scale 1 times `scale`. */
export function infoBoxSize(
  station: Station,
  scale: number,
  form: InfoBoxForm,
): { widthPx: number; heightPx: number } {
  const rows = rowsOf(station, form);
  const widths = rows.map(({ part, left, right }) => {
    const leftPx = wordsWidthPx(left, NAME_STYLE);
    const rightPx = part === "ident" ? morseWidthPx(station.ident) : wordsWidthPx(right, NOTE_STYLE);
    return leftPx + rightPx + (leftPx > 0 && rightPx > 0 ? GAP_PX : 0);
  });
  return {
    widthPx: Math.ceil(Math.max(...widths) + 2 * PADDING_PX) * scale,
    heightPx: (rows.length * ROW_PX + PADDING_PX) * scale,
  };
}

export function InfoBox(props: {
  readonly station: Station;
  readonly box: LabelBox;
  readonly form: InfoBoxForm;
  readonly theme: Theme;
  readonly scale: number;
  readonly tuned: boolean;
  readonly lit: { readonly frequency: boolean; readonly ident: boolean };
}): VNode {
  const { station, box, form, theme, scale, tuned, lit } = props;
  const left = box.x - box.widthPx / 2;
  const top = box.y - box.heightPx / 2;
  const start = left + PADDING_PX * scale;
  const end = left + box.widthPx - PADDING_PX * scale;
  return (
    <g>
      <rect
        x={px(left)}
        y={px(top)}
        width={px(box.widthPx)}
        height={px(box.heightPx)}
        rx={2}
        fill={theme.paper}
        fill-opacity={0.94}
        stroke={theme.radial}
        stroke-width={tuned ? 1.4 : 0.8}
      />
      {rowsOf(station, form).map(({ part, left: words, right: note }, index) => {
        const y = top + (PADDING_PX / 2 + (index + 0.5) * ROW_PX) * scale;
        const isLit = part !== "name" && lit[part];
        return (
          <g data-part={part === "name" ? undefined : part}>
            {isLit && (
              <rect
                x={px(start - 3)}
                y={px(y - (ROW_PX / 2) * scale)}
                width={px(end - start + 6)}
                height={px(ROW_PX * scale)}
                fill={theme.radial}
                fill-opacity={0.2}
              />
            )}
            <Words
              text={words}
              x={start}
              y={y}
              style={{
                ...NAME_STYLE,
                sizePx: NAME_PX * scale,
                anchor: "start",
                fill: part === "name" ? theme.radial : theme.ink,
              }}
            />
            <Words
              text={note}
              x={end}
              y={y}
              style={{
                sizePx: NOTE_PX * scale,
                anchor: "end",
                fill: form === "full" ? theme.soft : theme.ink,
              }}
            />
            {part === "ident" && (
              <Morse text={station.ident} endX={end} y={y} dotPx={DOT_PX * scale} ink={theme.ink} />
            )}
          </g>
        );
      })}
    </g>
  );
}

/** Morse as strokes, not characters: dot one, dash three, gaps one inside a letter and three between, ending at `endX`. */
function Morse(props: {
  readonly text: string;
  readonly endX: number;
  readonly y: number;
  readonly dotPx: number;
  readonly ink: string;
}): VNode | null {
  const { text, endX, y, dotPx, ink } = props;
  if (!isMorseText(text)) return null;
  const startX = endX - morseUnits(text) * dotPx;
  const strokes = morseStrokes(text).map(
    (stroke) => `M${px(startX + stroke.startUnits * dotPx)} ${px(y)}h${px(stroke.units * dotPx)}`,
  );
  return <path d={strokes.join("")} fill="none" stroke={ink} stroke-width={px(dotPx)} data-morse={text} />;
}

const morseWidthPx = (text: string): number => (isMorseText(text) ? morseUnits(text) * DOT_PX : 0);
export const frequencyText = (station: Station): string => station.frequencyMhz.toFixed(2);
