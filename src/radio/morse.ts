/**
 * International Morse code, letters and figures, and its timing in dot units: dot 1, dash 3, gap inside a letter 1,
 * between letters 3, between words 7. Source: ITU-R Recommendation M.1677-1 (10/2009).
 * Speed is counted by the word PARIS, 50 units with its closing gap, so a dot lasts 1200/wpm milliseconds.
 */

const CODES: Readonly<Record<string, string>> = {
  A: ".-",
  B: "-...",
  C: "-.-.",
  D: "-..",
  E: ".",
  F: "..-.",
  G: "--.",
  H: "....",
  I: "..",
  J: ".---",
  K: "-.-",
  L: ".-..",
  M: "--",
  N: "-.",
  O: "---",
  P: ".--.",
  Q: "--.-",
  R: ".-.",
  S: "...",
  T: "-",
  U: "..-",
  V: "...-",
  W: ".--",
  X: "-..-",
  Y: "-.--",
  Z: "--..",
  0: "-----",
  1: ".----",
  2: "..---",
  3: "...--",
  4: "....-",
  5: ".....",
  6: "-....",
  7: "--...",
  8: "---..",
  9: "----.",
};

const DASH_UNITS = 3;
const LETTER_GAP_UNITS = 3;
export const WORD_GAP_UNITS = 7;
/** Milliseconds of a dot at one word a minute: 60000 over the 50 units of PARIS. */
const DOT_MS_AT_ONE_WPM = 1200;

/** One stroke of the key, in dot units from the start of the text. */
export interface MorseStroke {
  readonly startUnits: number;
  readonly units: number;
}

/** Whether every character has a code: the letters A to Z in either case and the figures. Not so for empty text. */
export const isMorseText = (text: string): boolean => /^[A-Za-z0-9]+$/.test(text);

/**
 * The code of one word with plain dots and hyphens, letters apart by one space: `--. ..-. ...`.
 * Throws RangeError where a character has none (see `isMorseText`).
 */
export function morseCode(text: string): string {
  const codes = [...text.toUpperCase()].map((letter) => CODES[letter]);
  if (!isMorseText(text) || codes.includes(undefined))
    throw new RangeError(`only letters A to Z and figures have an ident code, got "${text}"`);
  return codes.join(" ");
}

const LETTERS: ReadonlyMap<string, string> = new Map(
  Object.entries(CODES).map(([letter, code]) => [code, letter]),
);

/** The word that was keyed, from its code with plain dots and hyphens, letters apart by one space; null where some sign is no letter. */
export function decodeMorse(code: string): string | null {
  const letters = code.split(" ").map((sign) => LETTERS.get(sign) ?? null);
  return letters.includes(null) ? null : letters.join("");
}

/** The same, as printed on a chart: raised dots and minus signs, `−−· ··−· ···`. */
export const printedMorse = (text: string): string =>
  morseCode(text).replaceAll(".", "·").replaceAll("-", "−");

/** The strokes of one word, first dot at 0. Throws RangeError where a character has no code. */
export function morseStrokes(text: string): MorseStroke[] {
  const strokes: MorseStroke[] = [];
  let now = 0;
  for (const sign of morseCode(text)) {
    if (sign === " ") {
      // Each stroke is followed by the one-unit gap; two more make the gap between letters.
      now += LETTER_GAP_UNITS - 1;
      continue;
    }
    const units = sign === "-" ? DASH_UNITS : 1;
    strokes.push({ startUnits: now, units });
    now += units + 1;
  }
  return strokes;
}

/** Dot units from the first stroke's start to the last one's end, gaps inside included, none after. */
export function morseUnits(text: string): number {
  const last = morseStrokes(text).at(-1);
  return last === undefined ? 0 : last.startUnits + last.units;
}

/** Length of a dot, milliseconds, at a speed in words a minute. Throws RangeError unless the speed is above 0. */
export function dotMs(wordsPerMinute: number): number {
  if (!(wordsPerMinute > 0) || !Number.isFinite(wordsPerMinute))
    throw new RangeError(`a code speed is a number of words a minute above 0, got ${wordsPerMinute}`);
  return DOT_MS_AT_ONE_WPM / wordsPerMinute;
}
