/**
 * An ident as it is keyed: dots and dashes as bars, their letters below, what has been sent filled, and a light bar where
 * the key is now. Lengths are in dots, as Morse counts them (`radio/morse.ts`).
 */

import { type MorseStroke, morseStrokes, morseUnits } from "../../radio/index.ts";
import { px } from "../plain/px.ts";
import { TextLine } from "../plain/text-line.tsx";
import type { Theme } from "../theme.ts";

/** One letter's place in the code, in dots from its beginning. */
export interface KeyedLetter {
  readonly letter: string;
  readonly startUnits: number;
  readonly units: number;
}

/** A code to be drawn. */
export interface KeyedCode {
  readonly strokes: readonly MorseStroke[];
  readonly lengthUnits: number;
  readonly letters: readonly KeyedLetter[];
}

const LETTER_GAP_UNITS = 3;

/** The code of a word of letters and figures. Throws RangeError where a character has no code. */
export function keyedCode(text: string): KeyedCode {
  const letters: KeyedLetter[] = [];
  let startUnits = 0;
  for (const letter of text.toUpperCase()) {
    const units = morseUnits(letter);
    letters.push({ letter, startUnits, units });
    startUnits += units + LETTER_GAP_UNITS;
  }
  return { strokes: morseStrokes(text), lengthUnits: morseUnits(text), letters };
}

/** The letter whose strokes are being sent, or were last; null before the first. */
export function letterAt({ letters }: KeyedCode, sentUnits: number): KeyedLetter | null {
  return letters.findLast((letter) => letter.startUnits <= sentUnits) ?? null;
}

export interface IdentKeyingProps {
  readonly code: KeyedCode;
  /** How far the key has come, dots from the beginning; from its length on all is sent. */
  readonly sentUnits: number;
  /** Whether a light bar moves and what has been sent fills; otherwise the bars stand. */
  readonly moving: boolean;
  /** Whether the letters stand below. They are an answer that a cover may withhold. */
  readonly lettered: boolean;
  readonly widthPx: number;
  readonly theme: Theme;
  /** The picture in words. */
  readonly sentence: string;
}

const BAR_TOP_PX = 4;
const BAR_PX = 7;
const LIGHT_WIDTH_PX = 3;
const LETTER_PX = 13;
const LETTER_BASE_PX = 29;
/** No longer than this for a dot, so that a short ident does not sprawl. */
const LONGEST_UNIT_PX = 7;

/** With its letters or without. */
const identKeyingPx = (lettered: boolean): number =>
  lettered ? LETTER_BASE_PX + 5 : BAR_PX + 2 * BAR_TOP_PX;

export function IdentKeyingPicture(props: IdentKeyingProps) {
  const { code, sentUnits, moving, lettered, widthPx, theme, sentence } = props;
  const heightPx = identKeyingPx(lettered);
  const unitPx = Math.min(LONGEST_UNIT_PX, (widthPx - LIGHT_WIDTH_PX) / code.lengthUnits);
  const toX = (units: number) => LIGHT_WIDTH_PX / 2 + units * unitPx;
  const under = sentUnits >= 0 && sentUnits < code.lengthUnits;
  const now = under ? letterAt(code, sentUnits) : null;
  return (
    <svg
      xmlns="http://www.w3.org/2000/svg"
      viewBox={`0 0 ${px(widthPx)} ${px(heightPx)}`}
      width={px(widthPx)}
      height={px(heightPx)}
      role="img"
      aria-label={sentence}
    >
      {code.strokes.map((stroke) => (
        <Bar
          key={stroke.startUnits}
          x={toX(stroke.startUnits)}
          widthPx={stroke.units * unitPx}
          filled={moving ? (sentUnits - stroke.startUnits) / stroke.units : 1}
          theme={theme}
        />
      ))}
      {lettered &&
        code.letters.map((letter) => (
          <g key={letter.startUnits} data-letter={letter === now ? "now" : undefined}>
            <TextLine
              x={toX(letter.startUnits + letter.units / 2)}
              y={LETTER_BASE_PX}
              sizePx={LETTER_PX}
              fill={letter === now ? theme.ink : theme.soft}
              typeface={letter === now ? "words-bold" : "words"}
              anchor="middle"
            >
              {letter.letter}
            </TextLine>
          </g>
        ))}
      {moving && under && (
        <rect
          data-part="light"
          x={px(toX(sentUnits) - LIGHT_WIDTH_PX / 2)}
          y="0"
          width={LIGHT_WIDTH_PX}
          height={BAR_PX + 2 * BAR_TOP_PX}
          rx="1.5"
          fill={theme.ink}
        />
      )}
    </svg>
  );
}

interface BarProps {
  readonly x: number;
  readonly widthPx: number;
  /** How much of it is sent; anything from 0 down is nothing, from 1 up all. */
  readonly filled: number;
  readonly theme: Theme;
}

/** One stroke of the key: outlined, and filled as far as it is sent. */
function Bar({ x, widthPx, filled, theme }: BarProps) {
  const part = Math.max(0, Math.min(1, filled));
  return (
    <g data-part="stroke">
      <rect
        x={px(x + 0.5)}
        y={BAR_TOP_PX + 0.5}
        width={px(Math.max(0.5, widthPx - 1))}
        height={BAR_PX - 1}
        fill="none"
        stroke={theme.radial}
      />
      {part > 0 && (
        <rect x={px(x)} y={BAR_TOP_PX} width={px(widthPx * part)} height={BAR_PX} fill={theme.radial} />
      )}
    </g>
  );
}
