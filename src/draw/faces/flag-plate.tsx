/** The flag as a word in a plate: TO and FROM with a triangle, OFF hatched. */

import type { Flag } from "../../panel/index.ts";
import { px } from "../plain/px.ts";
import { middleBaseline, TextLine } from "../plain/text-line.tsx";
import { textWidthPx } from "../plain/text-width.ts";
import type { Theme } from "../theme.ts";

/** Sides of a plate that holds a word, px. */
export function plateSize(word: string, textPx: number, withTriangle: boolean) {
  const trianglePx = withTriangle ? textPx * 0.95 : 0;
  return {
    widthPx: textWidthPx(word, textPx, "words-bold") + trianglePx + textPx * 0.75,
    heightPx: textPx * 1.3,
    trianglePx,
  };
}

export interface FlagPlateProps {
  readonly flag: Flag;
  readonly middleX: number;
  readonly middleY: number;
  readonly textPx: number;
  readonly theme: Theme;
  readonly idPrefix: string;
  /** Which pointer is off, on a dial with two. */
  readonly pointer?: string | undefined;
  /** False where the triangle is drawn elsewhere on the face. */
  readonly withTriangle?: boolean;
}

export function FlagPlate(props: FlagPlateProps) {
  return props.flag === "OFF" ? <OffPlate {...props} /> : <WordPlate {...props} />;
}

function WordPlate({ flag, middleX, middleY, textPx, theme, withTriangle = true }: FlagPlateProps) {
  const { widthPx, heightPx, trianglePx } = plateSize(flag, textPx, withTriangle);
  const leftPx = -widthPx / 2;
  const wordX = (trianglePx > 0 ? leftPx + textPx * 0.3 + trianglePx : leftPx + textPx * 0.375) + 0;
  return (
    <g data-part="flag" data-flag={flag} transform={`translate(${px(middleX)} ${px(middleY)})`}>
      <rect
        x={px(leftPx)}
        y={px(-heightPx / 2)}
        width={px(widthPx)}
        height={px(heightPx)}
        rx="2"
        fill={theme.ink}
        stroke={theme.paper}
        stroke-width={px(Math.max(1, textPx / 9))}
      />
      {trianglePx > 0 && (
        <path d={trianglePath(leftPx + textPx * 0.72, 0, textPx * 0.3, flag === "TO")} fill={theme.paper} />
      )}
      <TextLine
        x={wordX + textPx * 0.06}
        y={middleBaseline(0, textPx)}
        sizePx={textPx}
        fill={theme.paper}
        typeface="words-bold"
      >
        {flag}
      </TextLine>
    </g>
  );
}

function OffPlate({ middleX, middleY, textPx, theme, idPrefix, pointer }: FlagPlateProps) {
  const word = pointer === undefined ? "OFF" : `${pointer} OFF`;
  const { widthPx, heightPx } = plateSize(word, textPx, false);
  const outerPx = widthPx + textPx * 1.5;
  const hatch = `${idPrefix}-off`;
  const stepPx = px(Math.max(4, textPx * 0.36));
  return (
    <g data-part="flag" data-flag="OFF" transform={`translate(${px(middleX)} ${px(middleY)})`}>
      <defs>
        <pattern
          id={hatch}
          width={stepPx}
          height={stepPx}
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <rect width={stepPx} height={stepPx} fill={theme.paper} />
          <rect width={px(stepPx * 0.5)} height={stepPx} fill={theme.ink} />
        </pattern>
      </defs>
      <rect
        x={px(-outerPx / 2)}
        y={px(-heightPx / 2)}
        width={px(outerPx)}
        height={px(heightPx)}
        rx="2"
        fill={`url(#${hatch})`}
        stroke={theme.ink}
        stroke-width={px(Math.max(1, textPx / 11))}
      />
      <rect
        x={px(-widthPx / 2)}
        y={px(-heightPx / 2 + 1)}
        width={px(widthPx)}
        height={px(heightPx - 2)}
        fill={theme.paper}
      />
      <TextLine
        x={0}
        y={middleBaseline(0, textPx)}
        sizePx={textPx}
        fill={theme.ink}
        typeface="words-bold"
        anchor="middle"
      >
        {word}
      </TextLine>
    </g>
  );
}

/** A triangle around a middle, pointing up for TO and down for FROM; our fonts have no such sign. */
export function trianglePath(middleX: number, middleY: number, halfPx: number, pointsUp: boolean): string {
  const tip = pointsUp ? -halfPx : halfPx;
  return `M${px(middleX)} ${px(middleY + tip)}L${px(middleX + halfPx * 1.1)} ${px(middleY - tip * 0.8)}L${px(
    middleX - halfPx * 1.1,
  )} ${px(middleY - tip * 0.8)}Z`;
}
