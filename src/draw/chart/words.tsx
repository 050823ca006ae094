/** Lines of words on the chart: numbers in the mono face so that they do not jump, a halo so that nothing behind spoils them. */

import type { VNode } from "preact";
import { angle, px } from "../plain/px.ts";
import { type Typeface, textWidthPx } from "../plain/text-width.ts";
import { NUMBERS_FONT, WORDS_FONT } from "../theme.ts";
import type { LabelBox } from "./placement.ts";

export interface TextStyle {
  readonly sizePx: number;
  readonly fill: string;
  readonly bold?: boolean;
  /** Colour of the halo; none when left out. */
  readonly halo?: string;
  readonly haloPx?: number;
  /** Space put between letters, px. */
  readonly spacingPx?: number;
  readonly anchor?: "start" | "middle" | "end";
}

interface Run {
  readonly text: string;
  readonly numeric: boolean;
}

/** From the baseline up to half the height of a capital, as a part of the type size: what centres a line on a point. */
const HALF_CAPITAL = 0.375;

/**
 * Figures are set in the mono face; the points, commas and signs between them are not, for there they stand in a whole figure's
 * width and tear 115.60 apart.
 */
function runsOf(text: string): Run[] {
  return text
    .split(/(\d+)/)
    .filter((part) => part !== "")
    .map((part) => ({ text: part, numeric: /^\d/.test(part) }));
}

/** Width of a line as `Words` sets it, px. */
export function wordsWidthPx(text: string, style: Pick<TextStyle, "sizePx" | "bold" | "spacingPx">): number {
  const { sizePx, bold = false, spacingPx = 0 } = style;
  const face = (numeric: boolean): Typeface =>
    numeric ? (bold ? "numbers-bold" : "numbers") : bold ? "words-bold" : "words";
  const width = runsOf(text).reduce((sum, run) => sum + textWidthPx(run.text, sizePx, face(run.numeric)), 0);
  return width + spacingPx * [...text].length;
}

/** One line, its capitals centred on the height y; turned clockwise about that point. */
export function Words(props: {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly style: TextStyle;
  readonly turnDeg?: number;
}): VNode | null {
  const { text, x, y, style, turnDeg = 0 } = props;
  if (text === "") return null;
  return (
    <text
      x={px(x)}
      y={px(y + HALF_CAPITAL * style.sizePx)}
      transform={turnDeg === 0 ? undefined : `rotate(${angle(turnDeg)} ${px(x)} ${px(y)})`}
      font-family={WORDS_FONT}
      font-size={px(style.sizePx)}
      font-weight={style.bold ? 700 : undefined}
      letter-spacing={style.spacingPx ? px(style.spacingPx) : undefined}
      text-anchor={style.anchor === "start" ? undefined : (style.anchor ?? "middle")}
      fill={style.fill}
      stroke={style.halo}
      stroke-width={style.halo ? px(style.haloPx ?? 3.5) : undefined}
      stroke-linejoin={style.halo ? "round" : undefined}
      paint-order={style.halo ? "stroke" : undefined}
    >
      {runsOf(text).map((run) =>
        run.numeric ? <tspan font-family={NUMBERS_FONT}>{run.text}</tspan> : run.text,
      )}
    </text>
  );
}

/** The box that a line needs, its middle at the point given. */
export function wordsBox(
  text: string,
  style: Pick<TextStyle, "sizePx" | "bold" | "spacingPx">,
  at: { readonly x: number; readonly y: number },
  turnDeg = 0,
): LabelBox {
  return { x: at.x, y: at.y, widthPx: wordsWidthPx(text, style) + 4, heightPx: style.sizePx + 2, turnDeg };
}
