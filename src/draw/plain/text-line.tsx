/** One line of text in a picture, placed by its baseline and complete without a stylesheet. */

import { NUMBERS_FONT, WORDS_FONT } from "../theme.ts";
import { px } from "./px.ts";
import { CAP_HEIGHT, type Typeface, textWidthPx } from "./text-width.ts";

export interface TextLineProps {
  readonly x: number;
  /** The baseline. */
  readonly y: number;
  readonly sizePx: number;
  readonly fill: string;
  readonly typeface: Typeface;
  /** Which point of the line `x` is; its start when not given. */
  readonly anchor?: "start" | "middle" | "end";
  readonly children: string;
}

/**
 * In B612 Mono points and commas stand at the left of a whole figure's width, which tears 115.60 apart. What follows them is drawn
 * nearer by this part of the type size; every figure still has one width, so that numbers do not jump.
 */
const PULL = 0.35;
const PULLED_AFTER = new Set([".", ",", ":"]);

function pullsPx(text: string, sizePx: number, typeface: Typeface): number[] {
  const figures = typeface === "numbers" || typeface === "numbers-bold";
  const before = ["", ...text].slice(0, -1);
  return before.map((sign) => (figures && PULLED_AFTER.has(sign) ? px(-PULL * sizePx) : 0));
}

/** Width of one line as `TextLine` draws it, px. */
export const lineWidthPx = (text: string, sizePx: number, typeface: Typeface): number =>
  pullsPx(text, sizePx, typeface).reduce(
    (widthPx, pull) => widthPx + pull,
    textWidthPx(text, sizePx, typeface),
  );

/** The baseline that puts capitals and figures half above and half below a height. */
export const middleBaseline = (middleY: number, sizePx: number): number =>
  middleY + (CAP_HEIGHT * sizePx) / 2;

export function TextLine({ x, y, sizePx, fill, typeface, anchor = "start", children }: TextLineProps) {
  const figures = typeface === "numbers" || typeface === "numbers-bold";
  const shifts = pullsPx(children, sizePx, typeface);
  const pulled = shifts.some((shift) => shift !== 0);
  // Renderers disagree on whether such shifts count in anchoring, so a pulled line is anchored here, by its own width.
  const part = { start: 0, middle: 0.5, end: 1 }[anchor];
  const startX = pulled ? x - part * lineWidthPx(children, sizePx, typeface) : x;
  return (
    <text
      x={px(startX)}
      y={px(y)}
      font-family={figures ? NUMBERS_FONT : WORDS_FONT}
      font-size={px(sizePx)}
      font-weight={typeface === "words-bold" || typeface === "numbers-bold" ? 700 : 400}
      fill={fill}
      text-anchor={anchor === "start" || pulled ? undefined : anchor}
      dx={pulled ? shifts.join(" ") : undefined}
    >
      {children}
    </text>
  );
}
