/** What a picture of the signal comes to, in rows of words below or beside it, each in the colour of the part it speaks of. */

import { WASH_OPACITY } from "../faces/lit-wash.tsx";
import { px } from "../plain/px.ts";
import { TextLine } from "../plain/text-line.tsx";
import { LINE_HEIGHT, textWidthPx, wrapText } from "../plain/text-width.ts";
import type { Theme } from "../theme.ts";

export interface WordRow {
  readonly part: "radial" | "course" | "needle";
  readonly words: string;
  readonly fill: string;
}

export interface WrappedRow extends WordRow {
  readonly lines: readonly string[];
}

type RowTypeface = "words" | "words-bold";

/** Between rows, px at scale 1. */
const GAP_PX = 3;
const SIZE_PX = 12;

/** The rows in the lines they take in so much room. */
export const wrapRows = (
  rows: readonly WordRow[],
  roomPx: number,
  scale: number,
  typeface: RowTypeface,
): WrappedRow[] =>
  rows.map((row) => ({ ...row, lines: wrapText(row.words, roomPx, SIZE_PX * scale, typeface) }));

const rowHeightPx = ({ lines }: WrappedRow, scale: number): number =>
  (lines.length * SIZE_PX * LINE_HEIGHT + GAP_PX) * scale;

export const rowsHeightPx = (rows: readonly WrappedRow[], scale: number): number =>
  rows.reduce((sum, row) => sum + rowHeightPx(row, scale), 0);

export interface WordRowsProps {
  readonly rows: readonly WrappedRow[];
  readonly x: number;
  readonly top: number;
  readonly scale: number;
  readonly typeface: RowTypeface;
  readonly theme: Theme;
  /** Whether the argument speaks of the part. */
  readonly isLit?: (part: WordRow["part"]) => boolean;
}

export function WordRows({ rows, x, top, scale, typeface, theme, isLit = () => false }: WordRowsProps) {
  const sizePx = SIZE_PX * scale;
  const linePx = sizePx * LINE_HEIGHT;
  let next = top;
  return (
    <>
      {rows.map((row) => {
        const { part, fill, lines } = row;
        const y = next;
        next += rowHeightPx(row, scale);
        return (
          <g key={part} data-part={part}>
            {isLit(part) && (
              <rect
                data-lit="yes"
                x={px(x - 4 * scale)}
                y={px(y)}
                width={px(Math.max(...lines.map((line) => textWidthPx(line, sizePx, typeface))) + 8 * scale)}
                height={px(lines.length * linePx)}
                rx="3"
                fill={theme.ink}
                fill-opacity={WASH_OPACITY}
              />
            )}
            {lines.map((line, index) => (
              <TextLine
                key={line}
                x={x}
                y={y + index * linePx + sizePx}
                sizePx={sizePx}
                fill={fill}
                typeface={typeface}
              >
                {line}
              </TextLine>
            ))}
          </g>
        );
      })}
    </>
  );
}
